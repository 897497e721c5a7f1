/** The slope of a ceiling that a molding goes up: read as degrees from level, or as its rise in 12. */
import type { Argument } from '../faults/argument.ts';
import { failed, fault, ok, type Fault, type Outcome } from '../faults/fault.ts';
import { degrees, radians, toDegrees, type Degrees } from '../units/angle.ts';
import type { DecimalSign } from '../units/format-number.ts';
import { parseLength } from '../units/length.ts';
import { LONGEST_NUMBER_TEXT, plainText } from '../units/plain-text.ts';

/** Roofers' run: a slope is said as so many inches of rise in 12. */
const RUN = 12;
/** Less is no slope that anybody builds, but what 4/12 comes to as a number: 0.333 is read as degrees. */
const LEAST_DEGREES = 1;
/** Steeper than any room's ceiling. */
const STEEPEST_DEGREES = 60;

const IN_TWELVE = new RegExp(String.raw`^(.+?)\s*(?:/|:|in)\s*${RUN}"?$`, 'u');
/** What a text of two parts has between them: a rise and a run, or a fraction. */
const TWO_PARTS = /[/:]|in\s*\d|[\d½¼¾"]\s*in/u;

/**
 * The slope that a text gives as a rise in 12: `4/12`, `4 in 12`, `4 1/2 : 12`, `4,5/12` where the decimal
 * sign is a comma. Undefined where the text is of one part, which is a number of degrees.
 * @returns degrees from level, not yet judged; fault `crown.slope-unreadable`.
 */
export function parseRiseInTwelve(
  text: string,
  argument: Argument,
  decimalSign: DecimalSign,
): Outcome<Degrees> | undefined {
  const trimmed = text.trim();
  if (trimmed.length > LONGEST_NUMBER_TEXT) return undefined;
  const plain = plainText(trimmed);
  if (!TWO_PARTS.test(plain)) return undefined;
  const unreadable = failed(fault('crown.slope-unreadable', argument, trimmed));
  const said = IN_TWELVE.exec(plain)?.[1];
  if (said === undefined || /\p{L}/u.test(said)) return unreadable;
  const rise = parseLength(said, argument, { unit: 'in', decimalSign });
  if (!rise.ok) return unreadable;
  return ok(toDegrees(radians(Math.atan2(Number(rise.value), RUN))));
}

/** Why a molding can't go up so steep a slope, or why it isn't clear that it does; undefined where it can. 0 is level. */
export function checkSlope(slope: Degrees, argument: Argument): Fault | undefined {
  const given = { degrees: slope };
  if (slope > 0 && slope < LEAST_DEGREES) {
    return fault('crown.slope-nearly-level', argument, given);
  }
  if (slope >= 0 && slope < STEEPEST_DEGREES) return undefined;
  const limit = { degrees: degrees(STEEPEST_DEGREES) };
  return fault('crown.slope-too-steep', argument, given, { limit });
}
