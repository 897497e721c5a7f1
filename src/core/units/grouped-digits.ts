/** Digits in groups of three, and which sign the decimals stand behind. */
import type { Argument } from '../faults/argument.ts';
import { failed, fault, ok, type Outcome } from '../faults/fault.ts';
import type { DecimalSign } from './format-number.ts';
import { UNBREAKING } from './plain-text.ts';

const WITH_SIGNS = /\d+(?:[.,]\d+)*[.,]?|(?<!\p{L})[.,]\d+/gu;
const GROUPS = /^\d{1,3}(?:[.,]\d{3})+$/u;
const APOSTROPHES = /(?<!\d)\d{1,3}(?:'\d{3})+(?!\d)/gu;
const METRIC_END = /\s*[mc]?m\.?$/u;

export interface Grouping {
  readonly decimalSign: DecimalSign;
  /** An ordinary blank parts thousands too, where no fraction is looked for after one. */
  readonly blanks: boolean;
  /** `1'234` may be a foot and inches. */
  readonly feet: boolean;
}

/**
 * The text with every number in it plain: 1,234.5 as 1234.5; a point for the decimals.
 *
 * @param text As `plainText` leaves it.
 * @returns Faults: `number.other-sign` for decimals behind the other sign than the shop's, and
 *   `number.two-readings` where groups and decimals can't be told apart, each by `argument`.
 */
export function withoutGroups(
  text: string,
  { decimalSign, blanks, feet }: Grouping,
  argument: Argument,
  given: string,
): Outcome<string> {
  const other = decimalSign === '.' ? ',' : '.';
  let wrong: Outcome<string> | undefined;
  const plain = text.replace(WITH_SIGNS, (number) => {
    const read = plainNumber(number, decimalSign, other);
    if (read === 'other sign') {
      wrong ??= failed(
        fault('number.other-sign', argument, given, { details: { sign: other, own: decimalSign } }),
      );
    } else if (read === 'two readings') {
      const [whole, decimal] = [number.replace(other, ''), number.replace(other, decimalSign)];
      wrong ??= twoReadings(argument, given, whole, decimal);
    }
    return read;
  });
  if (wrong !== undefined) return wrong;
  const joined = plain.replace(blanks ? ANY_BLANKS : SURE_BLANKS, (number) =>
    number.replace(/\s/gu, ''),
  );
  const spaced = joined.replace(UNBREAKING, ' ');
  const [grouped] = spaced.match(APOSTROPHES) ?? [];
  if (grouped === undefined) return ok(spaced);
  const isOnce = grouped.split("'").length === 2;
  if (feet && isOnce && !METRIC_END.test(spaced)) {
    const [ft = '', rest = ''] = grouped.split("'");
    return twoReadings(argument, given, ft + rest, `${ft} ft ${Number(rest)} in`);
  }
  return ok(spaced.replace(APOSTROPHES, (number) => number.replaceAll("'", '')));
}

/** Unbreaking blanks between groups are nothing else; an ordinary one only with decimals behind it. */
const SURE_BLANKS =
  /(?<![\d.,/])\d{1,3}(?:(?:[\u00a0\u2007\u2009\u202f]\d{3})+(?![\d/])|(?: \d{3})+(?=\.\d))/gu;
const ANY_BLANKS = /(?<![\d.,/])\d{1,3}(?:[ \u00a0\u2007\u2009\u202f]\d{3})+(?![\d/])/gu;

function twoReadings(
  argument: Argument,
  given: string,
  one: string,
  other: string,
): Outcome<string> {
  return failed(fault('number.two-readings', argument, given, { details: { one, other } }));
}

function plainNumber(number: string, own: DecimalSign, other: DecimalSign): string {
  const owns = number.split(own).length - 1;
  const others = number.split(other).length - 1;
  if (others === 0 && owns <= 1) return number.replace(own, '.');
  const [head = '', tail] = splitLast(number, own);
  if (others === 0) return GROUPS.test(number) ? 'other sign' : number;
  if (owns === 0) {
    if (others > 1) return GROUPS.test(number) ? number.replaceAll(other, '') : number;
    return GROUPS.test(number) && !number.startsWith('0') ? 'two readings' : 'other sign';
  }
  if (owns === 1 && !head.includes(own) && GROUPS.test(head)) {
    return `${head.replaceAll(other, '')}.${tail ?? ''}`;
  }
  return others === 1 && GROUPS.test(splitLast(number, other)[0] ?? '') ? 'other sign' : number;
}

function splitLast(text: string, sign: string): readonly string[] {
  const at = text.lastIndexOf(sign);
  return at < 0 ? [text] : [text.slice(0, at), text.slice(at + 1)];
}
