import type { PaneState } from './pane-state.ts';

/** Whether a planning or a writing runs: another must not begin beside it. */
export function isOccupied({ planning, writing }: PaneState): boolean {
  return planning.running !== undefined || writing.kind === 'writing';
}
