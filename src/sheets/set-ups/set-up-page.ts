/**
 * What a cove's page says: the saw, the rails and the passes beside the drawings, then what the
 * scales do to it, its blank, its corners and its cautions.
 */
import { rewordFault, sayWhere, type FaultCode } from '../../core/faults/fault.ts';
import type { SetUpJob, SetUpPlan } from '../../planning/job-plan.ts';
import type { CoveProfile, Profile } from '../../planning/job.ts';
import type { SetUp } from '../../planning/plan-setup.ts';
import type { Shop } from '../../planning/shop.ts';
import { tableSizeOf } from '../../planning/table-size.ts';
import { addCrown } from './crown-corners.ts';
import { passList, type PassSpan } from './pass-list.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { nameStyle } from '../grammar/name-style.ts';
import { SHEET_NAMES } from '../plan-anchors.ts';
import { count, printBoth, printDecimal, printExact } from '../words/print-length.ts';
import { railMarks } from './rail-marks.ts';
import { miterGauge } from './miter-gauge.ts';
import { addSlope } from './slope-cuts.ts';
import {
  addParts,
  leftFact,
  leftRow,
  leftText,
  rightFact,
  rightText,
  type Part,
  type Spacing,
} from './set-up-columns.ts';
import type { SetUpRows } from './set-up-drawings.ts';
import { cell, type SheetDraft } from '../grammar/sheet-draft.ts';
import {
  BY_SCALES,
  NO_TABLE,
  sayOffCenter,
  sayScales,
  setUpFacts,
  type Fact,
  type SetUpFacts,
} from '../words/set-up-facts.ts';
import { MANUAL_CAUTION } from '../words/standing-cautions.ts';

/** The page's part beside the drawings, down to the passes shown. */
export function addAtTheSaw(
  draft: SheetDraft,
  plan: SetUpJob,
  { profile, setUp, sticks }: SetUpPlan,
  spacing: Spacing,
  more?: { readonly passes: PassSpan; readonly note: string },
): SetUpRows {
  const { shop } = plan.job;
  const facts = setUpFacts(setUp, shop);
  const top = draft.next;
  const parts = [
    leftText(profile.name, nameStyle(profile.name)),
    leftText(sayCove(profile, sticks.length, shop), 'wrapped'),
    ...(profile.note === '' ? [] : [leftText(profile.note, 'note')]),
    leftText(MANUAL_CAUTION, 'caution'),
    ...(more === undefined ? [] : [leftText(more.note, 'note')]),
    ...saw(facts, spacing),
    ...rails(shop, setUp, facts),
    ...miterGauge(shop, setUp),
    ...passList(setUp.passHeights, shop, spacing, more?.passes),
  ];
  addParts(draft, parts, [], spacing);
  return { top, spacer: draft.add() };
}

/** Below the drawings, all of the page's width: scales and blank, corners, cautions of its own. */
export function addBelow(
  draft: SheetDraft,
  plan: SetUpJob,
  { profile, setUp }: SetUpPlan,
  spacing: Spacing,
): void {
  const { shop } = plan.job;
  addParts(draft, scales(setUp, shop), blank(setUpFacts(setUp, shop), spacing), spacing);
  addCrown(draft, plan, profile, setUp.bevelWood, spacing);
  addSlope(draft, profile, shop, spacing);
  addOwnCautions(draft, plan, profile, setUp);
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

function saw(facts: SetUpFacts, spacing: Spacing): Part[] {
  const { approach, approachFromFront, tilt, height, diameter, kerf, feed } = facts;
  const measured = ({ label, value, note }: Required<Fact>): Part =>
    leftFact(`${label}: ${note}`, value);
  const withNote = ({ label, value, note }: Required<Fact>): Part =>
    leftFact(label, `${value}, ${note}`);
  return [
    leftText('Set the saw', 'section'),
    leftFact(approach.label, approach.value),
    leftFact(approachFromFront.label, approachFromFront.value),
    withNote(tilt),
    leftFact(height.label, height.value),
    ...(spacing === 'close'
      ? [leftFact('Blade and kerf: measure both', `${diameter.value}, ${kerf.value}`)]
      : [measured(diameter), measured(kerf)]),
    withNote(feed),
  ];
}

function rails(shop: Shop, { rails: layout }: SetUp, facts: SetUpFacts): Part[] {
  const table = tableSizeOf(shop);
  const { spacing, railLength } = facts;
  const title = leftText('Rails', 'section');
  const between = leftFact(spacing.label, `${spacing.value}, ${spacing.note}`);
  if (layout === undefined || table === undefined || railLength === undefined) {
    return [title, between, leftText(NO_TABLE, 'note')];
  }
  return [
    title,
    ...railMarks(layout, table, shop),
    between,
    leftFact(railLength.label, railLength.value),
  ];
}

/** What setting the saw by its scales makes of the cove. */
function scales(setUp: SetUp, reading: LengthReading): Part[] {
  const { cut, offCenter: off, widthChange, offCenterChange, perHalfDegree } = setUp.scale;
  const row = (what: string, width: string, offCenter: string): Part =>
    leftRow(cell(what, 'row'), cell(width, 'row'), cell(offCenter, 'row'));
  return [
    leftText(BY_SCALES, 'section'),
    leftRow(
      cell('Set so', 'heading'),
      cell('the cove is wide', 'heading'),
      cell('and off center', 'heading'),
    ),
    row(
      sayScales(setUp, reading),
      `${printDecimal(cut.width, reading)}, ${sayChange(widthChange, reading)}`,
      `${printDecimal(off, reading)}, ${sayChange(offCenterChange, reading)}`,
    ),
    ...(['approach', 'tilt'] as const).map((which) => {
      const { width, offCenter } = perHalfDegree[which];
      return row(
        `Half a degree more ${which}`,
        sayChange(width, reading),
        sayChange(offCenter, reading),
      );
    }),
  ];
}

function sayChange(inches: number, reading: LengthReading): string {
  const size = printDecimal(Math.abs(inches), reading);
  if (!/[1-9]/u.test(size)) return 'no change';
  return `${size} ${inches < 0 ? 'less' : 'more'}`;
}

function blank({ deepestLine, bladeMiddle, ...facts }: SetUpFacts, spacing: Spacing): Part[] {
  const { nearFlat, farFlat, web, arcLength, leastRadius } = facts;
  const each = (...some: readonly Fact[]): Part[] =>
    some.map(({ label, value }) => rightFact(label, value));
  return [
    rightText('The cove in its blank', 'section'),
    ...(spacing === 'close'
      ? [
          rightFact(
            "Off center: deepest line; blade's middle",
            `${deepestLine.value}; ${bladeMiddle.value}`,
          ),
          rightFact('Flat by the near rail; by the far', `${nearFlat.value}; ${farFlat.value}`),
        ]
      : each(deepestLine, bladeMiddle, nearFlat, farFlat)),
    ...each(web, arcLength, leastRadius),
  ];
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
  for (const message of new Set(own.map((one) => one.message))) draft.spread(message, 'caution');
}
