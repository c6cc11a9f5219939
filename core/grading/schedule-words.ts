/**
 * Says shaping schedules the way patterns do, one number for each size: "Dec 1 st at each end of next and every
 * 4th row 8 (8, 11) more times". It words what it is given and works nothing out.
 */
import type { Schedule, SchedulePart } from './shaping.ts';

/** A dash for "not in this size" (common practice). */
const NONE = '–';

/** "64 (70, 76)"; one alone when all are equal, a dash where there is none. */
export function sizeList(values: readonly (string | number | null)[]): string {
  const words = values.map((value) => (value === null ? NONE : String(value)));
  const [first = NONE, ...rest] = words;
  return rest.every((word) => word === first) ? first : `${first} (${rest.join(', ')})`;
}

/** "1st", "2nd", "11th". */
export function ordinal(n: number): string {
  const teen = n % 100 >= 11 && n % 100 <= 13;
  return `${n}${teen ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th')}`;
}

/**
 * The schedules of all sizes as one pattern sentence, without the rows worked even at its end: "Dec 1 st at
 * each end of next and every 4th row 8 (8, 11) more times, then every 2nd row 2 (3, –) times". The times come
 * after the next row's, as "more" says. A size without a schedule, or without shaping, has a dash everywhere.
 * When some sizes increase and others decrease there are two sentences. Empty when no size shapes. The words
 * are the same in US and UK terms.
 */
export function scheduleWords(
  schedules: readonly (Schedule | null)[],
  form: 'row' | 'round' = 'row',
): string {
  const row = form === 'row' ? 'row' : 'rnd';
  const of = (direction: 'inc' | 'dec') =>
    schedules.map((schedule) => (schedule?.direction === direction ? schedule : null));
  return [sentenceOf(of('dec'), 'Dec', row), sentenceOf(of('inc'), 'Inc', row)]
    .filter((words) => words !== '')
    .join('. ');
}

function sentenceOf(schedules: readonly (Schedule | null)[], word: 'Inc' | 'Dec', row: string): string {
  const one = schedules.find((schedule) => schedule !== null);
  if (!one) return '';
  const amount = sizeList(schedules.map((schedule) => schedule?.perEnd ?? null));
  const start = `${word} ${amount} ${one.perEnd === 1 ? 'st' : 'sts'} ${placeOf(one.ends)} next`;
  const first = schedules.map((schedule) => afterNext(schedule?.parts[0] ?? null));
  const second = schedules.map((schedule) => schedule?.parts[1] ?? null);
  if (first.every((part) => part === null)) return `${start} ${row}`;
  const head = `${start} and every ${everyList(first)} ${row} ${timesList(first, 'more ')}`;
  return second.some((part) => part !== null)
    ? `${head}, then every ${everyList(second)} ${row} ${timesList(second)}`
    : head;
}

/** The first part without the shaping on the next row; null when that is all there is. */
function afterNext(part: SchedulePart | null): SchedulePart | null {
  return part && part.every !== null ? { every: part.every, times: part.times - 1 } : null;
}

/** Where the shaping is: two ends of a flat piece, or so many marked places. */
function placeOf(ends: number): string {
  if (ends === 1) return 'at one end of';
  return ends === 2 ? 'at each end of' : `at each of ${ends} markers on`;
}

/** Which rows. A size without this part needs no dash here when the others agree: its times have one. */
function everyList(parts: readonly (SchedulePart | null)[]): string {
  const words = parts.map((part) => (part && part.every !== null ? ordinal(part.every) : null));
  const said = new Set(words.filter((word) => word !== null));
  return said.size === 1 ? [...said].join('') : sizeList(words);
}

function timesList(parts: readonly (SchedulePart | null)[], more: 'more ' | '' = ''): string {
  const times = parts.map((part) => part?.times ?? null);
  return `${sizeList(times)} ${more}${times.every((n) => n === 1 || n === null) ? 'time' : 'times'}`;
}

/** Rows worked even after the last shaping, for all sizes: "Work 3 (1, –) rows even"; empty when there are none. */
export function evenWords(schedules: readonly (Schedule | null)[], form: 'row' | 'round' = 'row'): string {
  const rows = schedules.map((schedule) => schedule?.evenAfter || null);
  if (rows.every((n) => n === null)) return '';
  const noun = form === 'row' ? 'row' : 'rnd';
  return `Work ${sizeList(rows)} ${rows.every((n) => n === 1 || n === null) ? noun : `${noun}s`} even`;
}
