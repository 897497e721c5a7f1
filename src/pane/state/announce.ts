import type { PaneState } from './pane-state.ts';

/** Has a screen reader say a text once, when it comes to it. */
export function announce(state: PaneState, text: string): PaneState {
  return { ...state, announcement: { turn: state.announcement.turn + 1, text } };
}
