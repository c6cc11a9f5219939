/**
 * What the page is told of materials: the abbreviations that will be printed, the cautions that the pattern calls
 * for, whole balls for each size. All of it is what the core makes of the study; no list is made up here.
 */
import { printedAbbreviations } from '../../core/print/edition.ts';
import { cautionsOf } from '../../core/review/cautions.ts';
import type { Study } from '../../core/study/study.ts';
import { ballsFor } from '../../core/trade/balls.ts';
import { cautionText } from '../../core/trade/cautions.ts';
import type { AbbreviationsReport, MaterialsReport } from './report.ts';

/** The lists of abbreviations as both editions print them. Made from all the printed words: only while looked at. */
export const abbreviationsOf = (study: Study): AbbreviationsReport => ({
  us: printedAbbreviations(study, 'us'),
  uk: printedAbbreviations(study, 'uk'),
});

/** The report, or the one before when it says the same. */
export function materialsOf(study: Study, before: MaterialsReport | null): MaterialsReport {
  const { pattern } = study;
  const report: MaterialsReport = {
    cautions: cautionsOf(study).map((caution) => ({ title: caution.title, text: cautionText(caution) })),
    balls: Object.fromEntries(
      pattern.yarns.map((yarn) => [
        yarn.id,
        pattern.sizes.map(({ id }) => {
          const metres = yarn.metres[id];
          return metres === undefined ? null : ballsFor(yarn, metres);
        }),
      ]),
    ),
  };
  return before !== null && JSON.stringify(before) === JSON.stringify(report) ? before : report;
}
