/**
 * From a study to what the page is told of its workbook: yarn, hours, price, what makings measured, one person's
 * column. It words what core reckons and reckons nothing.
 */
import { basisWords, doubtWords, missingWords, percentWords } from '../../core/study/basis-words.ts';
import { hoursOf } from '../../core/study/hours.ts';
import type { MeasuredPattern } from '../../core/study/measured-for.ts';
import { measuredPieces } from '../../core/study/measured-pieces.ts';
import { measurementsOf } from '../../core/study/measurements.ts';
import { type Price, priceOf } from '../../core/study/price.ts';
import type { Study } from '../../core/study/study.ts';
import { yarnOf } from '../../core/study/yarn.ts';
import { formatMoney } from '../../core/trade/money.ts';
import {
  formatLength,
  formatNumber,
  type Length,
  metresToYards,
  type Rational,
  rational,
  roundTo,
} from '../../core/trade/units.ts';
import type { BothUnits } from './report.ts';
import { cellOf } from './reporter.ts';
import type { PersonReport, PriceReportInSize, WorkbookReport } from './workbook-report.ts';

const ONE = rational(1)!;
const TENTH = rational(1, 10)!;
const both = (length: Length): BothUnits => ({
  metric: formatLength(length, 'metric'),
  imperial: formatLength(length, 'imperial'),
});

const whole = (value: Rational | null): string | null =>
  value === null ? null : formatNumber(roundTo(value, ONE));
const exact = (value: number | null): Rational | null => (value === null ? null : rational(value));

/** The workbook's numbers. */
export function workbookOf(study: Study): WorkbookReport {
  const { pattern, sheet } = study;
  const yarn = yarnOf(study);
  const hours = hoursOf(study);
  const price = priceOf(study, yarn, hours);
  const money = (amount: Rational) => formatMoney(amount, price.currency);
  const priced = (of: Price | null): PriceReportInSize | null =>
    of === null
      ? null
      : {
          yarn: money(of.yarn),
          cost: money(of.cost),
          profit: money(of.profit),
          fee: money(of.fee),
          price: money(of.price),
        };
  const named = new Map(pattern.pieces.map(({ id, name }) => [id, name]));
  const pieces = measuredPieces(study);
  return {
    yarns: yarn.yarns.map((estimate) => ({
      id: estimate.yarn.id,
      basis: basisWords(estimate.basis, pattern),
      worked: estimate.worked,
      sizes: estimate.sizes.map((size) => {
        if (size === null) return null;
        const metres = exact(size.withMargin.metres);
        const used = exact(size.metres);
        return {
          used: used === null ? `${whole(exact(size.grams))} g` : `${whole(used)} m`,
          metres: whole(metres),
          yards: metres === null ? null : whole(metresToYards(metres)),
          grams: whole(exact(size.withMargin.grams)),
          balls: size.balls === null ? null : String(size.balls),
        };
      }),
    })),
    hours: {
      basis: basisWords(hours, pattern),
      sizes: hours.sizes.map((size) => {
        const value = exact(size);
        return value === null ? null : formatNumber(roundTo(value, value.compare(10) < 0 ? TENTH : ONE));
      }),
    },
    price: {
      sizes: price.sizes.map((size) => ({
        notions: money(size.notions),
        other: money(size.other),
        labour: size.labour === null ? null : money(size.labour),
        bought: priced(size.bought),
        used: priced(size.used),
      })),
      missing: [...new Set(price.sizes.flatMap((size) => size.missing.map(missingWords)))],
      unpriced: price.unpriced.map(({ name }) => name),
    },
    makings: Object.fromEntries(
      pattern.workbook.makings.map(({ id }) => [
        id,
        {
          measured: pieces
            .filter((piece) => piece.making.id === id)
            .map(({ line, taken, said, allowed }) => ({
              line,
              said: both(said),
              difference: both(taken.sub(said)),
              isOff: taken.sub(said).abs().compare(allowed) > 0,
            })),
          yarn: yarn.compared
            .filter(({ making, off }) => making.id === id && off !== null)
            .map(({ yarn: index, off }) => ({
              yarn: index === null ? '' : (pattern.yarns[index]?.id ?? ''),
              off: percentWords(off!),
              isMore: off! > 0,
            })),
        },
      ]),
    ),
    said: Object.fromEntries(
      measurementsOf(sheet)
        .filter(({ of }) => of === 'piece')
        .map(({ line, values }) => [
          line,
          values.map((value) => (value !== null && 'length' in value ? both(value.length) : null)),
        ]),
    ),
    doubts: yarn.doubts.map((doubt) => doubtWords(doubt, named.get(doubt.piece) ?? '')),
  };
}

/** One person's column: every line as it comes to, beside the size that lends the rest. */
export function personOf(own: Study, of: Study, { size, base }: MeasuredPattern): PersonReport {
  const lines = own.sheet.lines.map((result, i) => {
    const before = of.sheet.lines[i]!;
    return [
      result.line.id,
      {
        own: cellOf(result.sizes[size]!, result, own.pattern),
        base: cellOf(before.sizes[size]!, before, of.pattern),
      },
    ] as const;
  });
  return { id: own.pattern.sizes[size]!.id, base: base.label, lines: Object.fromEntries(lines) };
}
