/** Lists of how the saw is set: a row a cove, a row a pass, a row a mark. */
import type { RailMark } from '../core/cove/rails.ts';
import { toDegrees } from '../core/units/angle.ts';
import type { LengthUnit } from '../core/units/length-unit.ts';
import { isCovePlan, type CovePlan, type JobPlan } from '../planning/job-plan.ts';
import type { SetUp } from '../planning/plan-setup.ts';
import { numberIn } from '../sheets/words/print-length.ts';
import {
  factLabel,
  factName,
  labelInDegrees,
  labelInUnit,
  type FactName,
} from '../sheets/words/set-up-facts.ts';
import type { List, ListValue } from './csv-list.ts';

export function listSetUps(plan: JobPlan): List {
  const columns = setUpColumns(plan.job.shop.unit);
  return {
    name: 'set-ups',
    headings: ['Profile', ...columns.map(([heading]) => heading)],
    rows: eachSetUp(plan, ({ name }, setUp) => [[name, ...columns.map(([, of]) => of(setUp))]]),
  };
}

/** Each column with its heading and its value. */
function setUpColumns(
  unit: LengthUnit,
): readonly (readonly [heading: string, of: (setUp: SetUp) => ListValue])[] {
  const length = (name: FactName, of: (setUp: SetUp) => number) =>
    [labelInUnit(name, unit), (setUp: SetUp) => numberIn(of(setUp), unit)] as const;
  return [
    [labelInDegrees('approach'), ({ setting }) => toDegrees(setting.approach)],
    [labelInDegrees('approachFromFront'), ({ setting }) => 90 - toDegrees(setting.approach)],
    [labelInDegrees('tilt'), ({ setting }) => toDegrees(setting.tilt)],
    length('height', ({ setting }) => setting.height),
    [factLabel('passes'), ({ passHeights }) => passHeights.length],
    length('diameter', ({ blade }) => blade.diameter),
    length('kerf', ({ blade }) => blade.kerf),
    length('deepestLine', ({ cut }) => cut.offCenter),
    length('bladeMiddle', ({ cut }) => cut.bladeMiddle),
    length('nearFlat', ({ flats }) => flats.near),
    length('farFlat', ({ flats }) => flats.far),
    length('web', ({ web }) => web),
    length('arcLength', ({ arcLength }) => arcLength),
    [`Tightest radius of the curve (${unit})`, ({ leastRadius }) => numberIn(leastRadius, unit)],
  ];
}

export function listPasses(plan: JobPlan): List {
  const { unit } = plan.job.shop;
  return {
    name: 'passes',
    headings: ['Profile', 'Pass', `${factName('height')} (${unit})`],
    rows: eachSetUp(plan, ({ name }, { passHeights }) =>
      passHeights.map((height, at) => [name, at + 1, numberIn(height, unit)]),
    ),
  };
}

/** Left of the blade line, or of the slot, is less than 0. */
export function listRailMarks(plan: JobPlan): List {
  const { unit } = plan.job.shop;
  const markOf = ({ fromBlade, fromSlot, onTable }: RailMark): ListValue[] => [
    numberIn(fromBlade, unit),
    fromSlot === undefined ? null : numberIn(fromSlot, unit),
    onTable ? 'yes' : 'no',
  ];
  return {
    name: 'rail-marks',
    headings: [
      'Profile',
      'Rail',
      'Edge of the table',
      `To the right of the blade line (${unit})`,
      `To the right of the left miter slot (${unit})`,
      'On the table',
    ],
    rows: eachSetUp(plan, ({ name }, { rails }) =>
      rails === undefined
        ? []
        : (['near', 'far'] as const).flatMap((rail) =>
            (['front', 'back'] as const).map((edge) => [
              name,
              rail,
              edge,
              ...markOf(rails[rail][edge]),
            ]),
          ),
    ),
  };
}

function eachSetUp(
  { profiles }: JobPlan,
  rowsOf: (profile: CovePlan['profile'], setUp: SetUp) => ListValue[][],
): ListValue[][] {
  return profiles.filter(isCovePlan).flatMap(({ profile, setUp }) => rowsOf(profile, setUp));
}
