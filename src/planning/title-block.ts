/**
 * What names a job on every page and in both copies: the rows of its table Job. All may be left out,
 * and none changes a quantity or a price but the deposit, which is a part of what is to be paid.
 */
import { NAMES } from '../core/faults/argument-words.ts';
import type { ArgumentKey } from '../core/faults/argument.ts';
import type { CalendarDay } from '../core/units/calendar-day.ts';

type TitleName = Extract<ArgumentKey, `title.${string}`>;

export interface TitleRow {
  /** By which faults know it. */
  readonly key: TitleName;
  /** As it stands under Setting. */
  readonly name: string;
  readonly holds: 'text' | 'day' | 'percent';
  readonly note: string;
  /** Other words that are read as it. Common practice [C]. */
  readonly also: readonly string[];
}

const row = (
  key: TitleName,
  note: string,
  also: readonly string[] = [],
  holds: TitleRow['holds'] = 'text',
): TitleRow => ({ key, name: NAMES[key], holds, note, also });

export const TITLE_ROWS = {
  job: row('title.job', 'What the job is called', ['project', 'job name', 'project name', 'title']),
  number: row('title.number', 'Of the job or the estimate, as your books have it', [
    ...['no', 'job number', 'job no', 'project number', 'estimate number', 'estimate no'],
    ...['quote number', 'quote no'],
  ]),
  revision: row('title.revision', 'A letter or a number that grows with each change', ['rev']),
  client: row('title.client', 'Whom it is for', ['customer', 'client name', 'customer name']),
  address: row('title.address', 'Where the trim goes', [
    ...['site', 'site address', 'job address', 'location'],
  ]),
  shop: row('title.shop', 'Who makes it: stands over the client’s copy', [
    ...['shop name', 'company', 'firm', 'business'],
  ]),
  preparedBy: row('title.preparedBy', 'Who answers questions about it', [
    ...['estimator', 'estimated by', 'contact'],
  ]),
  date: row(
    'title.date',
    'Of the client’s copy, such as 2026-11-30; blank, the day on which it is planned',
    ['quote date', 'estimate date'],
    'day',
  ),
  terms: row('title.terms', 'How and when to pay, in your words: stands on the client’s copy', [
    ...['payment', 'payment terms', 'terms of payment'],
  ]),
  deposit: row(
    'title.deposit',
    'Of what is to be paid, tax included; blank, no deposit is asked for',
    [],
    'percent',
  ),
} as const satisfies Record<string, TitleRow>;

export type TitleKey = keyof typeof TITLE_ROWS;
type TextKey = Exclude<TitleKey, 'date' | 'deposit'>;

/** Texts that the table doesn't say are empty. */
export type TitleBlock = Readonly<Record<TextKey, string>> & {
  readonly date?: CalendarDay;
  /** Percent of what is to be paid, 0 to 100. */
  readonly deposit?: number;
};

export const NO_TITLE: TitleBlock = {
  job: '',
  number: '',
  revision: '',
  client: '',
  address: '',
  shop: '',
  preparedBy: '',
  terms: '',
};
