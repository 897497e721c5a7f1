/** How many of what work is counted by, as formulas over the cells of Production. */
import Fraction from 'fraction.js';
import type { LengthUnit } from '../../core/units/length-unit.ts';
import { isCovePlan, type ProfilePlan } from '../../planning/job-plan.ts';
import { backBevelsOf, faceOf } from '../../planning/work/counts.ts';
import { perUnitIn } from '../../planning/work/per-units.ts';
import type { LumberCounts, WorkLine, WorkPer } from '../../planning/work/work-row.ts';
import { cell, sum, type DraftCell } from '../grammar/sheet-draft.ts';
import type { PlanAnchors } from '../plan-anchors.ts';
import { numberIn } from '../words/print-length.ts';

/** A foot, or a metre, as work is counted in the shop's unit: its length and its square. */
const LONG: Readonly<Record<LengthUnit, string>> = { in: '12', mm: '1000' };
const SQUARE: Readonly<Record<LengthUnit, string>> = { in: '144', mm: '1000000' };

type Formula = (planned: ProfilePlan, unit: LengthUnit, anchors: PlanAnchors) => string;

/** What has no formula here has no cell on another sheet: it is a number, counted when the job was planned. */
const FORMULAS: Readonly<Partial<Record<WorkPer, Formula>>> = {
  pass: (planned, _, anchors) => anchors.at('passesOnProduction', planned),
  'foot a pass': (planned, unit, anchors) => ofSticks(passesOf(planned), planned, unit, anchors),
  'foot a cut': (planned, unit, anchors) =>
    ofSticks(backBevelsOf(planned.profile), planned, unit, anchors),
  foot: (planned, unit, anchors) => `${anchors.at('netLengthOnProduction', planned)}/${LONG[unit]}`,
  'square foot': (planned, _, anchors) =>
    isCovePlan(planned) ? anchors.at('squareFeetOnProduction', planned) : '0',
  'square foot a coat': (planned, unit, anchors) => {
    const face = numberIn(new Fraction(faceOf(planned.profile, planned.setUp)), unit);
    return `${face}*${anchors.at('netLengthOnProduction', planned)}/${SQUARE[unit]}`;
  },
  piece: (planned, _, anchors) => anchors.at('piecesOnProduction', planned),
  crosscut: (planned, _, anchors) => anchors.at('crosscutsOnProduction', planned),
  'board foot': (planned, _, anchors) => anchors.at('allowedFeetOnProduction', planned),
};

/** As FORMULAS, by the offcut allowance: what sticks decide in a plan, the row that prices the lumber decides. */
const ALLOWED_FORMULAS: Readonly<Record<keyof LumberCounts, Formula | undefined>> = {
  'set-up': undefined,
  pass: (planned, _, anchors) =>
    `${passesOf(planned)}*${anchors.at('allowedOnOffice', planned).sticks}`,
  'foot a pass': (planned, unit, anchors) => ofAllowed(passesOf(planned), planned, unit, anchors),
  'foot a cut': (planned, unit, anchors) =>
    ofAllowed(backBevelsOf(planned.profile), planned, unit, anchors),
  'foot a rip': (planned, unit, anchors) => ofAllowed(1, planned, unit, anchors),
  crosscut: (planned, _, anchors) => {
    const { counts } = planned.byAllowance;
    const pieces = anchors.at('piecesOnProduction', planned);
    return `${pieces}+${counts.joint}+${anchors.at('allowedOnOffice', planned).sticks}`;
  },
  joint: undefined,
  board: (planned, _, anchors) => {
    const { strips } = planned.byAllowance.lumber.unit;
    return `-INT(-${anchors.at('allowedOnOffice', planned).sticks}/${strips})`;
  },
};

/** So often along the length with the allowance, in feet or metres. */
function ofAllowed(
  times: number,
  planned: ProfilePlan,
  unit: LengthUnit,
  anchors: PlanAnchors,
): string {
  return `${times}*${anchors.at('allowedOnOffice', planned).length}/${LONG[unit]}`;
}

function passesOf({ setUp }: ProfilePlan): number {
  return setUp?.passHeights.length ?? 0;
}

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
  line: WorkLine,
  planned: ProfilePlan,
  unit: LengthUnit,
  anchors: PlanAnchors,
): DraftCell {
  return figureCell(FORMULAS[line.row.per], line, planned, unit, anchors);
}

export function allowedCountCell(
  line: WorkLine,
  planned: ProfilePlan,
  unit: LengthUnit,
  anchors: PlanAnchors,
): DraftCell {
  const { per } = line.row;
  const formula =
    per in ALLOWED_FORMULAS ? ALLOWED_FORMULAS[per as keyof LumberCounts] : FORMULAS[per];
  return figureCell(formula, line, planned, unit, anchors);
}

function figureCell(
  formula: Formula | undefined,
  { row: { per }, count: inFeet }: WorkLine,
  planned: ProfilePlan,
  unit: LengthUnit,
  anchors: PlanAnchors,
): DraftCell {
  const count = inFeet / perUnitIn(unit, per).holds;
  if (formula === undefined) return cell(count, 'rowDecimal');
  return sum(() => formula(planned, unit, anchors), count, 'rowDecimal');
}
