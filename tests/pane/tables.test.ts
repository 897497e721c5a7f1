import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { fault, placeFault, type Fault } from '../../src/core/faults/fault.ts';
import type { TablePlace, WorkbookSurvey } from '../../src/hosts/host.ts';
import { listColumnChoices, unfilledColumns } from '../../src/pane/job/column-choices.ts';
import { groupFindings, MOST_FINDINGS, type Finding } from '../../src/pane/job/group-findings.ts';
import { missingSheets } from '../../src/pane/job/input-sheets.ts';
import { sayFindings, sayList, sayWritten } from '../../src/pane/job/say-findings.ts';
import { missingTables, whyNoPlan } from '../../src/pane/job/say-tables.ts';
import { choiceOf, matchTables } from '../../src/planning/input/match-tables.ts';
import { JOB_TABLES } from '../../src/planning/input/read-job.ts';
import type { Choices } from '../../src/planning/input/table-choices.ts';
import { TABLE_HEADINGS } from '../../src/planning/input/headings/table-headings.ts';
import { checkDescription } from '../../src/sheets/grammar/check/check-description.ts';
import { describeInput } from '../../src/sheets/describe-input.ts';

const place = (sheet: string, headings: readonly string[] = ['a', 'b']): TablePlace => ({
  key: sheet,
  sheet,
  line: 1,
  headings,
  rowCount: 3,
});
const ours = (name: 'Runs' | 'Profiles' | 'Stock'): TablePlace =>
  place(
    name,
    TABLE_HEADINGS[name].map(({ heading }) => heading),
  );
const stands = (places: readonly TablePlace[], choices: Choices = {}) =>
  Object.fromEntries(
    matchTables(places, choices).map((one) => [one.name, one.place?.sheet ?? one.alike.length]),
  );

describe('The places of the tables', () => {
  test('are where the person said, before any that is named so', () => {
    const places = [ours('Runs'), ours('Profiles'), place('Trim list')];
    expect(stands(places)).toMatchObject({ Runs: 'Runs', Profiles: 'Profiles' });
    const choices = { Runs: choiceOf(place('Trim list'), { Room: 'a' }) };
    expect(stands(places, choices)).toMatchObject({ Runs: 'Trim list', Profiles: 'Profiles' });
  });

  test('are nowhere where the chosen one is gone: what bears the name may hold less', () => {
    const choices = { Runs: choiceOf(place('Trim list')) };
    expect(stands([ours('Runs')], choices)).toMatchObject({ Runs: 0 });
    const [runs] = matchTables([ours('Runs')], choices);
    expect(runs).toMatchObject({ place: undefined, choice: { sheet: 'Trim list' } });
    // It is a fault of its own, with a way on: not a table that is missing, nor one to be made.
    expect(missingTables([runs!])).toEqual([]);
  });

  test('that are chosen for one table are no other table too', () => {
    const choices = { Stock: choiceOf(ours('Runs')) };
    expect(stands([ours('Runs')], choices)).toMatchObject({ Stock: 'Runs', Runs: 0 });
  });

  test('say what is missing, and why nothing can be planned yet', () => {
    const tables = matchTables([ours('Runs')], {});
    expect(missingTables(tables)).toEqual(['Profiles', 'Stock']);
    expect(whyNoPlan(tables, 0)).toBe('Profiles and Stock are not chosen yet: see Job.');
    const all = matchTables([ours('Runs'), ours('Profiles'), ours('Stock')], {});
    expect(whyNoPlan(all, 0)).toBeUndefined();
    expect(whyNoPlan(all, 1)).toMatch(/^A problem /u);
    expect(whyNoPlan(all, 7)).toMatch(/^7 problems /u);
  });
});

describe('Columns to choose from', () => {
  test('are their headings that are text, each once', () => {
    expect(listColumnChoices(['Room', null, ' ', 7, 'Room', 'Len'])).toEqual(['Room', 'Len']);
  });

  test('name the needed ones that nothing stands for', () => {
    expect(unfilledColumns('Runs', { Room: 'Area' })).toEqual(['Profile', 'Length']);
    expect(unfilledColumns('Runs', { Room: 'a', Profile: 'b', Length: 'c' })).toEqual([]);
  });
});

describe('Input sheets that are made beside what is there', () => {
  const whole = describeInput();
  const survey = (...names: string[]): WorkbookSurvey => ({
    name: '',
    places: [],
    sheets: names.map((name) => ({ name, ours: false, pointedAtBy: [] })),
  });

  test('are all of them in an empty workbook', () => {
    const made = missingSheets(whole, matchTables([], {}), survey());
    expect(made).toEqual(whole);
  });

  test('leave out what stands somewhere already, under whatever name', () => {
    const places = [ours('Runs'), place('My profiles')];
    const tables = matchTables(places, { Profiles: choiceOf(place('My profiles')) });
    const made = missingSheets(whole, tables, survey('Runs', 'My profiles', 'How to'));
    expect(made.sheets.map(({ name }) => name)).toEqual([
      ...['Walls', 'Trim', 'Openings', 'Shop', 'Stock', 'Work', 'Options', 'Job', 'Hours'],
    ]);
  });

  test('offer no list that would stand on a sheet that is not there', () => {
    const tables = matchTables([place('My profiles')], {
      Profiles: choiceOf(place('My profiles')),
    });
    const made = missingSheets(whole, tables, survey('My profiles'));
    const lists = (sheets: typeof whole.sheets): number =>
      sheets
        .flatMap(({ validations = [] }) => validations)
        .filter(({ allow }) => allow.kind === 'list from').length;
    expect(lists(whole.sheets)).toBeGreaterThan(0);
    expect(lists(made.sheets)).toBe(0);
    expect(checkDescription(made)).toEqual([]);
    const beside = missingSheets(whole, tables, survey('My profiles', 'Profiles'));
    expect(lists(beside.sheets)).toBe(lists(whole.sheets));
  });
});

describe('Problems as they are listed', () => {
  const at = (sheet: string, cell: string, text = cell): Fault =>
    placeFault(fault('job.stock-unused', 'sheet.Stock', text), { sheet, cell });

  test('go sheet by sheet, and down each sheet', () => {
    const { groups, more } = groupFindings([
      at('Runs', 'D12'),
      at('Stock', 'A2'),
      fault('table.empty', 'sheet.Runs', null),
      at('Runs', 'AA3'),
    ]);
    const cellsOf = (finding: Finding) => finding.cells.map(({ name }) => name).join();
    expect(groups.map(({ title, findings }) => [title, findings.map(cellsOf)])).toEqual([
      ['Runs', ['AA3', 'D12']],
      ['Stock', ['A2']],
      ['The workbook', ['']],
    ]);
    expect(more).toBe(0);
  });

  test('are said once with all of their cells where they say the same', () => {
    const { groups } = groupFindings([
      at('Runs', 'C5', 'Bass'),
      at('Openings', 'H3', 'Bass'),
      at('Runs', 'C2', 'Bass'),
      at('Runs', 'C3', 'Trim'),
    ]);
    const named = groups.flatMap(({ findings }) => findings.map(({ cells }) => cells));
    expect(named.map((cells) => cells.map(({ name }) => name))).toEqual([
      ['C2', 'C5'],
      ['C3'],
      ['H3'],
    ]);
    expect(named[0]?.[1]?.where).toEqual({ sheet: 'Runs', cell: 'C5' });
  });

  test('are no more than a pane can show, with a count of the others and a key each', () => {
    const cells = fc.array(
      fc.tuple(fc.constantFrom('Runs', 'Stock'), fc.integer({ min: 1, max: 9 })),
    );
    fc.assert(
      fc.property(cells, fc.integer({ min: 0, max: 20 }), (places, most) => {
        const faults = places.map(([sheet, row]) => at(sheet, `A${row}`));
        const { groups, more } = groupFindings(faults, most);
        const shown = groups.flatMap(({ findings }) => findings);
        const different = new Set(places.map(String)).size;
        expect(shown.length).toBe(Math.min(most, different));
        expect(shown.length + more).toBe(different);
        expect(new Set(shown.map(({ key }) => key)).size).toBe(shown.length);
      }),
    );
    const many = Array.from({ length: 10_000 }, (_, row) => at('Runs', `D${row + 2}`));
    expect(groupFindings(many).more).toBe(10_000 - MOST_FINDINGS);
  });
});

describe('What is said', () => {
  test('counts problems and cautions in the singular and the plural', () => {
    expect(sayFindings(0, 0)).toBe('no problems');
    expect(sayFindings(1, 1)).toBe('1 problem, 1 caution');
    expect(sayFindings(3, 2)).toBe('3 problems, 2 cautions');
  });

  test('joins names as a person would', () => {
    expect(JOB_TABLES.map(({ name }) => name).map((_, n, all) => sayList(all.slice(0, n)))).toEqual(
      [
        '',
        'Runs',
        'Runs and Walls',
        'Runs, Walls and Trim',
        'Runs, Walls, Trim and Openings',
        'Runs, Walls, Trim, Openings and Profiles',
        'Runs, Walls, Trim, Openings, Profiles and Shop',
        'Runs, Walls, Trim, Openings, Profiles, Shop and Stock',
        'Runs, Walls, Trim, Openings, Profiles, Shop, Stock and Work',
        'Runs, Walls, Trim, Openings, Profiles, Shop, Stock, Work and Options',
        'Runs, Walls, Trim, Openings, Profiles, Shop, Stock, Work, Options and Job',
      ],
    );
    expect(sayWritten(['Client'], undefined)).toBe('Client was written.');
    expect(sayWritten(['Cutting', 'Client'], 'a.xlsx')).toBe(
      'Cutting and Client were written to a.xlsx.',
    );
  });
});
