import { beforeAll, describe, expect, test } from '@jest/globals';

import type { WorkbookDescription } from '../../src/sheets/grammar/description.ts';
import { describeInput } from '../../src/sheets/describe-input.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import { count } from '../deep.ts';
import { planOf, tablesOf } from '../planning/make-job.ts';
import { JOBS } from '../sheets/sheet-jobs.ts';
import type { FakeExcel } from './excel-fake/fake-excel.ts';
import type { FakeSheet } from './excel-fake/workbook-model.ts';
import { codesOf, hostOf, personsWorkbook, valueOf } from './excel-workbooks.ts';
import { workbook } from './sample-workbook.ts';
import { planSheets } from '../sheets/sheet-names.ts';

let shared: WorkbookDescription;
let tiny: WorkbookDescription;
let input: WorkbookDescription;
beforeAll(async () => {
  shared = describePlan(await planOf(JOBS['shared']!));
  tiny = describePlan(await planOf(JOBS['tiny']!));
  input = describeInput(tablesOf(JOBS['tiny']!));
});

const namesOf = ({ sheets }: WorkbookDescription): string[] => sheets.map(({ name }) => name);
const REPLACE_ALL = {
  owner: 'tool',
  replace: planSheets(['Rooms']),
} as const;

interface Trial {
  readonly fake: FakeExcel;
  readonly theirs: readonly FakeSheet[];
  readonly ours: readonly FakeSheet[];
  readonly before: string;
  readonly oursBefore: string;
}

/** The person's workbook with an earlier plan written into it, and a formula that points there. */
async function written(description: WorkbookDescription): Promise<Trial> {
  const { fake, theirs } = personsWorkbook();
  valueOf(await hostOf(fake).write(description, { owner: 'tool', replace: [] }));
  await fake.types(theirs[0]!, 'D1', { formula: "='Production'!A1", value: 'x' });
  const ours = fake.workbook.sheets.filter((sheet) => !theirs.includes(sheet));
  return {
    fake,
    theirs,
    ours,
    before: fake.snapshot(theirs),
    oursBefore: fake.snapshot(ours),
  };
}

/** Requests, and the operations in each, that writing takes. */
async function requestsOf(
  first: WorkbookDescription,
  then: WorkbookDescription,
): Promise<number[]> {
  const { fake } = await written(first);
  const from = fake.syncs;
  valueOf(await hostOf(fake).write(then, REPLACE_ALL));
  return fake.requests.slice(from);
}

function expectNothingChanged({ fake, theirs, ours, before, oursBefore }: Trial): void {
  expect(fake.snapshot(theirs)).toBe(before);
  expect(fake.sheetNames).toEqual([...theirs, ...ours].map(({ name }) => name));
  expect(fake.snapshot(ours)).toBe(oursBefore);
}

function expectWritten({ fake, theirs }: Trial, names: readonly string[]): void {
  expect(fake.sheetNames).toEqual([...theirs.map(({ name }) => name), ...names]);
  const marks = fake.workbook.sheets.flatMap((sheet) => sheet.names.map(({ name }) => name));
  expect(marks).toEqual(names.map(() => 'Coveledger_sheet'));
}

describe('Writing that fails', () => {
  test('at any request, before or within or after it, changes nothing, and succeeds next time', async () => {
    const requests = await requestsOf(tiny, shared);
    // Two to survey, then the sheets, what is on them, where each sheet's drawings go, and the swap.
    const drawn = shared.sheets.filter(({ drawings = [] }) => drawings.length > 0);
    expect(requests).toHaveLength(5 + drawn.length);
    for (const [index, operations] of requests.slice(0, -1).entries()) {
      const all = [...new Set([0, 1, Math.floor(operations / 2), operations - 1, Infinity])];
      // All of them in a deep run; else one a request, another each time.
      const parts = all.filter(
        (_, part) => part % count(1, all.length) === index % count(1, all.length),
      );
      for (const after of parts) {
        const trial = await written(tiny);
        trial.fake.failAt(index + 1, after);
        const outcome = await hostOf(trial.fake).write(shared, REPLACE_ALL);
        expect({ index, after, codes: codesOf(outcome) }).toEqual({
          index,
          after,
          codes: ['host.refused'],
        });
        expectNothingChanged(trial);
        valueOf(await hostOf(trial.fake).write(shared, REPLACE_ALL));
        expectWritten(trial, namesOf(shared));
      }
    }
  }, 120_000);

  test('at any operation of the swap leaves all of the old sheets or all of the new ones', async () => {
    const small = workbook(
      ['Production', 'Cutting'].map((name) => ({
        name,
        rows: [
          { cells: [{ value: 'Room' }, { value: 'Length' }] },
          { cells: [{ value: 'Hall' }, { value: 2, formula: `SUM(Names_${name})` }] },
        ],
        tables: [{ name: `Table_${name}`, range: 'A1:B2' }],
      })),
      {
        names: [
          { name: 'Names_Production', sheet: 'Production', range: 'A1:A2' },
          { name: 'Names_Cutting', sheet: 'Cutting', range: 'A1:A2' },
        ],
        properties: { Inputs: 'the old ones' },
      },
    );
    const anew = { ...small, properties: { Inputs: 'the new ones', 'Planned on': '2026-05-04' } };
    const requests = await requestsOf(small, anew);
    const [last, operations] = [requests.length, requests.at(-1)!];
    const outcomes: boolean[] = [];
    for (let after = 0; after <= operations; after++) {
      const trial = await written(small);
      trial.fake.failAt(last, after === operations ? Infinity : after);
      const outcome = await hostOf(trial.fake).write(anew, REPLACE_ALL);
      outcomes.push(outcome.ok);
      expect(trial.fake.view().properties).toEqual(outcome.ok ? anew.properties : small.properties);
      if (outcome.ok) expectWritten(trial, namesOf(small));
      else {
        expect(codesOf(outcome)).toEqual(['host.refused']);
        expectNothingChanged(trial);
      }
      valueOf(await hostOf(trial.fake).write(small, REPLACE_ALL));
      expectWritten(trial, namesOf(small));
      const [production] = trial.fake.view().sheets.slice(-2);
      expect(production?.cells['B2']?.formula).toBe('SUM(Names_Production)');
      expect(production?.tables.map(({ name }) => name)).toEqual(['Table_Production']);
      expect(trial.fake.view().names).toMatchObject({
        Names_Production: "'Production'!$A$1:$A$2",
        Names_Cutting: "'Cutting'!$A$1:$A$2",
      });
    }
    // Until the last unfinished sheet is no longer marked so, all goes back; from then on forward.
    expect(outcomes.indexOf(true)).toBeGreaterThan(operations / 2);
    expect(outcomes.slice(outcomes.indexOf(true)).every((one) => one)).toBe(true);
  }, 60_000);

  test('and can not even tidy up leaves the person alone, and the next try tidies up', async () => {
    const requests = await requestsOf(tiny, shared);
    for (let n = 1; n <= requests.length; n++) {
      const trial = await written(tiny);
      trial.fake.failFrom(n);
      expect(codesOf(await hostOf(trial.fake).write(shared, REPLACE_ALL))).toEqual([
        'host.refused',
      ]);
      trial.fake.recover();
      expect(trial.fake.snapshot(trial.theirs)).toBe(trial.before);
      const survey = valueOf(await hostOf(trial.fake).survey());
      expect(survey.sheets.map(({ name }) => name).filter((name) => name.includes('~'))).toEqual(
        [],
      );
      valueOf(await hostOf(trial.fake).write(shared, REPLACE_ALL));
      expectWritten(trial, namesOf(shared));
    }
  }, 60_000);

  test('twice over, in the middle of the swap and of tidying up, still touches no cell', async () => {
    const requests = await requestsOf(tiny, tiny);
    for (let after = 1; after < requests.at(-1)!; after += count(3, 9)) {
      const trial = await written(tiny);
      trial.fake.failAt(requests.length, after);
      for (const later of [1, 2, 3, 4]) trial.fake.failAt(requests.length + later, 3);
      await hostOf(trial.fake).write(tiny, REPLACE_ALL);
      trial.fake.recover();
      // A formula of theirs follows the sheet that it points to; all else is as it was.
      await trial.fake.types(trial.theirs[0]!, 'D1', { formula: '=1', value: 1 });
      const now = trial.fake.snapshot(trial.theirs);
      const fresh = await written(tiny);
      await fresh.fake.types(fresh.theirs[0]!, 'D1', { formula: '=1', value: 1 });
      expect(now).toBe(fresh.fake.snapshot(fresh.theirs));
      valueOf(await hostOf(trial.fake).write(tiny, REPLACE_ALL));
      expect(trial.fake.sheetNames.filter((name) => namesOf(tiny).includes(name))).toEqual(
        namesOf(tiny),
      );
    }
  }, 60_000);

  test("at any request leaves no input sheet behind either, and the person's stay theirs", async () => {
    const { fake: counting } = personsWorkbook();
    valueOf(await hostOf(counting).write(input, { owner: 'person', replace: [] }));
    for (let n = 1; n <= counting.syncs; n++) {
      const { fake, theirs } = personsWorkbook();
      const before = fake.snapshot(theirs);
      fake.failAt(n, 7);
      const outcome = await hostOf(fake).write(input, { owner: 'person', replace: [] });
      if (outcome.ok) continue;
      expect([fake.snapshot(theirs), fake.sheetNames]).toEqual([before, theirs.map((s) => s.name)]);
      valueOf(await hostOf(fake).write(input, { owner: 'person', replace: [] }));
      expect(fake.sheetNames).toEqual([...theirs.map((s) => s.name), ...namesOf(input)]);
      expect(fake.workbook.sheets.flatMap((sheet) => sheet.names)).toEqual([]);
    }
  }, 60_000);

  test('when a drawing can not be painted leaves the workbook alone', async () => {
    const { fake, theirs } = personsWorkbook();
    const before = fake.snapshot(theirs);
    const drawing = { title: 't', alt: 'a', width: 9, height: 9, shapes: [] };
    const description = workbook([
      { name: 'D', rows: [{ cells: [] }], drawings: [{ at: 'A1', drawing }] },
    ]);
    const { openExcelHost } = await import('../../src/hosts/excel/open-excel-host.ts');
    const host = openExcelHost({
      ...fake.program,
      paint: () => Promise.reject(new Error('no canvas')),
    });
    const outcome = await host.write(description, { owner: 'tool', replace: [] });
    expect(outcome).toMatchObject({ faults: [{ code: 'host.refused', given: 'no canvas' }] });
    expect([fake.snapshot(theirs), fake.sheetNames.length]).toEqual([before, theirs.length]);
  });
});

describe('Replacing', () => {
  test('writes anew what is ours, and keeps names, tables and formulas right', async () => {
    const trial = await written(tiny);
    valueOf(await hostOf(trial.fake).write(shared, REPLACE_ALL));
    expectWritten(trial, namesOf(shared));
    const formulas = trial.fake
      .view()
      .sheets.flatMap(({ cells }) => Object.values(cells).map(({ formula }) => formula ?? ''));
    expect(formulas.filter((one) => /Coveledger|_new|_outgoing/u.test(one))).toEqual([]);
    // Every formula of the description stands, under the names that it was described with.
    const described = shared.sheets.flatMap(({ rows }) =>
      rows.flatMap(({ cells }) => cells.flatMap((cell) => cell?.formula ?? [])),
    );
    expect(new Set(formulas)).toEqual(new Set(['', ...described, '#REF!A1', 'SUM(B2:B2)']));
  });

  test('is told of beforehand where formulas of the person point', async () => {
    const { fake, theirs } = await written(tiny);
    await fake.types(theirs[1]!, 'F9', { formula: '=SUM(Production!C3:C9)*2', value: 0 });
    await fake.types(theirs[1]!, 'F10', { formula: '="Production!C3"', value: 'Production!C3' });
    const survey = valueOf(await hostOf(fake).survey());
    expect(survey.sheets.map(({ name, ours, pointedAtBy }) => [name, ours, pointedAtBy])).toEqual([
      ['Budget', false, []],
      ['Trim list', false, []],
      ['Production', true, ['Budget!D1', 'Trim list!F9']],
      ['Labor', true, []],
      ['Office', true, []],
      ['Pieces', true, []],
      ['Set-ups', true, []],
      ['Cutting', true, []],
      ['Yard', true, []],
      ['Client', true, []],
    ]);
  });

  test('happens only to sheets that are named, and only while they bear the name they got', async () => {
    const { fake, ours } = await written(tiny);
    const some = { owner: 'tool', replace: ['production', 'Set-ups'] } as const;
    const refused = await hostOf(fake).write(tiny, some);
    expect(new Set(codesOf(refused))).toEqual(new Set(['host.sheet-exists']));
    expect(codesOf(refused)).toHaveLength(tiny.sheets.length - some.replace.length);
    // The person keeps one by renaming it, and calls a copy of it by the old name of another.
    ours[0]!.name = 'Kept';
    ours[1]!.name = 'Production';
    expect(codesOf(await hostOf(fake).write(tiny, REPLACE_ALL))).toEqual(['host.sheet-not-ours']);
  });

  test('gives a table another name where the person has the name already', async () => {
    const { fake, theirs } = personsWorkbook();
    const rows = [
      { cells: [{ value: 'Room' }, { value: 'n' }] },
      { cells: [{ value: 'Hall' }, { value: 4, formula: 'SUM(Trim[n])+Margin' }] },
    ];
    const description = workbook(
      [{ name: 'Made', rows, tables: [{ name: 'Trim', range: 'A1:B2' }] }],
      {
        names: [{ name: 'Margin', sheet: 'Made', range: 'A1' }],
      },
    );
    const before = fake.snapshot(theirs.slice(1));
    for (const replace of [[], ['Made']]) {
      valueOf(await hostOf(fake).write(description, { owner: 'tool', replace }));
      const made = fake.view().sheets.at(-1);
      expect(made?.tables.map(({ name }) => name)).toEqual(['Trim_2']);
      expect(made?.cells['B2']?.formula).toBe('SUM(Trim_2[n])+Margin_2');
      expect(fake.view().names['Margin']).toBe("'Budget'!$B$2");
      expect(fake.view().names['Margin_2']).toBe("'Made'!$A$1");
    }
    expect(JSON.parse(fake.snapshot(theirs.slice(1)))).toMatchObject({
      sheets: (JSON.parse(before) as { sheets: object[] }).sheets,
    });
  });
});
