/** Quantities that a fault carries: bare text and counts, or a number that names its unit. */
export type LengthUnit = 'in' | 'mm';

export type DecimalSign = '.' | ',';

export type Quantity =
  string | number | boolean | null | { readonly inches: number } | { readonly degrees: number };

/** How a blank is said. */
export const NOTHING = 'nothing';

const MM_PER_INCH = 25.4;
const FINEST_SAID = 64;
/** Of a plain number whose digits are parted in threes. */
const LEAST_PARTED = 10_000;

/** Says a quantity in words: inches as a decimal with the nearest fraction, or millimetres. */
export function sayQuantity(
  quantity: Quantity,
  unit: LengthUnit,
  decimalSign: DecimalSign = '.',
): string {
  const trim = (value: number, decimals: number): string =>
    writeDecimal(String(Number(value.toFixed(decimals))), decimalSign);
  if (quantity === null || quantity === '') return NOTHING;
  if (typeof quantity === 'string') return `“${clip(quantity)}”`;
  if (typeof quantity === 'number') return inThrees(quantity, decimalSign) ?? trim(quantity, 6);
  if (typeof quantity === 'boolean') return quantity ? 'yes' : 'no';
  if ('degrees' in quantity) return `${trim(quantity.degrees, 2)}°`;
  if (unit === 'mm') return `${trim(quantity.inches * MM_PER_INCH, 1)} mm`;
  return sayInches(quantity.inches, trim);
}

function sayInches(inches: number, trim: (value: number, decimals: number) => string): string {
  const sixtyFourths = inches * FINEST_SAID;
  if (!Number.isInteger(sixtyFourths)) return `${trim(inches, 4)} in`;
  const sign = sixtyFourths < 0 ? '-' : '';
  const whole = Math.floor(Math.abs(sixtyFourths) / FINEST_SAID);
  let over = Math.abs(sixtyFourths) % FINEST_SAID;
  let under = FINEST_SAID;
  if (over === 0) return `${sign}${whole} in`;
  while (over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  return `${sign}${whole === 0 ? '' : `${whole} `}${over}/${under} in`;
}

/** Whole numbers of five digits and more: `30,000`, `30.000`. */
function inThrees(value: number, decimalSign: DecimalSign): string | undefined {
  if (!Number.isSafeInteger(value) || Math.abs(value) < LEAST_PARTED) return undefined;
  return groupThousands(String(value), decimalSign);
}

/** Whole digits in threes, parted by the sign that is not the decimal one: `1,000`, `1.000`. */
export function groupThousands(digits: string, decimalSign: DecimalSign): string {
  return digits.replace(/\B(?=(?:\d{3})+$)/gu, decimalSign === '.' ? ',' : '.');
}

/** A number's own text, in the sign of who reads it. */
export function writeDecimal(digits: string, decimalSign: DecimalSign): string {
  return digits.replace('.', decimalSign);
}

const LONGEST_QUOTE = 60;
function clip(text: string): string {
  return text.length <= LONGEST_QUOTE ? text : `${text.slice(0, LONGEST_QUOTE - 1)}…`;
}

/** A length for a fault: inches where it is a number, its own text (NaN, Infinity) where it isn't. */
export function inchesGiven(inches: number): Quantity {
  return Number.isFinite(inches) ? { inches } : String(inches);
}
