/**
 * What a piece made to order costs and what to ask for it, in each size: yarn, notions, other costs, hours, the
 * maker's profit, and the share that whoever sells it keeps. Exact; nothing is rounded here. A price is told only
 * where everything it is made of is known, and what is missing is named.
 */
import type { Notion } from '../document/pattern.ts';
import { type Rational, rational, ZERO } from '../trade/units.ts';
import type { HoursReport } from './hours.ts';
import type { Study } from './study.ts';
import type { YarnReport } from './yarn.ts';

/** Why a price cannot be told. */
export type Missing =
  | { readonly what: 'yarn-amount' | 'ball-price' | 'ball-figures'; readonly yarn: string }
  | { readonly what: 'hours' | 'hourly' | 'currency' };

/** A price and what it is made of. */
export interface Price {
  readonly yarn: Rational;
  readonly cost: Rational;
  readonly profit: Rational;
  /** What whoever sells it keeps: a share of the price itself. */
  readonly fee: Rational;
  readonly price: Rational;
}

export interface PriceInSize {
  readonly notions: Rational;
  readonly other: Rational;
  readonly hours: number | null;
  readonly labour: Rational | null;
  /** Yarn as it is bought, in whole balls. */
  readonly bought: Price | null;
  /** Yarn as it is used up, margin and all: by the metre or the gram of a ball. */
  readonly used: Price | null;
  readonly missing: readonly Missing[];
}

export interface PriceReport {
  readonly currency: string;
  readonly sizes: readonly PriceInSize[];
  /** Notions without a price: they are taken for no cost. */
  readonly unpriced: readonly Notion[];
}

const ONE = rational(1)!;
const HUNDRED = rational(100)!;
const exact = (value: number): Rational => rational(value) ?? ZERO;

interface YarnCost {
  readonly bought: Rational | null;
  readonly used: Rational | null;
  readonly missing: readonly Missing[];
}

function yarnCost({ yarns }: YarnReport, size: number): YarnCost {
  let bought: Rational | null = ZERO;
  let used: Rational | null = ZERO;
  const missing: Missing[] = [];
  for (const { yarn, sizes, worked } of yarns) {
    if (!worked) continue;
    const own = sizes[size] ?? null;
    const name = yarn.name.trim() || (yarn.key ?? '');
    if (own === null) missing.push({ what: 'yarn-amount', yarn: name });
    else if (yarn.ballPrice === null) missing.push({ what: 'ball-price', yarn: name });
    else if (own.balls === null) missing.push({ what: 'ball-figures', yarn: name });
    if (own === null || own.balls === null || yarn.ballPrice === null) {
      bought = used = null;
      continue;
    }
    const ball = exact(yarn.ballPrice);
    const { metres, grams } = own.withMargin;
    const share =
      metres !== null && yarn.ballMetres !== null
        ? rational(metres, yarn.ballMetres)
        : grams !== null && yarn.ballGrams !== null
          ? rational(grams, yarn.ballGrams)
          : null;
    bought = bought?.add(ball.mul(exact(own.balls))) ?? null;
    used = share === null ? null : (used?.add(ball.mul(share)) ?? null);
  }
  return { bought, used, missing };
}

function notionCost(notions: readonly Notion[], sizeId: string): Rational {
  return notions.reduce((sum, { amount, price }) => {
    if (price === null) return sum;
    const n = amount === null ? 1 : 'all' in amount ? amount.all : (amount.each[sizeId] ?? 0);
    return sum.add(exact(n).mul(exact(price)));
  }, ZERO);
}

/** The price of every size of a pattern. */
export function priceOf(study: Study, yarn: YarnReport, hours: HoursReport): PriceReport {
  const { sizes, notions, workbook } = study.pattern;
  const { currency, hourly, other, profit, fee } = workbook.pricing;
  const others = other.reduce((sum, { amount }) => sum.add(exact(amount)), ZERO);
  return {
    currency,
    unpriced: notions.filter(({ price }) => price === null),
    sizes: sizes.map(({ id }, size): PriceInSize => {
      const own = yarnCost(yarn, size);
      const taken = hours.sizes[size] ?? null;
      // Work that the maker asks nothing for needs no hours.
      const labour =
        hourly === 0 ? ZERO : hourly === null || taken === null ? null : exact(taken).mul(exact(hourly));
      const missing: Missing[] = [...own.missing];
      if (hourly === null) missing.push({ what: 'hourly' });
      else if (labour === null) missing.push({ what: 'hours' });
      if (currency === '') missing.push({ what: 'currency' });
      const things = notionCost(notions, id);
      const priced = (cost: Rational | null): Price | null => {
        if (cost === null || labour === null) return null;
        const all = cost.add(things).add(others).add(labour);
        const gain = all.mul(exact(profit)).div(HUNDRED);
        const net = all.add(gain);
        // The fee is a share of the price: price − price × fee = net.
        const price = net.div(ONE.sub(exact(Math.min(99, fee)).div(HUNDRED)));
        return { yarn: cost, cost: all, profit: gain, fee: price.sub(net), price };
      };
      return {
        notions: things,
        other: others,
        hours: taken,
        labour,
        bought: priced(own.bought),
        used: priced(own.used),
        missing,
      };
    }),
  };
}
