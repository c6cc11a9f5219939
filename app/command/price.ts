/** `turnchain price`: what a piece made to order costs and what to ask for it, in every size. Reckons nothing itself. */
import { titleOf } from '../../core/document/title.ts';
import { basisWords, HOURS_CARE, missingWords } from '../../core/study/basis-words.ts';
import { hoursOf } from '../../core/study/hours.ts';
import { type Price, type PriceInSize, type PriceReport, priceOf } from '../../core/study/price.ts';
import type { Study } from '../../core/study/study.ts';
import { yarnOf } from '../../core/study/yarn.ts';
import { formatMoney } from '../../core/trade/money.ts';
import { type Rational, toNumber } from '../../core/trade/units.ts';
import { type TableLine, table } from './table.ts';
import { telling } from './told.ts';
import { harmless, type Paint, wrap } from './words.ts';
import { basisJson, whole, yarnName } from './yarn.ts';

const reported = (study: Study): PriceReport => priceOf(study, yarnOf(study), hoursOf(study));

function words(study: Study, width: number, paint: Paint): string {
  const { pattern } = study;
  const report = reported(study);
  const { pricing } = pattern.workbook;
  const heads = pattern.sizes.map(({ label }) => harmless(label));
  const out = [paint('strong', harmless(titleOf(pattern.about)))];
  const say = (text: string) => out.push(...wrap(harmless(text), width));
  const money = (amount: Rational | null) => (amount === null ? '–' : formatMoney(amount, report.currency));
  const line = (label: string, cell: (size: PriceInSize) => string): TableLine => ({
    label,
    cells: report.sizes.map(cell),
    remark: '',
    under: [],
  });
  if (pattern.sizes.length === 0) {
    say('No price: the pattern has no sizes. Add one in the studio, under Sizes.');
    return `${out.join('\n')}\n`;
  }
  const priced = (label: string, of: (size: PriceInSize) => Price | null) => {
    const part = (name: string, key: keyof Price) => line(name, (size) => money(of(size)?.[key] ?? null));
    out.push('', paint('strong', label));
    const lines = [
      part('yarn', 'yarn'),
      line('notions', ({ notions }) => money(notions)),
      line('other costs', ({ other }) => money(other)),
      line('hours', ({ hours }) => whole(hours)),
      line('work', ({ labour }) => money(labour)),
      part('costs in all', 'cost'),
      part(`profit, ${pricing.profit} %`, 'profit'),
      part(`fee, ${pricing.fee} %`, 'fee'),
      part('price', 'price'),
    ];
    out.push(...table(heads, lines, width, paint));
  };
  priced('With whole balls bought', ({ bought }) => bought);
  priced('With the yarn that is used', ({ used }) => used);
  out.push('');
  const missing = [...new Set(report.sizes.flatMap((size) => size.missing.map(missingWords)))];
  if (missing.length > 0)
    say(`A price still needs ${missing.join('; ')}. Enter it in the studio, under Workbook.`);
  if (report.unpriced.length > 0)
    say(
      `Notions without a price are taken for none: ${report.unpriced.map(({ name }) => name.trim()).join(', ')}.`,
    );
  for (const { yarn, basis } of yarnOf(study).yarns) {
    const rests = basisWords(basis, pattern);
    if (rests !== null) say(`Yarn, ${yarnName(yarn)}: ${rests}.`);
  }
  const rests = basisWords(hoursOf(study), pattern);
  if (rests !== null) say(`Hours: ${rests}. ${HOURS_CARE}`);
  return `${out.join('\n')}\n`;
}

function json(study: Study): unknown {
  const report = reported(study);
  const exact = (amount: Rational | null) => (amount === null ? null : toNumber(amount));
  const price = (of: Price | null) =>
    of === null ? null : Object.fromEntries(Object.entries(of).map(([key, value]) => [key, toNumber(value)]));
  return {
    currency: report.currency,
    sizes: report.sizes.map((size, i) => ({
      size: study.pattern.sizes[i]!.label,
      notions: exact(size.notions),
      other: exact(size.other),
      hours: size.hours,
      labour: exact(size.labour),
      bought: price(size.bought),
      used: price(size.used),
      missing: size.missing,
    })),
    unpriced: report.unpriced.map(({ name }) => name),
    hours: basisJson(hoursOf(study)),
  };
}

export const command = telling(words, json);
