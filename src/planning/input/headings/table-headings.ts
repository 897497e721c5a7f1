/** The headings of each of a job's tables, in the order in which they stand on a blank sheet. */
import type { Heading } from './heading.ts';
import { HOURS_HEADINGS } from './hours-headings.ts';
import { OPENING_HEADINGS } from './opening-headings.ts';
import { OPTION_HEADINGS } from './option-headings.ts';
import { PROFILE_HEADINGS } from './profile-headings.ts';
import { RUN_HEADINGS } from './run-headings.ts';
import { SHOP_HEADINGS } from './shop-headings.ts';
import { STOCK_HEADINGS } from './stock-headings.ts';
import { TITLE_HEADINGS } from './title-headings.ts';
import { TRIM_HEADINGS } from './trim-headings.ts';
import { WALL_HEADINGS } from './wall-headings.ts';
import { WORK_HEADINGS } from './work-headings.ts';

type Name =
  | 'Runs'
  | 'Walls'
  | 'Trim'
  | 'Openings'
  | 'Profiles'
  | 'Shop'
  | 'Stock'
  | 'Work'
  | 'Options'
  | 'Job'
  | 'Hours';

export const TABLE_HEADINGS: Readonly<Record<Name, readonly Heading[]>> = {
  Runs: RUN_HEADINGS,
  Walls: WALL_HEADINGS,
  Trim: TRIM_HEADINGS,
  Openings: OPENING_HEADINGS,
  Profiles: PROFILE_HEADINGS,
  Shop: SHOP_HEADINGS,
  Stock: STOCK_HEADINGS,
  Work: WORK_HEADINGS,
  Options: OPTION_HEADINGS,
  Job: TITLE_HEADINGS,
  Hours: HOURS_HEADINGS,
};
