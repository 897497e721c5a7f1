import { describe, expect, test } from '@jest/globals';
import { readWorkbook } from '../../src/hosts/file/read-workbook.ts';
import { writeWorkbook } from '../../src/hosts/file/write-workbook.ts';
import type { RawTable } from '../../src/planning/input/raw-table.ts';
import { JOB_TABLES, readJob } from '../../src/planning/input/read-job.ts';
import { planJob } from '../../src/planning/plan-job.ts';
import { SETTINGS } from '../../src/planning/shop.ts';
import { checkDescription } from '../../src/sheets/check-description.ts';
import { describeInput } from '../../src/sheets/describe-input.ts';
import { DEMO_FOLDER, folderTables, planOf, tablesOf } from '../planning/make-job.ts';

async function throughFile(tables?: readonly RawTable[]): Promise<RawTable[]> {
  const bytes = await writeWorkbook(describeInput(tables));
  const names = JOB_TABLES.map(({ name }) => name);
  const read = await readWorkbook(bytes, 'input.xlsx', names, []);
  if (!read.ok) throw new Error(read.faults.map((one) => one.message).join('\n'));
  return read.value;
}

describe('the input workbook', () => {
  test('has the sheets to fill behind a page that says how', () => {
    const description = describeInput();
    expect(description.sheets.map((sheet) => sheet.name)).toEqual([
      'How to',
      'Runs',
      'Openings',
      'Profiles',
      'Shop',
      'Stock',
    ]);
    expect(checkDescription(description)).toEqual([]);
  });

  test('left blank asks for its rows and has a value or an open cell for every setting', async () => {
    const tables = await throughFile();
    const { faults, cautions } = readJob(tables, 'input.xlsx');
    expect(faults.map((one) => [one.code, one.argument])).toEqual([
      ['table.empty', 'Runs'],
      ['table.empty', 'Profiles'],
      ['table.empty', 'Stock'],
    ]);
    const shop = tables.find((table) => table.name === 'Shop')!;
    expect(shop.rows.map((row) => row.cells[0])).toEqual(
      Object.values(SETTINGS).map(({ name }) => name),
    );
    expect(cautions.map((one) => one.code)).toEqual(['job.no-hourly-rate']);
  });

  test('filled with the demo plans to the same totals as its CSV files', async () => {
    const tables = tablesOf(folderTables(DEMO_FOLDER));
    const { job, faults } = readJob(await throughFile(tables), 'input.xlsx');
    expect(faults).toEqual([]);
    const { plan } = await planJob(job!);
    const fromCsv = await planOf(folderTables(DEMO_FOLDER));
    expect(plan!.totals).toEqual(fromCsv.totals);
    expect(plan!.pieces.map((piece) => [piece.id, Number(piece.cutLength)])).toEqual(
      fromCsv.pieces.map((piece) => [piece.id, Number(piece.cutLength)]),
    );
  });

  test("keeps a person's own columns and their hostile texts", async () => {
    const tables = tablesOf({
      runs: 'Room,Run,Profile,Length,Colour\n"=2+2",-n,Base,3/4,+red\n@home,"two\nlines",Base,0 3/4,🪵',
    });
    const read = await throughFile(tables);
    const runs = read.find((table) => table.name === 'Runs')!;
    const colour = runs.headings.cells.indexOf('Colour');
    expect(
      runs.rows.map((row) => [row.cells[0], row.cells[1], row.cells[3], row.cells[colour]]),
    ).toEqual([
      ['=2+2', '-n', '3/4', '+red'],
      ['@home', 'two\nlines', '0 3/4', '🪵'],
    ]);
  });

  test('lets only known words, and any profile that stands in Profiles, be chosen', () => {
    const runs = describeInput().sheets.find((sheet) => sheet.name === 'Runs')!;
    const choices = Object.fromEntries(runs.validations!.map((one) => [one.title, one.allow]));
    expect(choices['Left end']).toEqual({
      kind: 'list',
      values: ['square', 'inside miter', 'outside miter', 'cope', 'return'],
    });
    expect(choices['Profile']).toEqual({ kind: 'list from', formula: "'Profiles'!$A$2:$A$101" });
  });
});
