/** What the sheet of formulas says of the sizes typed into it, in words, before any number is shown. */
import type { Answer } from './newton-steps.ts';
import {
  absolute,
  chooseWords,
  degreesOf,
  less,
  minus,
  more,
  number,
  over,
  plus,
  type Condition,
  type Term,
  type Words,
} from './term.ts';

/** Cells and what follows from them; lengths in one unit. */
export interface SizeTerms {
  readonly width: Term;
  readonly depth: Term;
  readonly offCenter: Term;
  readonly diameter: Term;
  readonly kerf: Term;
  readonly blankWidth: Term;
  readonly blankThickness: Term;
  readonly nearFlat: Term;
  readonly farFlat: Term;
  readonly tiltStopDeg: Term;
  readonly leastWeb: Term;
  readonly leastFlat: Term;
  readonly firstPass: Term;
  readonly step: Term;
  readonly lastPass: Term;
}

const FIRM = 'There is a set-up.';
/** Of width and off-center together: what a setting may miss of them, in inches or millimetres. */
const MOST_MISSED = number(1e-9);
const SLACK = number(1e-9);
const ZERO = number(0);

/**
 * @param mostPass never more is taken in one pass, see core/cove/passes.ts; in the cells' unit
 * @returns the words, and which of them mean that the numbers hold
 */
export function sayOfSizes(
  terms: SizeTerms,
  answer: Answer,
  mostPass: number,
): { firm: string; saying: Words } {
  const { width, depth, offCenter, diameter, kerf, blankThickness } = terms;
  const numbers = [
    width,
    depth,
    offCenter,
    diameter,
    kerf,
    terms.blankWidth,
    blankThickness,
    terms.tiltStopDeg,
    terms.leastWeb,
    terms.leastFlat,
    terms.firstPass,
    terms.step,
    terms.lastPass,
  ];
  const missed = plus(absolute(answer.missWidth), absolute(answer.missCenter));
  const web = minus(blankThickness, depth);
  const saying = chooseWords(
    [
      [
        areNotAll(numbers),
        'Fill in every marked cell with a number (the near flat may stay blank).',
      ],
      [
        any(...[width, depth, diameter, terms.firstPass, terms.step].map((one) => notMore(one))),
        'Width, depth, blade, first pass and step must be more than 0.',
      ],
      [
        any(less(offCenter, ZERO), less(kerf, ZERO), less(terms.lastPass, ZERO)),
        'Off-center, kerf and last pass must be 0 or more.',
      ],
      [
        any(
          ...[terms.firstPass, terms.step, terms.lastPass].map((one) =>
            more(one, number(mostPass + 1e-9)),
          ),
        ),
        'A pass takes 1/8 in (3.175 mm) at most: lessen first pass, step or last pass.',
      ],
      [
        more(offCenter, plus(over(width, number(2)), SLACK)),
        'Off-center is more than half the width: there is no such cove.',
      ],
      [
        more(kerf, over(diameter, number(4))),
        'The kerf is more than a quarter of the blade: that is no saw blade.',
      ],
      [
        notMore(minus(over(diameter, number(2)), depth)),
        'No blade cuts deeper than its middle: take a larger blade or a lesser depth.',
      ],
      [notMore(minus(width, kerf)), 'The cove is no wider than the kerf: take a wider cove.'],
      [
        isNoNumber(missed),
        'This blade has no set-up for these sizes: lessen the width or the off-center, or take a larger blade.',
      ],
      [
        any(more(missed, MOST_MISSED), notMore(answer.widthByApproach)),
        'These formulas found no set-up: the cove may be near the widest or most off-center that this blade cuts. Plan it instead.',
      ],
      [
        more(degreesOf(answer.tilt), plus(terms.tiltStopDeg, SLACK)),
        'The tilt is beyond the stop of the saw: lessen the off-center.',
      ],
      [
        less(web, minus(terms.leastWeb, SLACK)),
        'Too little wood is left over the cove: take thicker stock.',
      ],
      [
        any(
          less(terms.nearFlat, minus(terms.leastFlat, SLACK)),
          less(terms.farFlat, minus(terms.leastFlat, SLACK)),
        ),
        'Too little flat is left beside the cove: take a wider blank.',
      ],
    ],
    FIRM,
  );
  return { firm: FIRM, saying };
}

function areNotAll(numbers: readonly Term[]): Condition {
  return {
    formula: `COUNT(${numbers.map(({ formula }) => formula).join(',')})<${numbers.length}`,
    value: numbers.some(({ value }) => !Number.isFinite(value)),
  };
}

/** Not more than 0. */
function notMore({ formula, value }: Term): Condition {
  return { formula: `NOT(${formula}>0)`, value: !(value > 0) };
}

function isNoNumber({ formula, value }: Term): Condition {
  return { formula: `NOT(ISNUMBER(${formula}))`, value: !Number.isFinite(value) };
}

function any(...conditions: readonly Condition[]): Condition {
  return {
    formula: `OR(${conditions.map(({ formula }) => formula).join(',')})`,
    value: conditions.some(({ value }) => value),
  };
}
