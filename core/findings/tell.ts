/**
 * Turns facts into findings: facts of one kind at one span, one per size, become one finding whose sentence
 * gives the numbers of each size. Detects nothing.
 */
import type { Finding } from '../finding.ts';
import type { Terms } from '../trade/stitches.ts';
import { kindOf } from './catalogue.ts';
import type { FindingKind, SizedFact } from './kind.ts';
import { capital, FIGURE_SIGN } from './phrases.ts';
import { voiceOf } from './voice.ts';

export interface Telling {
  readonly terms: Terms;
  /** Labels of the sizes, in order. */
  readonly labels: readonly string[];
  /** Node of the document that the spans belong to, or null for plain text. */
  readonly node: string | null;
  /** The text that the spans count in. */
  readonly text: string;
  /** What its figures ask the sheet for, in their order; none when left out. */
  readonly figures?: readonly string[];
}

/** A fact whose words name the figures in them, "[back rows]", as the form of a figure does. */
function named({ size, fact }: SizedFact, { text, figures = [] }: Telling): SizedFact {
  const data = Object.entries(fact.data).map(([key, value]) => {
    if (typeof value !== 'string' || !value.includes(FIGURE_SIGN)) return [key, value] as const;
    const at = Math.max(text.indexOf(value, fact.from), text.indexOf(value));
    if (at < 0) return [key, value] as const;
    let next = text.slice(0, at).split(FIGURE_SIGN).length - 1;
    return [key, value.replaceAll(FIGURE_SIGN, () => `[${figures[next++] ?? '?'}]`)] as const;
  });
  return { size, fact: { ...fact, data: Object.fromEntries(data) } };
}

const SEVERITY = { error: 0, warning: 1, note: 2 } as const;

function sentence(words: string): string {
  const done = capital(words);
  return /[.!?]$/.test(done) ? done : `${done}.`;
}

/** One finding of the given kind. `facts` stand at one span, one per size concerned (at least one). */
export function tellAs(kind: FindingKind, facts: readonly SizedFact[], telling: Telling): Finding {
  const { from, to } = facts[0]!.fact;
  const voice = voiceOf(telling.terms, telling.labels, telling.text.slice(from, to));
  const detail = kind.detail?.(facts, voice) ?? null;
  return {
    code: kind.code,
    severity: kind.severity,
    where: { node: telling.node, from, to },
    sizes: facts.flatMap(({ size }) => (size === null ? [] : [size])),
    message: sentence(kind.message(facts, voice)),
    detail: detail === null ? null : sentence(detail),
    fix: kind.fix?.(facts, voice) ?? null,
  };
}

/** Findings in the order of their place in the text, errors first at one place. */
export function tell(facts: readonly SizedFact[], telling: Telling): readonly Finding[] {
  if (facts.length === 0) return [];
  const groups = new Map<string, SizedFact[]>();
  for (const each of facts) {
    const sized = telling.figures === undefined ? each : named(each, telling);
    const { code, from, to } = sized.fact;
    const key = `${code}:${from}:${to}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [sized]);
    else if (!group.some((other) => other.size === sized.size)) group.push(sized);
  }
  const findings = [...groups.values()].map((group) => tellAs(kindOf(group[0]!.fact.code), group, telling));
  return findings.sort(
    (a, b) =>
      a.where.from - b.where.from || SEVERITY[a.severity] - SEVERITY[b.severity] || a.where.to - b.where.to,
  );
}
