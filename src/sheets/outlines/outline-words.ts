/** What is said over a cove's outline: its sizes, which end it is for, and what to mind. */
import { formatMark } from '../../core/units/format-mark.ts';
import type { LengthReading } from '../../core/units/length.ts';
import type { CovePlan } from '../../planning/job-plan.ts';
import { printBoth, printExact } from '../words/print-length.ts';
import { cell } from '../grammar/sheet-draft.ts';
import type { CellDescription } from '../grammar/description.ts';
import { nameStyle } from '../grammar/name-style.ts';
import { MANUAL_CAUTION, TRIAL_CAUTION } from '../words/standing-cautions.ts';

export interface CoveOutline extends Pick<CovePlan, 'profile' | 'setUp'> {
  readonly reading: LengthReading;
}

/** One cell a row; `part` counts from 1. */
export function outlineWords(
  { profile, setUp, reading }: CoveOutline,
  part: number,
  parts: number,
): CellDescription[] {
  const which = parts > 1 ? `, part ${part} of ${parts}` : '';
  return [
    cell(profile.name, nameStyle(profile.name)),
    cell(`Outline of the board's end at full size${which}, to trace on the wood`, 'subtitle'),
    cell(MANUAL_CAUTION, 'caution'),
    cell(saySizes({ profile, setUp, reading }), 'wrapped'),
    cell(
      'Drawn as the section is: face down, seen from the front of the saw. It is the end that faces you there and enters the blade last; on the end that enters first it lies mirrored.',
      'wrapped',
    ),
    ...(parts > 1
      ? [
          cell(
            `The board is wider than the paper: lay the ${parts} parts so that each joining line lies on the line of the same number, and tape them.`,
            'wrapped',
          ),
        ]
      : []),
    cell(`A traced line is a check, no set-up. ${TRIAL_CAUTION}`, 'wrapped'),
  ];
}

/** In place of a drawing that no page holds. */
export const TOO_HIGH =
  'This blank is thicker than the page is high, so its outline is not printed here. Set the paper larger, or use the outline saved as a file of its own.';

function saySizes({ profile, setUp, reading }: CoveOutline): string {
  const mark = (inches: number): string => formatMark(inches, reading.unit, reading.decimalSign);
  const { blankWidth, blankThickness } = profile;
  const { cove, flats } = setUp;
  const blank = `${printExact(blankWidth, reading)} wide, ${printExact(blankThickness, reading)} thick`;
  const sides = `${mark(flats.near)} by the near rail, ${mark(flats.far)} by the far rail`;
  return `Cove ${printBoth(cove.width, reading)} wide, ${printBoth(cove.depth, reading)} deep, in a blank ${blank}. Flats: ${sides}.`;
}
