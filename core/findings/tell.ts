/**
 * Turns facts into findings: facts of one kind at one span, one per size, become one finding whose sentence
 * gives the numbers of each size. Detects nothing.
 */
import type { Fact, Finding } from '../finding.ts';
import type { Terms } from '../trade/stitches.ts';
import { kindOf } from './catalogue.ts';
import type { SizedFact } from './kind.ts';
import { voiceOf } from './voice.ts';

export interface Telling {
  readonly terms: Terms;
  /** Labels of the sizes, in order. */
  readonly labels: readonly string[];
  /** Node of the document that the spans belong to, or null for plain text. */
  readonly node: string | null;
  /** The text that the spans count in. */
  readonly text: string;
}

const SEVERITY = { error: 0, warning: 1, note: 2 } as const;

function capital(sentence: string): string {
  const first = sentence.charAt(0);
  const done = /^[a-z]\w* (in|ch|st)/.test(sentence) ? sentence : first.toUpperCase() + sentence.slice(1);
  return /[.!?"]$/.test(done) ? done : `${done}.`;
}

/** Findings in the order of their place in the text, errors first at one place. */
export function tell(facts: readonly SizedFact[], telling: Telling): readonly Finding[] {
  if (facts.length === 0) return [];
  const groups = new Map<string, SizedFact[]>();
  for (const sized of facts) {
    const { code, from, to } = sized.fact;
    const key = `${code}:${from}:${to}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [sized]);
    else if (!group.some((other) => other.size === sized.size)) group.push(sized);
  }
  const findings: Finding[] = [];
  for (const group of groups.values()) {
    const fact: Fact = group[0]!.fact;
    const kind = kindOf(fact.code);
    const voice = voiceOf(telling.terms, telling.labels, telling.text.slice(fact.from, fact.to));
    const all = group.length === telling.labels.length || group[0]!.size === null;
    findings.push({
      code: fact.code,
      severity: kind.severity,
      where: { node: telling.node, from: fact.from, to: fact.to },
      sizes: all && group[0]!.size === null ? [] : group.map((sized) => sized.size ?? 0),
      message: capital(kind.message(group, voice)),
      detail: null,
      fix: kind.fix?.(fact, voice) ?? null,
    });
  }
  return findings.sort(
    (a, b) =>
      a.where.from - b.where.from || SEVERITY[a.severity] - SEVERITY[b.severity] || a.where.to - b.where.to,
  );
}
