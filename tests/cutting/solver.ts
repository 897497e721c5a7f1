/** HiGHS, loaded once a test file. */
import loadHighs, { type Highs } from 'highs';

let loading: Promise<Highs> | undefined;

export function loadSolver(): Promise<Highs> {
  loading ??= loadHighs({});
  return loading;
}
