/** Money in words: $1,234.50, 1.234,50 kr. */
import { groupThousands, type DecimalSign } from './format-number.ts';

/** @param currency A sign stands before the amount, letters after it; empty for none. */
export function sayMoney(cents: number, currency = '', decimalSign: DecimalSign = '.'): string {
  const [units = '', hundredths = ''] = (Math.abs(cents) / 100).toFixed(2).split('.');
  const grouped = groupThousands(units, decimalSign);
  const amount = `${cents < 0 ? '-' : ''}${grouped}${decimalSign}${hundredths}`;
  if (currency === '') return amount;
  return /\p{L}/u.test(currency) ? `${amount} ${currency}` : `${currency}${amount}`;
}
