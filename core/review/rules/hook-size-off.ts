/** A hook of a size that no hook has, or the same hook listed twice. */
import { number, text } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';

/** The thinnest steel hook and the thickest of all that are made, in mm. Common practice, no source. */
const THINNEST = 0.4;
const THICKEST = 40;

export const hookSizeOff: Rule = {
  code: 'hook-size-off',
  severity: 'warning',
  title: 'A hook is listed twice, or of a size that no hook has',
  reason: 'A maker buys what the list says: a wrong figure, or the same hook twice, sends them for nothing.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return text(data, 'how') === 'twice'
      ? `the ${number(data, 'mm')} mm hook is listed twice; keep one, and say there all that it is for`
      : `no hook has ${number(data, 'mm')} mm; look for the point, ${number(data, 'mm') > THICKEST ? `${number(data, 'mm') / 10} mm may be meant` : 'and enter its size in mm'}`;
  },
  example: null,
  sample: { mm: 45, how: 'size' },
  check: (study) => {
    const { hooks } = study.pattern;
    return hooks.flatMap(({ id, mm, purpose }, i) => {
      const isOff = mm > 0 && (mm < THINNEST || mm > THICKEST);
      const isTwice = mm > 0 && hooks.slice(0, i).some((other) => other.mm === mm);
      return isOff || isTwice
        ? [found(hookSizeOff, study, { node: id, text: purpose }, { mm, how: isOff ? 'size' : 'twice' })]
        : [];
    });
  },
};
