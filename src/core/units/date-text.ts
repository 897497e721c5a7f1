/** Dates that were lengths: what a spreadsheet may have made of a fraction that was typed. */

export interface Day {
  readonly day: number;
  readonly month: number;
  /** Absent where it isn't said. */
  readonly year?: number;
}

const MONTHS = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ');
const MONTH = `(${MONTHS.join('|')})[a-z]{0,6}\\.?`;
const DAY_FIRST = new RegExp(
  `^(\\d{1,2})(?:st|nd|rd|th|\\.)?[- ./]+${MONTH}(?:,?[- ./]+(\\d{4}|\\d{2}))?$`,
  'iu',
);
const MONTH_FIRST = new RegExp(
  `^${MONTH}[- ./]+(\\d{1,2})(?:st|nd|rd|th)?(?:,?[- ./]+(\\d{4}|\\d{2}))?$`,
  'iu',
);
const MONTH_AND_YEAR = new RegExp(`^${MONTH}[- ./]+(\\d{4}|\\d{2})$`, 'iu');
const YEAR_FIRST = /^(\d{4})[-./](\d{1,2})[-./](\d{1,2})(?:[t ].{0,20})?$/iu;
const ALL_NUMBERS = /^(\d{1,2})([-./])(\d{1,2})\2(\d{4}|\d{2})(?: .{0,20})?$/u;

/** Fractions on a tape: what is divided into others was no length. */
const ON_A_TAPE = new Set([2, 4, 8, 16, 32, 64]);
const LAST_DAY = 31;
const LAST_MONTH = 12;

/**
 * The day that a text says; undefined for one that is no date. 3/4 and 3-4 are none, and of 03/04/2026
 * the first number is taken for the month.
 *
 * @param text At most 60 characters.
 */
export function dayInText(text: string): Day | undefined {
  const trimmed = text.trim();
  const [, year, month, day] = YEAR_FIRST.exec(trimmed) ?? [];
  if (year !== undefined) return sound(day, month, year);
  const [, first, , second, last] = ALL_NUMBERS.exec(trimmed) ?? [];
  if (first !== undefined) return sound(second, first, last) ?? sound(first, second, last);
  const named = DAY_FIRST.exec(trimmed);
  if (named !== null) return sound(named[1], monthOf(named[2]), named[3]);
  const before = MONTH_FIRST.exec(trimmed);
  const asDay = before === null ? undefined : sound(before[2], monthOf(before[1]), before[3]);
  if (asDay !== undefined) return asDay;
  const alone = MONTH_AND_YEAR.exec(trimmed);
  return alone === null ? undefined : sound('1', monthOf(alone[1]), alone[2]);
}

/** `2026-11-30` of a text that names its month and says its year, such as 30 Nov 2026; else undefined. */
export function isoOfNamedDay(text: string): string | undefined {
  const found = /[a-z]{3}/iu.test(text) ? dayInText(text) : undefined;
  const isWhole = /\d\D+\d/u.test(text);
  if (found?.year === undefined || found.year < 1000 || !isWhole) return undefined;
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${found.year}-${two(found.month)}-${two(found.day)}`;
}

/** A day as workbooks and this program write it, 2026-03-04. */
export function dayOfIso(iso: string): Day {
  const [year, month, day] = iso.split('-').map(Number);
  return { day: day ?? 1, month: month ?? 1, ...(year === undefined ? {} : { year }) };
}

/**
 * The fractions that may have become this day, the likeliest first: with the month first as in America,
 * with the day first as elsewhere, 5/32 as a month and a year, 3-1/2 as a whole date.
 */
export function fractionsBehind({ day, month, year }: Day): readonly string[] {
  const short = year === undefined ? 0 : year % 100;
  const asMonth =
    day === 1 && short > LAST_DAY && ON_A_TAPE.has(short) ? [`${month}/${short}`] : [];
  const whole =
    ON_A_TAPE.has(short) && short < LAST_DAY
      ? [
          ...(day < short ? [`${month}-${day}/${short}`] : []),
          ...(month < short && month !== day ? [`${day}-${month}/${short}`] : []),
        ]
      : [];
  const [less, more] = [Math.min(day, month), Math.max(day, month)];
  const plain = more > 1 && less < more ? [`${less}/${more}`] : [];
  const likely = ON_A_TAPE.has(more) ? [...plain, ...whole] : [...whole, ...plain];
  const found = [...asMonth, ...likely];
  return found.length === 0 ? [`${month}/${day}`] : found;
}

function monthOf(name: string | undefined): string {
  return String(MONTHS.indexOf((name ?? '').toLowerCase()) + 1);
}

function sound(
  dayText: string | undefined,
  monthText: string | undefined,
  yearText: string | undefined,
): Day | undefined {
  const [day, month] = [Number(dayText), Number(monthText)];
  if (!(day >= 1 && day <= LAST_DAY && month >= 1 && month <= LAST_MONTH)) return undefined;
  return { day, month, ...(yearText === undefined ? {} : { year: Number(yearText) }) };
}
