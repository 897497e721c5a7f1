/** A price's range, and rates learned from hours, in words: for the office alone. */
import type { LearnedRate } from '../../core/bid/learn-rates.ts';
import type { PriceRange } from '../../core/bid/price-range.ts';
import { formatNumber, type DecimalSign } from '../../core/units/format-number.ts';
import { sayMoney } from '../../core/units/say-money.ts';
import { roundRate } from '../../planning/work/home-of-rate.ts';
import type { Fact } from './set-up-facts.ts';

/** In what money is said, and with which decimal sign; a Shop is one. */
export interface MoneyReading {
  readonly currency: string;
  readonly decimalSign: DecimalSign;
}

const MINUTES_PER_HOUR = 60;
const MOST_DECIMALS = 6;
/** Less of all jobs come to no more than the likely figure: it is then no figure to sign. */
const SELDOM = 0.1;

/** @param range In money, of which cents are said. */
export function sayRange(range: PriceRange, reading: MoneyReading): string {
  const { low, high, middle, likely, holds } = range;
  const say = (money: number): string => sayAmount(money, reading);
  const band = `Eight jobs in ten come to between ${say(low)} and ${say(high)}, half of them to more than ${say(middle)}.`;
  const inHundred = Math.round(100 * holds);
  const likelyHolds =
    holds < SELDOM
      ? `Hardly any comes to no more than ${say(likely)}, with all as is likely: more can go wrong than right.`
      : `${inHundred} in 100 come to no more than ${say(likely)}, with all as is likely.`;
  return low === high ? `All is known: ${say(likely)}.` : `${band} ${likelyHolds}`;
}

/** What hours say of one work, beside the minutes that count until somebody takes the new ones over. */
export function sayLearned(name: string, learned: LearnedRate, decimalSign: DecimalSign): Fact {
  const minutes = (hours: number): string => sayMinutes(hours, decimalSign);
  const { old, rate, low, high } = learned;
  return {
    label: name,
    value: minutes(rate),
    note: `until now ${minutes(old)}; in eight cases of ten between ${minutes(low)} and ${minutes(high)}`,
  };
}

/** To three digits: what hours can tell of the minutes of one foot, too. */
export function sayMinutes(hours: number, decimalSign: DecimalSign): string {
  return `${formatNumber(roundRate(hours * MINUTES_PER_HOUR), MOST_DECIMALS, decimalSign)} min`;
}

/** Money that isn't in whole cents. */
export function sayAmount(money: number, { currency, decimalSign }: MoneyReading): string {
  return sayMoney(Math.round(100 * money), currency, decimalSign);
}
