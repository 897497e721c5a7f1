/** The steps at the saw: each cove on its whole blanks, then smoothed. */
import { toDegrees } from '../../core/units/angle.ts';
import { formatDegrees } from '../../core/units/format-mark.ts';
import { isCovePlan, type CovePlan } from '../../planning/job-plan.ts';
import { numberIn } from '../words/print-length.ts';
import { cell, sum } from '../grammar/sheet-draft.ts';
import type { OrderFacts, Step } from './order-step.ts';
import { rateCell, rowCell } from './production-cells.ts';

export const WHY_THIS_ORDER =
  'Coves stand by blade tilt (from upright), then by approach (from the blade line), the smallest first: so each change of the saw is the least.';

/** 144 square inches, and at 25.4 mm to the inch. */
const SQUARE_FOOT = { in: '144', mm: '92903.04' } as const;
/** What the shop's unit of length is to that of its feed: inches to feet, millimetres to metres. */
const FEED_UNIT = { in: '12', mm: '1000' } as const;

interface Made {
  readonly planned: CovePlan;
  /** In the order of the plan. */
  readonly index: number;
}

export function listCoveSteps(facts: OrderFacts): Step[] {
  const made = listMade(facts);
  const byChange = [...made].sort(
    ({ planned: { setUp: one } }, { planned: { setUp: other } }) =>
      one.setting.tilt - other.setting.tilt || one.setting.approach - other.setting.approach,
  );
  return [
    ...byChange.map((one) => cutStep(facts, one)),
    ...byChange.map((one) => smoothStep(facts, one)),
  ];
}

function listMade({ plan }: OrderFacts): Made[] {
  const made: Made[] = [];
  plan.profiles.forEach((planned, index) => {
    if (isCovePlan(planned)) made.push({ planned, index });
  });
  return made;
}

function cutStep({ plan, own }: OrderFacts, { planned, index }: Made): Step {
  const { unit, decimalSign } = plan.job.shop;
  const { tally, profile, setUp } = planned;
  const { tilt, approach } = setUp.setting;
  const quantities = (column: string): string => rowCell(own.quantityRows, index, column);
  const rate = (name: Parameters<typeof rateCell>[1]): string => rateCell(own, name);
  return {
    work: `Cut ${profile.name}, on the whole blanks`,
    how: `tilt ${formatDegrees(toDegrees(tilt), decimalSign)}, approach ${formatDegrees(toDegrees(approach), decimalSign)}`,
    each: cell(setUp.passHeights.length, 'rowWhole'),
    count: () => sum(() => quantities('E'), tally.sticks, 'rowWhole'),
    of: tally.sticks === 1 ? 'blank' : 'blanks',
    cuts: (row) => ({ formula: `G${row}*H${row}`, value: tally.passes }),
    hours: (row) => ({
      formula: () =>
        `${rate('setUpMinutes')}/60+G${row}*(${quantities('H')}/${FEED_UNIT[unit]}/(${rate('feed')}*60)+H${row}*${rate('handling')}/3600)`,
      value: tally.hours.setUp + tally.hours.passes,
    }),
    see: 'Set-ups',
    placed: (row) => {
      own.passes[index] = `J${row}`;
      addHours(own.hours, index, row);
    },
  };
}

function smoothStep({ plan, own }: OrderFacts, { planned, index }: Made): Step {
  const { unit } = plan.job.shop;
  const { tally, profile, setUp } = planned;
  const squareFeet = (setUp.arcLength * Number(tally.lengthNet)) / 144;
  return {
    work: `Scrape and sand ${profile.name}`,
    how: 'along the cove, the lengths that pieces take',
    each: cell(numberIn(setUp.arcLength, unit), 'rowDecimal'),
    count: (row) =>
      sum(
        () => `G${row}*${rowCell(own.quantityRows, index, 'G')}/${SQUARE_FOOT[unit]}`,
        squareFeet,
        'rowDecimal',
      ),
    of: 'square feet',
    hours: (row) => ({
      formula: () => `H${row}*${rateCell(own, 'smoothing')}/60`,
      value: tally.hours.smoothing,
    }),
    see: 'Set-ups',
    placed: (row) => {
      addHours(own.hours, index, row);
    },
  };
}

/** Hours of a profile stand on several rows. */
export function addHours(hours: string[][], index: number, row: number): void {
  hours[index] = [...(hours[index] ?? []), `K${row}`];
}
