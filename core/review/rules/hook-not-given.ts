/** No hook is given, or one without a size. */
import { quoted, text } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';

export const hookNotGiven: Rule = {
  code: 'hook-not-given',
  severity: 'warning',
  title: 'The hook is not given',
  reason: 'A maker begins with the hook of the pattern and changes it only to reach the gauge.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    if (data.some !== true) return 'the pattern names no hook; enter its size in mm under Materials';
    const purpose = text(data, 'purpose').trim();
    return `the hook${purpose === '' ? '' : ` ${quoted(data, 'purpose')}`} has no size; enter it in mm`;
  },
  example: null,
  sample: { some: false, purpose: '' },
  check: (study) => {
    const { hooks } = study.pattern;
    if (hooks.length === 0) return [found(hookNotGiven, study, { node: null }, { some: false, purpose: '' })];
    return hooks
      .filter((hook) => !(hook.mm > 0))
      .map((hook) =>
        found(
          hookNotGiven,
          study,
          { node: hook.id, text: hook.purpose },
          { some: true, purpose: hook.purpose },
        ),
      );
  },
};
