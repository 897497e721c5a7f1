/**
 * What Excel makes of a text that could be a number, in American English (or with the day first): the
 * value that it stores, and the format that a General cell gets by it. From Microsoft's help on
 * "Automatic number formatting" and "Stop automatically changing numbers to dates"; details [M].
 */
interface Typed {
  readonly value: number;
  readonly format?: string;
}

const NUMBER = /^([-+]?)\s*(\$?)\s*([-+]?)(\d[\d,]*\.?\d*|\.\d+)(?:e([-+]?\d+))?\s*(%?)$/iu;
const MIXED = /^([-+]?\d+) (\d+)\/(\d+)$/u;
const MONTHS = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ');
const MONTH = `(${MONTHS.join('|')})[a-z]*`;
const DAY_MONTH = new RegExp(`^(\\d{1,2})[- /]${MONTH}(?:[- /,]+(\\d{2,4}))?$`, 'iu');
const MONTH_DAY = new RegExp(`^${MONTH}[- /](\\d{1,4})(?:,? +(\\d{4}))?$`, 'iu');
const PARTS = /^(\d{1,4})[-/](\d{1,4})(?:[-/](\d{1,4}))?(?:\s+\d{1,2}:\d\d)?$/u;
const TIME = /^(\d{1,2}):(\d\d)(?::(\d\d))?\s*([ap]m?)?$/iu;
/** The year of a date that says none. */
const THIS_YEAR = 2026;
const DAY_MILLISECONDS = 86_400_000;
/** Day 1 is the first of 1900, and there is a day 60 too many: right from March 1900 on. */
const DAY_ZERO = Date.UTC(1899, 11, 30);

export function typedNumber(text: string, dayFirst: boolean): Typed | null {
  const trimmed = text.trim();
  return (
    plainNumber(trimmed) ?? mixedNumber(trimmed) ?? dayOf(trimmed, dayFirst) ?? timeOf(trimmed)
  );
}

function plainNumber(text: string): Typed | null {
  const bracketed = /^\(([^()]*)\)$/u.exec(text)?.[1] ?? /^\$\(([^()]*)\)$/u.exec(text)?.[1];
  const read = NUMBER.exec((bracketed ?? text).trim());
  if (read === null) return null;
  const [, before, currency, after, digits = '', exponent, percent] = read;
  if (before !== '' && after !== '') return null;
  if (digits.includes(',') && !/^\d{1,3}(?:,\d{3})+(?:\.\d*)?$/u.test(digits)) return null;
  const size = Number(digits.replaceAll(',', '')) * 10 ** Number(exponent ?? 0);
  const isNegative = bracketed !== undefined || before === '-' || after === '-';
  const signed = isNegative ? -size : size;
  const isWhole = !digits.includes('.');
  if (percent === '%') return { value: signed / 100, format: isWhole ? '0%' : '0.00%' };
  if (currency === '$' || text.startsWith('$(')) {
    const one = isWhole ? '$#,##0' : '$#,##0.00';
    return { value: signed, format: `${one}_);[Red](${one})` };
  }
  if (exponent !== undefined) return { value: signed, format: '0.00E+00' };
  if (digits.includes(',')) return { value: signed, format: isWhole ? '#,##0' : '#,##0.00' };
  return { value: signed };
}

function mixedNumber(text: string): Typed | null {
  const [, whole = '', over = '', under = ''] = MIXED.exec(text) ?? [];
  if (whole === '' || Number(under) === 0) return null;
  const part = Number(over) / Number(under);
  const value = whole.startsWith('-') ? Number(whole) - part : Number(whole) + part;
  return { value, format: under.length > 1 ? '# ??/??' : '# ?/?' };
}

function dayOf(text: string, dayFirst: boolean): Typed | null {
  const named = DAY_MONTH.exec(text);
  if (named !== null) return dated(named[3], monthOf(named[2]), Number(named[1]));
  const [, month, number = '', year] = MONTH_DAY.exec(text) ?? [];
  if (month !== undefined) {
    const asDay = number.length <= 2 ? dated(year, monthOf(month), Number(number)) : null;
    return asDay ?? monthAlone(monthOf(month), number);
  }
  const [, first = '', second = '', third] = PARTS.exec(text) ?? [];
  if (first === '') return null;
  if (first.length === 4) {
    return third === undefined ? null : dated(first, Number(second), Number(third));
  }
  const [asMonth, asDay] = dayFirst ? [second, first] : [first, second];
  const usual = dated(third, Number(asMonth), Number(asDay));
  if (usual !== null || third !== undefined) return usual;
  return dated(third, Number(asDay), Number(asMonth)) ?? monthAlone(Number(first), second);
}

/** 5/32 is May 1932. */
function monthAlone(month: number, year: string): Typed | null {
  const made = dated(year, month, 1);
  return made === null || year.length === 3 ? null : { ...made, format: 'mmm-yy' };
}

function dated(yearText: string | undefined, month: number, day: number): Typed | null {
  const short = yearText === undefined ? THIS_YEAR : Number(yearText);
  const year = short >= 100 ? short : short + (short < 30 ? 2000 : 1900);
  const time = Date.UTC(year, month - 1, day);
  const made = new Date(time);
  if (made.getUTCMonth() !== month - 1 || made.getUTCDate() !== day) return null;
  const value = Math.round((time - DAY_ZERO) / DAY_MILLISECONDS);
  return { value, format: yearText === undefined ? 'd-mmm' : 'm/d/yyyy' };
}

function timeOf(text: string): Typed | null {
  const [, hours, minutes = '', seconds = '0', half = ''] = TIME.exec(text) ?? [];
  if (hours === undefined) return null;
  const late = /^p/iu.test(half) ? 12 : 0;
  const value = (Number(hours) + late) / 24 + Number(minutes) / 1440 + Number(seconds) / 86_400;
  return { value, format: 'h:mm' };
}

function monthOf(name: string | undefined): number {
  return MONTHS.indexOf((name ?? '').toLowerCase()) + 1;
}
