/** Puts the pane on the page at once; the workbook, the planner and the demo follow in their time. */
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import type { WorkbookHost } from '../hosts/host.ts';
import { SECONDS_PREFERENCE } from './actions/plan-job.ts';
import { makeActions } from './actions/pane-actions.ts';
import { Pane } from './pane.tsx';
import type { PaneServices } from './services.ts';
import { INITIAL_STATE, TABS } from './state/pane-state.ts';
import { createStore } from './state/store.ts';
import { PaneContext } from './use-pane.ts';

export interface StartedPane {
  /** Goes over to another workbook: nothing of the one before stays. */
  readonly standBeside: (host: WorkbookHost) => void;
  /** Whether leaving now would break a planning off. */
  readonly isPlanning: () => boolean;
}

export function startPane(element: HTMLElement, services: PaneServices): StartedPane {
  const kept = services.preferences.get('tab');
  const tab = TABS.find((one) => one === kept) ?? INITIAL_STATE.tab;
  const seconds = services.preferences.get(SECONDS_PREFERENCE) ?? INITIAL_STATE.planning.seconds;
  const planning = { ...INITIAL_STATE.planning, seconds };
  const store = createStore({ ...INITIAL_STATE, tab, planning });
  const actions = makeActions(store, services);
  createRoot(element).render(
    <StrictMode>
      <PaneContext value={{ store, actions, services }}>
        <Pane />
      </PaneContext>
    </StrictMode>,
  );
  const end = actions.begin();
  window.addEventListener('pagehide', end, { once: true });
  return {
    standBeside: (host) => void actions.standBeside(host),
    isPlanning: () => store.get().planning.running !== undefined,
  };
}
