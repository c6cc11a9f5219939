/**
 * One person's own sheet: the booklet of the column that is made to measure, with that person's numbers alone, said at
 * every foot to be made for that person and not for sale. The one part of printing that reads who a pattern is made
 * for; booklets for sale are made without it.
 */
import { studyFor } from '../study/measured-for.ts';
import type { Study } from '../study/study.ts';
import { calibrate, estimateYarn } from '../study/yarn.ts';
import type { Terms } from '../trade/stitches.ts';
import {
  bookletOf,
  type Drawing,
  type EditionChart,
  type EditionOfPattern,
  type GivenCaution,
} from './edition.ts';

/** The sheet of a person. For a person that the pattern does not know, its booklet with all sizes, and a fact. */
export function sheetOf(
  of: Study,
  personId: string,
  terms: Terms,
  cautionsOf: (own: Study) => readonly GivenCaution[],
  schematicsOf: (own: Study) => readonly Drawing[] = () => [],
  chartsOf: (own: Study) => readonly EditionChart[] = () => [],
): EditionOfPattern {
  const found = studyFor(of, personId);
  const person = of.pattern.workbook.people.find(({ id }) => id === personId);
  if (found === null || person === undefined) return bookletOf(of, { terms, sizes: personId });
  const { own } = found;
  return bookletOf(own, {
    terms,
    sizes: personId,
    cautions: cautionsOf(own),
    schematics: schematicsOf(own),
    charts: chartsOf(own),
    yarn: estimateYarn(own, calibrate(of)),
    madeFor: {
      name: person.name.trim() || 'one person',
      values: own.pattern.lines.flatMap(({ id, name }) =>
        Object.hasOwn(person.values, id) ? [{ line: id, name, value: person.values[id]! }] : [],
      ),
    },
  });
}
