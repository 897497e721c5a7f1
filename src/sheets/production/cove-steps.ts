/** The steps at the saw: each cove on its whole blanks, then smoothed. */
import { toDegrees } from '../../core/units/angle.ts';
import { formatDegrees } from '../../core/units/format-mark.ts';
import { isCovePlan, type CovePlan } from '../../planning/job-plan.ts';
import { cell, sum } from '../grammar/sheet-draft.ts';
import { numberIn } from '../words/print-length.ts';
import type { OrderFacts, Step } from './order-step.ts';
import { ORDER, QUANTITIES } from './production-columns.ts';
import { hoursOf } from './work-hours.ts';

/** What faces are counted in: its name, and how much of the shop's unit, squared, it is. */
const FACE = {
  in: { name: 'square feet', holds: 144 },
  mm: { name: 'm²', holds: 1_000_000 },
} as const;

export function listCoveSteps(facts: OrderFacts): Step[] {
  const byChange = facts.plan.profiles
    .filter(isCovePlan)
    .sort(
      ({ setUp: one }, { setUp: other }) =>
        one.setting.tilt - other.setting.tilt || one.setting.approach - other.setting.approach,
    );
  return [
    ...byChange.map((one) => cutStep(facts, one)),
    ...byChange.map((one) => smoothStep(facts, one)),
  ];
}

function cutStep({ plan, acrossSheets, onThisSheet }: OrderFacts, planned: CovePlan): Step {
  const { decimalSign } = plan.job.shop;
  const { tally, profile, setUp } = planned;
  const { tilt, approach } = setUp.setting;
  const sticks = (): string => QUANTITIES.inRow('sticks', onThisSheet.at('quantityRow', planned));
  return {
    work: `Cut ${profile.name}, on the whole blanks`,
    how: `tilt ${formatDegrees(toDegrees(tilt), decimalSign)}, approach ${formatDegrees(toDegrees(approach), decimalSign)}`,
    each: cell(setUp.passHeights.length, 'rowWhole'),
    count: () => sum(sticks, tally.sticks, 'rowWhole'),
    of: tally.sticks === 1 ? 'blank' : 'blanks',
    cuts: (row) => ({
      formula: `${ORDER.at('each', row)}*${ORDER.at('count', row)}`,
      value: tally.passes,
    }),
    ...hoursOf(planned, ['setUp', 'passes'], acrossSheets),
    see: 'Set-ups',
    planned,
    isCove: true,
  };
}

function smoothStep({ plan, acrossSheets, onThisSheet }: OrderFacts, planned: CovePlan): Step {
  const { unit } = plan.job.shop;
  const { tally, profile, setUp } = planned;
  const { name, holds } = FACE[unit];
  const face = (numberIn(setUp.arcLength, unit) * numberIn(tally.lengthNet, unit)) / holds;
  const lengths = (): string => QUANTITIES.inRow('length', onThisSheet.at('quantityRow', planned));
  return {
    work: `Scrape and sand ${profile.name}`,
    how: 'the cove, as long as its pieces',
    each: cell(numberIn(setUp.arcLength, unit), unit === 'mm' ? 'rowTenth' : 'rowDecimal'),
    count: (row) => sum(() => `${ORDER.at('each', row)}*${lengths()}/${holds}`, face, 'rowDecimal'),
    of: name,
    ...hoursOf(planned, ['smoothing'], acrossSheets),
    isSmoothing: true,
    see: 'Set-ups',
    planned,
  };
}
