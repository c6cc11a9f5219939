/** No number of the multiple is even, or odd, as asked. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { number, quoted, text } from './phrases.ts';

export const fitParityImpossible: FindingKind = {
  code: 'fit-parity-impossible',
  severity: 'error',
  title: 'No number of the multiple is even, or odd, as asked',
  reason: 'A multiple of 2 plus 1 is never even.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    const [multiple, plus, parity] = [number(data, 'multiple'), number(data, 'plus'), text(data, 'parity')];
    return `${quoted(data, 'line')} is to be ${parity}, but a multiple of ${multiple}${plus === 0 ? '' : ` plus ${plus}`} never is, so it is fitted without that; ask for the other, or change the number after "plus"`;
  },
  example: null,
  sample: { line: 'brim stitches', field: 'length', multiple: 2, plus: 1, parity: 'even' },
};
