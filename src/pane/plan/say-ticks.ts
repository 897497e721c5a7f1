/** What is kept, what is cut, and what became of a planning, in words. */
import { sayCutSticks } from '../../sheets/words/tick-marks.ts';
import type { PlanningState, TicksNow } from '../state/pane-state.ts';

export const BROKEN_OFF =
  'Planning was broken off when this page was left, and nothing of it is kept. Plan the job again.';

export const RECALLED =
  'This plan was kept with the workbook. It is the very plan that was made then, to the cent.';

export const DROP_TICKS = 'Plan all anew, as if nothing were cut';

export const DROPPED =
  'This plan takes nothing as cut: when its sheets are written, the ticks on the old ones go. Have on Stock must be what there is now.';

export const TICKS_LOST =
  'The sheet Cutting was written from another plan than the one that is kept with this workbook, so its ticks can’t be read: a new plan takes nothing as cut. Have on Stock must be what there is now.';

/** `3 of 14 sticks cut or begun: they stay, …`; no ticks are said too, once they are taken off. */
export function sayTicks({ sticksCut, sticks }: TicksNow): string {
  if (sticksCut === 0) return 'No stick is ticked as cut.';
  return `${sayCutSticks(sticksCut, sticks)}: ${sticksCut === 1 ? 'it stays' : 'they stay'} when the job is planned again, and only the rest is planned anew.`;
}

/** That what is ticked now is not what the plan took as cut; undefined while it is, or where nothing is written. */
export function sayNewTicks({ result, written, ticks }: PlanningState): string | undefined {
  if (result === undefined || written === undefined || ticks === undefined) return undefined;
  const { cutKey, keepsCuts } = ticks;
  const isKnown =
    result.plan === written.plan
      ? keepsCuts
      : result.cutKey === cutKey || result.droppedCutKey === cutKey;
  return isKnown
    ? undefined
    : 'Other sticks are ticked as cut now than when this plan was made: plan again before it is written.';
}
