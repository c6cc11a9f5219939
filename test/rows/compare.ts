/**
 * Holds one case against the row report and keeps only the parts that the case states, so that a failure
 * shows nothing else. Must not know any expectation of its own.
 */
import { reportRows } from '../../core/study/rows.ts';
import type { Expected, ExpectedFinding, ReportedFinding, RowCase, RowReport } from './types.ts';

const perSize = (value: number | readonly (number | null)[]): readonly (number | null)[] =>
  typeof value === 'number' ? [value] : value;

/** The reported numbers with those blanked out which the case does not state. */
function shown(actual: readonly (number | null)[] | undefined, expected: Expected): unknown {
  if (expected === null) return null;
  if (actual === undefined) return 'no such entry';
  const wanted = perSize(expected);
  return actual.map((n, i) => (wanted.length === actual.length && wanted[i] === null ? null : n));
}

const stated = (expected: Expected): unknown => (expected === null ? null : perSize(expected));

const lowered = <T>(record: Readonly<Record<string, T>>): Map<string, T> =>
  new Map(Object.entries(record).map(([key, value]) => [key.toLowerCase(), value]));

/** Compares only the keys that the case names, without regard to capitals. */
function pick(
  actual: Readonly<Record<string, readonly (number | null)[]>> | undefined,
  expected: Readonly<Record<string, number | readonly number[]>>,
): Record<string, unknown> {
  const found = lowered(actual ?? {});
  return Object.fromEntries(Object.keys(expected).map((key) => [key, found.get(key.toLowerCase()) ?? null]));
}

const every = (report: RowReport): readonly ReportedFinding[] => {
  const seen = new Map<string, ReportedFinding>();
  for (const f of [...report.findings, ...report.rows.flatMap((row) => row.findings)])
    seen.set(`${f.code} ${f.from} ${f.to} ${f.message}`, f);
  return [...seen.values()];
};

const says = (message: string, words: string): boolean =>
  /^\d+$/.test(words)
    ? new RegExp(`(?<![\\d.])${words}(?![\\d]|\\.\\d)`).test(message)
    : message.toLowerCase().includes(words.toLowerCase());

function overlaps(
  text: string,
  words: string,
  within: { from: number; to: number },
  f: ReportedFinding,
): boolean {
  for (let at = text.indexOf(words, within.from); at >= 0 && at < within.to; at = text.indexOf(words, at + 1))
    if (f.from < at + words.length && Math.max(f.to, f.from + 1) > at) return true;
  return false;
}

/** What keeps `f` from being the expected finding; empty when it is the one. */
function misfit(
  f: ReportedFinding,
  wanted: ExpectedFinding,
  text: string,
  row: { from: number; to: number },
): string[] {
  const codes = typeof wanted.code === 'string' ? [wanted.code] : wanted.code;
  const wrong: string[] = [];
  if (!codes.includes(f.code)) wrong.push(`code ${f.code}`);
  if (f.from < row.from || f.from > row.to) wrong.push('in another entry');
  if (wanted.words !== undefined && !overlaps(text, wanted.words, row, f))
    wrong.push(`points at "${text.slice(f.from, f.to)}"`);
  if (wanted.severity !== undefined && f.severity !== wanted.severity) wrong.push(`severity ${f.severity}`);
  if (wanted.sizes !== undefined && wanted.sizes.join() !== f.sizes.join())
    wrong.push(`sizes ${f.sizes.join()}`);
  for (const words of wanted.saying ?? []) if (!says(f.message, words)) wrong.push(`does not say ${words}`);
  return wrong;
}

const shortly = (text: string, f: ReportedFinding): string =>
  `${f.severity} ${f.code} at "${text.slice(f.from, f.to)}": ${f.message}`;

/** What the case states and what the report holds of it, as two values that are equal where the report is right. */
export function compare(c: RowCase): { actual: Record<string, unknown>; expected: Record<string, unknown> } {
  const report: RowReport = reportRows(c.text, c.terms);
  const found = every(report);
  const actual: Record<string, unknown> = {};
  const expected: Record<string, unknown> = {};
  if (c.counts !== undefined) {
    actual.entries = report.rows.length;
    expected.entries = c.counts.length;
    actual.counts = c.counts.map((e, i) => shown(report.rows[i]?.counts, e));
    expected.counts = c.counts.map(stated);
  }
  if (c.final !== undefined) {
    actual.final = shown(report.rows.at(-1)?.counts, c.final);
    expected.final = stated(c.final);
  }
  if (c.spaces !== undefined) {
    actual.spaces = c.spaces.map((e, i) => shown(report.rows[i]?.spaces, e));
    expected.spaces = c.spaces.map(stated);
  }
  if (c.repeats !== undefined) {
    actual.repeats = c.repeats.map((e, i) => shown(report.rows[i]?.repeats, e));
    expected.repeats = c.repeats.map(stated);
  }
  for (const part of ['byKind', 'units'] as const) {
    const wanted = c[part];
    if (wanted === undefined) continue;
    actual[part] = wanted.map((e, i) => (e === null ? null : pick(report.rows[i]?.[part], e)));
    expected[part] = wanted.map((e) =>
      e === null ? null : Object.fromEntries(Object.entries(e).map(([key, n]) => [key, perSize(n)])),
    );
  }
  const clean = c.clean ?? (c.findings ?? []).every((f) => f.severity === 'note');
  if (c.read !== undefined || clean) {
    actual.read = report.rows.map((row) => row.read);
    expected.read = c.read ?? report.rows.map(() => true);
  }
  if (clean) {
    actual.problems = found.filter((f) => f.severity !== 'note').map((f) => shortly(c.text, f));
    expected.problems = [];
  }
  const missing: string[] = [];
  for (const wanted of c.findings ?? []) {
    const row = report.rows[wanted.row] ?? { from: 0, to: c.text.length };
    if (found.some((f) => misfit(f, wanted, c.text, row).length === 0)) continue;
    missing.push(`not found: ${JSON.stringify(wanted)}`);
    for (const f of found)
      missing.push(`  ${shortly(c.text, f)} — ${misfit(f, wanted, c.text, row).join('; ')}`);
  }
  actual.missing = missing;
  expected.missing = [];
  return { actual, expected };
}
