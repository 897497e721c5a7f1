/** The headings of each of a job's tables, in the order in which they stand on a blank sheet. */
import { OPENING_HEADINGS } from './read-openings.ts';
import { PROFILE_HEADINGS } from './read-profiles.ts';
import type { Heading } from './read-rows.ts';
import { RUN_HEADINGS } from './read-runs.ts';
import { SHOP_HEADINGS } from './read-shop.ts';
import { STOCK_HEADINGS } from './read-stock.ts';
import type { JobTableName } from './read-job.ts';

export const TABLE_HEADINGS: Readonly<Record<JobTableName, readonly Heading[]>> = {
  Runs: RUN_HEADINGS,
  Openings: OPENING_HEADINGS,
  Profiles: PROFILE_HEADINGS,
  Shop: SHOP_HEADINGS,
  Stock: STOCK_HEADINGS,
};
