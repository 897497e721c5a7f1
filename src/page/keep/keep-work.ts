/** Keeps the work in the browser: a moment after each change, and when the page is left. */
import { fault } from '../../core/faults/fault.ts';
import { sayError } from '../../core/faults/say-error.ts';
import type { BrowserStore } from './browser-store.ts';
import { KEPT_VERSION, type KeptWork, type WorkNow } from './kept-work.ts';

/** While a person types on, nothing is saved. */
export const SETTLE_MS = 800;

export type KeepingState =
  | { readonly kind: 'kept'; readonly at: number }
  | { readonly kind: 'changed' }
  /** Another tab has kept something since; or this browser would not take it. */
  | { readonly kind: 'overtaken' }
  | { readonly kind: 'failed'; readonly message: string };

export interface WorkKeeper {
  /** Something has changed. */
  changed(): void;
  /** Without waiting; true where it is kept. */
  saveNow(): Promise<boolean>;
  /** Whatever another tab has kept gives way to what is here. */
  overrule(): Promise<boolean>;
}

export interface KeeperParts {
  readonly store: BrowserStore;
  readonly take: () => WorkNow;
  /** Of what is in the store; undefined for nothing. */
  readonly lastTurn: number | undefined;
  /** Not while another tab keeps its work: then changes stay here. */
  readonly mayWrite: () => boolean;
  /** Whether no other tab can have kept anything since. */
  readonly isAlone: () => boolean;
  readonly now: () => number;
  readonly tell: (state: KeepingState) => void;
}

export function keepWork(parts: KeeperParts): WorkKeeper {
  const { store, take, mayWrite, isAlone, now, tell } = parts;
  let { lastTurn } = parts;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const due = { now: false };
  let saving: Promise<boolean> = Promise.resolve(true);

  const isDue = (): boolean => due.now;

  function nextRecord(): KeptWork {
    clearTimeout(timer);
    due.now = false;
    const turn = (lastTurn ?? 0) + 1;
    return { version: KEPT_VERSION, turn, savedAt: now(), ...take() };
  }

  async function save(): Promise<boolean> {
    if (!mayWrite()) return false;
    const record = nextRecord();
    const before = lastTurn;
    lastTurn = record.turn;
    const state = await write(record, before);
    if (state.kind === 'kept') {
      if (!isDue()) tell(state);
      return true;
    }
    due.now = true;
    if (lastTurn === record.turn) lastTurn = before;
    tell(state);
    return false;
  }

  async function write(record: KeptWork, before: number | undefined): Promise<KeepingState> {
    try {
      const outcome = await store.write(record, before);
      return outcome === 'written' ? { kind: 'kept', at: record.savedAt } : { kind: 'overtaken' };
    } catch (error) {
      return { kind: 'failed', message: sayNotKept(error) };
    }
  }

  /** One after the other: each knows the turn of the one before. */
  function saveNow(): Promise<boolean> {
    saving = saving.then(save);
    return saving;
  }

  /** What waits for an answer does not come to its end in a page that is gone. */
  function leave(): void {
    if (!isDue() || !mayWrite()) return;
    if (!isAlone()) {
      void save();
      return;
    }
    const record = nextRecord();
    lastTurn = record.turn;
    store.writeAtOnce(record);
  }

  window.addEventListener('pagehide', leave);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') leave();
  });
  return {
    changed: () => {
      if (!isDue()) tell({ kind: 'changed' });
      due.now = true;
      clearTimeout(timer);
      timer = setTimeout(() => void saveNow(), SETTLE_MS);
    },
    saveNow,
    overrule: async () => {
      await saving;
      const there = (await store.read()) as { readonly turn?: number } | undefined;
      lastTurn = there?.turn;
      return saveNow();
    },
  };
}

/** Why this browser keeps nothing, and what to do, in words. */
export function sayNotKept(error: unknown): string {
  const name = error instanceof DOMException ? error.name : '';
  const isFull = name === 'QuotaExceededError';
  const why = sayError(error);
  return fault(isFull ? 'page.storage-full' : 'page.not-kept', 'work', why).message;
}
