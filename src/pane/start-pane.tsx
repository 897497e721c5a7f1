/** Puts the pane on the page at once; the workbook, the planner and the demo follow in their time. */
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import type { Fault } from '../core/faults/fault.ts';
import type { LengthReading } from '../core/units/length.ts';
import type { WorkbookHost } from '../hosts/host.ts';
import { SECONDS_PREFERENCE } from './actions/plan-job.ts';
import { makeActions } from './actions/pane-actions.ts';
import { Pane } from './pane.tsx';
import type { PaneServices } from './services.ts';
import { areSheetsBehind, behindMark, sayBehind } from './plan/say-stale.ts';
import { INITIAL_STATE, TABS } from './state/pane-state.ts';
import { createStore } from './state/store.ts';
import { PaneContext } from './use-pane.ts';

export interface StartedPane {
  /** Goes over to another workbook: nothing of the one before stays. */
  readonly standBeside: (host: WorkbookHost) => void;
  /** Whether leaving now would break a planning off. */
  readonly isPlanning: () => boolean;
  /** Reads the inputs as they are now; undefined where the written sheets are of them, or none are. */
  readonly findBehind: () => Promise<SheetsBehind | undefined>;
  /** Calls `hear` when the written sheets fall behind the inputs, and when they no longer are. */
  readonly watchBehind: (hear: (behind: SheetsBehind | undefined) => void) => void;
  /** Calls `hear` with what must change in the workbook, each time its job was read. */
  readonly watchFaults: (hear: (faults: readonly Fault[]) => void) => void;
  /** How the shop reads a bare number; undefined before its job was read. */
  readonly lengthReading: () => LengthReading | undefined;
  readonly showPlan: () => void;
  /** Shows the plan over the page as it is for the saw; where it can't be, the Plan tab says why. */
  readonly showAtSaw: () => void;
}

/** Sheets that were written from other inputs than there are now. */
export interface SheetsBehind {
  readonly says: string;
  /** For each of their printed pages. */
  readonly mark: string;
}

export function startPane(element: HTMLElement, services: PaneServices): StartedPane {
  const kept = services.preferences.get('tab');
  const chosen = TABS.find((one) => one === kept);
  const isFirstVisit = services.page?.isFirstVisit === true;
  const first = isFirstVisit ? 'profile' : INITIAL_STATE.tab;
  const isTabChosen = chosen !== undefined && !isFirstVisit;
  const tab = isTabChosen ? chosen : first;
  const seconds = services.preferences.get(SECONDS_PREFERENCE) ?? INITIAL_STATE.planning.seconds;
  const planning = { ...INITIAL_STATE.planning, seconds };
  const store = createStore({ ...INITIAL_STATE, tab, isTabChosen, planning });
  const actions = makeActions(store, services);
  createRoot(element).render(
    <StrictMode>
      <PaneContext value={{ store, actions, services }}>
        <Pane />
      </PaneContext>
    </StrictMode>,
  );
  const end = actions.begin();
  const endCounting = actions.keepCounted();
  const leave = (): void => {
    endCounting();
    end();
  };
  window.addEventListener('pagehide', leave, { once: true });
  const behind = (): SheetsBehind | undefined => {
    const { found } = store.get().reading;
    return found !== undefined && areSheetsBehind(found)
      ? { says: sayBehind(found), mark: behindMark(found) }
      : undefined;
  };
  return {
    standBeside: (host) => void actions.standBeside(host),
    isPlanning: () => store.get().planning.running !== undefined,
    findBehind: async () => {
      await actions.checkAgain();
      return behind();
    },
    watchBehind: (hear) => {
      let before: string | undefined;
      store.subscribe(() => {
        const now = behind();
        if (now?.says === before) return;
        before = now?.says;
        hear(now);
      });
    },
    watchFaults: (hear) => {
      let before: readonly Fault[] | undefined;
      store.subscribe(() => {
        const now = store.get().reading.found?.faults;
        if (now === before) return;
        before = now;
        hear(now ?? []);
      });
    },
    lengthReading: () => store.get().reading.found?.shop,
    showPlan: () => store.send({ type: 'tab chosen', tab: 'plan' }),
    showAtSaw: () => {
      store.send({ type: 'tab chosen', tab: 'plan' });
      void actions.showShopView();
    },
  };
}
