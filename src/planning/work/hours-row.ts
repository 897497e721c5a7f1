/** What a job took in truth, a row of Hours. */
import type { Where } from '../../core/faults/fault.ts';
import type { CalendarDay } from '../../core/units/calendar-day.ts';

export const HOURS_CELLS = ['workDone', 'profile', 'hours'] as const;
export type HoursCell = (typeof HOURS_CELLS)[number];

export interface HoursRow {
  readonly day?: CalendarDay;
  /** A kind of work; absent: all that is in the job's price. */
  readonly work?: string;
  /** Absent: all of the job's. */
  readonly profile?: string;
  /** More than 0. */
  readonly hours: number;
  readonly cells: Readonly<Record<HoursCell, Where>>;
}
