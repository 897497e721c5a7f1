/** What was kept from the last visit, and from then on the keeping, with whatever stands in its way. */
import type { IWorkbookData } from '@univerjs/core';
import { saveFile } from '../../browser/save-file.ts';
import { fault } from '../../core/faults/fault.ts';
import { sayKept } from '../shell/bar.ts';
import { dropNotice, showNotice } from '../shell/notices.ts';
import { openBrowserStore, type BrowserStore } from './browser-store.ts';
import { keepWork, sayNotKept, type KeepingState, type WorkKeeper } from './keep-work.ts';
import { readKept, type KeptReading, type WorkNow } from './kept-work.ts';
import { takeTurn } from './one-tab.ts';

const NOTICE = 'keeping';

export interface LastVisit {
  /** The workbook that was kept, where it can be opened. */
  readonly data: IWorkbookData | undefined;
  readonly touched: boolean;
  /** Keeps what `take` gives from now on; undefined where this browser keeps nothing. */
  readonly keep: (take: () => WorkNow, save: () => void) => Keeping | undefined;
}

export interface Keeping {
  readonly changed: () => void;
  /** Whether what is here would be lost with the page. */
  readonly isBehind: () => boolean;
  /** At once; true where what is here is kept. */
  readonly keepNow: () => Promise<boolean>;
}

/** Never rejects: without storage the page works, and says so. */
export async function readLastVisit(): Promise<LastVisit> {
  try {
    const store = await openBrowserStore();
    const record = await store.read();
    const reading = readKept(record);
    let free: () => void = () => undefined;
    const tab = await takeTurn(() => free());
    const state = { tab, held: reading.kind === 'newer' || reading.kind === 'damaged' };
    return {
      ...workOf(reading),
      keep: (take, save) => {
        const keeping = startKeeping(store, reading, state, take, save);
        if (state.held) offerHeld(reading, record, keeping);
        free = keeping.free;
        return keeping;
      },
    };
  } catch (error) {
    return {
      data: undefined,
      touched: false,
      keep: (_, save) => {
        sayFailed(sayNotKept(error), save);
        return undefined;
      },
    };
  }
}

function workOf(reading: KeptReading): Pick<LastVisit, 'data' | 'touched'> {
  return reading.kind === 'work' ? reading.work : { data: undefined, touched: false };
}

interface StartedKeeping extends Keeping {
  readonly keeper: WorkKeeper;
  /** The other tab is closed. */
  readonly free: () => void;
  /** What stood in the way may be written over now. */
  readonly release: () => void;
}

function startKeeping(
  store: BrowserStore,
  reading: KeptReading,
  state: { tab: 'here' | 'elsewhere' | 'unknown'; held: boolean },
  take: () => WorkNow,
  save: () => void,
): StartedKeeping {
  let isBehind = false;
  const tell = (now: KeepingState): void => {
    isBehind = now.kind === 'failed' || now.kind === 'overtaken';
    sayState(now);
    if (now.kind === 'kept') dropNotice(NOTICE);
    if (now.kind === 'failed') sayFailed(now.message, save);
    if (now.kind === 'overtaken') sayElsewhere(save, () => void keeper.overrule());
  };
  const keeper = keepWork({
    store,
    take,
    lastTurn: reading.kind === 'work' ? reading.work.turn : undefined,
    mayWrite: () => state.tab !== 'elsewhere' && !state.held,
    isAlone: () => state.tab === 'here',
    now: () => Date.now(),
    tell,
  });
  if (state.tab === 'elsewhere') sayElsewhere(save);
  else if (reading.kind === 'work') sayState({ kind: 'kept', at: reading.work.savedAt });
  return {
    keeper,
    changed: () => {
      isBehind = state.tab === 'elsewhere' || state.held;
      if (isBehind) sayKept('Not kept in this browser');
      else keeper.changed();
    },
    isBehind: () => isBehind,
    keepNow: () => keeper.saveNow(),
    free: () => {
      sayFree(() => {
        state.tab = 'here';
        void keeper.overrule();
      });
    },
    release: () => {
      state.held = false;
      void keeper.overrule();
    },
  };
}

function sayState(state: KeepingState): void {
  if (state.kind === 'kept') {
    const time = new Date(state.at).toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' });
    sayKept(`Kept in this browser at ${time}`);
  } else if (state.kind === 'changed') sayKept('Keeping…');
  else sayKept('Not kept in this browser');
}

function sayFailed(message: string, save: () => void): void {
  sayKept('Not kept in this browser');
  showNotice(NOTICE, {
    kind: 'problem',
    says: [message],
    choices: [{ name: 'save', label: 'Download', first: true }],
    onChoose: save,
    stays: true,
  });
}

/** @param overrule Where nothing but its record tells of the other tab, which may be gone by now. */
function sayElsewhere(save: () => void, overrule?: () => void): void {
  sayKept('Not kept in this browser');
  showNotice<'save' | 'overrule'>(NOTICE, {
    kind: 'problem',
    says: [fault('page.open-elsewhere', 'page', null).message],
    choices: [
      { name: 'save', label: 'Download', first: true },
      ...(overrule === undefined
        ? []
        : [{ name: 'overrule', label: 'Keep what is here instead' } as const]),
    ],
    onChoose: (name) => (name === 'save' ? save() : overrule?.()),
    stays: true,
  });
}

function sayFree(overrule: () => void): void {
  showNotice<'load' | 'here'>(NOTICE, {
    kind: 'caution',
    says: ['The other tab is closed. Go on with what it kept, or with what is here.'],
    choices: [
      { name: 'load', label: 'Load what it kept', first: true },
      { name: 'here', label: 'Keep what is here' },
    ],
    onChoose: (name) => (name === 'load' ? window.location.reload() : overrule()),
    stays: true,
  });
}

/** A record that can't be opened stays until the person gives it up. */
function offerHeld({ kind }: KeptReading, record: unknown, { release }: StartedKeeping): void {
  const code = kind === 'newer' ? 'page.kept-newer' : 'page.kept-damaged';
  sayKept('Not kept in this browser');
  showNotice<'save' | 'over'>('held', {
    kind: 'problem',
    says: [fault(code, 'work', null).message],
    choices: [
      { name: 'save', label: 'Save it as it is', first: true },
      { name: 'over', label: 'Start over' },
    ],
    onChoose: (name) => {
      if (name === 'save') {
        saveFile('coveledger-kept.json', new TextEncoder().encode(JSON.stringify(record)));
        return;
      }
      dropNotice('held');
      release();
    },
    stays: true,
  });
}
