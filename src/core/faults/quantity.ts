/** Quantities that a fault carries: bare text and counts, or a number that names its unit. */
import {
  formatNumber,
  groupThousands,
  writeMixed,
  type DecimalSign,
} from '../units/format-number.ts';
import { MM_PER_INCH, type LengthUnit } from '../units/length-unit.ts';

export type Quantity =
  string | number | boolean | null | { readonly inches: number } | { readonly degrees: number };

/** How a blank is said. */
export const NOTHING = 'nothing';

const FINEST_SAID = 64;
/** From this on the digits of a whole number are parted in threes. */
const LEAST_PARTED = 10_000;

/** Says a quantity in words: inches as a fraction or, off the 64ths, as a decimal; or millimetres. */
export function sayQuantity(
  quantity: Quantity,
  unit: LengthUnit,
  decimalSign: DecimalSign = '.',
): string {
  if (quantity === null || quantity === '') return NOTHING;
  if (typeof quantity === 'string') return `“${clip(quantity)}”`;
  if (typeof quantity === 'number') return sayNumber(quantity, decimalSign);
  if (typeof quantity === 'boolean') return quantity ? 'yes' : 'no';
  if ('degrees' in quantity) return `${formatNumber(quantity.degrees, 2, decimalSign)}°`;
  if (unit === 'mm') return `${sayPlain(quantity.inches * MM_PER_INCH, 1, decimalSign)} mm`;
  return `${sayInches(quantity.inches, decimalSign)} in`;
}

function sayInches(inches: number, decimalSign: DecimalSign): string {
  const sixtyFourths = Math.abs(inches) * FINEST_SAID;
  if (!Number.isInteger(sixtyFourths) || Math.abs(inches) >= FAR_BEYOND) {
    return sayPlain(inches, 4, decimalSign);
  }
  const whole = Math.floor(sixtyFourths / FINEST_SAID);
  const sign = inches < 0 ? '-' : '';
  return `${sign}${writeMixed(whole, sixtyFourths % FINEST_SAID, FINEST_SAID)}`;
}

/** Whole numbers of five digits and more in threes: `30,000`, `30.000`. */
function sayNumber(value: number, decimalSign: DecimalSign): string {
  return Number.isSafeInteger(value) && Math.abs(value) >= LEAST_PARTED
    ? groupThousands(String(value), decimalSign)
    : sayPlain(value, 6, decimalSign);
}

/** A number of so many digits before the point is no measure: its size says enough. */
const FAR_BEYOND = 1e15;

function sayPlain(value: number, decimals: number, decimalSign: DecimalSign): string {
  if (!(Math.abs(value) >= FAR_BEYOND)) return formatNumber(value, decimals, decimalSign);
  const bound = groupThousands(String(FAR_BEYOND), decimalSign);
  return value < 0 ? `below -${bound}` : `over ${bound}`;
}

const LONGEST_QUOTE = 60;
/** A text of which a message has room for so many characters. */
export function clip(text: string, most = LONGEST_QUOTE): string {
  return text.length <= most ? text : `${text.slice(0, most - 1)}…`;
}

/** A length for a fault: inches where it is a number, its own text (NaN, Infinity) where it isn't. */
export function inchesGiven(inches: number): Quantity {
  return Number.isFinite(inches) ? { inches } : String(inches);
}
