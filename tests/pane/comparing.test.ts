import { describe, expect, test } from '@jest/globals';
import { writer } from '../../src/browser/load-writer.ts';
import { ok } from '../../src/core/faults/fault.ts';
import type { OtherFile } from '../../src/pane/services.ts';
import { copyIn, type CopyFile } from '../../src/sheets/client/copy-sheet.ts';
import { markOf } from '../../src/sheets/stamp.ts';
import { sayCompared, sayCopyLines, sayRuns } from '../../src/pane/plan/say-compared.ts';
import { tablesOf } from '../planning/make-job.ts';
import { rawRowsOf } from '../sheets/sheet-jobs.ts';
import { AS_FILE, memoryHost, REFUSAL, sheetOf, type MemoryHost } from './memory-host.ts';
import { makePane, type TestPane } from './make-pane.ts';

const TABLES = tablesOf({
  runs: 'Room,Run,Profile,Length,Quantity\nHall,a,Base,60,2\nHall,b,Base,48,1',
  shop: 'Setting,Value\nend allowance,0\nend trim,0\ncrosscut kerf,0\nhourly rate,0',
  stock: "For,Kind,Length,Price,Per\nBase,stick,14',20,piece",
});
const FILE = { name: 'back.xlsx', arrayBuffer: () => Promise.resolve(new ArrayBuffer(1)) };

interface Given extends TestPane {
  readonly host: MemoryHost;
  /** What the next file turns out to be. */
  readonly files: OtherFile[];
}

async function planned(can?: typeof AS_FILE): Promise<Given> {
  const host = memoryHost(TABLES.map(sheetOf), can);
  const files: OtherFile[] = [];
  const pane = makePane(host, { readOther: () => Promise.resolve(ok(files[0]!)) });
  pane.store.send({ type: 'planning seconds typed', seconds: '0' });
  await pane.ready();
  await pane.actions.plan();
  return { ...pane, host, files };
}

/** The copy of the plan that stands, with quantities typed into C by line of the sheet. */
function copyOf(
  { store }: TestPane,
  typed: Readonly<Record<number, number | string>> = {},
): CopyFile {
  const result = store.get().planning.result!;
  const [sheet] = writer.describeClientCopy(result.plan, result).sheets;
  const rows = rawRowsOf(sheet!).map(({ line, cells }) => ({
    line,
    cells: cells.map((cell, at) => (at === 2 && line in typed ? typed[line]! : cell)),
  }));
  const formulas = new Set(
    sheet!.rows.flatMap(({ cells }, row) =>
      cells.flatMap((one, at) =>
        one?.formula === undefined ? [] : [`${'ABCDEFG'[at]!}${row + 1}`],
      ),
    ),
  );
  return copyIn([{ name: sheet!.name, rows, formulas }], { Number: markOf(result) })!;
}

/** Line, from 1, of the first line of base. */
function baseLine(pane: TestPane): number {
  const { rows } = copyOf(pane).sheet;
  return rows.find(({ cells }) => cells[0] === 'Base' && cells[2] === 2)!.line;
}

describe('Comparing in the pane', () => {
  test('with the written sheets tells what the new plan has otherwise, and writes the sheet Changes again in its place', async () => {
    const pane = await planned();
    const { actions, store, host } = pane;
    await actions.askToWrite();
    host.type('Runs', 1, 3, '70');
    await actions.plan();
    await actions.compareWritten();
    const { compared, announcement } = store.get();
    if (compared?.kind !== 'plans') throw new Error('No plans are compared.');
    expect(announcement.text).toBe('0 runs added, 0 gone, 1 changed, 1 as it was.');
    expect(sayCompared(compared)).toBe(announcement.text);
    expect(sayRuns(compared.comparison, compared.job.shop)).toEqual([
      { name: 'Hall / a, Base', text: `changed: lengths; 2 pieces, 10' 0" → 11' 8"` },
    ]);
    await actions.writeChanges();
    await actions.writeChanges();
    expect(host.log.filter((one) => one.startsWith('write Changes'))).toEqual([
      'write Changes for the tool, replacing none',
      'write Changes for the tool, replacing Changes',
    ]);
    expect(store.get().notice).toBe('The sheet Changes is written.');
    // It is none of the inputs.
    await actions.checkAgain();
    const { found } = store.get().reading;
    expect(found?.fingerprint).toBe(store.get().planning.result!.fingerprint);
    await actions.plan();
    expect(store.get().compared).toBeUndefined();
  });

  test('with a workbook that carries its plan, however it is written', async () => {
    const earlier = await planned();
    const text = earlier.host.texts.get('plan')!;
    const pane = await planned(AS_FILE);
    pane.host.sheets.get('Runs')!.rows.push(['Hall', 'c', 'Base', '30', '1']);
    await pane.actions.plan();
    pane.files.push({ kind: 'plan', kept: { texts: { plan: text }, cutting: [], pieces: [] } });
    await pane.actions.compareFile(FILE);
    const { compared } = pane.store.get();
    expect(compared).toMatchObject({ kind: 'plans', name: 'back.xlsx' });
    expect(pane.store.get().announcement.text).toMatch(/^1 run added, 0 gone, 0 changed, 2 as/);
    await pane.actions.saveChanges();
    expect(pane.saved).toEqual(['House-changes.xlsx']);
  });

  test('with a client’s copy tells other quantities by their rows, and takes no other price', async () => {
    const pane = await planned();
    const line = baseLine(pane);
    pane.files.push({ kind: 'copy', copy: copyOf(pane, { [line]: 3 }) });
    await pane.actions.compareFile(FILE);
    const { compared } = pane.store.get();
    if (compared?.kind !== 'copy') throw new Error('No copy is compared.');
    expect(sayCompared(compared)).toBe('1 of 2 lines has another quantity than quoted.');
    const [one] = sayCopyLines(compared.returned, compared.job.shop);
    expect(one).toMatchObject({ name: 'Hall, Base, 60"' });
    expect(one!.text).toMatch(/^2 → 3; .*Rows: a, 2 pieces \(Runs, row 2\)$/u);
    await pane.actions.writeChanges();
    expect(pane.host.sheets.get('Changes')!.rows.flat()).toContain(
      '1 of 2 lines has another quantity than quoted.',
    );
  });

  test('a copy of another plan, a quantity that is none and a file that is neither are refused in words', async () => {
    const pane = await planned();
    const { actions, store, files, host } = pane;
    files.push({ kind: 'copy', copy: copyOf(pane, { [baseLine(pane)]: 'three' }) });
    await actions.compareFile(FILE);
    const codes = (): unknown => store.get().comparisonRefused?.faults.map(({ code }) => code);
    expect(codes()).toEqual(['copy.quantity-text']);
    host.type('Runs', 1, 3, '71');
    await actions.plan();
    expect(codes()).toBeUndefined();
    await actions.compareFile(FILE);
    expect([codes(), store.get().compared]).toEqual([['copy.other-plan'], undefined]);
    expect(store.get().announcement.text).toContain('back.xlsx is not of this plan');
    const other = makePane(memoryHost(TABLES.map(sheetOf)));
    other.store.send({ type: 'planning seconds typed', seconds: '0' });
    await other.ready();
    await other.actions.compareFile(FILE);
    expect(other.store.get().trouble).toEqual([]);
    await other.actions.plan();
    await other.actions.compareFile(FILE);
    expect(other.store.get().trouble.map(({ code }) => code)).toEqual(['compare.no-plan']);
    expect(other.store.get().busy).toBeUndefined();
  });

  test('a workbook that refuses the sheet says so', async () => {
    const pane = await planned();
    pane.files.push({ kind: 'copy', copy: copyOf(pane) });
    await pane.actions.compareFile(FILE);
    pane.host.fails = 'write';
    await pane.actions.writeChanges();
    expect([pane.store.get().trouble, pane.store.get().busy]).toEqual([[REFUSAL], undefined]);
  });
});
