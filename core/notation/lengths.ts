/**
 * Reads lengths: "30 (32, 34) cm", "12½ in".
 */
import { type Cursor, OPENING } from './cursor.ts';
import type { Length } from './tree.ts';

const UNITS: Readonly<Record<string, Length['unit']>> = {
  cm: 'cm',
  cms: 'cm',
  centimetres: 'cm',
  centimeters: 'cm',
  mm: 'mm',
  in: 'in',
  ins: 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
};

/** Parts that an inch is divided into. */
const PARTS: readonly number[] = [2, 3, 4, 8, 16];

/** The numbers behind the first of "30/31/32" or "30, 31, 32", where there are as many as sizes; else null. */
function openLengths(c: Cursor, first: number, value: () => number | null): number[] | null {
  const mark = c.word();
  const found = [first];
  if (mark !== '/' && (mark !== ',' || c.sizes === null)) return null;
  while (c.word() === mark && found.length < 40) {
    c.at++;
    const next = value();
    if (next === null) return null;
    found.push(next);
  }
  const fits = c.sizes === null ? found.length > 2 : c.sizes > 1 && found.length === c.sizes;
  return fits ? found.slice(1) : null;
}

/** "30 (32, 34) cm", "12½ in", "30.5cm": a length, or null. */
export function readLength(c: Cursor, second = false): Length | null {
  return c.attempt(() => {
    const start = c.at;
    const values: number[] = [];
    const value = (): number | null => {
      const token = c.peek();
      if (token?.kind !== 'number') return null;
      c.at++;
      let sum = token.value;
      const fraction = c.peek();
      const below = c.word() === '/' ? (c.peek(1)?.value ?? 0) : 0;
      if (PARTS.includes(below) && sum > 0 && sum < below && c.word(2) !== '/') {
        // "1/2 in"; "6/8/16 in" are sizes.
        sum /= below;
        c.at += 2;
      } else if (fraction?.kind === 'number' && fraction.value < 1) {
        sum += fraction.value;
        c.at++;
      } else if (
        fraction?.kind === 'number' &&
        c.word(1) === '/' &&
        c.peek(2)?.kind === 'number' &&
        c.peek(2)!.value > 0
      ) {
        sum += fraction.value / c.peek(2)!.value;
        c.at += 3;
      }
      return Math.min(sum, 1e6);
    };
    const first = value();
    if (first === null) return null;
    values.push(first);
    while (c.word() in OPENING) {
      const close = c.partner[c.at]!;
      if (close < 0 || close >= c.end) break;
      const inside = c.attempt(() => {
        c.at++;
        const found: number[] = [];
        while (c.at < close) {
          const next = value();
          if (next === null) return null;
          found.push(next);
          c.eatAny([',', ':', ';', '-', '/']);
        }
        if (c.at !== close) return null;
        c.at++;
        return found;
      });
      if (!inside) break;
      values.push(...inside);
    }
    // "30/31/32 cm": one for each size without brackets; "12/13 cm" may be a range.
    const open = values.length > 1 ? null : c.attempt(() => openLengths(c, values[0]!, value));
    if (open !== null) values.push(...open);
    const unit = c.word();
    if (!Object.hasOwn(UNITS, unit)) return null;
    c.at++;
    if (c.word() === '.' && c.peek(1) && c.peek(1)!.word in OPENING) c.at++;
    else if (
      c.word() === '.' &&
      unit !== '"' &&
      !c.done &&
      c.peek(1) &&
      c.peek(1)!.kind === 'word' &&
      c.peek(1)!.text[0] === c.peek(1)!.word[0]
    )
      c.at++;
    const length: Length = { values, unit: UNITS[unit]!, ...c.span(start) };
    // "30 cm / 12 in", "30 cm (12 in)": the same once more in the other unit.
    c.attempt(() => {
      if (second) return null;
      const wrapped = c.word() in OPENING;
      if (!wrapped && !c.isAny(['/', 'or'])) return null;
      c.at++;
      return readLength(c, true) && (!wrapped || c.eatAny([')', ']'])) ? true : null;
    });
    return length;
  });
}
