/** How the columns of the input sheets look and what may be chosen in them. */
import { absoluteRange } from '../../core/cells/cell-range.ts';
import { TURNS } from '../../core/room/wall.ts';
import { OFF_CENTER_TO } from '../../core/cove/cove.ts';
import type { HeadingKey } from '../../core/faults/argument.ts';
import { THICKNESS_CLASS_NAMES } from '../../core/lumber/thickness-class.ts';
import type { Heading } from '../../planning/input/headings/heading.ts';
import { HOURS_HEADINGS } from '../../planning/input/headings/hours-headings.ts';
import { OPENING_HEADINGS } from '../../planning/input/headings/opening-headings.ts';
import { OPTION_HEADINGS } from '../../planning/input/headings/option-headings.ts';
import { PROFILE_HEADINGS } from '../../planning/input/headings/profile-headings.ts';
import { RUN_HEADINGS } from '../../planning/input/headings/run-headings.ts';
import { STOCK_HEADINGS } from '../../planning/input/headings/stock-headings.ts';
import { TRIM_HEADINGS } from '../../planning/input/headings/trim-headings.ts';
import { WORK_HEADINGS } from '../../planning/input/headings/work-headings.ts';
import { WALL_HEADINGS } from '../../planning/input/headings/wall-headings.ts';
import { MOST_QUANTITY } from '../../planning/input/read-runs.ts';
import {
  END_KINDS,
  MAKES,
  MITERS_ACROSS,
  MEASURES,
  OPENING_KINDS,
  PRICE_PER,
  STOCK_KINDS,
} from '../../planning/job.ts';
import { INSIDE_CORNERS, PLACES, TRIM_PLACES } from '../../planning/room-rows.ts';
import { USUAL_WORK } from '../../planning/work/usual-work.ts';
import { perUnitIn } from '../../planning/work/per-units.ts';
import { WORK_PER } from '../../planning/work/work-row.ts';
import type { ValidationDescription } from '../grammar/description.ts';

type Allow = ValidationDescription['allow'];

export interface InputColumn {
  readonly width: number;
  /** Numbers stay numbers here; in all others a cell is text, so that 3/4 becomes no date. */
  readonly isNumber?: boolean;
  readonly allow?: Allow;
  /** In its place for a shop of millimetres; any word may be typed in either. */
  readonly allowInMm?: Allow;
}

export interface InputTable {
  readonly name:
    'Runs' | 'Walls' | 'Trim' | 'Openings' | 'Profiles' | 'Stock' | 'Work' | 'Options' | 'Hours';
  readonly headings: readonly Heading[];
  readonly columns: Readonly<Partial<Record<HeadingKey, InputColumn>>>;
  /** Rows prepared to be filled. */
  readonly rows: number;
}

/** Profiles that can be chosen on other sheets stand in these rows. */
export const PROFILE_ROWS = 100;
const NAMES_COLUMN = PROFILE_HEADINGS.findIndex(({ key }) => key === 'profile');
const PROFILE_NAMES: Allow = {
  kind: 'list from',
  formula: absoluteRange('Profiles', {
    top: 1,
    left: NAMES_COLUMN,
    bottom: PROFILE_ROWS,
    right: NAMES_COLUMN,
  }),
};

const list = (values: readonly string[]): Allow => ({ kind: 'list', values });
const KINDS_OF_WORK = USUAL_WORK.map(({ work }) => work);
const YES_NO = list(['yes', 'no']);
const QUANTITY: InputColumn = {
  width: 10,
  isNumber: true,
  allow: { kind: 'whole', least: 1, most: MOST_QUANTITY },
};
const CORNER: InputColumn = { width: 9, isNumber: true };
const PROFILE: InputColumn = { width: 18, allow: PROFILE_NAMES };
const LENGTH: InputColumn = { width: 13 };
const END: InputColumn = { width: 15, allow: list(END_KINDS) };

/** Where a heading has no column here, it is plain text of this width. */
export const PLAIN_COLUMN: InputColumn = { width: 14 };

export const INPUT_TABLES: readonly InputTable[] = [
  {
    name: 'Runs',
    headings: RUN_HEADINGS,
    rows: 200,
    columns: {
      room: { width: 20 },
      run: { width: 24 },
      profile: PROFILE,
      length: LENGTH,
      measuredAs: { width: 13, allow: list(MEASURES) },
      quantity: QUANTITY,
      leftEnd: END,
      rightEnd: END,
      leftCorner: CORNER,
      rightCorner: CORNER,
      reveal: { width: 10 },
      onePiece: { width: 9, allow: YES_NO },
      match: { width: 14 },
      done: { width: 8, allow: YES_NO },
      note: { width: 40 },
    },
  },
  {
    name: 'Walls',
    headings: WALL_HEADINGS,
    rows: 200,
    columns: {
      room: { width: 20 },
      wall: { width: 14 },
      length: LENGTH,
      corner: CORNER,
      turn: { width: 10, allow: list(TURNS) },
      cornerByTape: { width: 15 },
      height: LENGTH,
      note: { width: 40 },
    },
  },
  {
    name: 'Trim',
    headings: TRIM_HEADINGS,
    rows: 60,
    columns: {
      room: { width: 20 },
      profile: PROFILE,
      where: { width: 10, allow: list(TRIM_PLACES) },
      height: LENGTH,
      walls: { width: 22 },
      insideCorners: { width: 14, allow: list(INSIDE_CORNERS) },
      starts: { width: 14 },
      note: { width: 40 },
    },
  },
  {
    name: 'Openings',
    headings: OPENING_HEADINGS,
    rows: 60,
    columns: {
      room: { width: 20 },
      wall: { width: 24 },
      kind: { width: 16, allow: list(OPENING_KINDS) },
      width: LENGTH,
      height: LENGTH,
      sidesCased: { width: 9, isNumber: true, allow: { kind: 'whole', least: 1, most: 2 } },
      reveal: { width: 10 },
      casing: PROFILE,
      apron: PROFILE,
      stool: PROFILE,
      position: LENGTH,
      quantity: QUANTITY,
      sill: LENGTH,
      horn: { width: 10 },
      otherRoom: { width: 16 },
      otherWall: { width: 16 },
      otherPosition: LENGTH,
    },
  },
  {
    name: 'Profiles',
    headings: PROFILE_HEADINGS,
    rows: PROFILE_ROWS,
    columns: {
      profile: { width: 22 },
      make: { width: 12, allow: list(MAKES) },
      coveWidth: LENGTH,
      coveDepth: LENGTH,
      offCenter: LENGTH,
      blankWidth: LENGTH,
      blankThickness: LENGTH,
      nearFlat: LENGTH,
      spring: { width: 9, isNumber: true },
      drop: LENGTH,
      projection: LENGTH,
      miterAcross: { width: 13, allow: list(MITERS_ACROSS) },
      where: { width: 10, allow: list(PLACES) },
      height: LENGTH,
      species: { width: 16 },
      thicknessClass: { width: 9, allow: list(THICKNESS_CLASS_NAMES) },
      offcutAllowance: { width: 12, isNumber: true },
      offCenterTo: { width: 13, allow: list(OFF_CENTER_TO) },
      slope: { width: 10 },
      note: { width: 40 },
    },
  },
  {
    name: 'Stock',
    headings: STOCK_HEADINGS,
    rows: 100,
    columns: {
      for: { width: 22 },
      kind: { width: 10, allow: list(STOCK_KINDS) },
      thicknessClass: { width: 9, allow: list(THICKNESS_CLASS_NAMES) },
      width: LENGTH,
      length: LENGTH,
      price: { width: 11, isNumber: true },
      per: { width: 12, allow: list(PRICE_PER) },
      have: { width: 9, isNumber: true, allow: { kind: 'whole', least: 0, most: 100_000 } },
      buy: { width: 9 },
      grade: { width: 14 },
      yieldPercent: { width: 9, isNumber: true },
      defects: { width: 24 },
    },
  },
  {
    name: 'Work',
    headings: WORK_HEADINGS,
    rows: 60,
    columns: {
      workDone: { width: 24, allow: list(KINDS_OF_WORK) },
      per: {
        width: 19,
        allow: list(WORK_PER),
        allowInMm: list(WORK_PER.map((per) => perUnitIn('mm', per).word)),
      },
      minutes: { width: 10, isNumber: true },
      moneyEach: { width: 10, isNumber: true },
      for: { width: 22 },
      ours: { width: 8, allow: YES_NO },
      minutesLow: { width: 8, isNumber: true },
      minutesHigh: { width: 8, isNumber: true },
      note: { width: 30 },
    },
  },
  {
    name: 'Options',
    headings: OPTION_HEADINGS,
    rows: 40,
    columns: {
      option: { width: 24 },
      room: { width: 20 },
      profile: PROFILE,
      species: { width: 16 },
      instead: PROFILE,
      taken: { width: 8, allow: YES_NO },
      note: { width: 40 },
    },
  },
  {
    name: 'Hours',
    headings: HOURS_HEADINGS,
    rows: 100,
    columns: {
      dayOfHours: { width: 13 },
      workDone: { width: 24, allow: list([...KINDS_OF_WORK, 'all']) },
      profile: PROFILE,
      hours: { width: 10 },
      note: { width: 40 },
    },
  },
];
