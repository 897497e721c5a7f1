/** How many of what work is counted by, as formulas over the cells of Production. */
import Fraction from 'fraction.js';
import type { LengthUnit } from '../../core/units/length-unit.ts';
import { isCovePlan, type ProfilePlan } from '../../planning/job-plan.ts';
import { backBevelsOf, faceOf } from '../../planning/work/counts.ts';
import { perUnitIn } from '../../planning/work/per-units.ts';
import type { WorkLine, WorkPer } from '../../planning/work/work-row.ts';
import { cell, sum, type DraftCell } from '../grammar/sheet-draft.ts';
import type { PlanAnchors } from '../plan-anchors.ts';
import { numberIn } from '../words/print-length.ts';

/** A foot in the shop's unit. */
export const FOOT: Readonly<Record<LengthUnit, string>> = { in: '12', mm: '304.8' };
/** A foot, or a metre, as work is counted in the shop's unit: its length and its square. */
const LONG: Readonly<Record<LengthUnit, string>> = { in: '12', mm: '1000' };
const SQUARE: Readonly<Record<LengthUnit, string>> = { in: '144', mm: '1000000' };
/** What Production counts in square feet. */
const SQUARE_FEET: Readonly<Record<LengthUnit, string>> = { in: '', mm: '*0.09290304' };

type Formula = (planned: ProfilePlan, unit: LengthUnit, anchors: PlanAnchors) => string;

/** What has no formula here has no cell on another sheet: it is a number, counted when the job was planned. */
const FORMULAS: Readonly<Partial<Record<WorkPer, Formula>>> = {
  pass: (planned, _, anchors) => anchors.at('passesOnProduction', planned),
  'foot a pass': (planned, unit, anchors) =>
    ofSticks(planned.setUp?.passHeights.length ?? 0, planned, unit, anchors),
  'foot a cut': (planned, unit, anchors) =>
    ofSticks(backBevelsOf(planned.profile), planned, unit, anchors),
  foot: (planned, unit, anchors) => `${anchors.at('netLengthOnProduction', planned)}/${LONG[unit]}`,
  'square foot': (planned, unit, anchors) =>
    isCovePlan(planned)
      ? `${anchors.at('squareFeetOnProduction', planned)}${SQUARE_FEET[unit]}`
      : '0',
  'square foot a coat': (planned, unit, anchors) => {
    const face = numberIn(new Fraction(faceOf(planned.profile, planned.setUp)), unit);
    return `${face}*${anchors.at('netLengthOnProduction', planned)}/${SQUARE[unit]}`;
  },
  piece: (planned, _, anchors) => anchors.at('piecesOnProduction', planned),
  crosscut: (planned, _, anchors) => anchors.at('crosscutsOnProduction', planned),
  'board foot': (planned, _, anchors) => anchors.at('allowedFeetOnProduction', planned),
};

/** So often along the whole sticks, in feet or metres. */
function ofSticks(
  times: number,
  planned: ProfilePlan,
  unit: LengthUnit,
  anchors: PlanAnchors,
): string {
  return `${times}*${anchors.at('stickLengthOnProduction', planned)}/${LONG[unit]}`;
}

export function countCell(
  { row: { per }, count: inFeet }: WorkLine,
  planned: ProfilePlan,
  unit: LengthUnit,
  anchors: PlanAnchors,
): DraftCell {
  const formula = FORMULAS[per];
  const count = inFeet / perUnitIn(unit, per).holds;
  if (formula === undefined) return cell(count, 'rowDecimal');
  return sum(() => formula(planned, unit, anchors), count, 'rowDecimal');
}
