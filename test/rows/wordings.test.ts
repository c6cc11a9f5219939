/**
 * Rows put together at random from what makers write, in random wordings, on exactly as many stitches as they use: what
 * each is worth is added up here, independently of reader and engine, and no finding may come of them. Common
 * practice, no source.
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { reportRows } from '../../core/study/rows.ts';
import { RUNS } from './damage.ts';

type Terms = 'us' | 'uk';
type Draw = fc.GeneratorValue;

/** Words, the stitches that they use below, and the stitches and chain-spaces that they make. */
interface Part {
  readonly words: string;
  readonly uses: number;
  readonly makes: number;
  readonly spaces: number;
}

const STITCHES: Readonly<Record<Terms, readonly string[]>> = {
  us: ['sc', 'hdc', 'dc', 'tr', 'single crochet', 'half double crochet', 'double crochet'],
  uk: ['dc', 'htr', 'tr', 'dtr', 'double crochet', 'half treble', 'treble'],
};

const NUMBERS = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

const one = <T>(g: Draw, list: readonly T[]): T => g(fc.constantFrom, ...list);
const between = (g: Draw, min: number, max: number): number => g(fc.integer, { min, max });
const amount = (g: Draw, n: number): string =>
  n < NUMBERS.length && between(g, 0, 6) === 0 ? NUMBERS[n]! : `${n}`;
const sts = (g: Draw, n: number): string =>
  n === 1 ? one(g, ['st', 'stitch']) : one(g, ['sts', 'stitches']);
const chain = (g: Draw, terms: Terms, n: number): string =>
  terms === 'us' ? one(g, [`ch ${n}`, `chain ${n}`, `ch${n}`]) : one(g, [`${n} ch`, `${n}ch`, `ch ${n}`]);

function part(g: Draw, terms: Terms, stitch: string): Part {
  const at = `${one(g, ['in', 'into'])} ${one(g, ['next', 'the next', 'foll'])}`;
  const skip = terms === 'us' ? one(g, ['sk', 'skip']) : 'miss';
  const ch = chain(g, terms, 1);
  switch (between(g, 0, 7)) {
    case 0: {
      const n = between(g, 2, 6);
      const words = one(g, [
        `${stitch} ${at} ${amount(g, n)} ${sts(g, n)}`,
        `${stitch} in each of next ${amount(g, n)} ${sts(g, n)}`,
        `1 ${stitch} in each of the next ${n} ${sts(g, n)}`,
        `${stitch} ${at} ${amount(g, n)}`,
      ]);
      return { words, uses: n, makes: n, spaces: 0 };
    }
    case 1:
      return { words: `${one(g, ['', '1 '])}${stitch} ${at} ${sts(g, 1)}`, uses: 1, makes: 1, spaces: 0 };
    case 2: {
      const n = between(g, 2, 3);
      const words = one(g, [
        `${amount(g, n)} ${stitch} ${at} ${sts(g, 1)}`,
        `work ${n} ${stitch} ${at} ${sts(g, 1)}`,
        `(${n} ${stitch}) ${at} ${sts(g, 1)}`,
      ]);
      return { words, uses: 1, makes: n, spaces: 0 };
    }
    case 3: {
      const short = stitch.includes(' ') ? [] : [`${stitch}2tog`, `${stitch}2tog over next 2 sts`];
      const words = one(g, [`${stitch} next 2 sts together`, `${stitch} next 2 sts tog`, ...short]);
      return { words, uses: 2, makes: 1, spaces: 0 };
    }
    case 4: {
      const n = between(g, 1, 4);
      const words = `${chain(g, terms, between(g, 1, 4))}, ${skip} ${one(g, ['', 'next '])}${amount(g, n)} ${sts(g, n)}, ${stitch} ${at} ${sts(g, 1)}`;
      return { words, uses: n + 1, makes: 1, spaces: 1 };
    }
    case 5: {
      const n = between(g, 1, 2);
      const words = `${skip} ${amount(g, n)} ${sts(g, n)}, ${n + 1} ${stitch} ${at} ${sts(g, 1)}`;
      return { words, uses: n + 1, makes: n + 1, spaces: 0 };
    }
    case 6:
      return { words: `(${stitch}, ${ch}, ${stitch}) ${at} ${sts(g, 1)}`, uses: 1, makes: 2, spaces: 1 };
    default: {
      const other = one(g, STITCHES[terms].slice(0, 3));
      const words = `${stitch} ${at} ${sts(g, 1)}${one(g, [', ', ' and '])}${other} ${at} ${sts(g, 1)}`;
      return { words, uses: 2, makes: 2, spaces: 0 };
    }
  }
}

function together(parts: readonly Part[], between = ', '): Part {
  return {
    words: parts.map(({ words }) => words).join(between),
    uses: parts.reduce((sum, { uses }) => sum + uses, 0),
    makes: parts.reduce((sum, { makes }) => sum + makes, 0),
    spaces: parts.reduce((sum, { spaces }) => sum + spaces, 0),
  };
}

/** The body so many times over, in one of the ways that makers write it; `left`: stitches behind the repeat. */
function repeated(g: Draw, round: boolean, body: Part, times: number, left: number): Part {
  const rest = left === 1 ? '1 st' : `${left} sts`;
  const end = round ? ['around', 'to end of rnd', 'to end'] : ['across', 'to end', 'to end of row'];
  const stop = one(
    g,
    left === 0 ? end : [`to last ${rest}`, `across to last ${rest}`, `until ${rest} remain`],
  );
  const more = times === 2 ? 'once more' : `${times - 1} more times`;
  const words = one(g, [
    `*${body.words}; rep from * ${stop}`,
    `*${body.words}, repeat from * ${stop}`,
    `*${body.words}*, rep from * to * ${stop}`,
    `* ${body.words} *; rep between *s ${stop}`,
    `*${body.words}; rep from * ${more}`,
    `[${body.words}] ${times} times`,
    `(${body.words}) x ${times}`,
    `[${body.words}] ${stop}`,
  ]);
  return {
    words,
    uses: body.uses * times,
    makes: body.makes * times,
    spaces: body.spaces * times,
  };
}

/** A piece of two rows: plain ones to stand on, then the row in question. */
function piece(g: Draw): { text: string; terms: Terms; makes: number; spaces: number } {
  const terms = one<Terms>(g, ['us', 'uk']);
  const round = between(g, 0, 2) === 0;
  const stitch = one(g, STITCHES[terms]);
  const parts = (min: number, max: number): Part[] =>
    Array.from({ length: between(g, min, max) }, () => part(g, terms, stitch));
  const head = parts(0, 2);
  const tail = parts(0, 2);
  const left = together(tail).uses;
  const body = repeated(g, round, together(parts(1, 3)), between(g, 2, 6), left);
  const whole = together([...head, body, ...tail], one(g, [', ', '; ']));
  const low = terms === 'us' ? 'sc' : 'dc';
  const turning = chain(g, terms, 1);
  const lead = one(g, [
    `${turning}, `,
    `${turning} (does not count as a st), `,
    ...(round ? [] : [`${turning}, turn, `]),
  ]);
  const slip = terms === 'us' ? 'sl st' : 'ss';
  const close = round
    ? one(g, ['; join', `, join with ${slip} in first st`, `, ${slip} to first st`])
    : lead.includes('turn,')
      ? ''
      : one(g, [', turn', '. Turn', '']);
  const count = one(g, [
    '.',
    ` (${whole.makes} sts)`,
    `. (${whole.makes})`,
    ` - ${whole.makes} sts`,
    `. ${whole.makes} sts.`,
  ]);
  const base = round
    ? `Rnd 1: Ch ${whole.uses}, ${slip} to first ch to form ring, ch 1, ${low} in each ch around, join.`
    : `Ch ${whole.uses + 1}.\nRow 1: ${low} in 2nd ch from hook and in each ch ${terms === 'us' ? 'across' : 'to end'}, turn.`;
  const text = `${base}\n${round ? 'Rnd' : 'Row'} 2: ${lead}${whole.words}${close}${count}`;
  return { text, terms, makes: whole.makes, spaces: whole.spaces };
}

test('rows in any wording count what their parts add up to, without a finding', {
  timeout: 5_400_000,
}, () => {
  fc.assert(
    fc.property(fc.gen(), (g) => {
      const { text, terms, makes, spaces } = piece(g);
      const report = reportRows(text, terms);
      const row = report.rows.at(-1)!;
      const findings = [...report.rows.flatMap((own) => own.findings), ...report.findings];
      expect(
        {
          counts: row.counts,
          spaces: row.spaces,
          findings: findings.filter(({ severity }) => severity !== 'note').map(({ message }) => message),
        },
        text,
      ).toEqual({ counts: [makes], spaces: [spaces], findings: [] });
    }),
    { numRuns: Math.ceil(RUNS / 5) },
  );
});
