/** Whole balls of a yarn for a length of it. What an item uses is not worked out here. */
import { rational } from './units.ts';

/** Whole balls for so many metres; null when a ball's length is not known. */
export function ballsFor(
  { ballMetres }: { readonly ballMetres: number | null },
  metres: number,
): number | null {
  const need = rational(metres);
  const ball = ballMetres === null ? null : rational(ballMetres);
  if (need === null || ball === null || ball.compare(0) <= 0 || need.compare(0) < 0) return null;
  return Number(need.div(ball).ceil().valueOf());
}
