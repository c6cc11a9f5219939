/**
 * Hook sizes, keyed by the shaft's diameter in millimetres, the only mark that means one size everywhere.
 * Letters and numbers are printed beside it, never instead of it.
 */
import data from '../../resources/trade/hooks.json' with { type: 'json' };
import type { Terms } from './stitches.ts';
import type { Certainty } from './terms.ts';

export interface HookSize {
  readonly mm: number;
  readonly usLetter: string | null;
  readonly usNumber: string | null;
  /** As stamped: "H-8", "7", "K-10½"; null when the US has no mark for it. */
  readonly usLabel: string | null;
  /** Obsolete UK and Canadian number: a larger one is thinner. */
  readonly ukOld: string | null;
  readonly certainty: { readonly us: Certainty; readonly ukOld: Certainty };
  readonly note?: string;
  readonly source: readonly string[];
}

/** A US steel hook for thread. Two conventions circulate; `otherMm` is the second one's diameter. */
export interface SteelHook {
  readonly usSteel: string;
  readonly mm: number;
  readonly otherMm: number | null;
  readonly certainty: { readonly mm: Certainty; readonly otherMm: Certainty };
  readonly source: readonly string[];
}

/** Regular hooks, thinnest first. */
export const hooks: readonly HookSize[] = data.hooks as unknown as readonly HookSize[];

/** Steel hooks, thickest first. */
export const steelHooks: readonly SteelHook[] = data.steel.hooks as unknown as readonly SteelHook[];

const published = (certainty: Certainty) => certainty === 'published' || certainty === 'published-secondary';

/** The regular hook of a diameter in mm; null when no chart lists one. */
export function hookByMm(mm: number): HookSize | null {
  return hooks.find((hook) => Math.abs(hook.mm - mm) < 1e-9) ?? null;
}

/** The regular hook whose diameter is nearest; of two equally near the thicker one. Null for no number. */
export function nearestHook(mm: number): HookSize | null {
  if (!Number.isFinite(mm)) return null;
  return hooks.reduce((best, hook) => (Math.abs(hook.mm - mm) <= Math.abs(best.mm - mm) ? hook : best));
}

/**
 * A hook as an edition prints it, millimetres first: "5 mm (US H-8)" in a US edition, "5 mm" in a UK one,
 * or "5 mm (old UK 6)" when the old number is asked for. Marks that no published chart confirms are left out.
 */
export function hookLabel(mm: number, terms: Terms, options: { readonly oldUk?: boolean } = {}): string {
  const size = `${String(mm)} mm`;
  const hook = hookByMm(mm);
  if (terms === 'us') {
    if (hook?.usLabel && published(hook.certainty.us)) return `${size} (US ${hook.usLabel})`;
    const steel = hook
      ? undefined
      : steelHooks.find((row) => Math.abs(row.mm - mm) < 1e-9 && published(row.certainty.mm));
    return steel ? `${size} (US steel ${steel.usSteel})` : size;
  }
  return options.oldUk && hook?.ukOld && published(hook.certainty.ukOld)
    ? `${size} (old UK ${hook.ukOld})`
    : size;
}
