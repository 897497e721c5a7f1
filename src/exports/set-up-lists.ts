/** Lists of how the saw is set: a row a cove, a row a pass, a row a mark. */
import type { RailMark } from '../core/cove/rails.ts';
import { toDegrees } from '../core/units/angle.ts';
import { isCovePlan, type CovePlan, type JobPlan } from '../planning/job-plan.ts';
import type { SetUp } from '../planning/plan-setup.ts';
import { numberIn } from '../sheets/words/print-length.ts';
import { factLabel, factName, labelInDegrees, labelInUnit } from '../sheets/words/set-up-facts.ts';
import type { List, ListValue } from './csv-list.ts';

export function listSetUps(plan: JobPlan): List {
  const { unit } = plan.job.shop;
  return {
    name: 'set-ups',
    headings: [
      'Profile',
      labelInDegrees('approach'),
      labelInDegrees('approachFromFront'),
      labelInDegrees('tilt'),
      labelInUnit('height', unit),
      factLabel('passes'),
      ...(['diameter', 'kerf', 'nearFlat', 'farFlat', 'web', 'arcLength'] as const).map((name) =>
        labelInUnit(name, unit),
      ),
      `Tightest radius of the curve (${unit})`,
    ],
    rows: eachSetUp(plan, ({ name }, { blade, setting, flats, ...setUp }) => [
      [
        name,
        toDegrees(setting.approach),
        90 - toDegrees(setting.approach),
        toDegrees(setting.tilt),
        numberIn(setting.height, unit),
        setUp.passHeights.length,
        ...[
          blade.diameter,
          blade.kerf,
          flats.near,
          flats.far,
          setUp.web,
          setUp.arcLength,
          setUp.leastRadius,
        ].map((inches) => numberIn(inches, unit)),
      ],
    ]),
  };
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
