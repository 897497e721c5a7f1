/** The usual kinds of work, and what work is counted by, in the words of the how-to. */
import type { HeadingKey } from '../../core/faults/argument.ts';
import { formatNumber } from '../../core/units/format-number.ts';
import type { LengthUnit } from '../../core/units/length-unit.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { SETTINGS } from '../../planning/shop.ts';
import { perUnitIn } from '../../planning/work/per-units.ts';
import { USUAL_WORK, type UsualWork } from '../../planning/work/usual-work.ts';
import type { WorkPer } from '../../planning/work/work-row.ts';

/** As counts.ts and allowed-counts.ts have them. */
export const COUNTS: readonly (readonly [per: WorkPer | 'metre', text: string])[] = [
  ['job', 'Once.'],
  ['room', 'Each room with pieces still to cut.'],
  ['opening', 'Each door, window and cased opening of Openings, as often as its Quantity.'],
  ['set-up', 'Each cove.'],
  [
    'pass',
    'Each pass of each blank over the blade. By the allowance: each pass of each stick or blank that the length allowed is of the row of Stock that prices it, rounded up.',
  ],
  [
    'foot a pass',
    'The length of the blank, for each of its passes. By the allowance: the length allowed, for each pass.',
  ],
  ['foot', 'The net length of the pieces.'],
  [
    'foot a cut',
    'The length of the whole sticks, for each back bevel: a crown cove has two, others none. By the allowance: the length allowed, for each back bevel.',
  ],
  [
    'foot a rip',
    'The length of each blank that comes from a board. By the allowance: the length allowed, where a board prices it.',
  ],
  ['square foot', 'The cove’s curve along the net length; none of what is bought.'],
  [
    'square foot a coat',
    'The face along the net length: curve and flats of a cove, the blank’s width of others. A row for each coat, under a name of its own.',
  ],
  ['piece', 'Each piece, returns to the wall too.'],
  [
    'crosscut',
    'Each length cut off a stick, and once more for the stick, whose end is trimmed. By the allowance: each piece and joint, and each stick or blank as under pass.',
  ],
  ['miter', 'Each mitered end of what stands upright or lies flat, beside its crosscut.'],
  ['compound miter', 'Each mitered end of what has a Spring.'],
  ['cope', 'Each coped end.'],
  ['return', 'Each end that turns back to the wall.'],
  [
    'joint',
    'Of each piece that comes in parts, one less than the parts. By the allowance: the fewest that the longest stick to price it by allows.',
  ],
  ['board foot', 'Of what is made here: net, with the offcut allowance.'],
  [
    'board',
    'Each board or stick that is opened; of one for several moldings, a share by its strips. By the allowance: the sticks or blanks as under pass, over the blanks that a board of that row gives, rounded up.',
  ],
  [
    'metre',
    'In place of foot, square foot, board foot and what is by the foot: metre, square metre, cubic metre, metre a pass, metre a cut, metre a rip, square metre a coat, with the minutes of one. A job in mm shows them so on Labor.',
  ],
  [
    'factor',
    'No count: under Minutes, what the hours of work by the foot (such as installing) are times, for the moldings that the row is for.',
  ],
];

/** `40 min a set-up, from set-up minutes on Shop: in the price.` */
export function sayUsualWork(
  { per, minutes, metric, setting }: UsualWork,
  { decimalSign, unit }: Pick<LengthReading, 'decimalSign' | 'unit'>,
): string {
  const { word } = perUnitIn(unit, per);
  if (per === 'factor' && typeof minutes === 'number') {
    return `Times ${formatNumber(minutes, 2, decimalSign)}, where Work has a row for it.`;
  }
  if (setting !== undefined) {
    return `Per ${word}, as ${SETTINGS[setting].name} on Shop has it. In the price unless Work says no.`;
  }
  const own = unit === 'mm' ? (metric ?? minutes) : minutes;
  const each = typeof own === 'number' ? `${formatNumber(own, 2, decimalSign)} min ` : '';
  return `${each}per ${word}. In the price where Work has a row for it.`;
}

/** The usual kinds of work as `new` fills them in: what holds anyway, to be seen and changed. */
export function usualWorkRows(
  unit: LengthUnit = 'in',
): Readonly<Partial<Record<HeadingKey, string | number | undefined>>>[] {
  return USUAL_WORK.map(({ work, per, minutes, metric, setting }) => ({
    workDone: work,
    per: perUnitIn(unit, per).word,
    minutes:
      typeof minutes !== 'number' ? undefined : unit === 'mm' ? (metric ?? minutes) : minutes,
    ours: setting === undefined ? 'no' : 'yes',
    note:
      setting === undefined
        ? 'As usual, by common practice. Yours? Write yes under Ours, and your own minutes.'
        : `How long: ${SETTINGS[setting].name} on Shop.`,
  }));
}
