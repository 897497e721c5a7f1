/**
 * The longest suites first, so that no worker is left alone with one at the end. Where there are times
 * of an earlier run they order the rest; a fresh machine has none and would go by the size of the files.
 */
import Sequencer from '@jest/test-sequencer';

const LONGEST = [
  'browser/grid-host',
  'browser/page-keeping',
  'sheets/printed-plan',
  'browser/pane-looks',
  'browser/grid-functions',
  'sheets/recalculated',
  'browser/pane-failures',
  'browser/page',
  'cli/cli',
];

const placeOf = ({ path }) => {
  const place = LONGEST.findIndex((name) => path.replaceAll('\\', '/').endsWith(`${name}.test.ts`));
  return place < 0 ? LONGEST.length : place;
};

export default class LongSuitesFirst extends Sequencer {
  sort(tests) {
    return [...super.sort(tests)].sort((one, other) => placeOf(one) - placeOf(other));
  }
}
