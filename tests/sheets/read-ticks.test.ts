import { expect, test } from '@jest/globals';
import type { RawCell, RawRow } from '../../src/planning/input/raw-table.ts';
import { cutKey, NO_TICKS, type Ticks } from '../../src/planning/cut/cut-already.ts';
import { markCut } from '../../src/planning/cut/cut-from-plan.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { readTicks as readTicksOf, type TickedSheets } from '../../src/sheets/read-ticks.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import { planOf } from '../planning/make-job.ts';
import { JOBS, rawRowsOf, sheetOf } from './sheet-jobs.ts';

function readTicks(plan: JobPlan, sheets: TickedSheets): Ticks {
  const ticks = readTicksOf(plan, sheets);
  if (ticks === undefined) throw new Error('The sheets are of another plan.');
  return ticks;
}

function sheetsOf(plan: JobPlan) {
  const workbook = describePlan(plan);
  const rowsOf = (name: string): RawRow[] => rawRowsOf(sheetOf(workbook, name));
  return { cutting: rowsOf('Cutting'), pieces: rowsOf('Pieces') };
}

/** With a cell put into the first row that `is` finds. */
function put(rows: readonly RawRow[], column: number, cell: RawCell, is: (row: RawRow) => boolean) {
  const at = rows.findIndex(is);
  expect(at).toBeGreaterThan(0);
  return rows.map((row, index) => {
    const cells = [...row.cells];
    if (index === at) cells[column] = cell;
    return index === at ? { ...row, cells } : row;
  });
}

function sorted({ sticks, cuts, pieces }: Ticks): unknown {
  return [sticks, cuts, pieces].map((set) => [...set].sort());
}

test.each(['demo', 'hostile', 'millimetres'])(
  'What is written as cut is read as cut, by stick and by piece: %s',
  async (name) => {
    const plan = await planOf(JOBS[name]!);
    expect(sorted(readTicks(plan, sheetsOf(plan)))).toEqual(sorted(NO_TICKS));
    const sticks = plan.profiles.flatMap((one) => one.sticks);
    const whole = sticks.filter((_, at) => at % 3 === 0).map(({ id }) => id);
    const begun = sticks.find(({ pieces, id }) => pieces.length > 1 && !whole.includes(id));
    const cuts = begun === undefined ? [] : [cutKey(begun.id, 2)];
    const marked = markCut(plan, { ...NO_TICKS, sticks: new Set(whole), cuts: new Set(cuts) });
    const read = readTicks(marked, sheetsOf(marked));
    expect([...read.sticks].sort()).toEqual(whole.sort());
    for (const one of cuts) expect(read.cuts).toContain(one);
    expect(read.pieces.size).toBe(0);
    const again = markCut(plan, read);
    expect(again.profiles).toEqual(marked.profiles);
  },
);

test('A cross, a date, initials and true are ticks; a no, a blank and false are none', async () => {
  const plan = await planOf(JOBS['demo']!);
  const { cutting, pieces } = sheetsOf(plan);
  const [stick] = plan.profiles[0]!.sticks;
  const number = `${stick!.id.slice(plan.profiles[0]!.profile.name.length + 1)} `;
  const named = (cell: RawCell | null | undefined): boolean =>
    typeof cell === 'string' && cell.startsWith(number);
  const isStick = ({ cells }: RawRow): boolean =>
    cells.includes(plan.profiles[0]!.profile.name) && cells.some(named);
  const box = cutting.find(isStick)!.cells.findIndex(named) - 1;
  const read = (cell: RawCell): boolean =>
    readTicks(plan, { cutting: put(cutting, box, cell, isStick), pieces }).sticks.has(stick!.id);
  const yes: RawCell[] = ['x', '✓', 'JB', true, 1, { kind: 'date' }];
  const no: RawCell[] = [null, '', ' no ', false, 0, '-', { kind: 'error', text: '#N/A' }];
  expect(yes.map(read)).toEqual(yes.map(() => true));
  expect(no.map(read)).toEqual(no.map(() => false));
});

test('A piece that is done on Pieces is read by room, run and number, in whatever order they stand', async () => {
  const plan = await planOf(JOBS['demo']!);
  const { cutting, pieces } = sheetsOf(plan);
  const heads = pieces.find(({ cells }) => cells.includes('Done'))!;
  const [done, room, run, piece] = ['Done', 'Room', 'Run', 'Piece'].map((one) =>
    heads.cells.indexOf(one),
  ) as [number, number, number, number];
  const wanted = plan.pieces.find((piece) => !piece.done && piece.number === 2)!;
  const ticked = put(
    pieces,
    done,
    'x',
    ({ cells }) => cells[room] === wanted.room && cells[run] === wanted.run && cells[piece] === 2,
  );
  const at = ticked.indexOf(ticked.find(({ cells }) => cells.includes('Done'))!);
  const turned = [...ticked.slice(0, at + 1), ...ticked.slice(at + 1).reverse()];
  for (const rows of [ticked, turned]) {
    expect([...readTicks(plan, { cutting, pieces: rows }).pieces]).toEqual([wanted.id]);
  }
});

test('A column put in before the boxes does no harm, and sheets that are gone have no ticks', async () => {
  const plan = await planOf(JOBS['demo']!);
  const [stick] = plan.profiles[0]!.sticks;
  const marked = markCut(plan, { ...NO_TICKS, sticks: new Set([stick!.id]) });
  const { cutting, pieces } = sheetsOf(marked);
  const shifted = cutting.map(({ line, cells }) => ({ line, cells: [null, ...cells] }));
  expect([...readTicks(plan, { cutting: shifted, pieces }).sticks]).toEqual([stick!.id]);
  expect(sorted(readTicks(plan, { cutting: [], pieces: [] }))).toEqual(sorted(NO_TICKS));
});

test('Sheets of another plan are not taken for those of this one', async () => {
  const runs = (first: number): string =>
    `Room,Run,Profile,Length\nHall,a,Base,${first}\nHall,b,Base,150`;
  const plan = await planOf({ runs: runs(100) });
  const other = await planOf({ runs: runs(180) });
  expect(readTicksOf(plan, sheetsOf(plan))).toBeDefined();
  expect(readTicksOf(plan, sheetsOf(other))).toBeUndefined();
  const fewer = await planOf({ runs: 'Room,Run,Profile,Length\nHall,a,Base,100' });
  expect(readTicksOf(fewer, sheetsOf(plan))).toBeUndefined();
});

test('Cutting as earlier versions laid it out is not read as one without a tick', async () => {
  const plan = await planOf(JOBS['demo']!);
  const { id } = plan.profiles[0]!.sticks[0]!;
  const rows: (RawCell | null)[][] = [
    ['Cut', 'No.', 'Piece'],
    ['x', id],
    [null, 1, 'Hall'],
  ];
  const cutting = rows.map((cells, at) => ({ line: at + 1, cells }));
  expect(readTicksOf(plan, { cutting, pieces: [] })).toBeUndefined();
});
