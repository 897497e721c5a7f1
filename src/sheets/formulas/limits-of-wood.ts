/** What the sheet of formulas asks of saw and wood beyond the setting itself, as the core has it. */
import { cellName, quoteSheet } from '../../core/cells/cell-range.ts';
import { LEAST_CLAMP_LIP_INCHES } from '../../core/cove/rail-hold.ts';
import { LEAST_UNDERCUT_INCHES } from '../../core/cove/undercut.ts';
import type { LengthUnit } from '../../core/units/length-unit.ts';
import { numberIn } from '../words/print-length.ts';
import { cell, type SheetDraft } from '../grammar/sheet-draft.ts';
import {
  choose,
  cosine,
  least,
  less,
  minus,
  more,
  number,
  over,
  PI,
  plus,
  root,
  sine,
  termCell,
  times,
  type Term,
} from '../grammar/term.ts';
import type { SizeTerms } from './block-sizes.ts';
import { chordOf, STEPS_SHEET, type Answer } from './newton-steps.ts';

const TWO = number(2);
const ZERO = number(0);
/** Of the steps' sheet, from 0: beside the labels. */
const VALUE_COLUMN = 1;

/** Cells below a cove's steps; lengths in the unit of the sizes. */
export interface WoodLimits {
  /** How far the deep side leans past its edge at the face, 0 where it doesn't: core/cove/undercut.ts. */
  readonly undercut: Term;
  /** Furthest from the middle that the table holds each rail: core/cove/rail-hold.ts. Absent without a table. */
  readonly reach?: { readonly near: Term; readonly far: Term };
}

/** Upright, by the steepest approach: chord · sin a + kerf · cos a, as core/cove/too-wide.ts has it. */
export function widestUpright(sizes: SizeTerms): Term {
  const angle = times(sizes.steepestDeg, over(PI, number(180)));
  return plus(times(chordOf(sizes), sine(angle)), times(sizes.kerf, cosine(angle)));
}

/** Adds a row for each part: one formula with all of them would be longer than a cell holds. */
export function addWoodLimits(
  draft: SheetDraft,
  sizes: SizeTerms,
  answer: Answer,
  unit: LengthUnit,
): WoodLimits {
  const keep = (label: string, term: Term): Term => {
    const row = draft.next;
    draft.add(cell(label, 'quietLabel'), termCell(term, 'quiet'));
    const at = cellName(row - 1, VALUE_COLUMN);
    return { formula: `${quoteSheet(STEPS_SHEET)}!${at}`, value: term.value };
  };
  const { approach, tilt, far } = answer;
  const radius = over(sizes.diameter, TWO);
  const half = over(sizes.kerf, TWO);
  const slope = keep(
    'slope height',
    over(minus(sizes.depth, times(half, sine(tilt))), cosine(tilt)),
  );
  const below = keep('arbor below table', minus(radius, slope));
  const lean = keep('lean', times(sine(tilt), cosine(approach)));
  const share = keep(
    'reach of rim',
    root(plus(times(sine(approach), sine(approach)), times(lean, lean))),
  );
  const top = times(minus(over(times(radius, lean), share), below), cosine(tilt));
  const level = keep('level of it', minus(top, times(half, sine(tilt))));
  const outerFace = minus(times(half, cosine(tilt)), times(below, sine(tilt)));
  const furthest = plus(times(outerFace, cosine(approach)), times(radius, share));
  const beyond = keep('beyond far edge', minus(furthest, far));
  const leastSeen = number(numberIn(LEAST_UNDERCUT_INCHES, unit));
  const undercut = keep(
    'undercut',
    choose(more(level, ZERO), choose(less(beyond, leastSeen), ZERO, beyond), ZERO),
  );
  const { table } = sizes;
  if (table === undefined) return { undercut };
  const halfChord = root(times(slope, minus(sizes.diameter, slope)));
  const lip = number(numberIn(LEAST_CLAMP_LIP_INCHES, unit));
  const along = keep('rail held from middle', plus(times(halfChord, cosine(approach)), lip));
  const toTheSide = over(minus(table.halfWidth, times(along, sine(approach))), cosine(approach));
  const reach = (edge: Term): Term =>
    least(over(minus(edge, times(along, cosine(approach))), sine(approach)), toTheSide);
  return {
    undercut,
    reach: {
      near: keep('near rail at most', reach(table.front)),
      far: keep('far rail at most', reach(table.back)),
    },
  };
}
