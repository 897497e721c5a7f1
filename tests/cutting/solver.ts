/** HiGHS, loaded once a test file. */
import type { Highs, InitOptions } from 'highs';

let loading: Promise<Highs> | undefined;

export function loadSolver(): Promise<Highs> {
  loading ??= load();
  return loading;
}

/** The package's types are written for require; what it gives to import is the loader itself. */
async function load(): Promise<Highs> {
  const { default: loadHighs } = (await import('highs')) as unknown as {
    readonly default: (options?: InitOptions) => Promise<Highs>;
  };
  return loadHighs();
}
