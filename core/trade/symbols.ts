/**
 * The international chart symbols as the trade describes them: which stitches have one, and how symbols are built up.
 * Words and numbers only; who draws them is the concern of `core/drawing`.
 */
import data from '../../resources/trade/symbols.json' with { type: 'json' };
import { baseOf } from './stitches.ts';

const SLASHES: Readonly<Record<string, number>> = data.slashes.map;

/**
 * Slashes on the stem of a stitch: its yarn overs before the hook goes in, but for the one with a single yarn over,
 * which has none (published). The tallest of the ladder follows from the rule.
 */
export function slashesOf(id: string): number {
  const base = baseOf(id);
  return base === 't7' ? 5 : (SLASHES[base ?? ''] ?? 0);
}

/** Kinds for which the table describes a symbol on a stitch of one height, and which are built alike on the others. */
const BUILT: ReadonlySet<string> = new Set(
  data.symbols.flatMap(({ id }) => {
    const at = id.indexOf('.');
    return at < 0 ? [] : [id.slice(0, at).replace(/\d+$/, '')];
  }),
);

/**
 * Has the trade a symbol for the stitch, or one that follows from how symbols are built? A foundation stitch is a
 * stitch on the chain that it makes.
 */
export function hasSymbol(id: string): boolean {
  if (baseOf(id) === null) return false;
  const prefixes = id.split('.').slice(0, -1);
  return prefixes.every((prefix) => prefix === 'fnd' || BUILT.has(prefix.replace(/\d+$/, '')));
}
