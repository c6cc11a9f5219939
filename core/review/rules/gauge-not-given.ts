/** No gauge is given, or one that lacks what a maker needs to match it. */
import { listed, quoted, text, words } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';

/** "Gauge is not important for a toy.": then a pattern without one is whole. */
const NOT_MATTERS =
  /\b(?:gauge|tension)\b[^.;]{0,40}?(?:\b(?:not|never)|n['’]t)\b[^.;]{0,24}\b(?:important|essential|critical|crucial|matter|necessary|needed)\b|\bno (?:gauge|tension)\b/iu;

const notMatters = looking((text) => {
  const match = NOT_MATTERS.exec(text);
  return match === null ? [] : [{ from: match.index, to: match.index + match[0].length }];
});

export const gaugeNotGiven: Rule = {
  code: 'gauge-not-given',
  severity: 'warning',
  title: 'The gauge is not given',
  reason:
    'Sizes come out only at the gauge they were reckoned for. A maker needs the stitch pattern, its stitches and rows, and the hook to check it with.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    const missing = words(data, 'missing');
    if (missing.length === 0)
      return `the pattern gives no ${voice.gauge}, so nobody can check that it will fit; measure a swatch and enter its stitches and rows over 10 cm or 4 in, or say in the notes that the ${voice.gauge} does not matter here`;
    return `the ${voice.gauge}${text(data, 'gauge').trim() === '' ? '' : ` in ${quoted(data, 'gauge')}`} does not say ${listed(missing, 'and')}; enter ${missing.length === 1 ? 'it' : 'them'} under Materials`;
  },
  example: null,
  sample: { gauge: 'half double crochet', missing: ['how many rows'] },
  check: (study) => {
    const { gauges, hooks } = study.pattern;
    const isOpen = notMatters(study.pattern).some(({ text }) => text.kind === 'prose');
    if (gauges.length === 0 && isOpen) return [];
    if (gauges.length === 0) return [found(gaugeNotGiven, study, { node: null }, { gauge: '', missing: [] })];
    return gauges.flatMap((gauge) => {
      const missing = [
        ...(gauge.pattern.trim() === '' ? ['in which stitch pattern'] : []),
        ...(gauge.stitches > 0 ? [] : ['how many stitches']),
        ...(gauge.rows > 0 ? [] : [gauge.rounds ? 'how many rounds' : 'how many rows']),
        ...(gauge.width.value > 0 && gauge.height.value > 0 ? [] : ['over what width and height']),
        ...(hooks.length > 1 && !hooks.some((hook) => hook.id === gauge.hook) ? ['with which hook'] : []),
      ];
      return missing.length === 0
        ? []
        : [
            found(
              gaugeNotGiven,
              study,
              { node: gauge.id, text: gauge.pattern },
              { gauge: gauge.pattern, missing },
            ),
          ];
    });
  },
};
