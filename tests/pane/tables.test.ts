import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { fault, placeFault, type Fault } from '../../src/core/faults/fault.ts';
import type { TablePlace, WorkbookSurvey } from '../../src/hosts/host.ts';
import { choiceOf, readChoices, writeChoices, type Choices } from '../../src/pane/job/choices.ts';
import { listColumnChoices, unfilledColumns } from '../../src/pane/job/column-choices.ts';
import { groupFindings, MOST_FINDINGS } from '../../src/pane/job/group-findings.ts';
import { missingSheets } from '../../src/pane/job/input-sheets.ts';
import { sayFindings, sayList, sayWritten } from '../../src/pane/job/say-findings.ts';
import { missingTables, matchTables, whyNoPlan } from '../../src/pane/job/match-tables.ts';
import { JOB_TABLES } from '../../src/planning/input/read-job.ts';
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

describe('What the person said of their tables', () => {
  test('reads back as it was kept', () => {
    const word = fc.string({ minLength: 1 }).filter((text) => text !== '__proto__');
    const choice = fc.record(
      { sheet: word, table: word, columns: fc.dictionary(word, word) },
      { requiredKeys: ['sheet'] },
    );
    const all = fc.record({ Runs: choice, Stock: choice }, { requiredKeys: [] });
    fc.assert(
      fc.property(all, (choices) => {
        const plain = JSON.parse(JSON.stringify(choices)) as Choices;
        expect(readChoices(writeChoices(plain))).toEqual(plain);
      }),
    );
  });

  test('is none where the note is absent, broken, or of another kind, and nothing is thrown', () => {
    for (const text of [undefined, '', '{', 'null', '[]', '{"version":2,"tables":{}}', '7']) {
      expect(readChoices(text)).toEqual({});
    }
    expect(readChoices('{"version":1,"tables":{"Runs":{"sheet":7},"Stock":null}}')).toEqual({});
    fc.assert(
      fc.property(fc.json(), (text) => {
        expect(typeof readChoices(text)).toBe('object');
      }),
    );
  });
});

describe('The places of the tables', () => {
  test('are where the person said, before any that is named so', () => {
    const places = [ours('Runs'), ours('Profiles'), place('Trim list')];
    expect(stands(places)).toMatchObject({ Runs: 'Runs', Profiles: 'Profiles' });
    const choices = { Runs: choiceOf(place('Trim list'), { Room: 'a' }) };
    expect(stands(places, choices)).toMatchObject({ Runs: 'Trim list', Profiles: 'Profiles' });
  });

  test('fall back to what the names say where the chosen place is gone', () => {
    const choices = { Runs: choiceOf(place('Trim list')) };
    expect(stands([ours('Runs')], choices)).toMatchObject({ Runs: 'Runs' });
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
    expect(made.sheets.map(({ name }) => name)).toEqual(['Openings', 'Shop', 'Stock']);
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
    placeFault(fault('job.stock-unused', 'Stock', text), { sheet, cell });

  test('go sheet by sheet, and down each sheet', () => {
    const { groups, more } = groupFindings([
      at('Runs', 'D12'),
      at('Stock', 'A2'),
      fault('table.empty', 'Runs', null),
      at('Runs', 'AA3'),
    ]);
    expect(groups.map(({ title, findings }) => [title, findings.map(({ cell }) => cell)])).toEqual([
      ['Runs', ['AA3', 'D12']],
      ['Stock', ['A2']],
      ['The workbook', [undefined]],
    ]);
    expect(more).toBe(0);
  });

  test('are no more than a pane can show, with a count of the others and a key each', () => {
    const cells = fc.array(
      fc.tuple(fc.constantFrom('Runs', 'Stock'), fc.integer({ min: 1, max: 9 })),
    );
    fc.assert(
      fc.property(cells, fc.integer({ min: 0, max: 20 }), (places, most) => {
        const faults = places.map(([sheet, row]) => at(sheet, `A${row}`, 'same'));
        const { groups, more } = groupFindings(faults, most);
        const shown = groups.flatMap(({ findings }) => findings);
        expect(shown.length).toBe(Math.min(most, faults.length));
        expect(shown.length + more).toBe(faults.length);
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
        'Runs and Openings',
        'Runs, Openings and Profiles',
        'Runs, Openings, Profiles and Shop',
      ],
    );
    expect(sayWritten(['Client'], undefined)).toBe('Client was written.');
    expect(sayWritten(['Cutting', 'Client'], 'a.xlsx')).toBe(
      'Cutting and Client were written to a.xlsx.',
    );
  });
});
