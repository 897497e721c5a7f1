/** What the labor sheet says in sentences; its headings stand in labor-columns.ts. */
import type { Job } from '../../planning/job.ts';
import type { PriceBasis } from '../../planning/settings/money-settings.ts';
import { sayWork, type WorkRow } from '../../planning/work/work-row.ts';
import { isService, workNotIncluded } from '../words/say-work.ts';

const BASIS_SAYS: Readonly<Record<PriceBasis, string>> = {
  plan: 'The price goes by the counts as planned; those by the offcut allowance stand beside them.',
  allowance:
    'The price goes by the counts by the offcut allowance; those as planned are what the shop does.',
};

export function saySubtitle({ priceBasis }: Pick<Job['shop'], 'priceBasis'>): string {
  return `Each hour of the price is a line: how many of what, times the minutes each. Change these, and hours and prices follow on Production and Office. ${BASIS_SAYS[priceBasis]}`;
}

export const SECTIONS = {
  rates: 'What one takes',
  lines: 'What it comes to',
  without: 'Not in the price',
} as const;

export const WHOLE_JOB = 'The whole job';
export const NO_LINES = 'Nothing is left to do.';

/** In sentences, for the office. */
export function sayNotIncluded(job: Pick<Job, 'work'>): string[] {
  const { said, unsaid } = workNotIncluded(job);
  const list = (rows: readonly WorkRow[]): string => rows.map(sayWork).join('; ');
  return [
    ...(said.length === 0 ? [] : [`By Work not in the price: ${list(said)}.`]),
    ...(unsaid.length === 0
      ? []
      : [
          `Without a row in Work, so that no time is counted for it: ${list(unsaid)}. Of these the client’s copy names as not covered: ${listServices(unsaid)}.`,
        ]),
  ];
}

function listServices(rows: readonly WorkRow[]): string {
  const services = rows.filter(isService);
  return services.length === 0 ? 'nothing' : services.map(({ work }) => work).join('; ');
}
