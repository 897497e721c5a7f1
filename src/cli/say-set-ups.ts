/** Set-ups in words, for the person at the saw. */
import { MANUAL_CAUTION, standingCautions } from '../sheets/words/standing-cautions.ts';
import { drawTable } from './text-table.ts';
import type { SetUpAnswer } from './answer-set-up.ts';
import { sayQuantity } from '../core/faults/quantity.ts';

const COLUMNS = [
  { heading: 'Profile' },
  { heading: 'Approach from\nthe blade line', align: 'right' },
  { heading: "Approach from the\ntable's front edge", align: 'right' },
  { heading: 'Tilt from\nupright', align: 'right' },
  { heading: 'Blade height\nat the end', align: 'right' },
  { heading: 'Passes', align: 'right' },
] as const;

export function saySetUps(answers: readonly SetUpAnswer[]): string[] {
  const made = answers.filter((one) => one.ok);
  const refused = answers.length - made.length;
  const everyTime = standingCautions().map((one) => `  ${one}`);
  return [
    MANUAL_CAUTION,
    drawTable(COLUMNS, answers.map(cellsOf)),
    ...(made.length === 0 ? [] : [sayHeights(made)]),
    ...(refused === 0 ? [] : [`${refused} of ${answers.length} can't be made as asked.`]),
    ...(made.length === 0 ? [] : [`Every time:\n${everyTime.join('\n')}`]),
  ];
}

function cellsOf(one: SetUpAnswer): string[] {
  const name = one.profile ?? '(no name)';
  if (!one.ok) return [name, "can't be made", '', '', '', ''];
  return [
    name,
    sayAngle(one.approachDeg),
    sayAngle(one.approachFromFrontDeg),
    sayAngle(one.tiltDeg),
    sayQuantity({ inches: one.passHeights.at(-1) ?? 0 }, 'in'),
    String(one.passCount),
  ];
}

function sayHeights(made: readonly SetUpAnswer[]): string {
  const lines = made.map(({ profile, passHeights }) => [
    profile ?? '',
    passHeights.map((height) => height.toFixed(3)).join(' '),
  ]);
  const heading = "The highest tooth's height above the table, pass by pass, in inches";
  return drawTable([{ heading: 'Profile' }, { heading }], lines);
}

function sayAngle(angle: number | null): string {
  return angle === null ? '' : `${angle.toFixed(2)}°`;
}
