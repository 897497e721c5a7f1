import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { afterAll, describe, expect, test } from '@jest/globals';

import { sayArgument } from '../../src/core/faults/argument.ts';
import { readJobBytes, readJobInput } from '../../src/hosts/file/read-job-input.ts';
import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import type { RawTable } from '../../src/planning/input/raw-table.ts';
import { JOB_TABLES, readJob } from '../../src/planning/input/read-job.ts';
import type { Run } from '../../src/planning/job.ts';
import { planJob } from '../../src/planning/plan-job.ts';
import { planToJson } from '../../src/planning/plan-json.ts';
import { SETTINGS } from '../../src/planning/shop.ts';
import { checkDescription } from '../../src/sheets/grammar/check/check-description.ts';
import { cleanDescription } from '../../src/sheets/grammar/check/clean-text.ts';
import { describeInput } from '../../src/sheets/describe-input.ts';
import type { WorkbookDescription } from '../../src/sheets/grammar/description.ts';
import {
  folderTables,
  HOUSE_FOLDER,
  houseIsHere,
  tablesOf,
  type Tables,
} from '../planning/make-job.ts';
import { READING_ROOM } from '../planning/reading-room.ts';
import { DEMO, HOSTILE_NAMES, JOBS, sheetOf, textsOf } from './sheet-jobs.ts';
import { INPUT_SHEETS } from './sheet-names.ts';

const folder = mkdtempSync(join(tmpdir(), 'coveledger-input-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Writes the workbook, and reads it back as anyone's input. */
async function readBack(workbook: WorkbookDescription): Promise<RawTable[]> {
  const path = join(folder, 'input.xlsx');
  writeFileSync(path, await writeWorkbook(workbook));
  const read = await readJobInput(path, JOB_TABLES);
  if (!read.ok) throw new Error(read.faults.map((one) => one.message).join('\n'));
  return read.value;
}

/** Texts of a table by heading, blanks left out, so that the order of columns doesn't matter. */
function rowsOf(table: RawTable | undefined): Record<string, unknown>[] {
  const headings = table!.headings.cells.map(String);
  return table!.rows.map(({ cells }) =>
    Object.fromEntries(
      headings.flatMap((heading, column) => {
        const value = cells[column] ?? '';
        if (typeof value === 'object') throw new Error(`${heading} can not be read.`);
        return value === '' ? [] : [[heading, String(value)]];
      }),
    ),
  );
}

async function jsonOf(tables: readonly RawTable[]) {
  const { job, faults } = readJob(tables, 'job');
  expect(faults).toEqual([]);
  const { plan } = await planJob(job!);
  // Cautions, and pieces of walls, tell the place in the file, which is another one.
  const { cautions, pieces, ...json } = planToJson(plan!);
  return {
    ...json,
    cautions: cautions.map(({ code, given }) => ({ code, given })),
    pieces: pieces.map(({ madeFrom, ...piece }) => ({
      ...piece,
      madeFrom: madeFrom && { ...madeFrom, wall: null, trim: null },
    })),
  };
}

describe('The blank input workbook', () => {
  test('has a how-to and a sheet for each table, and nothing that a workbook can not hold', () => {
    const blank = cleanDescription(describeInput());
    expect(blank.sheets.map(({ name }) => name)).toEqual(INPUT_SHEETS);
    expect(checkDescription(blank)).toEqual([]);
  });

  test('reads back as tables with our headings, every setting, and no other row', async () => {
    const tables = await readBack(describeInput());
    expect(tables.map(({ name }) => name)).toEqual(JOB_TABLES.map(({ name }) => name));
    const [runs, walls, trim, openings, profiles, shop, stock] = tables;
    for (const table of [runs, walls, trim, openings, profiles, stock])
      expect(table!.rows).toEqual([]);
    // As formats.md lists them.
    expect(runs!.headings.cells).toEqual(
      'Room,Run,Profile,Length,Measured as,Quantity,Left end,Right end,Left corner,Right corner,Reveal,One piece,Match,Done,Note'.split(
        ',',
      ),
    );
    expect(walls!.headings.cells).toEqual(
      'Room,Wall,Length,Corner,Turn,Corner by tape,Height,Note'.split(','),
    );
    expect(trim!.headings.cells).toEqual(
      'Room,Profile,Where,Height,Walls,Inside corners,Starts,Note'.split(','),
    );
    expect(openings!.headings.cells).toEqual(
      'Room,Wall,Kind,Width,Height,Sides cased,Reveal,Casing,Apron,Stool,Position,Quantity,Sill,Horn,Other room,Other wall,Other position'.split(
        ',',
      ),
    );
    expect(profiles!.headings.cells).toEqual(
      'Profile,Make,Cove width,Cove depth,Off-center,Blank width,Blank thickness,Near flat,Spring,Drop,Projection,Miter across,Where,Height,Species,Class,Offcut allowance %,Off-center to,Slope,Note'.split(
        ',',
      ),
    );
    expect(stock!.headings.cells).toEqual(
      'For,Kind,Class,Width,Length,Price,Per,Have,Buy,Grade,Yield %,Defects'.split(','),
    );
    expect(rowsOf(shop).map((row) => row['Setting'])).toEqual(
      Object.values(SETTINGS).map(({ name }) => name),
    );
    expect(rowsOf(shop).map((row) => row['Value'] ?? '')).toEqual(
      Object.values(SETTINGS).map((setting) => ('usual' in setting ? setting.usual : '')),
    );
  });

  test('asks for nothing but what it must, once it is read', async () => {
    const { faults, cautions } = readJob(await readBack(describeInput()), 'blank');
    expect(faults.map(({ code, argument }) => `${code} ${sayArgument(argument)}`)).toEqual([
      'table.empty Runs',
      'table.empty Profiles',
      'table.empty Stock',
    ]);
    expect(cautions.map(({ code }) => code)).toEqual(['job.no-hourly-rate']);
  });

  test('says in How to what Wall matches, what reveal, horn, Sill, Where and Height are', () => {
    const howTo = textsOf(sheetOf(describeInput(), 'How to')).join('\n');
    for (const words of [
      'Wall is a wall of Walls, or the name that the runs of that wall have under Run',
      'Reveal is what stays in sight',
      'Horn is how far',
      'Sill is from the floor to the window’s opening',
      'its lower edge as far from the floor as Height says',
      'Usual for a cove, a crown cove and what has a Spring',
      'Usual for what Openings names',
    ]) {
      expect(howTo).toContain(words);
    }
  });

  test('keeps lengths as text, so that 3/4 becomes no date', () => {
    const blank = describeInput();
    for (const [name, heading] of [
      ['Runs', 'Length'],
      ['Openings', 'Width'],
      ['Openings', 'Position'],
      ['Openings', 'Sill'],
      ['Profiles', 'Height'],
      ['Runs', 'Reveal'],
      ['Profiles', 'Cove depth'],
      ['Profiles', 'Class'],
      ['Stock', 'Length'],
      ['Stock', 'Class'],
      ['Shop', 'Value'],
    ] as const) {
      const sheet = sheetOf(blank, name);
      const place = sheet.rows[0]!.cells.findIndex((cell) => cell?.value === heading);
      expect([name, heading, sheet.columns[place]?.style]).toEqual([name, heading, 'inputText']);
      const styles = sheet.rows.slice(1).map(({ cells }) => cells[place]?.style);
      expect(new Set(styles)).toEqual(new Set(['inputText']));
    }
  });

  test('offers what may be chosen, and profiles from the sheet of profiles', () => {
    const blank = describeInput();
    const choices = (name: string): string[] => {
      const sheet = sheetOf(blank, name);
      return (sheet.validations ?? []).map(({ range, allow }) => {
        const column = range.charCodeAt(0) - 65;
        const heading = sheet.rows[0]!.cells[column]?.value;
        return `${heading}: ${allow.kind === 'list' ? allow.values.join(' ') : allow.kind}`;
      });
    };
    expect(choices('Runs')).toEqual([
      'Profile: list from',
      'Measured as: wall opening long point short point finished',
      'Quantity: whole',
      'Left end: square inside miter outside miter cope return',
      'Right end: square inside miter outside miter cope return',
      'One piece: yes no',
      'Done: yes no',
    ]);
    expect(choices('Openings')).toContain('Kind: door window cased opening');
    expect(choices('Openings')).toContain('Casing: list from');
    expect(choices('Profiles')).toContain('Where: floor ceiling height opening');
    expect(choices('Profiles')).toContain('Make: cove crown cove buy');
    expect(choices('Stock')).toEqual([
      'Kind: stick board',
      'Class: 4/4 5/4 6/4 7/4 8/4 10/4 12/4 14/4 16/4',
      'Per: piece foot board foot metre cubic metre',
      'Have: whole',
    ]);
    expect(choices('Shop')).toContain('Value: left right');
    expect(choices('Shop')).toContain('Unit: in mm cm m ft');
  });

  test('explains lengths, blanks and points, and repeats the cautions', () => {
    const text = textsOf(sheetOf(describeInput(), 'How to')).join('\n');
    for (const word of ['7\' 4 3/8"', '90 mm', 'usual value', 'long point', 'coveledger -- plan']) {
      expect(text).toContain(word);
    }
    expect(text).toContain("Read your saw's manual first.");
    // Whoever has the page or the pane needs no command line.
    expect(text).toMatch(/the button “Plan the job”.*On a command line.*npm run/u);
  });
});

describe('A filled input workbook', () => {
  const filled: Readonly<Record<string, Tables>> = {
    demo: DEMO,
    ...(houseIsHere ? { house: folderTables(HOUSE_FOLDER) } : {}),
    hostile: JOBS['hostile']!,
  };

  test.each(Object.keys(filled))('of the job “%s” holds every cell as it came', async (name) => {
    const tables = tablesOf(filled[name]!);
    const workbook = cleanDescription(describeInput(tables));
    expect(checkDescription(workbook)).toEqual([]);
    const back = await readBack(workbook);
    for (const table of tables) {
      const read = back.find((one) => one.name === table.name);
      const rows = rowsOf(read).slice(0, table.rows.length);
      expect(rows).toEqual(rowsOf(table));
    }
  });

  test.each(Object.keys(filled))('of the job “%s” plans to the very same', async (name) => {
    const tables = tablesOf(filled[name]!);
    const back = await readBack(describeInput(tables));
    expect(await jsonOf(back)).toEqual(await jsonOf(tables));
  });

  test('holds a room typed once, and needs no Runs for it', async () => {
    const before = tablesOf(READING_ROOM);
    const described = describeInput(before);
    const after = readJob(await readBack(described), 'job');
    expect(after.faults).toEqual([]);
    const saidOf = ({ run, profile, length, left, right }: Run): string =>
      `${run} ${profile} ${length.toFraction()} ${left.kind} ${right.kind}`;
    const wanted = readJob(before, 'job').asRead.runs.map(saidOf);
    expect(wanted).toHaveLength(18);
    expect(after.asRead.runs.map(saidOf)).toEqual(wanted);
    // In A1 of each sheet stands a heading: the third row is the second wall's.
    expect(after.asRead.runs[1]!.where).toEqual({ sheet: 'Walls', cell: 'C3' });
    const sheets = described.sheets.filter(({ name }) => name !== 'Runs');
    const without = await readJobBytes(await writeWorkbook({ ...described, sheets }), 'job');
    if (!without.ok) throw new Error(without.faults.map(({ message }) => message).join('\n'));
    const read = readJob(without.value.tables, 'job');
    expect([read.faults, read.asRead.runs.map(saidOf)]).toEqual([[], wanted]);
    const bare = sheets.filter(({ name }) => name !== 'Trim');
    const missing = await readJobBytes(await writeWorkbook({ ...described, sheets: bare }), 'job');
    expect(missing).toMatchObject({ ok: false, faults: [{ code: 'table.missing' }] });
  });

  test("keeps a column of the person's own, at the right of ours", async () => {
    const runs = 'Painter,Room,Profile,Length\nAnna,Hall,Base,100\n=x,Den,Base,90';
    const back = await readBack(describeInput(tablesOf({ runs })));
    const table = back.find(({ name }) => name === 'Runs');
    expect(table!.headings.cells.at(-1)).toBe('Painter');
    expect(rowsOf(table).map((row) => row['Painter'])).toEqual(['Anna', '=x']);
  });

  test('leaves settings that the job leaves open to their usual values', async () => {
    const tables = tablesOf({ shop: 'Setting,Value\nhourly rate,60' });
    const back = await readBack(describeInput(tables));
    const { job } = readJob(back, 'filled');
    expect(job!.shop).toEqual(readJob(tables, 'job').job!.shop);
  });

  test('says of a cell that no text can stand for what it was', () => {
    const runs: RawTable = {
      name: 'Runs',
      source: { kind: 'sheet', name: 'Runs' },
      headings: { line: 1, cells: ['Room', 'Length', 'Quantity'] },
      rows: [
        {
          line: 2,
          cells: [{ kind: 'error', text: '#N/A' }, { kind: 'date' }, { kind: 'uncalculated' }],
        },
      ],
    };
    const texts = textsOf(sheetOf(describeInput([runs]), 'Runs'));
    expect(texts).toEqual(expect.arrayContaining(['#N/A', '(a date)', '(not calculated)']));
  });

  test('offers no list of names that are not there: hostile ones are cells, not choices', () => {
    const workbook = describeInput(tablesOf(JOBS['hostile']!));
    const shown = workbook.sheets.flatMap((sheet) =>
      (sheet.validations ?? []).map(({ allow }) => JSON.stringify(allow)),
    );
    for (const name of HOSTILE_NAMES.filter((one) => one.length > 3)) {
      expect(shown.filter((one) => one.includes(name))).toEqual([]);
    }
  });
});
