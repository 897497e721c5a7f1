/**
 * Worksheet functions over ranges of 10,000 rows with lengths typed as text, beside as many calls of
 * a single cell; and the sticks of a long list of pieces.
 */
import { CATALOGUE } from '../../build/functions/catalogue.js';
import { bestOf } from './seeded.mjs';

const ROWS = 10_000;
const RUNS = 3;
const AIM_SECONDS = 1;

const column = (cell) => Array.from({ length: ROWS }, (_, row) => [cell(row)]);
const widths = column((row) => `${2 + (row % 3)} ${1 + (row % 15)}/16`);
const depths = column((row) => `${4 + (row % 5)}/8"`);
const offCenters = column((row) => `${row % 6}/16`);
const diameters = column((row) => (row % 2 === 0 ? '9 7/8' : '250 mm'));
const kerfs = column((row) => (row % 2 === 0 ? '1/8' : '3/32'));
const cove = [widths, depths, offCenters, diameters, kerfs];

const CALLS = {
  APPROACH: cove,
  TILT: cove,
  SETUP: cove,
  FEASIBLE: cove,
  REASON: cove,
  PASSES: [depths],
  CUT: [column((row) => 20 + (row % 40)), column((row) => row % 45), depths, diameters, kerfs],
  CROWNMITER: [column((row) => 30 + (row % 30)), column((row) => 80 + (row % 60))],
  BOARDFEET: [depths, widths, column((row) => `${row % 16}' 4 3/8"`)],
  INCHES: [widths],
  INCHTEXT: [widths],
};

function time(id, ranges) {
  const entry = CATALOGUE.find((one) => one.id === id);
  const range = bestOf(RUNS, () => {
    if (entry.call(...ranges).length !== ROWS) throw new Error(`${id} lost rows.`);
  });
  const singles = bestOf(1, () => {
    for (let row = 0; row < ROWS; row += 1) entry.call(...ranges.map((cells) => [cells[row]]));
  });
  return {
    what: `COVE.${id}, ${ROWS} rows`,
    seconds: +(range / 1000).toFixed(3),
    'single calls s': +(singles / 1000).toFixed(3),
    'single / range': +(singles / range).toFixed(1),
    aim: `under ${AIM_SECONDS} s: ${range < AIM_SECONDS * 1000 ? 'met' : 'missed'}`,
  };
}

function timeSticks() {
  const { call } = CATALOGUE.find((one) => one.id === 'STICKS');
  const pieces = column((row) => `${10 + ((row * 37) % 90)} ${row % 16}/16`);
  const seconds = (list) => bestOf(RUNS, () => call(list, [["16'"]])) / 1000;
  const [tenth, all] = [seconds(pieces.slice(0, ROWS / 10)), seconds(pieces)];
  return {
    what: `COVE.STICKS, ${ROWS} pieces`,
    seconds: +all.toFixed(3),
    'times a tenth of them': +(all / tenth).toFixed(1),
    aim: `under ${AIM_SECONDS} s: ${all < AIM_SECONDS ? 'met' : 'missed'}`,
  };
}

export function bench() {
  return [...Object.entries(CALLS).map(([id, ranges]) => time(id, ranges)), timeSticks()];
}
