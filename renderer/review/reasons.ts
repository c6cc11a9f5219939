/** Why a kind of finding matters, from the catalogue and the rules of the technical edit. */
import { CATALOGUE } from '../../core/findings/index.ts';
import { ACCEPTANCE_STALE } from '../../core/review/accepted.ts';
import { RULES } from '../../core/review/rules.ts';

const reasons: ReadonlyMap<string, string> = new Map(
  [...CATALOGUE, ...RULES, ACCEPTANCE_STALE].map(({ code, reason }) => [code, reason]),
);

export function reasonOf(code: string): string | null {
  return reasons.get(code) ?? null;
}
