/** Amounts of money as they are shown: in a currency of ISO 4217, rounded to its smallest coin as the last step. */
import { type Rational, rational, roundTo, toNumber } from './units.ts';

/** Decimal places of a currency's smallest coin, by the runtime's own ISO 4217 table; 2 for a code that it lacks. */
function placesOf(currency: string): number {
  return new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions()
    .maximumFractionDigits!;
}

/** "€52.50", "CHF 12.00", "¥1,250"; a plain number with two decimals while no currency is chosen. */
export function formatMoney(amount: Rational, currency: string): string {
  const known = /^[A-Z]{3}$/.test(currency);
  const places = known ? placesOf(currency) : 2;
  const coin = rational(1, 10 ** places)!;
  const value = toNumber(roundTo(amount, coin));
  const format = known
    ? new Intl.NumberFormat('en', { style: 'currency', currency })
    : new Intl.NumberFormat('en', { minimumFractionDigits: places, maximumFractionDigits: places });
  return format.format(value);
}
