import type { PaneState } from '../state/pane-state.ts';

/** That the inputs are no longer those of the plan, or of the written sheets; undefined while they are. */
export function sayStale({ reading, planning }: PaneState): string | undefined {
  const { found } = reading;
  const { result } = planning;
  if (found === undefined) return undefined;
  const { fingerprint, writtenFrom, survey } = found;
  const isWritten = writtenFrom !== undefined && survey.sheets.some(({ ours }) => ours);
  if (isWritten && writtenFrom !== fingerprint) {
    return 'The inputs have changed since the sheets were written: plan and write them again before anybody cuts by them.';
  }
  return result === undefined || result.fingerprint === fingerprint
    ? undefined
    : 'The inputs have changed since this plan: plan again before it is written.';
}
