/**
 * Set-up numbers as plain formulas, for a workbook that must answer without the add-in: a block a
 * cove, sizes to type over at its top, what they come to below, beside what was planned.
 */
import { isCovePlan, type JobPlan } from '../../planning/job-plan.ts';
import { tableSizeOf } from '../../planning/table-size.ts';
import type { SheetDescription } from '../grammar/description.ts';
import { nameStyle } from '../grammar/name-style.ts';
import { numberIn } from '../words/print-length.ts';
import { SheetDraft } from '../grammar/sheet-draft.ts';
import { JUDGMENT_CAUTION, MANUAL_CAUTION, TRIAL_CAUTION } from '../words/standing-cautions.ts';
import type { BlockSizes } from './block-sizes.ts';
import { addBlock, type PlannedNumbers } from './formula-block.ts';
import { FORMULA_GRID } from './formula-columns.ts';
import { STEP_COLUMNS, STEPS_SHEET } from './newton-steps.ts';
import { toDegrees } from '../../core/units/angle.ts';

export const FORMULAS_SHEET = 'Set-up formulas';

const WHAT_FOR =
  'Type other sizes into the marked cells: the numbers below them follow, in any spreadsheet. Drawings, marks and passes on the other sheets do not: plan again before you cut by a change.';

/** One cove with its sizes and, where it was planned, its planned numbers. */
export interface FormulaCove {
  readonly name: string;
  readonly sizes: BlockSizes;
  readonly planned: PlannedNumbers;
}

/** The two sheets, results first; none for a job that cuts no cove. */
export function describeSetUpFormulas(plan: JobPlan): SheetDescription[] {
  const coves = covesOf(plan);
  return coves.length === 0 ? [] : describeFormulas(coves, plan.job.shop);
}

/** @param shop its paper, how it reads lengths, the side to which its blade leans */
export function describeFormulas(
  coves: readonly FormulaCove[],
  shop: Pick<JobPlan['job']['shop'], 'paper' | 'unit' | 'decimalSign' | 'tiltSide'>,
): SheetDescription[] {
  const { paper } = shop;
  const draft = new SheetDraft(FORMULAS_SHEET, FORMULA_GRID, true);
  const steps = new SheetDraft(STEPS_SHEET, STEP_COLUMNS, true);
  draft.spread('Set-ups by formula', 'title');
  draft.spread(WHAT_FOR, 'wrapped');
  steps.spread('Steps of the formulas', 'title');
  steps.spread(
    `What ${FORMULAS_SHEET} works with: nothing is read off or typed here. Angles in radians; each step comes nearer to the setting, where there is one.`,
    'note',
  );
  coves.forEach((cove, index) => {
    if (index > 0) {
      draft.breakPage();
      steps.breakPage();
    }
    draft.spread(cove.name, nameStyle(cove.name));
    // Each cove has a page that may hang by itself.
    for (const line of [MANUAL_CAUTION, TRIAL_CAUTION, JUDGMENT_CAUTION]) {
      draft.spread(line, 'caution');
    }
    addBlock(draft, steps, FORMULAS_SHEET, cove, shop);
  });
  const footer = FORMULAS_SHEET;
  return [
    draft.finish({ paper, orientation: 'portrait', footer }),
    steps.finish({ paper, orientation: 'landscape', footer: STEPS_SHEET }),
  ];
}

function covesOf({ job, profiles }: JobPlan): FormulaCove[] {
  const { shop } = job;
  const { unit, greatestHeightUpright: upright, greatestHeightAt45: at45 } = shop;
  const { heightsMeasuredWith: measuredWith = shop.bladeDiameter } = shop;
  const table = tableSizeOf(shop);
  const size = (length: Parameters<typeof numberIn>[0]): number => numberIn(length, unit);
  return profiles.filter(isCovePlan).map(({ profile, setUp }) => {
    const { blankWidth, blankThickness, nearFlat } = profile;
    const { cove, blade, setting, passHeights, flats, rails } = setUp;
    return {
      name: profile.name,
      sizes: {
        width: size(cove.width),
        depth: size(cove.depth),
        offCenter: size(cove.offCenter),
        ...(cove.offCenterTo === undefined ? {} : { offCenterTo: cove.offCenterTo }),
        diameter: size(blade.diameter),
        kerf: size(blade.kerf),
        blankWidth: size(blankWidth),
        blankThickness: size(blankThickness),
        ...(nearFlat === undefined ? {} : { nearFlat: size(nearFlat) }),
        ...(table === undefined ? {} : { front: size(table.front), back: size(table.back) }),
        ...(table?.width === undefined ? {} : { tableWidth: size(table.width) }),
        tiltStopDeg: shop.tiltStop,
        ...(upright === undefined ? {} : { riseUpright: size(upright) }),
        ...(at45 === undefined ? {} : { riseAt45: size(at45) }),
        ...(upright === undefined && at45 === undefined
          ? {}
          : { riseMeasuredWith: size(measuredWith) }),
        steepestDeg: shop.steepestApproach,
        leastWeb: size(shop.leastWeb),
        leastFlat: size(shop.leastFlat),
        firstPass: size(shop.firstPass),
        step: size(shop.step),
        lastPass: size(shop.lastPass),
      },
      planned: {
        approachDeg: toDegrees(setting.approach),
        tiltDeg: toDegrees(setting.tilt),
        passes: passHeights.length,
        nearFlat: size(flats.near),
        farFlat: size(flats.far),
        ...(rails === undefined
          ? {}
          : {
              marks: {
                nearFront: size(rails.near.front.fromBlade),
                nearBack: size(rails.near.back.fromBlade),
                farFront: size(rails.far.front.fromBlade),
                farBack: size(rails.far.back.fromBlade),
              },
            }),
      },
    };
  });
}
