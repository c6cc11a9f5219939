/** A printed measurement that is put together from fitted lines is off by more than the tolerance. */
import { length, perSize, quoted } from '../../findings/phrases.ts';
import type { LineResult } from '../../grading/index.ts';
import type { Study } from '../../study/index.ts';
import { formatLength, type Length } from '../../trade/units.ts';
import { restsOnFitted, sheetWith, toleranceFor } from '../asked.ts';
import { foundIn, type Rule } from '../rule.ts';

/** A length under a key, as sentences read it. */
function shown(key: string, value: Length): Record<string, string> {
  return { [key]: formatLength(value, 'metric'), [`${key}In`]: formatLength(value, 'imperial') };
}

function lengthIn(result: LineResult | undefined, size: number): Length | null {
  const value = result?.sizes[size]?.value;
  return value?.dimension === 'length' ? value.value : null;
}

const off = (a: Length, b: Length): Length => a.sub(b).abs();

/** Lines printed as lengths that come from fitted lines, none of which is itself told to be off. */
function composed(study: Study): readonly LineResult[] {
  return study.sheet.lines.filter(
    ({ line }, i) =>
      line.kind === 'formula' &&
      line.printed !== null &&
      restsOnFitted(study.sheet, study.sheet.lines[i]!).length > 0,
  );
}

function toldAlready(study: Study, result: LineResult, size: number): boolean {
  return restsOnFitted(study.sheet, result).some(({ sizes }) =>
    sizes[size]?.facts.some(({ code }) => code === 'fit-off' || code === 'fit-below-smallest'),
  );
}

export const finishedMeasurementOff: Rule = {
  code: 'finished-measurement-off',
  severity: 'warning',
  title: 'A finished measurement is off by more than the tolerance',
  reason:
    'Two panels that are each a little too wide make one garment that is much too wide. The printed measurement is what the buyer chooses by.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const way = data.less === true ? 'less' : 'more';
      return `${quoted(data, 'line')} comes to ${length(data, 'got')}, but the lengths asked for make ${length(data, 'asked')}, ${length(data, 'off')} ${way} than is meant, where ${length(data, 'limit')} is allowed; round one of its lines the other way, or choose a finer multiple`;
    }),
  example: null,
  sample: {
    line: 'finished bust',
    got: '103 cm',
    gotIn: '40½ in',
    asked: '100 cm',
    askedIn: '39¼ in',
    off: '3 cm',
    offIn: '1¼ in',
    limit: '2 cm',
    limitIn: '¾ in',
    less: false,
  },
  check: (study) => {
    const results = composed(study);
    if (results.length === 0) return [];
    const asked = sheetWith(study.sheet, (fitted) => fitted.asked);
    // Where no nearer number is to be had, half a repeat is allowed at each line, as fitting itself allows it.
    const widest = sheetWith(study.sheet, (fitted) =>
      fitted.limit.compare(toleranceFor(study, fitted.asked)) > 0
        ? fitted.asked.add(fitted.limit)
        : fitted.asked,
    );
    return results.flatMap((result) => {
      const index = study.sheet.lines.indexOf(result);
      const sizes = study.pattern.sizes.map((_, size) => {
        const [got, wanted] = [lengthIn(result, size), lengthIn(asked.lines[index], size)];
        if (got === null || wanted === null || toldAlready(study, result, size)) return null;
        const unavoidable = off(lengthIn(widest.lines[index], size) ?? wanted, wanted);
        const usual = toleranceFor(study, wanted);
        const limit = unavoidable.compare(usual) > 0 ? unavoidable : usual;
        const difference = off(got, wanted);
        if (difference.compare(limit) <= 0) return null;
        return {
          line: result.line.name,
          ...shown('got', got),
          ...shown('asked', wanted),
          ...shown('off', difference),
          ...shown('limit', limit),
          less: got.compare(wanted) < 0,
        };
      });
      return foundIn(finishedMeasurementOff, study, { node: result.line.id, text: result.line.name }, sizes);
    });
  },
};
