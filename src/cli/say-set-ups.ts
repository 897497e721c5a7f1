/** Set-ups in words, for the person at the saw. */
import { MANUAL_CAUTION, standingCautions } from '../sheets/words/standing-cautions.ts';
import { factLabel, factName, type FactName } from '../sheets/words/set-up-facts.ts';
import type { Paragraph } from './report.ts';
import { drawTable } from './text-table.ts';
import type { SetUpAnswer } from './answer-set-up.ts';
import type { DecimalSign } from '../core/units/format-number.ts';
import { sayQuantity } from '../core/faults/quantity.ts';

/** Each column with its value. */
const FACTS: readonly (readonly [FactName, (one: SetUpAnswer, sign: DecimalSign) => string])[] = [
  ['approach', ({ approachDeg }, sign) => sayAngle(approachDeg, sign)],
  ['approachFromFront', ({ approachFromFrontDeg }, sign) => sayAngle(approachFromFrontDeg, sign)],
  ['tilt', ({ tiltDeg }, sign) => sayAngle(tiltDeg, sign)],
  ['deepestLine', ({ deepestLine }, sign) => sayInches(deepestLine, sign)],
  ['bladeMiddle', ({ bladeMiddle }, sign) => sayInches(bladeMiddle, sign)],
  [
    'height',
    ({ passHeights }, sign) => sayQuantity({ inches: passHeights.at(-1) ?? 0 }, 'in', sign),
  ],
  ['passes', ({ passCount }) => String(passCount)],
];
const COLUMNS = [
  { heading: 'Profile' },
  ...FACTS.map(([name]) => ({ heading: inTwoLines(factLabel(name)), align: 'right' as const })),
];

export function saySetUps(answers: readonly SetUpAnswer[], sign: DecimalSign): Paragraph[] {
  const made = answers.filter((one) => one.ok);
  const refused = answers.length - made.length;
  const everyTime = standingCautions().map((one) => `  ${one}`);
  return [
    MANUAL_CAUTION,
    drawTable(
      COLUMNS,
      answers.map((one) => cellsOf(one, sign)),
    ),
    ...(made.length === 0 ? [] : [sayHeights(made, sign)]),
    ...(refused === 0 ? [] : [`${refused} of ${answers.length} can't be made as asked.`]),
    ...(made.length === 0 ? [] : [['Every time:', ...everyTime]]),
  ];
}

function cellsOf(one: SetUpAnswer, sign: DecimalSign): string[] {
  const name = one.profile ?? '(no name)';
  if (!one.ok) return [name, "can't be made", ...FACTS.slice(1).map(() => '')];
  return [name, ...FACTS.map(([, say]) => say(one, sign))];
}

function sayHeights(made: readonly SetUpAnswer[], sign: DecimalSign): string[] {
  const lines = made.map(({ profile, passHeights }) => [
    profile ?? '',
    passHeights.map((height) => sayFixed(height, 3, sign)).join(' '),
  ]);
  const heading = `${factName('height')}, pass by pass, in inches`;
  return drawTable([{ heading: 'Profile' }, { heading }], lines);
}

function sayInches(inches: number | null, sign: DecimalSign): string {
  return inches === null ? '' : `${sayFixed(inches, 3, sign)} in`;
}

function sayAngle(angle: number | null, sign: DecimalSign): string {
  return angle === null ? '' : `${sayFixed(angle, 2, sign)}°`;
}

/** With zeros at its end, so that a column's points stand below each other. */
function sayFixed(value: number, decimals: number, sign: DecimalSign): string {
  return value.toFixed(decimals).replace('.', sign);
}

/** Broken at the space nearest its middle. */
function inTwoLines(text: string): string {
  const spaces = [...text.matchAll(/ /gu)].map(({ index }) => index);
  const fromMiddle = (at: number): number => Math.abs(at - text.length / 2);
  const [best] = spaces.sort((one, other) => fromMiddle(one) - fromMiddle(other));
  return best === undefined ? text : `${text.slice(0, best)}\n${text.slice(best + 1)}`;
}
