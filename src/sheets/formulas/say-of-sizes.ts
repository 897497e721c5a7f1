/** What the sheet of formulas says of the sizes typed into it, in words, before any number is shown. */
import { MOST_PASSES, MOST_PASS_INCHES } from '../../core/cove/passes.ts';
import { formatMillimetres } from '../../core/units/format-length.ts';
import { groupThousands } from '../../core/units/format-number.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { LIMIT_SLACK_OF_A_UNIT, MOST_MISSED_OF_A_UNIT, STOP_SLACK_DEGREES } from '../tolerance.ts';
import { numberIn } from '../words/print-length.ts';
import type { SizeTerms } from './block-sizes.ts';
import { widestUpright, type WoodLimits } from './limits-of-wood.ts';
import type { Answer } from './newton-steps.ts';
import {
  absolute,
  both,
  chooseWords,
  cosine,
  degreesOf,
  either,
  equals,
  isNoNumber,
  less,
  minus,
  more,
  not,
  notMore,
  number,
  over,
  plus,
  times,
  root,
  type Condition,
  type Term,
  type Words,
} from '../grammar/term.ts';

/** What is said where the numbers hold. */
export const FIRM = 'There is a set-up.';
const MOST_MISSED = number(MOST_MISSED_OF_A_UNIT);
const SLACK = number(LIMIT_SLACK_OF_A_UNIT);
const STOP_SLACK = number(STOP_SLACK_DEGREES);
const ZERO = number(0);
const TOO_WIDE =
  'No set-up: the cove is wider than this blade cuts at that depth by the steepest approach. Lessen the width, or take a larger blade.';
const NOT_FOUND =
  'No set-up found: this cove is wider or more off-center than this blade cuts at that depth, or within a hair of it. Lessen one of them, or take a larger blade.';
const BEYOND = 'No set-up: no saw has such sizes.';

/**
 * The words, the first that holds; all but FIRM mean that there is no number to cut by.
 *
 * @param reading the cells' unit, and the sign that numbers in the words are read with
 */
export function sayOfSizes(
  terms: SizeTerms,
  answer: Answer,
  wood: WoodLimits,
  passes: Term,
  { unit, decimalSign }: LengthReading,
): { readonly saying: Words; readonly texts: readonly string[] } {
  const { width, depth, offCenter, diameter, kerf, blankThickness, table } = terms;
  const { firstPass, step, lastPass } = terms;
  // Never more is taken in one pass.
  const mostPass = numberIn(MOST_PASS_INCHES, unit);
  const mostMetric = formatMillimetres(MOST_PASS_INCHES, 3, decimalSign);
  const missed = plus(absolute(answer.missWidth), absolute(answer.missCenter));
  const isUpright = equals(offCenter, ZERO);
  const corner = root(plus(times(diameter, diameter), times(kerf, kerf)));
  const positive = [width, depth, diameter, firstPass, step];
  const tableSizes = table === undefined ? [] : [table.front, table.back, table.halfWidth];
  const cases = [
    [
      terms.lackNumbers,
      'No set-up: fill in every marked cell with a number. The near flat alone may stay blank.',
    ],
    [
      either(...[...positive, ...tableSizes].map(notMore)),
      'No set-up: width, depth, blade, table, first pass and step must be more than 0.',
    ],
    [
      either(...[offCenter, kerf, lastPass].map((one) => less(one, ZERO))),
      'No set-up: off-center, kerf and last pass must be 0 or more.',
    ],
    [
      either(
        ...[firstPass, step, lastPass].map((one) =>
          more(one, number(mostPass + LIMIT_SLACK_OF_A_UNIT)),
        ),
      ),
      `No set-up: a pass takes 1/8 in (${mostMetric}) at most. Lessen first pass, step or last pass.`,
    ],
    [
      more(offCenter, plus(over(width, number(2)), SLACK)),
      'No set-up: off-center is more than half the width. There is no such cove.',
    ],
    [
      more(kerf, over(diameter, number(4))),
      'No set-up: the kerf is more than a quarter of the blade. That is no saw blade.',
    ],
    [
      notMore(minus(over(diameter, number(2)), depth)),
      'No set-up: no blade cuts deeper than its middle. Take a larger blade, or a lesser depth.',
    ],
    [
      notMore(minus(width, kerf)),
      'No set-up: the cove is no wider than the kerf. Take a wider cove.',
    ],
    [both(isUpright, more(width, plus(widestUpright(terms), SLACK))), TOO_WIDE],
    [more(width, corner), TOO_WIDE],
    // Apart from the next: a spreadsheet asks all that stands in one OR, errors too.
    [isNoNumber(missed), NOT_FOUND],
    [
      either(
        more(missed, MOST_MISSED),
        // On the far side of the widest cove the larger of two approaches was met.
        both(not(isUpright), notMore(answer.widthByApproach)),
      ),
      NOT_FOUND,
    ],
    [more(degreesOf(answer.approach), plus(terms.steepestDeg, STOP_SLACK)), TOO_WIDE],
    [
      more(degreesOf(answer.tilt), plus(terms.tiltStopDeg, STOP_SLACK)),
      'No set-up: the tilt is beyond the stop of the saw. Lessen the off-center.',
    ],
    [
      more(over(depth, cosine(answer.tilt)), plus(mostRise(terms, answer), SLACK)),
      'No set-up: the blade does not rise that high. Take a lesser depth or off-center, or a larger blade.',
    ],
    [
      less(minus(blankThickness, depth), minus(terms.leastWeb, SLACK)),
      'No set-up: too little wood is left over the cove. Take thicker stock.',
    ],
    [
      either(
        less(terms.nearFlat, minus(terms.leastFlat, SLACK)),
        less(terms.farFlat, minus(terms.leastFlat, SLACK)),
      ),
      'No set-up: too little flat is left beside the cove. Take a wider blank.',
    ],
    [
      less(minus(terms.farFlat, wood.undercut), minus(terms.leastFlat, SLACK)),
      'No set-up: the deep side leans over its flat and leaves too little wood there. Take a wider blank, or lessen the off-center.',
    ],
    ...railCases(terms, answer, wood),
    [
      more(passes, number(MOST_PASSES)),
      `No set-up: these steps take more than ${groupThousands(String(MOST_PASSES), decimalSign)} passes. Take a larger step.`,
    ],
  ] as const satisfies readonly (readonly [Condition, string])[];
  const saying = chooseWords(cases, FIRM);
  const { formula, value } = saying;
  return {
    // Sizes beyond all that a spreadsheet counts in come to an error even before they are judged.
    saying: { formula: `IFERROR(${formula},"${BEYOND}")`, value },
    texts: [FIRM, BEYOND, ...cases.map(([, words]) => words)],
  };
}

/** A rail that the table doesn't hold at both ends, where the shop gives a table. */
function railCases(
  terms: SizeTerms,
  answer: Answer,
  { reach }: WoodLimits,
): (readonly [Condition, string])[] {
  if (reach === undefined) return [];
  return [
    [
      either(
        more(terms.nearFlat, plus(plus(reach.near, answer.near), SLACK)),
        more(terms.farFlat, plus(minus(reach.far, answer.far), SLACK)),
      ),
      'No set-up: a rail would not lie on the table on both sides of the blade, where it is clamped. Take a narrower blank, or a larger table.',
    ],
  ];
}

/** Along the blade's own plane, between upright and 45° by the tilt. */
function mostRise({ rise: { upright, at45 } }: SizeTerms, { tilt }: Answer): Term {
  const share = over(degreesOf(tilt), number(45));
  return plus(upright, times(share, minus(at45, upright)));
}
