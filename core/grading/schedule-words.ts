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
 * after the next row's, as "more" says; each interval is named once, the longest first, and a size that has
 * none of it has a dash. Where that is the first interval, the next row is told apart from it ("of next row,
 * then every 4th row – (8, 11) times"), or the dash would seem to take the next row with it. A size without a
 * schedule, or without shaping, has a dash everywhere. When some sizes increase and others decrease there are
 * two sentences. Empty when no size shapes. The words are the same in
 * US and UK terms.
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
  const start = `${word} ${amount} ${one.perEnd === 1 ? 'st' : 'sts'} ${placeOf(one.ends, row)} next`;
  const each = schedules.map((schedule) => timesAfterNext(schedule?.parts ?? []));
  const intervals = [...new Set(each.flatMap((times) => [...times.keys()]))].sort((a, b) => b - a);
  if (intervals.length === 0) return `${start} ${row}`;
  const [first] = intervals;
  const apart = schedules.some(
    (schedule, size) => (schedule?.shapings.length ?? 0) > 0 && !each[size]!.has(first!),
  );
  const parts = intervals.map((every, index) => {
    const times = each.map((known) => known.get(every) ?? null);
    const noun = times.every((n) => n === 1 || n === null) ? 'time' : 'times';
    const which = every === 1 ? `every ${row}` : `every ${ordinal(every)} ${row}`;
    return `${which} ${sizeList(times)} ${index === 0 && !apart ? 'more ' : ''}${noun}`;
  });
  return `${start} ${apart ? `${row}, then` : 'and'} ${parts.join(', then ')}`;
}

/** How often each interval is worked after the shaping on the next row. */
function timesAfterNext(parts: readonly SchedulePart[]): ReadonlyMap<number, number> {
  return new Map(
    parts.flatMap(({ every, times }, index) =>
      every === null ? [] : [[every, index === 0 ? times - 1 : times] as const],
    ),
  );
}

/** Where the shaping is: the ends of a flat piece, which a round has not, or so many marked places. */
function placeOf(ends: number, row: string): string {
  const round = row === 'rnd';
  if (ends === 1) return round ? 'on' : 'at one end of';
  if (ends === 2) return round ? 'at each side of' : 'at each end of';
  return `at each of ${ends} markers on`;
}

/** Rows worked even after the last shaping, for all sizes: "Work 3 (1, –) rows even"; empty when there are none. */
export function evenWords(schedules: readonly (Schedule | null)[], form: 'row' | 'round' = 'row'): string {
  const rows = schedules.map((schedule) => schedule?.evenAfter || null);
  if (rows.every((n) => n === null)) return '';
  const noun = form === 'row' ? 'row' : 'rnd';
  return `Work ${sizeList(rows)} ${rows.every((n) => n === 1 || n === null) ? noun : `${noun}s`} even`;
}
