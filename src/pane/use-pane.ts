/** Gives every part of the pane the state, what can be done, and what the pane was given. */
import { createContext, use, useSyncExternalStore } from 'react';
import type { PaneActions } from './actions/pane-actions.ts';
import type { PaneServices } from './services.ts';
import type { PaneState } from './state/pane-state.ts';
import type { PaneStore } from './state/store.ts';

export interface PaneParts {
  readonly store: PaneStore;
  readonly actions: PaneActions;
  readonly services: PaneServices;
}

export const PaneContext = createContext<PaneParts | undefined>(undefined);

export interface Pane {
  readonly state: PaneState;
  readonly send: PaneStore['send'];
  readonly actions: PaneActions;
  readonly services: PaneServices;
}

export function usePane(): Pane {
  const parts = use(PaneContext);
  if (parts === undefined) throw new RangeError('A part of the pane stands outside of it.');
  const { store, actions, services } = parts;
  const state = useSyncExternalStore(store.subscribe, store.get);
  return { state, send: store.send, actions, services };
}
