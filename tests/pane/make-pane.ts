/** A pane without a page: its store and actions beside a workbook in memory. */
import { planner } from '../../src/browser/load-planner.ts';
import { printDocument } from '../../src/browser/print/print-document.ts';
import type { WorkbookHost } from '../../src/hosts/host.ts';
import { makeActions, type PaneActions } from '../../src/pane/actions/pane-actions.ts';
import type { PaneServices } from '../../src/pane/services.ts';
import { createStore, type PaneStore } from '../../src/pane/state/store.ts';
import { own } from '../../src/core/faults/argument.ts';
import { failed, fault, ok } from '../../src/core/faults/fault.ts';
import type { RawTable } from '../../src/planning/input/raw-table.ts';
import { DEMO_FOLDER, folderTables, tablesOf } from '../planning/make-job.ts';
import { memoryHost, sheetOf, type MemoryHost } from './memory-host.ts';

export interface TestPane {
  readonly store: PaneStore;
  readonly actions: PaneActions;
  /** Names of the files that were handed out. */
  readonly saved: string[];
  /** Resolves when the pane has found, read and judged what there is. */
  readonly ready: () => Promise<void>;
}

export const DEMO_TABLES: readonly RawTable[] = tablesOf(folderTables(DEMO_FOLDER));

export function demoHost(): MemoryHost {
  return memoryHost(DEMO_TABLES.map(sheetOf));
}

export function makePane(
  host: WorkbookHost | undefined,
  others: Partial<PaneServices> = {},
): TestPane {
  const saved: string[] = [];
  const store = createStore();
  const actions = makeActions(store, {
    host: Promise.resolve(host === undefined ? { why: 'plain page' } : { host }),
    openFile: () => Promise.resolve(ok(demoHost())),
    readOther: (name) => Promise.resolve(failed(fault('compare.no-plan', own(name), null))),
    makeFile: () => Promise.resolve(new Uint8Array([1])),
    layPages: (...given) => Promise.resolve(printDocument(...given)),
    makeZip: () => Promise.resolve(new Uint8Array([2])),
    clock: () => new Date(2026, 10, 30, 9, 12),
    saveFile: (name) => void saved.push(name),
    loadPlanner: () => Promise.resolve(planner),
    loadDemo: () => Promise.resolve(DEMO_TABLES),
    functions: [],
    darkTheme: Promise.resolve(undefined),
    visit: { get: () => undefined, set: () => undefined },
    preferences: { get: () => undefined, set: () => undefined },
    ...others,
  });
  const ready = async (): Promise<void> => {
    actions.begin();
    await untilRest(store);
  };
  return { store, actions, saved, ready };
}

/** Until the workbook is known and, where there is one, read or found unreadable. */
async function untilRest(store: PaneStore): Promise<void> {
  for (let turn = 0; turn < 1000; turn++) {
    await new Promise((resolve) => setTimeout(resolve));
    const { workbook, reading, bug } = store.get();
    if (bug !== undefined || workbook.kind === 'none' || (reading.turn > 0 && !reading.busy))
      return;
  }
  throw new RangeError('The pane does not come to rest.');
}
