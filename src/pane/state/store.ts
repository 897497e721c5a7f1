/** Keeps the one state and tells who listens; knows no React, so that tests drive it in Node. */
import type { PaneEvent } from './pane-event.ts';
import { INITIAL_STATE, type PaneState } from './pane-state.ts';
import { reduce } from './reduce.ts';

export interface PaneStore {
  readonly get: () => PaneState;
  readonly send: (event: PaneEvent) => void;
  /** Calls `changed` after each change; returns what ends it. */
  readonly subscribe: (changed: () => void) => () => void;
}

export function createStore(initial: PaneState = INITIAL_STATE): PaneStore {
  let state = initial;
  const listeners = new Set<() => void>();
  return {
    get: () => state,
    send: (event) => {
      const next = reduce(state, event);
      if (next === state) return;
      state = next;
      for (const listener of [...listeners]) listener();
    },
    subscribe: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
  };
}
