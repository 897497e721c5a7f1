import { describe, expect, test } from '@jest/globals';

import type { Outcome } from '../../src/core/faults/fault.ts';
import type { WorkbookHost } from '../../src/hosts/host.ts';
import { readJob } from '../../src/planning/input/read-job.ts';
import type { FakeExcel, PersonsCell } from './excel-fake/fake-excel.ts';
import { codesOf, hostOf, personsWorkbook, valueOf } from './excel-workbooks.ts';
import { inExcel } from './persons-sheets.ts';
import { workbook } from './sample-workbook.ts';

const ONE = workbook([{ name: 'Production' }, { name: 'Cutting' }]);
const WRITE = { owner: 'tool', replace: [] } as const;

/** Each outcome's messages, and proof that nothing of the person's was touched meanwhile. */
async function refusedUntouched(
  fake: FakeExcel,
  calls: (host: WorkbookHost) => readonly Promise<Outcome<unknown>>[],
): Promise<string[]> {
  const sheets = [...fake.workbook.sheets];
  const before = fake.snapshot(sheets);
  const outcomes = await Promise.all(calls(hostOf(fake)));
  expect(fake.snapshot(sheets)).toBe(before);
  expect(fake.workbook.sheets).toEqual(sheets);
  return outcomes.flatMap((one) =>
    one.ok ? ['(done)'] : one.faults.map(({ message }) => message),
  );
}

const everyCall = (host: WorkbookHost): Promise<Outcome<unknown>>[] => [
  host.survey(),
  host.readTable({ key: 'sheet/1', sheet: 'Runs', line: 1, headings: [], rowCount: 0 }, 'Runs'),
  host.appendRows({ key: 'sheet/1', sheet: 'Runs', line: 1, headings: [], rowCount: 0 }, [['x']]),
  host.write(ONE, WRITE),
  host.show({ sheet: 'Budget', cell: 'A1' }),
  host.putFormula('=1'),
  host.recall(['a']),
  host.remember({ a: 'b' }),
  host.keptText('plan'),
  host.keepText('plan', 'a'),
  host.readSheet('Runs'),
];

describe('In Excel', () => {
  test('a sheet of that name that is not ours is left alone, and said, all at once', async () => {
    const { fake } = personsWorkbook();
    fake.addSheet('production', [['mine']]);
    fake.addSheet('Cutting', [['mine too']]).isProtected = true;
    const said = await refusedUntouched(fake, (host) => [
      host.write(ONE, { owner: 'tool', replace: ['Production', 'Cutting'] }),
      host.write(workbook([{ name: 'Cutting' }]), { owner: 'person', replace: ['Cutting'] }),
    ]);
    expect(said).toEqual([
      'There is a sheet “production” already that was not made here, so it is left alone. Rename it and try again.',
      'The sheet “Cutting” is protected. Take the protection off (Review, Unprotect Sheet) and try again.',
      'There is a sheet “Cutting” already that was not made here, so it is left alone. Rename it and try again.',
      'The sheet “Cutting” is protected. Take the protection off (Review, Unprotect Sheet) and try again.',
      'There is a sheet “Cutting” already that was not made here, so it is left alone. Rename it and try again.',
    ]);
  });

  test('a sheet of ours that may not be replaced, or is protected, is said', async () => {
    const { fake } = personsWorkbook();
    valueOf(await hostOf(fake).write(ONE, WRITE));
    fake.workbook.sheets.at(-1)!.isProtected = true;
    const said = await refusedUntouched(fake, (host) => [
      host.write(ONE, { owner: 'tool', replace: ['Cutting'] }),
    ]);
    expect(said).toEqual([
      'There is a sheet “Production” already. Say that it may be replaced, or rename it.',
      'The sheet “Cutting” is protected. Take the protection off (Review, Unprotect Sheet) and try again.',
    ]);
  });

  test('input sheets are never replaced, even those that were made here', async () => {
    const { fake } = personsWorkbook();
    const input = workbook([{ name: 'Runs' }]);
    valueOf(await hostOf(fake).write(input, { owner: 'person', replace: [] }));
    const said = await refusedUntouched(fake, (host) => [
      host.write(input, { owner: 'person', replace: ['Runs'] }),
      host.write(input, { owner: 'tool', replace: ['Runs'] }),
    ]);
    expect(said.map((one) => /“Runs” already that was not made here/u.test(one))).toEqual([
      true,
      true,
    ]);
  });

  test('a protected structure is said before anything is tried', async () => {
    const { fake } = personsWorkbook();
    fake.workbook.isProtected = true;
    expect(await refusedUntouched(fake, (host) => [host.write(ONE, WRITE)])).toEqual([
      'The structure of “Maple house.xlsx” is protected, so no sheet can be added. Take the protection off (Review, Protect Workbook) and try again.',
    ]);
  });

  test('a protected sheet of the person does not keep their tables from being read', async () => {
    const { fake, theirs } = personsWorkbook();
    theirs[1]!.isProtected = true;
    const host = hostOf(fake);
    const [place] = valueOf(await host.survey()).places;
    expect(valueOf(await host.readTable(place!, 'Runs')).rows).toHaveLength(2);
    expect(codesOf(await host.write(ONE, WRITE))).toEqual([]);
  });

  test('a cell that is being typed in is said at once, for every call', async () => {
    const { fake } = personsWorkbook();
    fake.startEditing();
    const said = await refusedUntouched(fake, everyCall);
    expect(new Set(said.map((one) => one.replace(/^[^:]+: /u, '')))).toEqual(
      new Set(['a cell is being typed in. Press Enter or Esc in the workbook, then try again.']),
    );
    fake.stopEditing();
    expect(codesOf(await hostOf(fake).write(ONE, WRITE))).toEqual([]);
  });

  test('a cell that the person begins to type in while sheets are written is waited for', async () => {
    const { fake, theirs } = personsWorkbook();
    const before = fake.snapshot(theirs);
    let began = false;
    const writing = hostOf(fake).write(ONE, {
      ...WRITE,
      onProgress: () => {
        if (!began) fake.startEditing();
        began = true;
      },
    });
    const first = await Promise.race([
      writing,
      new Promise<string>((resolve) => setTimeout(() => resolve('waiting'), 50)),
    ]);
    expect(first).toBe('waiting');
    fake.stopEditing();
    expect(valueOf(await writing).sheets).toEqual(['Production', 'Cutting']);
    expect(fake.snapshot(theirs)).toBe(before);
  });

  test.each([
    [8, 'This Excel is too old: “ExcelApi 1.9” is needed, and it knows “ExcelApi 1.8”.'],
    [0, 'This Excel is too old: “ExcelApi 1.9” is needed, and it knows nothing.'],
  ])(
    'an Excel that knows only ExcelApi 1.%d is told as too old, by every call',
    async (minor, begin) => {
      const { fake } = personsWorkbook();
      fake.minor = minor;
      const said = await refusedUntouched(fake, everyCall);
      expect(new Set(said)).toEqual(
        new Set([
          `${begin} Update Excel, use Excel on the web, or open the saved workbook here as a file.`,
        ]),
      );
      expect(fake.syncs).toBe(0);
      expect(await hostOf(fake).listSeparator()).toBe(',');
      hostOf(fake).watch(() => undefined)();
      expect(fake.syncs).toBe(0);
    },
  );

  test('an Excel of ExcelApi 1.9 does everything', async () => {
    const { fake, theirs } = personsWorkbook();
    fake.minor = 9;
    const host = hostOf(fake);
    const survey = valueOf(await host.survey());
    valueOf(await host.readTable(survey.places[0]!, 'Runs'));
    valueOf(await host.write(ONE, WRITE));
    valueOf(await host.show({ sheet: 'Budget', cell: 'C9' }));
    valueOf(await host.putFormula('=1'));
    valueOf(await host.remember({ a: 'b' }));
    expect(fake.view().sheets[0]?.cells['C9']?.formula).toBe('1');
    const told: string[] = [];
    const end = host.watch((sheet) => told.push(sheet));
    await new Promise((resolve) => setTimeout(resolve, 5));
    await fake.types(theirs[1]!, 'A2', 'Loft');
    end();
    expect(told).toEqual(['Trim list']);
  });

  /** What the reader of jobs says of a Runs sheet. */
  async function faultsOf(rows: readonly (readonly PersonsCell[])[]): Promise<string[]> {
    const fake = inExcel([{ name: 'Runs', rows }]);
    const before = fake.snapshot(fake.workbook.sheets);
    const host = hostOf(fake);
    const table = valueOf(await host.readTable(valueOf(await host.survey()).places[0]!, 'Runs'));
    const { faults } = readJob([table], 'Maple house.xlsx');
    expect(fake.snapshot(fake.workbook.sheets)).toBe(before);
    return faults
      .filter(({ where }) => where !== undefined && 'sheet' in where && where.sheet === 'Runs')
      .map(
        ({ code, where }) => `${code} ${where !== undefined && 'cell' in where ? where.cell : ''}`,
      );
  }

  test('headings that are missing, errors, dates and text where numbers go are each said by their cell', async () => {
    expect(
      await faultsOf([
        ['Room', 'Length'],
        ['Hall', 96],
      ]),
    ).toEqual(['table.heading-missing A1']);
    const heads = ['Room', 'Profile', 'Length', 'Quantity'];
    const said = await faultsOf([
      heads,
      ['Hall', 'Base', { error: '#REF!' }, 1],
      ['Hall', 'Base', { date: 45_000 }, 1],
      ['Hall', 'Base', 96, 'a few'],
      ['Hall', 'Base', { formula: '=IF(TRUE,"","x")', value: '' }, 2],
    ]);
    expect(said).toEqual(
      expect.arrayContaining([
        'table.error-cell C2',
        expect.stringMatching(/date(-cell)? C3$/u),
        expect.stringMatching(/^number\.\S+ D4$/u),
        'length.missing C5',
      ]),
    );
  });
});
