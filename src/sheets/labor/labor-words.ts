/** What the labor sheet says in sentences; its headings stand in labor-columns.ts. */
import type { Job } from '../../planning/job.ts';
import { sayWork, type WorkRow } from '../../planning/work/work-row.ts';
import { isService, workNotIncluded } from '../words/say-work.ts';

export const SUBTITLE =
  'For the office. Each hour of the price is a line here: how many of what, times the minutes each. Change the minutes of a kind of work, and hours and prices follow on Production. The counts are those of the other sheets; what each is, the How to sheet says.';

export const SECTIONS = {
  rates: 'What one takes',
  lines: 'What it comes to',
  without: 'Not in the price',
  allowed: 'Lumber by the offcut allowance, and as planned',
} as const;

export const ALLOWED_NOTE =
  'The price goes by the lumber as planned. By the allowance: net and the allowance (a percent of net, not of what is bought), at the least price of the lumber that can be bought; set-up spares are not in it. No time of search moves it.';

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
