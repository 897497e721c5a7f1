/** Whether plan and written sheets are still those of the inputs, in words for pane, page and paper. */
import { sayMoment } from '../../core/units/calendar-day.ts';
import type { JobFound } from '../job/job-found.ts';
import type { PaneState } from '../state/pane-state.ts';

/** That the inputs are no longer those of the plan, or of the written sheets; undefined while they are. */
export function sayStale({ reading, planning }: PaneState): string | undefined {
  const { found } = reading;
  const { result } = planning;
  if (found === undefined) return undefined;
  if (areSheetsBehind(found)) return sayBehind(found);
  return result === undefined || result.fingerprint === found.fingerprint
    ? undefined
    : 'The inputs have changed since this plan: plan again before it is written.';
}

/** Whether sheets stand in the workbook that were written from other inputs. */
export function areSheetsBehind({ fingerprint, writtenFrom, survey }: JobFound): boolean {
  const isWritten = writtenFrom !== undefined && survey.sheets.some(({ ours }) => ours);
  return isWritten && writtenFrom !== fingerprint;
}

export function sayBehind({ writtenAt }: Pick<JobFound, 'writtenAt'>): string {
  const when = writtenAt === undefined ? '' : ` (${sayMoment(writtenAt)})`;
  return `The inputs have changed since the sheets were written${when}: plan and write them again before anybody cuts by them.`;
}

/** Of each printed page of such a sheet. */
export function behindMark({ writtenAt }: Pick<JobFound, 'writtenAt'>): string {
  const when = writtenAt === undefined ? 'an earlier time' : sayMoment(writtenAt);
  return `Written from inputs of ${when}; inputs have changed since`;
}
