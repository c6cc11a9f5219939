/**
 * What the page is told of materials: the abbreviations that will be printed, the cautions that the pattern calls
 * for, whole balls for each size. All of it is what the core makes of the study; no list is made up here.
 */
import type { Pattern } from '../../core/document/pattern.ts';
import { cautionsOf } from '../../core/review/cautions.ts';
import { usesOf } from '../../core/review/usage.ts';
import type { Study } from '../../core/study/study.ts';
import { abbreviationList, type Used } from '../../core/trade/abbreviations.ts';
import { ballsFor } from '../../core/trade/balls.ts';
import { cautionText } from '../../core/trade/cautions.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import { inTerms } from '../desk/terms.ts';
import type { MaterialsReport } from './report.ts';

/** The pattern's own abbreviations with what they mean, its special stitches among them. */
function ownMeanings(pattern: Pattern, terms: Terms): Readonly<Record<string, string>> {
  const own: Record<string, string> = {};
  for (const [short, meaning] of Object.entries(pattern.abbreviations))
    own[inTerms(short.trim(), pattern, terms, 'row')] = inTerms(meaning.trim(), pattern, terms, 'prose');
  for (const { nameUs, nameUk, abbrUs, abbrUk } of pattern.specials) {
    const pick = (us: string, uk: string) => (terms === 'us' ? us : uk).trim() || us.trim() || uk.trim();
    const [abbr, name] = [pick(abbrUs, abbrUk), pick(nameUs, nameUk)];
    if (abbr !== '' && abbr.toLowerCase() !== name.toLowerCase()) own[abbr] = name;
  }
  delete own[''];
  return own;
}

function listIn(pattern: Pattern, terms: Terms): MaterialsReport['abbreviations'][Terms] {
  const used = new Map<string, Used>();
  for (const use of usesOf(pattern))
    for (const item of use.used) used.set(typeof item === 'string' ? item : `${item.id} ${item.as}`, item);
  const shown = [...used.values()].map(
    (item): Used =>
      typeof item === 'string' ? item : { ...item, as: inTerms(item.as, pattern, terms, 'row') },
  );
  return abbreviationList(shown, terms, ownMeanings(pattern, terms));
}

/** The report, or the one before when it says the same. */
export function materialsOf(study: Study, before: MaterialsReport | null): MaterialsReport {
  const { pattern } = study;
  const report: MaterialsReport = {
    abbreviations: { us: listIn(pattern, 'us'), uk: listIn(pattern, 'uk') },
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
