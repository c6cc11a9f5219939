/**
 * What a garment's fit is called, by its ease at the chest: finished measurement less the body's. The bands are the
 * Craft Yarn Council's names with the inches that are widely reprinted beside them. No text is read here, and no
 * pattern judged.
 */
import data from '../../resources/trade/ease.json' with { type: 'json' };
import { fromInches, type Length, rational } from './units.ts';

export interface Fit {
  /** "close": its names, which stand alone or before "fit". */
  readonly names: readonly string[];
  /** What a garment of this fit is said to be: "close-fitting". */
  readonly adjectives: readonly string[];
  /** Least and most ease of its band; null is an open end. */
  readonly least: Length | null;
  readonly most: Length | null;
}

const length = (inches: number | null): Length | null =>
  inches === null ? null : fromInches(rational(inches)!);

/** Every fit, the closest first. */
export const fits: readonly Fit[] = data.fits.map(({ names, adjectives, in: [least, most] }) => ({
  names,
  adjectives,
  least: length(least ?? null),
  most: length(most ?? null),
}));

/** The fit whose band has an ease; of two that meet there, the closer. */
export function fitOf(ease: Length): Fit {
  return fits.find(({ most }) => most === null || ease.compare(most) <= 0)!;
}
