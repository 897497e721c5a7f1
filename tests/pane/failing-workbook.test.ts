/** The whole of the pane but its looks, beside a strict fake of Excel that fails at every request in turn. */
import { describe, expect, test } from '@jest/globals';

import { count } from '../deep.ts';
import { FakeExcel } from '../hosts/excel-fake/fake-excel.ts';
import { hostOf } from '../hosts/excel-workbooks.ts';
import { PLAIN, tablesOf } from '../planning/make-job.ts';
import { makePane, type TestPane } from './make-pane.ts';
import { INPUT_SHEETS, planSheets } from '../sheets/sheet-names.ts';

/** Notes, the input sheets and those that are written; this job has no cove and no rooms typed once. */
const SHEETS_IN_THE_END = 1 + INPUT_SHEETS.length + planSheets(['Outlines', 'Rooms']).length;
const MOST_TRIES = 8;

interface Begun {
  readonly fake: FakeExcel;
  readonly pane: TestPane;
  /** The person's own sheet, as it is now. */
  readonly own: () => unknown;
}

async function begin(prepare: (fake: FakeExcel) => void): Promise<Begun> {
  const fake = new FakeExcel();
  const notes = fake.addSheet('Notes', [['Maple Street'], ['=not a formula', 3]]);
  prepare(fake);
  // Without the watch each request is one that the person asked for, and its failure must be said.
  const host = { ...hostOf(fake), watch: () => () => undefined };
  const pane = makePane(host, { loadDemo: () => Promise.resolve(tablesOf(PLAIN)) });
  await pane.ready();
  const own = (): unknown => (JSON.parse(fake.snapshot([notes])) as { sheets: unknown }).sheets;
  return { fake, pane, own };
}

/** From a blank workbook to written sheets, as a person goes who tries again what failed. */
async function goTheWholeWay({ pane, own }: Begun): Promise<string[]> {
  const { store, actions } = pane;
  const before = own();
  const said = new Set<string>();
  const stop = store.subscribe(() => {
    const { trouble, reading } = store.get();
    const shown = [...trouble, ...(reading.failed ?? []), ...(reading.found?.faults ?? [])];
    for (const { code, message } of shown) if (code === 'host.refused') said.add(message);
  });
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    if (store.get().reading.found === undefined) await actions.checkAgain();
    const { found } = store.get().reading;
    if (found?.tables.every(({ place }) => place === undefined) === true) {
      await actions.makeInput('demo');
    }
    await actions.plan();
    if (store.get().planning.result === undefined) {
      await actions.checkAgain();
      continue;
    }
    await actions.askToWrite();
    if (store.get().writing.kind === 'asking') await actions.write();
    expect(own()).toEqual(before);
    if (store.get().writing.kind !== 'written') continue;
    stop();
    return [...said];
  }
  throw new Error(`Not written after ${MOST_TRIES} tries: ${[...said].join(' ')}`);
}

/** Every request in a deep run, every fourth else. */
const EACH = count(1, 4);

describe('The pane beside a workbook that fails', () => {
  test('leaves the person’s cells as they were at every request in turn, says so, and gets there when tried again', async () => {
    const smooth = await begin(() => undefined);
    expect(await goTheWholeWay(smooth)).toEqual([]);
    const requests = smooth.fake.syncs;
    expect(requests).toBeGreaterThan(10);
    const silent: number[] = [];
    for (let failing = 1; failing <= requests; failing += EACH) {
      const begun = await begin((fake) => fake.failAt(failing));
      const said = await goTheWholeWay(begun);
      if (said.length === 0) silent.push(failing);
      expect({ failing, bug: begun.pane.store.get().bug }).toEqual({ failing, bug: undefined });
      expect({ failing, sheets: begun.fake.sheetNames.length }).toEqual({
        failing,
        sheets: SHEETS_IN_THE_END,
      });
    }
    // The person's list separator is asked for once; where that fails the comma stands in. Which row is
    // selected is asked too; where that fails the pane stays with the profile that it shows.
    expect(silent.length).toBeLessThanOrEqual(2);
    expect(silent.length).toBeGreaterThanOrEqual(EACH === 1 ? 1 : 0);
  }, 120_000);
});
