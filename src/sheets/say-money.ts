/** Money in words: $1,234.50, 1.234,50 kr. */
import type { DecimalSign } from '../core/units/number.ts';

/** @param currency A sign stands before the amount, letters after it; empty for none. */
export function sayMoney(cents: number, currency = '', decimalSign: DecimalSign = '.'): string {
  const [units = '', hundredths = ''] = (Math.abs(cents) / 100).toFixed(2).split('.');
  const groupSign = decimalSign === '.' ? ',' : '.';
  const grouped = units.replace(/\B(?=(?:\d{3})+$)/gu, groupSign);
  const amount = `${cents < 0 ? '-' : ''}${grouped}${decimalSign}${hundredths}`;
  if (currency === '') return amount;
  return /\p{L}/u.test(currency) ? `${amount} ${currency}` : `${currency}${amount}`;
}

/** What a cost's bound tells the person who pays it. */
export function sayBound(
  costCents: number,
  boundCents: number,
  say: (cents: number) => string,
): string {
  if (costCents === boundCents) return 'proven: it cannot be done for less from this stock';
  const gap = costCents - boundCents;
  // Of the least possible, as the Cutting sheet has it; rounded up, so that it never says too little.
  const share = Math.ceil((gap / Math.max(1, boundCents)) * 1000 - 1e-9) / 10;
  return `it cannot be done for less than ${say(boundCents)}, so at most ${say(gap)} (${share} %) might still be saved`;
}
