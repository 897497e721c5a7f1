/** How the columns of the input sheets look and what may be chosen in them. */
import { absoluteRange } from '../../core/cells/cell-range.ts';
import { OFF_CENTER_TO } from '../../core/cove/cove.ts';
import { THICKNESS_CLASS_NAMES } from '../../core/lumber/thickness-class.ts';
import type { Heading } from '../../planning/input/headings/heading.ts';
import { OPENING_HEADINGS } from '../../planning/input/headings/opening-headings.ts';
import { PROFILE_HEADINGS } from '../../planning/input/headings/profile-headings.ts';
import { RUN_HEADINGS } from '../../planning/input/headings/run-headings.ts';
import { STOCK_HEADINGS } from '../../planning/input/headings/stock-headings.ts';
import { MOST_QUANTITY } from '../../planning/input/read-runs.ts';
import {
  END_KINDS,
  MAKES,
  MITERS_ACROSS,
  MEASURES,
  OPENING_KINDS,
  PLACES,
  PRICE_PER,
  STOCK_KINDS,
} from '../../planning/job.ts';
import type { ValidationDescription } from '../grammar/description.ts';

type Allow = ValidationDescription['allow'];

export interface InputColumn {
  readonly width: number;
  /** Numbers stay numbers here; in all others a cell is text, so that 3/4 becomes no date. */
  readonly isNumber?: boolean;
  readonly allow?: Allow;
}

export interface InputTable {
  readonly name: 'Runs' | 'Openings' | 'Profiles' | 'Stock';
  readonly headings: readonly Heading[];
  readonly columns: Readonly<Record<string, InputColumn>>;
  /** Rows prepared to be filled. */
  readonly rows: number;
}

/** Profiles that can be chosen on other sheets stand in these rows. */
export const PROFILE_ROWS = 100;
const NAMES_COLUMN = PROFILE_HEADINGS.findIndex(({ heading }) => heading === 'Profile');
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
      Room: { width: 20 },
      Run: { width: 24 },
      Profile: PROFILE,
      Length: LENGTH,
      'Measured as': { width: 13, allow: list(MEASURES) },
      Quantity: QUANTITY,
      'Left end': END,
      'Right end': END,
      'Left corner': CORNER,
      'Right corner': CORNER,
      Reveal: { width: 10 },
      'One piece': { width: 9, allow: YES_NO },
      Match: { width: 14 },
      Done: { width: 8, allow: YES_NO },
      Note: { width: 40 },
    },
  },
  {
    name: 'Openings',
    headings: OPENING_HEADINGS,
    rows: 60,
    columns: {
      Room: { width: 20 },
      Wall: { width: 24 },
      Kind: { width: 16, allow: list(OPENING_KINDS) },
      Width: LENGTH,
      Height: LENGTH,
      'Sides cased': { width: 9, isNumber: true, allow: { kind: 'whole', least: 1, most: 2 } },
      Reveal: { width: 10 },
      Casing: PROFILE,
      Apron: PROFILE,
      Stool: PROFILE,
      Position: LENGTH,
      Quantity: QUANTITY,
      Sill: LENGTH,
      Horn: { width: 10 },
      'Other room': { width: 16 },
      'Other wall': { width: 16 },
      'Other position': LENGTH,
    },
  },
  {
    name: 'Profiles',
    headings: PROFILE_HEADINGS,
    rows: PROFILE_ROWS,
    columns: {
      Profile: { width: 22 },
      Make: { width: 12, allow: list(MAKES) },
      'Cove width': LENGTH,
      'Cove depth': LENGTH,
      'Off-center': LENGTH,
      'Blank width': LENGTH,
      'Blank thickness': LENGTH,
      'Near flat': LENGTH,
      Spring: { width: 9, isNumber: true },
      Drop: LENGTH,
      Projection: LENGTH,
      'Miter across': { width: 13, allow: list(MITERS_ACROSS) },
      Where: { width: 10, allow: list(PLACES) },
      Height: LENGTH,
      Species: { width: 16 },
      Class: { width: 9, allow: list(THICKNESS_CLASS_NAMES) },
      'Offcut allowance %': { width: 12, isNumber: true },
      'Off-center to': { width: 13, allow: list(OFF_CENTER_TO) },
      Note: { width: 40 },
    },
  },
  {
    name: 'Stock',
    headings: STOCK_HEADINGS,
    rows: 100,
    columns: {
      For: { width: 22 },
      Kind: { width: 10, allow: list(STOCK_KINDS) },
      Class: { width: 9, allow: list(THICKNESS_CLASS_NAMES) },
      Width: LENGTH,
      Length: LENGTH,
      Price: { width: 11, isNumber: true },
      Per: { width: 12, allow: list(PRICE_PER) },
      Have: { width: 9, isNumber: true, allow: { kind: 'whole', least: 0, most: 100_000 } },
      Buy: { width: 9 },
    },
  },
];
