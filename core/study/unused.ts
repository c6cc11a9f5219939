/**
 * Figures of samples, testers and swatches that no estimate rests on, and why: what would otherwise be passed over in
 * silence. It looks at what was entered and reckons nothing.
 */
import type { Making, Use } from '../document/workbook.ts';
import type { Study } from './study.ts';

/** Why a figure is of no use. */
export type WhyUnused =
  /** Its size is not among the sizes, or nobody has chosen one. */
  | 'size'
  /** Its yarn, or its piece, is not there any more. */
  | 'yarn'
  | 'piece'
  /** It is of all yarns together, whose balls differ. */
  | 'which'
  /** Its pieces took more than the whole. */
  | 'more-than-whole'
  /** It is zero. */
  | 'zero';

export interface Unused {
  readonly making: Making;
  readonly why: WhyUnused;
}

const hasFigure = ({ grams, metres }: Use): boolean => grams !== null || metres !== null;

/** What of a making's yarn cannot be reckoned with. */
function ofUses({ pattern }: Study, making: Making): readonly WhyUnused[] {
  const { yarns, pieces } = pattern;
  const told = making.used.filter(hasFigure);
  const rates = new Set(yarns.map(({ ballGrams, ballMetres }) => `${ballGrams} ${ballMetres}`));
  const own = told.flatMap((use): readonly WhyUnused[] => {
    if (use.yarn !== '' && yarns.every(({ id }) => id !== use.yarn)) return ['yarn'];
    if (use.piece !== '' && pieces.every(({ id }) => id !== use.piece)) return ['piece'];
    if ((use.grams ?? use.metres) === 0 && (use.metres ?? use.grams) === 0) return ['zero'];
    return use.yarn === '' && rates.size > 1 && use.metres === null ? ['which'] : [];
  });
  const more = told.some(({ yarn, piece, ...whole }) => {
    const parts = told.filter((use) => use.piece !== '' && use.yarn === yarn);
    return (
      piece === '' &&
      (['grams', 'metres'] as const).some(
        (unit) =>
          whole[unit] !== null && parts.reduce((sum, part) => sum + (part[unit] ?? 0), 0) > whole[unit]!,
      )
    );
  });
  return [...own, ...(more ? (['more-than-whole'] as const) : [])];
}

/** Every making with figures that are not reckoned with, each reason once. */
export function unusedFigures(study: Study): readonly Unused[] {
  const { sizes, workbook } = study.pattern;
  return workbook.makings.flatMap((making) => {
    const { kind, state, hours, size, used } = making;
    const hasAny = used.some(hasFigure) || hours !== null;
    if (!hasAny || (kind !== 'swatch' && state !== 'finished')) return [];
    if (kind !== 'swatch' && sizes.every(({ id }) => id !== size)) return [{ making, why: 'size' as const }];
    const reasons = [...ofUses(study, making), ...(hours === 0 ? (['zero'] as const) : [])];
    return [...new Set(reasons)].map((why) => ({ making, why }));
  });
}
