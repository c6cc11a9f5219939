/**
 * Amounts as a maker types them into a cell and as a cell gives them back for typing. A number without a unit
 * takes the unit that its line is typed in. Nothing is worked out.
 */
import type { Line, Quantity } from '../../core/document/pattern.ts';
import { formatNumber, parseQuantity, rational, type Units } from '../../core/trade/units.ts';

/** "12 cm", "4¾ in", "−5 %", "3": what reads back as the same amount. */
export function quantityText({ value, unit }: Quantity): string {
  const number = formatNumber(rational(value) ?? rational(0)!, unit === 'in' ? 'glyph' : 'decimal', 6);
  return unit === 'none' ? number : `${number} ${unit}`;
}

/** What a line holds by itself in one size: typed, or typed over the chart; null for none. */
export function ownQuantity(line: Line, size: string): Quantity | null {
  switch (line.kind) {
    case 'typed':
    case 'ease':
      if ('all' in line.values) return line.values.all;
      return Object.hasOwn(line.values.each, size) ? (line.values.each[size] ?? null) : null;
    case 'body':
      return Object.hasOwn(line.overtyped, size) ? (line.overtyped[size] ?? null) : null;
    default:
      return null;
  }
}

/** Whether cells of the line are typed in. */
export function isTypedIn(line: Line): boolean {
  return line.kind === 'typed' || line.kind === 'ease' || line.kind === 'body';
}

function valuesOf(line: Line): readonly Quantity[] {
  if (line.kind === 'body') return Object.values(line.overtyped);
  if (line.kind !== 'typed' && line.kind !== 'ease') return [];
  return 'all' in line.values ? [line.values.all] : Object.values(line.values.each);
}

/**
 * Reads what was typed into a cell; null when it is no amount that the line can hold. A bare number is a length in
 * the units on screen where the line holds lengths, as the other cells show them; else it is what the cell, or the
 * line, holds already.
 */
export function readCell(text: string, line: Line, size: string, units: Units): Quantity | null {
  const quantity = parseQuantity(text);
  if (quantity === null) return null;
  if (quantity.unit === '%' && line.kind === 'body') return null;
  if (quantity.unit !== 'none' || quantity.value === 0) return quantity;
  const known = ownQuantity(line, size)?.unit ?? valuesOf(line)[0]?.unit;
  if (known === '%') return { ...quantity, unit: known };
  if (line.kind === 'typed' && (known === undefined || known === 'none')) return quantity;
  return { ...quantity, unit: units === 'metric' ? 'cm' : 'in' };
}
