/** The columns of the input tables: width, whether text is kept as typed, and what may be chosen. */
import {
  END_KINDS,
  MAKES,
  MEASURES,
  OPENING_KINDS,
  PRICE_PER,
  STOCK_KINDS,
} from '../../planning/job.ts';
import { OPENING_HEADINGS } from '../../planning/input/read-openings.ts';
import { PROFILE_HEADINGS } from '../../planning/input/read-profiles.ts';
import { MOST_QUANTITY, RUN_HEADINGS } from '../../planning/input/read-runs.ts';
import { STOCK_HEADINGS } from '../../planning/input/read-stock.ts';
import type { Heading } from '../../planning/input/read-rows.ts';
import type { ValidationDescription } from '../description.ts';

export interface InputColumn {
  readonly heading: string;
  readonly width: number;
  /** A length or a name: kept as text, so that a spreadsheet makes no date of 3/4. */
  readonly asText: boolean;
  readonly allow?: ValidationDescription['allow'];
  /** False where other entries are sound too and a list only helps. */
  readonly strict?: boolean;
}

export interface InputTable {
  readonly name: 'Runs' | 'Openings' | 'Profiles' | 'Stock';
  readonly columns: readonly InputColumn[];
  /** Rows made ready below the headings. */
  readonly rows: number;
}

const yesNo = { kind: 'list', values: ['yes', 'no'] } as const;
const words = (values: readonly string[]) => ({ kind: 'list', values }) as const;
/** Profile names as they stand in Profiles, so that a new one can be chosen at once. */
const profileNames = { kind: 'list from', formula: 'Profiles!$A$2:$A$101' } as const;
const quantity = { kind: 'whole', least: 1, most: MOST_QUANTITY } as const;

const LOOKS: Readonly<Record<string, Partial<Omit<InputColumn, 'heading'>>>> = {
  Room: { width: 18 },
  Run: { width: 26 },
  Wall: { width: 20 },
  Profile: { width: 18 },
  Length: { width: 13 },
  'Measured as': { width: 13, allow: words(MEASURES) },
  Quantity: { width: 10, asText: false, allow: quantity },
  'Left end': { width: 14, allow: words(END_KINDS) },
  'Right end': { width: 14, allow: words(END_KINDS) },
  'Left corner': { width: 12, asText: false },
  'Right corner': { width: 13, asText: false },
  'One piece': { width: 11, allow: yesNo },
  Match: { width: 10 },
  Done: { width: 8, allow: yesNo },
  Note: { width: 52 },
  Kind: { width: 16 },
  'Sides cased': { width: 13, asText: false, allow: { kind: 'whole', least: 1, most: 2 } },
  Make: { width: 13, allow: words(MAKES) },
  Spring: { width: 9, asText: false },
  Species: { width: 16 },
  Class: { width: 8 },
  'Offcut allowance %': { width: 13, asText: false },
  For: { width: 20 },
  Price: { width: 10, asText: false },
  Per: { width: 13, allow: words(PRICE_PER) },
  Have: { width: 8, asText: false, allow: { kind: 'whole', least: 0, most: 100_000 } },
  Buy: { width: 8, allow: yesNo, strict: false },
  Casing: { width: 18, allow: profileNames },
  Apron: { width: 18, allow: profileNames },
  Stool: { width: 18, allow: profileNames },
};

function columnsOf(
  headings: readonly Heading[],
  own: Readonly<Record<string, Partial<Omit<InputColumn, 'heading'>>>> = {},
): InputColumn[] {
  return headings.map(({ heading }) => ({
    heading,
    width: 14,
    asText: true,
    ...LOOKS[heading],
    ...own[heading],
  }));
}

export const INPUT_TABLES: readonly InputTable[] = [
  {
    name: 'Runs',
    rows: 200,
    columns: columnsOf(RUN_HEADINGS, { Profile: { allow: profileNames } }),
  },
  {
    name: 'Openings',
    rows: 40,
    columns: columnsOf(OPENING_HEADINGS, { Kind: { allow: words(OPENING_KINDS) } }),
  },
  { name: 'Profiles', rows: 40, columns: columnsOf(PROFILE_HEADINGS) },
  {
    name: 'Stock',
    rows: 60,
    columns: columnsOf(STOCK_HEADINGS, { Kind: { allow: words(STOCK_KINDS) } }),
  },
];
