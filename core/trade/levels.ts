/** The Craft Yarn Council's project levels: they describe a project, not a person. Names and meaning only. */
import data from '../../resources/trade/terms.json' with { type: 'json' };

export interface Level {
  readonly level: 1 | 2 | 3 | 4;
  readonly name: string;
  /** What a project of this level asks of the maker, in our words. */
  readonly meaning: string;
}

/** The four levels, the plainest first. */
export const levels: readonly Level[] = data.levels.items as readonly Level[];

/** The level of a number from 1 to 4; null for any other number. */
export function level(number: number): Level | null {
  return levels.find((item) => item.level === number) ?? null;
}
