/**
 * What a cove's page says: the saw, the rails and the passes beside the drawings, then what the
 * scales do to it, its blank, its corners and its cautions.
 */
import type { Drawing } from '../../drawings/drawing.ts';
import { rewordFault, sayWhere, type FaultCode } from '../../core/faults/fault.ts';
import type { SetUpJob, SetUpPlan } from '../../planning/job-plan.ts';
import type { CoveProfile, Profile } from '../../planning/job.ts';
import type { SetUp } from '../../planning/plan-setup.ts';
import type { Shop } from '../../planning/shop.ts';
import { tableSizeOf } from '../../planning/table-size.ts';
import { addCrown } from './crown-corners.ts';
import { passList, type PassSpan } from './pass-list.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { POINTS_PER_MM } from '../grammar/page-size.ts';
import { nameStyle } from '../grammar/name-style.ts';
import { SHEET_NAMES } from '../plan-anchors.ts';
import { count, printBoth, printDecimal, printExact } from '../words/print-length.ts';
import { railMarks } from './rail-marks.ts';
import { miterGauge } from './miter-gauge.ts';
import { addSlope } from './slope-cuts.ts';
import {
  addParts,
  CODE_COLUMN,
  DRAWING_COLUMNS,
  leftFact,
  leftText,
  newSetUpDraft,
  writtenBoxes,
  type Part,
  type Spacing,
} from './set-up-columns.ts';
import type { SheetDraft } from '../grammar/sheet-draft.ts';
import {
  BY_SCALES,
  factName,
  NO_TABLE,
  sayOffCenter,
  sayScales,
  setUpFacts,
  type SetUpFacts,
} from '../words/set-up-facts.ts';
import { MANUAL_CAUTION } from '../words/standing-cautions.ts';

/** Where what is looked up stands: below all, or at the left, beside the table. */
export type NotesPlace = 'below' | 'beside';

/** The drawings of a page. */
export interface Drawn {
  readonly section: Drawing;
  readonly table: Drawing;
  /** Beside the section, where the shop says at which address the page stands. */
  readonly code?: Drawing;
}

/** Programs round each row to pixels of their own: what the rows may lose on the way down. */
const ROUNDING_POINTS = 3;
/** A row without words, for a drawing. */
const BARE: Part = { from: 0, cells: [], joins: [] };

/**
 * The page down to the passes shown. At the left what the saw is set to, under the board's end; at the
 * right the saw from above, and the passes below it, as high up as it leaves room.
 */
export function addAtTheSaw(
  draft: SheetDraft,
  plan: SetUpJob,
  { profile, setUp, sticks }: SetUpPlan,
  { section, table, code }: Drawn,
  notes: NotesPlace,
  more?: { readonly passes: PassSpan; readonly note: string },
): void {
  const { shop } = plan.job;
  const facts = setUpFacts(setUp, shop);
  const head = [
    leftText(profile.name, nameStyle(profile.name)),
    leftText(MANUAL_CAUTION, 'caution'),
    leftText(sayCove(profile, sticks.length, shop), 'finePrint'),
    ...(profile.note === '' ? [] : [leftText(profile.note, 'note')]),
    ...(more === undefined ? [] : [leftText(more.note, 'note')]),
  ];
  const left = [
    ...head,
    BARE,
    ...saw(facts),
    ...rails(shop, setUp, facts),
    ...miterGauge(shop, setUp),
    ...railLength(facts),
    ...(notes === 'beside' ? lookedUp(setUp, shop).map((line) => leftText(line, 'finePrint')) : []),
  ];
  const points = ({ height }: Drawing): number => height * POINTS_PER_MM + ROUNDING_POINTS;
  const heights = heightsOf(left);
  const high = Math.max(points(section), code === undefined ? 0 : points(code));
  heights[head.length] = high;
  let [beside, used] = [0, 0];
  while (beside < left.length && used < points(table)) used += heights[beside++] ?? 0;
  const top = draft.next;
  addParts(draft, left.slice(0, beside));
  if (used < points(table)) draft.setHeight(draft.add(), points(table) - used);
  addParts(draft, left.slice(beside), passList(setUp.passHeights, shop, more?.passes));
  const sectionRow = top + head.length;
  draft.setHeight(sectionRow, high);
  const [atLeft, atRight] = DRAWING_COLUMNS;
  draft.draw(sectionRow, atLeft, section, `${profile.name} section`);
  if (code !== undefined) draft.draw(sectionRow, CODE_COLUMN, code, `${profile.name} code`);
  draft.draw(top, atRight, table, `${profile.name} table`);
}

/** Height in points of each row, as no more than its words need. */
function heightsOf(parts: readonly Part[]): number[] {
  const trial = newSetUpDraft();
  addParts(trial, parts);
  return parts.map((_, at) => trial.pointsOf(at + 1));
}

/** Below them: a corner for the trial cut, what is looked up, cautions of its own. */
export function addBelow(
  draft: SheetDraft,
  plan: SetUpJob,
  planned: SetUpPlan,
  notes: NotesPlace,
  spacing: Spacing = 'roomy',
): void {
  const { profile, setUp } = planned;
  addParts(draft, [
    writtenBoxes(TRIAL, ['width, measured', 'depth, measured', 'off center, measured']),
  ]);
  draft.setHeight(draft.next - 1, TRIAL_POINTS);
  if (notes === 'below') {
    const lines = lookedUp(setUp, plan.job.shop);
    for (const line of spacing === 'close' ? [lines.join(' ')] : lines) {
      draft.spread(line, 'finePrint');
    }
  }
  addOwnCautions(draft, plan, profile, setUp);
}

/** How a crown's ends stand on the saw, and how a molding goes up a slope; nothing for others. */
export function addCorners(draft: SheetDraft, plan: SetUpJob, { profile, setUp }: SetUpPlan): void {
  addCrown(draft, plan, profile, setUp.bevelWood);
  addSlope(draft, profile, plan.job.shop);
}

/** What the scales of the saw make of the cove, how exact it must be, and its blank. */
function lookedUp(setUp: SetUp, shop: Shop): string[] {
  return [...scaleLines(setUp, shop), sayBlank(setUpFacts(setUp, shop))];
}

export function sayCove(profile: CoveProfile, blanks: number, reading: LengthReading): string {
  const { cove, blankWidth, blankThickness, species } = profile;
  const center = sayOffCenter(cove, reading);
  const wood = species === '' ? '' : ` of ${species}`;
  const size = `${printExact(blankWidth, reading)} wide, ${printExact(blankThickness, reading)} thick`;
  const said = `Cove ${printBoth(cove.width, reading)} wide, ${printBoth(cove.depth, reading)} deep, ${center}.`;
  // A cove without a job has neither.
  if (blanks === 0) return `${said} Blank${wood} ${size}.`;
  return `${said} ${count(blanks, 'blank')}${wood}, ${size}. At full size: sheet ${SHEET_NAMES.outlines}.`;
}

function saw(facts: SetUpFacts): Part[] {
  const { approach, approachFromFront, tilt, height, diameter, kerf, feed } = facts;
  return [
    leftText('Set the saw', 'section'),
    leftFact(approach.label, approach.value),
    leftFact(approachFromFront.label, approachFromFront.value),
    leftFact(`${tilt.label}, ${tilt.note}`, tilt.value),
    leftFact(height.label, height.value),
    leftText(`Measure both: blade ${diameter.value}, kerf ${kerf.value}`, 'wrapped'),
    leftText(`${feed.label}: ${feed.value}, ${feed.note}`, 'wrapped'),
  ];
}

function rails(shop: Shop, { rails: layout }: SetUp, facts: SetUpFacts): Part[] {
  const table = tableSizeOf(shop);
  const { spacing } = facts;
  const title = leftText('Set the rails: far is behind the blade', 'section');
  const between = leftFact(factName('spacing'), spacing.value);
  if (layout === undefined || table === undefined) {
    return [title, between, leftText(NO_TABLE, 'small')];
  }
  return [title, ...railMarks(layout, table, shop), between];
}

function railLength({ spacing, railLength }: SetUpFacts): Part[] {
  const long = railLength === undefined ? '' : ` ${railLength.label}: ${railLength.value}.`;
  return [leftText(`Between the faces ${spacing.note}.${long}`, 'finePrint')];
}

const TRIAL = 'Trial cut';
/** High enough to write in. */
const TRIAL_POINTS = 21;

/** What setting the saw by its scales makes of the cove, in a line; and what half a degree does. */
function scaleLines(setUp: SetUp, reading: LengthReading): string[] {
  const { cut, offCenter: off, widthChange, offCenterChange, perHalfDegree } = setUp.scale;
  const half = (['approach', 'tilt'] as const).map((which) => {
    const { width, offCenter } = perHalfDegree[which];
    return `half a degree more ${which}: width ${sayChange(width, reading)}, off center ${sayChange(offCenter, reading)}`;
  });
  return [
    `${BY_SCALES}: ${sayScales(setUp, reading)}. The cove is then ${printDecimal(cut.width, reading)} wide (${sayChange(widthChange, reading)}) and ${printDecimal(off, reading)} off center (${sayChange(offCenterChange, reading)}).`,
    `How exact it must be: ${half.join('; ')}.`,
  ];
}

function sayChange(inches: number, reading: LengthReading): string {
  const size = printDecimal(Math.abs(inches), reading);
  if (!/[1-9]/u.test(size)) return 'no change';
  return `${size} ${inches < 0 ? 'less' : 'more'}`;
}

/** What the board is once it is cut. */
function sayBlank({
  deepestLine,
  bladeMiddle,
  nearFlat,
  farFlat,
  web,
  arcLength,
  leastRadius,
}: SetUpFacts): string {
  const facts = [deepestLine, bladeMiddle, nearFlat, farFlat, web, arcLength, leastRadius];
  return `In its blank: ${facts.map(({ label, value }) => `${label} ${value}`).join('; ')}.`;
}

/** What the rows of the rails say already, with the marks to use instead. */
const SAID_BY_MARKS: readonly FaultCode[] = ['rails.off-table', 'rails.off-usual-table'];

/** Those of the set-up, and what else was found at this profile's own row. */
function addOwnCautions(draft: SheetDraft, plan: SetUpJob, profile: Profile, setUp: SetUp): void {
  const here = sayWhere(profile.where);
  const { unit, decimalSign } = plan.job.shop;
  const own = [
    ...setUp.cautions.map((one) => rewordFault(one, unit, decimalSign)),
    ...plan.cautions.filter(({ where }) => where !== undefined && sayWhere(where) === here),
  ].filter(({ code }) => !SAID_BY_MARKS.includes(code));
  if (own.length === 0) return;
  draft.spread('Mind with this cove', 'section');
  for (const message of new Set(own.map((one) => one.message))) {
    draft.spread(message, 'caution');
  }
}
