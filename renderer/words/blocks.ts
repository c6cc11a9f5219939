/** Words of blocks that are forms: repeats of rows, shaping over rows, and the heads of pieces. */
import type { Piece } from '../../core/document/pattern.ts';

/** "Row 2" and "Row 5" as "Rows 2–5"; labels that do not follow the pattern stay as they are. */
function through(first: string, last: string): string {
  const [, noun, from] = /^(.*?)s? (\d+)$/.exec(first) ?? [];
  const [, other, to] = /^(.*?)s? (\d+)$/.exec(last) ?? [];
  if (noun === undefined || noun !== other) return `${first} to ${last}`;
  const next = Number(from) + 1 === Number(to);
  return next ? `${noun}s ${from} and ${to}` : `${noun}s ${from}–${to}`;
}

export const blockWords = {
  /** "Repeat Rows 2 and 3, 28 times more." */
  repeat: (first: string | null, last: string | null, until: 'times' | 'rows' | 'total', amount: string) => {
    if (first === null && last === null) return 'Choose the rows to repeat.';
    const rows = first === null || last === null || first === last ? (first ?? last)! : through(first, last);
    const number = amount.trim() === '' ? '…' : amount;
    const noun = /\bRnds?\b/.test(rows) ? 'rounds' : 'rows';
    switch (until) {
      case 'times':
        return number === '1' ? `Repeat ${rows} once more.` : `Repeat ${rows}, ${number} times more.`;
      case 'rows':
        return `Repeat ${rows} for ${number} more ${noun}.`;
      case 'total':
        return `Repeat ${rows} until there are ${number} ${noun}.`;
    }
  },
  shaping: (line: string, value: string | null) => {
    if (line === '') return 'Choose the line that plans the shaping.';
    return value === null ? `Shape by “${line}”.` : `Shape by “${line}”: ${value}.`;
  },
  make: (times: number) => (times === 1 ? 'Make one' : times === 2 ? 'Make two' : `Make ${times}`),
  side: (side: Piece['firstSide']) =>
    side === null ? 'no right and wrong side' : `first row is the ${side === 'RS' ? 'right' : 'wrong'} side`,
  startsChain: 'starts with its first row',
  startsEdges: (pieces: readonly string[], stitches: string | null) => {
    const from = pieces.length === 0 ? 'no edge chosen yet' : pieces.join(', ');
    return stitches === null ? `starts from ${from}` : `starts from ${from} (${stitches} sts)`;
  },
  meets: (pieces: readonly string[]) => (pieces.length === 0 ? null : `meets ${pieces.join(', ')}`),
  unnamed: 'a piece without a name',
} as const;
