/** A formula names a line that is not there. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { formulaPlace, quoted, text } from './phrases.ts';

export const formulaUnknownName: FindingKind = {
  code: 'formula-unknown-name',
  severity: 'error',
  title: 'A formula names a line that is not there',
  reason: 'A value can come only from a line of the sizing sheet.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    const near = text(data, 'nearest');
    return `there is no line called ${quoted(data, 'name')}, which ${formulaPlace(data)} names${near === '' ? '; make one, or name another' : `; is "${near}" meant?`}`;
  },
  fix: (facts, voice) => {
    const { data } = facts[0]!.fact;
    const near = text(data, 'nearest');
    // A figure shows as one sign in its text, so there only the figure itself can be edited.
    return near === '' || voice.words !== text(data, 'name')
      ? null
      : { label: `Write "${near}"`, replacement: near };
  },
  example: null,
  sample: { line: 'finished bust', field: 'formula', name: 'bsut', nearest: 'bust' },
};
