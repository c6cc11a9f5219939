/**
 * Findings that the maker looked at and let stand. An acceptance holds for one kind of finding at one place and
 * for the words that it pointed at; when those change, the finding is told again, and the acceptance is told as
 * left over. It finds nothing in the pattern and forgets nothing by itself.
 */
import { VALUE_LIMITS } from '../document/limits.ts';
import { FIGURE, type Pattern } from '../document/pattern.ts';
import { tidyText } from '../document/words.ts';
import type { Acceptance } from '../document/workbook.ts';
import type { Finding } from '../finding.ts';
import { CATALOGUE, type FindingKind, tellAs } from '../findings/index.ts';
import { quoted, text } from '../findings/phrases.ts';
import type { Study } from '../study/index.ts';
import { writtenTexts } from '../study/written.ts';
import { review } from './review.ts';
import { RULES } from './rules.ts';

export interface AcceptedFinding {
  readonly finding: Finding;
  readonly acceptance: Acceptance;
}

export interface Settled {
  /** What still wants an answer: everything not accepted, and acceptances that are left over. */
  readonly open: readonly Finding[];
  readonly accepted: readonly AcceptedFinding[];
}

/** An acceptance whose finding is gone. No rule: it speaks of the workbook and not of the pattern. */
export const ACCEPTANCE_STALE: FindingKind = {
  code: 'acceptance-stale',
  severity: 'note',
  title: 'Something was accepted that is no longer there',
  reason:
    'An acceptance belongs to the words that it was given for. When they have changed, the finding is gone or is told again, and the old acceptance only gets in the way.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    const words = text(data, 'words').trim() === '' ? '' : ` at ${quoted(data, 'words')}`;
    const reason = text(data, 'reason').trim() === '' ? '' : ` (${quoted(data, 'reason')})`;
    return `${quoted(data, 'title')}${words} was accepted${reason}, but nothing of the kind is found there now; take the acceptance away`;
  },
  example: null,
  sample: { title: 'A repeat does not fit', words: 'rep from * across', reason: 'a half repeat is meant' },
};

/** Text as an acceptance may hold it: without what is no text, and not longer than there is room for. */
function fitting(text: string): string {
  const clean = tidyText(text);
  // Of a sign of two units at the end no half stays.
  return clean.length <= VALUE_LIMITS.sentence ? clean : tidyText(clean.slice(0, VALUE_LIMITS.sentence));
}

/**
 * The words that a finding points at, figures by their expression in brackets; its sentence where it points at
 * none. They say which finding an acceptance was given for.
 */
export function wordsPointedAt(pattern: Pattern, { where, message }: Finding): string {
  const { node, from, to } = where;
  const written = node === null || to <= from ? undefined : writtenTexts(pattern).get(node);
  if (written === undefined) return fitting(message);
  let figure = written.text.slice(0, from).split(FIGURE).length - 1;
  return fitting(
    written.text.slice(from, to).replaceAll(FIGURE, () => `[${written.figures[figure++] ?? ''}]`),
  );
}

/** The place of an acceptance. Texts without an id are known by their list: a note added above moves them all. */
const placeOf = (node: string | null): string => (node ?? '').replace(/:\d+$/u, '');

const keyOf = (code: string, node: string | null, words: string): string =>
  JSON.stringify([code, placeOf(node), words]);

/** What an acceptance is known by: the same for all that it lets stand. */
export const keyOfAcceptance = ({ code, node, words }: Acceptance): string => keyOf(code, node, words);

/** What an acceptance of this finding would be known by. */
export const keyOfFinding = (pattern: Pattern, finding: Finding): string =>
  keyOf(finding.code, finding.where.node, wordsPointedAt(pattern, finding));

/** The acceptance of a finding; `date` is an ISO date, or empty. */
export function acceptanceOf(pattern: Pattern, finding: Finding, reason: string, date: string): Acceptance {
  return {
    code: finding.code,
    node: finding.where.node ?? '',
    words: wordsPointedAt(pattern, finding),
    reason: fitting(reason.trim()).trim(),
    date,
  };
}

const titles: ReadonlyMap<string, string> = new Map(
  [...CATALOGUE, ...RULES].map(({ code, title }) => [code, title]),
);

const known = new WeakMap<Study, Settled>();

/** Everything that reading, grading, working and the technical edit found, parted by what the maker accepted. */
export function settled(study: Study): Settled {
  const before = known.get(study);
  if (before !== undefined) return before;
  const made = settle(study.pattern, [...study.findings, ...review(study)]);
  known.set(study, made);
  return made;
}

/** Parts findings into what is open and what was accepted. `findings` are all there are, of every kind. */
export function settle(pattern: Pattern, findings: readonly Finding[]): Settled {
  const { accepted } = pattern.workbook;
  if (accepted.length === 0) return { open: findings, accepted: [] };
  const byKey = new Map<string, Acceptance>();
  const codes = new Set<string>();
  for (const acceptance of accepted) {
    byKey.set(keyOfAcceptance(acceptance), acceptance);
    codes.add(acceptance.code);
  }
  const used = new Set<string>();
  const open: Finding[] = [];
  const standing: AcceptedFinding[] = [];
  for (const finding of findings) {
    const acceptance = codes.has(finding.code)
      ? byKey.get(keyOf(finding.code, finding.where.node, wordsPointedAt(pattern, finding)))
      : undefined;
    if (acceptance === undefined) open.push(finding);
    else {
      used.add(keyOfAcceptance(acceptance));
      standing.push({ finding, acceptance });
    }
  }
  // What was accepted twice is accepted, and left over once.
  const left = [...byKey].flatMap(([key, acceptance]) => (used.has(key) ? [] : [acceptance]));
  return {
    open: [...open, ...left.map((acceptance) => staleFinding(pattern, acceptance))],
    accepted: standing,
  };
}

function staleFinding(pattern: Pattern, { code, words, reason }: Acceptance): Finding {
  const data = { title: titles.get(code) ?? code, words, reason };
  return tellAs(
    ACCEPTANCE_STALE,
    [{ size: null, fact: { code: ACCEPTANCE_STALE.code, from: 0, to: 0, data } }],
    {
      terms: pattern.terms,
      labels: pattern.sizes.map((size) => size.label),
      node: null,
      text: '',
    },
  );
}
