/** Set-ups in words, for the person at the saw. */
import { MANUAL_CAUTION, standingCautions } from '../sheets/words/standing-cautions.ts';
import { factLabel, factName, type FactName } from '../sheets/words/set-up-facts.ts';
import type { Paragraph } from './report.ts';
import { drawTable } from './text-table.ts';
import type { SetUpAnswer } from './answer-set-up.ts';
import { sayQuantity } from '../core/faults/quantity.ts';

/** Each column with its value. */
const FACTS: readonly (readonly [FactName, (one: SetUpAnswer) => string])[] = [
  ['approach', ({ approachDeg }) => sayAngle(approachDeg)],
  ['approachFromFront', ({ approachFromFrontDeg }) => sayAngle(approachFromFrontDeg)],
  ['tilt', ({ tiltDeg }) => sayAngle(tiltDeg)],
  ['deepestLine', ({ deepestLine }) => sayInches(deepestLine)],
  ['bladeMiddle', ({ bladeMiddle }) => sayInches(bladeMiddle)],
  ['height', ({ passHeights }) => sayQuantity({ inches: passHeights.at(-1) ?? 0 }, 'in')],
  ['passes', ({ passCount }) => String(passCount)],
];
const COLUMNS = [
  { heading: 'Profile' },
  ...FACTS.map(([name]) => ({ heading: inTwoLines(factLabel(name)), align: 'right' as const })),
];

export function saySetUps(answers: readonly SetUpAnswer[]): Paragraph[] {
  const made = answers.filter((one) => one.ok);
  const refused = answers.length - made.length;
  const everyTime = standingCautions().map((one) => `  ${one}`);
  return [
    MANUAL_CAUTION,
    drawTable(COLUMNS, answers.map(cellsOf)),
    ...(made.length === 0 ? [] : [sayHeights(made)]),
    ...(refused === 0 ? [] : [`${refused} of ${answers.length} can't be made as asked.`]),
    ...(made.length === 0 ? [] : [['Every time:', ...everyTime]]),
  ];
}

function cellsOf(one: SetUpAnswer): string[] {
  const name = one.profile ?? '(no name)';
  if (!one.ok) return [name, "can't be made", ...FACTS.slice(1).map(() => '')];
  return [name, ...FACTS.map(([, say]) => say(one))];
}

function sayHeights(made: readonly SetUpAnswer[]): string[] {
  const lines = made.map(({ profile, passHeights }) => [
    profile ?? '',
    passHeights.map((height) => height.toFixed(3)).join(' '),
  ]);
  const heading = `${factName('height')}, pass by pass, in inches`;
  return drawTable([{ heading: 'Profile' }, { heading }], lines);
}

function sayInches(inches: number | null): string {
  return inches === null ? '' : `${inches.toFixed(3)} in`;
}

function sayAngle(angle: number | null): string {
  return angle === null ? '' : `${angle.toFixed(2)}°`;
}

/** Broken at the space nearest its middle. */
function inTwoLines(text: string): string {
  const spaces = [...text.matchAll(/ /gu)].map(({ index }) => index);
  const fromMiddle = (at: number): number => Math.abs(at - text.length / 2);
  const [best] = spaces.sort((one, other) => fromMiddle(one) - fromMiddle(other));
  return best === undefined ? text : `${text.slice(0, best)}\n${text.slice(best + 1)}`;
}
