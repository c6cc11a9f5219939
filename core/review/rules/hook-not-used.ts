/** A hook is listed, and nothing says what it is for. */
import { number } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';
import { instructionsOf } from '../texts.ts';

export const hookNotUsed: Rule = {
  code: 'hook-not-used',
  severity: 'warning',
  title: 'Nothing says what a hook is for',
  reason: 'With two hooks on the list, a maker must know which of them to begin with and where to change.',
  message: (facts, voice) =>
    `nothing says what the ${number(facts[0]!.fact.data, 'mm')} mm hook is for: it belongs to no ${voice.gauge}, has no purpose, and no row names it; say it, or take it off the list`,
  example: null,
  sample: { mm: 4 },
  check: (study) => {
    const { hooks, gauges } = study.pattern;
    if (hooks.length < 2) return [];
    return hooks.flatMap(({ id, mm, purpose }) => {
      if (mm <= 0 || purpose.trim() !== '' || gauges.some(({ hook }) => hook === id)) return [];
      // "Cuff (3 mm hook)": the name of a piece says it as well.
      const texts = [
        ...instructionsOf(study.pattern).map(({ text }) => text),
        ...study.pattern.pieces.map(({ name }) => name),
      ];
      const isNamed = texts.some((text) =>
        new RegExp(String.raw`(?<![\d.])${String(mm).replace('.', '\\.')}[ \u00A0-]?mm`, 'u').test(text),
      );
      return isNamed ? [] : [found(hookNotUsed, study, { node: id, text: purpose }, { mm })];
    });
  },
};
