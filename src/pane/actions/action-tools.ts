/** What every action is given, and how it tells of what went wrong. */
import type { Argument } from '../../core/faults/argument.ts';
import type { Outcome } from '../../core/faults/fault.ts';
import { sayError } from '../../core/faults/say-error.ts';
import type { Planner, Writer } from '../planner.ts';
import type { PaneServices } from '../services.ts';
import type { PaneStore } from '../state/store.ts';
import { fault } from '../../core/faults/fault.ts';

export interface ActionTools {
  readonly store: PaneStore;
  readonly services: PaneServices;
  /** The planner; where it can't be loaded, that is said and undefined comes back. */
  readonly planner: () => Promise<Planner | undefined>;
  /** The same of what makes sheets and files of a plan. */
  readonly writer: () => Promise<Writer | undefined>;
  /** The value of what a host did; its faults are shown and undefined comes back. */
  readonly accept: <T>(outcome: Outcome<T>) => { readonly value: T } | undefined;
  /** Runs an action; an exception is a bug of ours, and the pane says so. */
  readonly run: (action: () => Promise<void>) => Promise<void>;
}

export function makeTools(store: PaneStore, services: PaneServices): ActionTools {
  return {
    store,
    services,
    planner: () => load(store, 'planner', services.loadPlanner),
    writer: () => load(store, 'writer', async () => (await services.loadPlanner()).loadWriter()),
    accept: (outcome) => {
      if (outcome.ok) return { value: outcome.value };
      store.send({ type: 'trouble', faults: outcome.faults });
      return undefined;
    },
    run: async (action) => {
      try {
        await action();
      } catch (error) {
        store.send({ type: 'bug found', what: sayError(error) });
      }
    },
  };
}

/** Loads what comes over the network: that it doesn't is no bug of ours, but a RangeError is. */
export async function load<T>(
  store: PaneStore,
  argument: Argument,
  loader: () => Promise<T>,
): Promise<T | undefined> {
  try {
    return await loader();
  } catch (error) {
    if (error instanceof RangeError) throw error;
    const one = fault('pane.not-loaded', argument, sayError(error));
    store.send({ type: 'trouble', faults: [one] });
    return undefined;
  }
}
