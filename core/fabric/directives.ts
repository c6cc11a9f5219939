/**
 * Carries out what a row says of whole rows: "Rep Rows 2 and 3", "Work 10 rows even", shaping told in words, "Work as
 * for Back". Rows are worked by the course; nothing is kept here.
 */
import type { Fact } from '../finding.ts';
import type { AsPiece, Even, Item, RowsAgain, RowsRef, Shaping } from '../notation/tree.ts';
import { APART, type Course, MOST_ROWS, type Written } from './course.ts';
import { amountOf } from './env.ts';
import { plainFabric, tally } from './fabric.ts';
import { mainBase, plainRow } from './whole-rows.ts';
import type { Worked } from './worked.ts';

/**
 * Carries out one such instruction. `rest` = how many rows of the label's range are left for it, null where it has
 * none; `within` = the row has work of its own.
 */
export function directive(
  work: Course,
  item: Item,
  written: Written,
  only: readonly number[] | null,
  rest: number | null,
  facts: Fact[],
  within: boolean,
): Worked | null {
  switch (item.type) {
    case 'rows-again':
      return rowsAgain(work, item, written, only, rest, facts);
    case 'even':
      return even(work, item, written, only, rest, facts);
    case 'shaping':
      shape(work, item, written, only, rest, within);
      return null;
    case 'as-piece':
      return asPiece(work, item, written, only, facts);
    default:
      return null;
  }
}

function referred(
  work: Course,
  ref: RowsRef,
  written: Written,
  only: readonly number[] | null,
  facts: Fact[],
): readonly Written[] {
  const env = { ...work.env, only };
  const value = (amount: Parameters<typeof amountOf>[0]) => amountOf(amount, env, written.figures) ?? 0;
  if (ref.kind === 'pattern') return inPattern(work, ref, written);
  if (ref.kind === 'titled') {
    const called = work.history.findLast((done) => done.written.row.label?.title === ref.title);
    if (called !== undefined) return [called.written];
    facts.push({ code: 'word-not-read', from: ref.from, to: ref.to, data: { words: ref.words } });
    return [];
  }
  if (ref.kind === 'last') {
    const n = value(ref.amount);
    if (n > work.history.length) {
      facts.push({
        code: 'row-not-known',
        from: ref.from,
        to: ref.to,
        data: { number: n, rows: work.history.length, last: true },
      });
    }
    return n < 1 ? [] : work.history.slice(-n).map((done) => done.written);
  }
  const numbers: number[] = [];
  if (ref.kind === 'numbers') {
    const from = value(ref.first);
    const to = Math.min(value(ref.last), from + MOST_ROWS);
    for (let n = from; n <= to; n++) numbers.push(n);
  } else for (const amount of ref.numbers) numbers.push(value(amount));
  const found: Written[] = [];
  for (const n of numbers) {
    const known = work.byNumber.get(n) ?? work.ahead.get(n)?.written;
    if (known !== undefined) found.push(known);
    else if (facts.length < 20) {
      facts.push({
        code: 'row-not-known',
        from: ref.from,
        to: ref.to,
        data: { number: n, rows: work.number, last: false },
      });
    }
  }
  return found;
}

/** "Work in pattern": the last row again, or, where that is the one into the foundation, plain rows of its stitch. */
function inPattern(work: Course, ref: RowsRef, { row, figures }: Written): readonly Written[] {
  const last = work.history.at(-1)?.written;
  if (last === undefined || work.fabric === null) return [];
  const trial = work.worker(last.row, work.fabric, work.env, last.figures);
  const founds = trial.facts.some((fact) => fact.code === 'place-does-not-exist');
  return [founds ? { row: plainRow(ref, mainBase(work.fabric), row), figures } : last];
}

function rowsAgain(
  work: Course,
  item: RowsAgain,
  written: Written,
  only: readonly number[] | null,
  rest: number | null,
  facts: Fact[],
): Worked | null {
  const env = { ...work.env, only };
  const { rows } = item;
  if (rows.kind === 'numbers' && rows.through && item.times === null) {
    const upTo = amountOf(rows.last, env, written.figures) ?? 0;
    if (upTo > work.number && (rest === null || upTo === work.number + rest)) {
      const { through: _, ...first } = { ...rows, last: rows.first };
      return rowsAgain(work, { ...item, rows: first, inAll: rows.last }, written, only, rest, facts);
    }
  }
  const group = referred(work, item.rows, written, only, facts);
  if (group.length === 0) return null;
  const times = item.times === null ? null : amountOf(item.times, env, written.figures);
  if (item.times !== null && times === null) return null;
  if (item.every !== undefined) {
    const every = amountOf(item.every, env, written.figures) ?? 1;
    return spaced(work, group, every, times ?? Math.floor((rest ?? every) / every), item, facts);
  }
  const left = item.left === null ? null : amountOf(item.left, env, written.figures);
  if (left !== null && times === null) return againUntil(work, group, left, rest, item, facts);
  const inAll = item.inAll === undefined ? null : amountOf(item.inAll, env, written.figures);
  // "Until there are 12 rows" counts the rows already made; a row range of its own says the same.
  const open = rest ?? (inAll === null ? null : rowsLeft(work, inAll));
  if (open === 0) return null;
  if (times === null && open === null && (item.until !== null || item.asWished)) work.openEnded = true;
  const passes = times ?? (open === null ? 1 : Math.ceil(open / group.length));
  const rowsAtMost = times !== null || open === null ? passes * group.length : open;
  return work.again(group, passes, rowsAtMost, item, facts);
}

/** Rows from here on until the piece has `inAll`; where it has more already, they are all from here. */
const rowsLeft = (work: Course, inAll: number): number => (inAll < work.number ? inAll : inAll - work.number);

/** Works a group as the last of every so many rows, the others plain. */
function spaced(
  work: Course,
  group: readonly Written[],
  every: number,
  times: number,
  item: RowsAgain,
  facts: Fact[],
): Worked | null {
  let worked: Worked | null = null;
  for (let k = 0; k < times && work.rows < MOST_ROWS && work.fabric !== null; k++) {
    const plain = { row: plainRow(item, mainBase(work.fabric), group[0]!.row), figures: [] };
    work.again([plain], every - group.length, Math.max(0, every - group.length), item, facts);
    worked = work.again(group, 1, group.length, item, facts) ?? worked;
  }
  return worked;
}

/** Works a group again until so many stitches are there, or until it no longer comes nearer. */
function againUntil(
  work: Course,
  group: readonly Written[],
  left: number,
  rest: number | null,
  item: RowsAgain,
  facts: Fact[],
): Worked | null {
  let worked: Worked | null = null;
  const end = work.rows + (rest ?? MOST_ROWS);
  for (;;) {
    const before = work.fabric === null ? 0 : tally(work.fabric).stitches;
    if (before === left || work.rows >= end) return worked;
    worked = work.again(group, 1, Math.min(group.length, end - work.rows), item, facts);
    const after = work.fabric === null ? 0 : tally(work.fabric).stitches;
    const passed = before < left ? after > left : after < left;
    if (after === before || passed || Math.abs(after - left) > Math.abs(before - left)) return worked;
  }
}

function even(
  work: Course,
  item: Even,
  written: Written,
  only: readonly number[] | null,
  rest: number | null,
  facts: Fact[],
): Worked | null {
  const env = { ...work.env, only };
  const said = item.rows === null ? (rest ?? 1) : (amountOf(item.rows, env, written.figures) ?? 0);
  const n = item.inAll && rest === null ? rowsLeft(work, said) : said;
  if (item.rows === null && rest === null && item.until !== null) work.openEnded = true;
  const last = work.history[work.history.length - 1];
  if (last === undefined || work.fabric === null || n <= 0) return null;
  const before = tally(work.fabric);
  const trial = work.worker(last.written.row, work.fabric, work.env, last.written.figures);
  const steady =
    trial.facts.length === 0 &&
    trial.tally.stitches === before.stitches &&
    trial.tally.spaces === before.spaces;
  const named = item.stitch?.base ?? null;
  const row =
    steady && named === null
      ? last.written
      : { row: plainRow(item, named ?? mainBase(work.fabric), last.written.row), figures: [] };
  return work.again([row], n, n, item, facts);
}

/**
 * Shaping told in words: only the counts are followed, as the text gives no rows to work. `within`: the row has work
 * of its own, so that shaping without a schedule is part of it.
 */
function shape(
  work: Course,
  item: Shaping,
  written: Written,
  only: readonly number[] | null,
  rest: number | null,
  within: boolean,
): void {
  if (work.fabric === null) return;
  const env = { ...work.env, only };
  const value = (amount: Parameters<typeof amountOf>[0]) => amountOf(amount, env, written.figures) ?? 0;
  const per = value(item.amount) * (item.ends === 'each' ? 2 : 1);
  const sign = item.change === 'inc' ? 1 : -1;
  let stitches = tally(work.fabric).stitches;
  let rows = 0;
  if (item.now || item.schedule.length === 0) {
    const there = item.schedule.length === 0 && item.until !== null ? value(item.until) : null;
    stitches = there ?? stitches + sign * per;
    if (!within) rows += 1;
  }
  const until = item.until === null ? null : value(item.until);
  const often = (every: number): number => {
    if (until !== null && per > 0) return Math.max(0, Math.ceil((sign * (until - stitches)) / per));
    return rest === null ? 1 : Math.floor((rest - rows) / every);
  };
  for (const part of item.schedule) {
    const every = Math.max(1, value(part.every));
    const times = Math.min(part.times === null ? often(every) : value(part.times), MOST_ROWS);
    stitches += sign * per * times;
    rows += every * times;
  }
  const form = work.fabric.form === 'chain' ? 'flat' : work.fabric.form;
  const base = mainBase(work.fabric);
  const before = work.fabric;
  work.fabric = plainFabric(Math.max(0, Math.min(stitches, MOST_ROWS)), base, form);
  if (rest !== null && rows < rest) rows = rest;
  const even = { row: plainRow(item, base, written.row), figures: [] };
  work.jump([even], Math.min(rows, MOST_ROWS), true);
  work.watcher?.told(Math.min(rows, MOST_ROWS), before, work.fabric);
}

function asPiece(
  work: Course,
  item: AsPiece,
  written: Written,
  only: readonly number[] | null,
  facts: Fact[],
): Worked | null {
  const other = work.others.get(item.piece.toLowerCase());
  if (other === undefined) {
    facts.push({
      code: 'piece-not-known',
      from: item.from,
      to: item.to,
      data: { name: item.piece, apart: work.others === APART },
    });
    return null;
  }
  let rows = other.rows;
  if (item.upTo === 'mark') {
    const at = rows.findIndex((done) => done.written.row.items.some((inner) => inner.type === 'mark'));
    if (at >= 0) rows = rows.slice(0, at + 1);
  } else if (item.upTo !== null) {
    const env = { ...work.env, only };
    const upTo = item.upTo.kind === 'numbers' ? (amountOf(item.upTo.last, env, written.figures) ?? 0) : null;
    if (upTo !== null) {
      const at = rows.findIndex((done) => done.number === upTo);
      if (at >= 0) rows = rows.slice(0, at + 1);
      else
        facts.push({
          code: 'row-not-known',
          from: item.from,
          to: item.to,
          data: { number: upTo, rows: rows.length, last: false },
        });
    }
  }
  let worked: Worked | null = null;
  for (const done of rows) {
    if (work.rows >= MOST_ROWS) break;
    worked = work.once(work.repeated(done.written), null, done.number !== null, item);
    facts.push(...worked.facts);
  }
  return worked;
}
