import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

import { describe, expect, test } from '@jest/globals';

import { FAKE_CLASSES, FakeExcel } from './excel-fake/fake-excel.ts';
import type { ClassMembers } from './excel-fake/members.ts';

type Batch = (context: Excel.RequestContext) => unknown;

async function run(fake: FakeExcel, batch: Batch, options: Excel.RunOptions = {}): Promise<void> {
  await fake.program.excel.run(options, async (context) => {
    await batch(context);
    await context.sync();
  });
}

function withSheet(): FakeExcel {
  const fake = new FakeExcel();
  fake.addSheet('One', [
    ['Room', 'Length'],
    ['Hall', 96],
  ]);
  return fake;
}

const sheetOf = (context: Excel.RequestContext): Excel.Worksheet =>
  context.workbook.worksheets.getItem('One');

/** Members of a class in Microsoft's own declarations, with the minor version that brought each. */
function declared(className: string): Map<string, number> {
  const found = new Map<string, number>();
  const body = new RegExp(`^    class ${className} extends [\\s\\S]*?^    \\}`, 'mu').exec(
    excel,
  )?.[0];
  const pattern = /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s+(?:readonly )?(\w+)\??[(:<]/gu;
  for (const [, doc = '', name = ''] of (body ?? '').matchAll(pattern)) {
    const sets = [...doc.matchAll(/\[Api set: ([^\]]*)\]/gu)].map(([, set = '']) => set).join();
    // A later parameter is one that the fake refuses.
    const later = /ExcelApi 1\.(\d+)|; 1\.(\d+) for (?!adding `\w+` parameter)/gu;
    const minors = [...sets.matchAll(later)].map((one) => Number(one[1] ?? one[2]));
    if (minors.length > 0 && !found.has(name)) found.set(name, Math.max(...minors));
  }
  return found;
}

const types = createRequire(import.meta.url).resolve('@types/office-js/package.json');
const declarations = readFileSync(types.replace('package.json', 'index.d.ts'), 'utf8');
const excel = declarations.slice(
  declarations.indexOf('declare namespace Excel {'),
  declarations.indexOf('declare namespace Word {'),
);

describe('The fake Excel', () => {
  test.each(Object.keys(FAKE_CLASSES))(
    "knows of %s what Microsoft's declarations have, from the version that they say",
    (className) => {
      const members: ClassMembers = FAKE_CLASSES[className as keyof typeof FAKE_CLASSES];
      const { values = {}, parts = {}, methods = {}, events = {} } = members;
      const known = [
        ...Object.entries({ ...values, ...parts, ...methods }).map(
          ([name, { since }]) => [name, since] as const,
        ),
        ...Object.entries(events),
      ];
      const truth = declared(className);
      // Where a property's version differs for setting it, the later one is what counts here.
      expect(known.map(([name]) => [name, truth.get(name)])).toEqual(known);
    },
  );

  test.each<[string, Batch]>([
    ['an unknown member', (c) => (sheetOf(c) as unknown as { colour: string }).colour],
    ['an unknown property that is set', (c) => Object.assign(sheetOf(c), { tabHue: 'red' })],
    ['a property before it is loaded', (c) => sheetOf(c).name],
    ['a property before it is synced', (c) => sheetOf(c).load('name').name],
    [
      'another property than was loaded',
      async (c) => {
        const sheet = sheetOf(c).load('id');
        await c.sync();
        return sheet.name;
      },
    ],
    [
      'whether there is an object, before it is synced',
      (c) => c.workbook.worksheets.getItemOrNullObject('x').isNullObject,
    ],
    ['an object that is loaded without saying what of it', (c) => c.workbook.load('worksheets')],
  ])('throws for %s', async (_, batch) => {
    await expect(run(withSheet(), batch)).rejects.toThrow(TypeError);
  });

  test.each<[string, Batch]>([
    [
      'values of another size',
      (c) => {
        sheetOf(c).getRange('A1:B2').values = [[1, 2]];
      },
    ],
    [
      'a text that is too long',
      (c) => {
        sheetOf(c).getRange('A1').values = [['x'.repeat(32_768)]];
      },
    ],
    [
      'a formula that is too long',
      (c) => {
        sheetOf(c).getRange('A1').formulas = [[`=${'1+'.repeat(4_096)}1`]];
      },
    ],
    [
      "a formula in a stranger's separators",
      (c) => {
        sheetOf(c).getRange('A1').formulas = [['=SUM(1;2)']];
      },
    ],
    [
      'a formula with an unknown sheet',
      (c) => {
        sheetOf(c).getRange('A1').formulas = [["='Two'!A1"]];
      },
    ],
    [
      'a formula with an unknown table',
      (c) => {
        sheetOf(c).getRange('A1').formulas = [['=SUM(Runs[Length])']];
      },
    ],
    [
      'a sheet of a name that is taken',
      (c) => {
        c.workbook.worksheets.add('ONE');
      },
    ],
    [
      'a sheet of a name that is none',
      (c) => {
        c.workbook.worksheets.add('a/b');
      },
    ],
    [
      'tables that overlap',
      (c) => {
        sheetOf(c).tables.add(sheetOf(c).getRange('A1:B2'), true);
        sheetOf(c).tables.add(sheetOf(c).getRange('A1:A2'), true);
      },
    ],
    [
      'a name that is taken',
      (c) => {
        c.workbook.names.add('N', "='One'!$A$1");
        c.workbook.names.add('n', "='One'!$A$1");
      },
    ],
    [
      'the last sheet, when it is deleted',
      (c) => {
        sheetOf(c).delete();
      },
    ],
    [
      'a line inside of a single row',
      (c) => {
        sheetOf(c).getRange('A1:B1').format.borders.getItem('InsideHorizontal').style =
          'Continuous';
      },
    ],
    [
      'an object that is not there',
      (c) => {
        c.workbook.worksheets.getItem('Two').load('name');
      },
    ],
    [
      'more than 5 MB at once',
      (c) => {
        const range = sheetOf(c).getRange('A1:A400');
        range.values = Array.from({ length: 400 }, () => ['x'.repeat(20_000)]);
      },
    ],
  ])('refuses %s', async (_, batch) => {
    await expect(run(withSheet(), batch)).rejects.toHaveProperty('code');
  });

  test('refuses to write on a protected sheet, and to add one to a protected workbook', async () => {
    const fake = withSheet();
    fake.workbook.sheets[0]!.isProtected = true;
    const write: Batch = (c) => {
      sheetOf(c).getRange('A1').values = [[1]];
    };
    await expect(run(fake, write)).rejects.toHaveProperty('code', 'AccessDenied');
    fake.workbook.isProtected = true;
    await expect(run(fake, (c) => c.workbook.worksheets.add('Two'))).rejects.toHaveProperty(
      'code',
      'AccessDenied',
    );
  });

  test('knows no member of a later version than it is told to support', async () => {
    const fake = withSheet();
    fake.minor = 9;
    const merged: Batch = (c) => sheetOf(c).getRange('A1').getMergedAreasOrNullObject();
    await expect(run(fake, merged)).rejects.toThrow(/1\.13/u);
    const place: Batch = (c) => sheetOf(c).getRange('A1').load('left');
    await expect(run(fake, place)).rejects.toThrow(/1\.10/u);
    expect(fake.program.office.context.requirements.isSetSupported('ExcelApi', '1.10')).toBe(false);
  });

  test('reads text as if it were typed', async () => {
    const fake = withSheet();
    const typed = [
      '1e5',
      '00123',
      '3/4',
      '2024-05-01',
      'May 5',
      'true',
      '#N/A',
      "'5",
      '=1+1',
      'oak',
    ];
    await run(fake, (context) => {
      sheetOf(context).getRange('D1:D10').values = typed.map((one) => [one]);
    });
    const cells = typed.map((_, row) => fake.workbook.sheets[0]!.at(row, 3)!);
    expect(cells.map(({ value, formula }) => formula?.text ?? value)).toEqual([
      100_000,
      123,
      // 4 March 2026, 1 May 2024, 5 May 2026.
      46_085,
      45_413,
      46_147,
      true,
      '#N/A',
      '5',
      '1+1',
      'oak',
    ]);
    expect(cells[6]?.isError).toBe(true);
    await run(fake, (context) => {
      const range = sheetOf(context).getRange('E1');
      range.numberFormat = [['@']];
      range.values = [['3/4']];
    });
    expect(fake.workbook.sheets[0]!.at(0, 4)?.value).toBe('3/4');
  });

  test('carries a request out in its order and takes back nothing when it fails', async () => {
    const fake = withSheet();
    fake.failAt(1, 4);
    const three: Batch = (c) => {
      const sheet = sheetOf(c);
      for (const at of ['A5', 'A6', 'A7']) sheet.getRange(at).values = [[at]];
    };
    await expect(run(fake, three)).rejects.toHaveProperty('code', 'GeneralException');
    const held = [4, 5, 6].map((row) => fake.workbook.sheets[0]!.at(row, 0)?.value ?? null);
    expect(held).toEqual(['A5', null, null]);
    await run(fake, three);
    expect(fake.workbook.sheets[0]!.at(6, 0)?.value).toBe('A7');
  });

  test('lets formulas follow a sheet that is renamed, and breaks them when it is deleted', async () => {
    const fake = withSheet();
    const two = fake.addSheet('Two', [[{ formula: "='One'!A1&One!B1&\"'One'!\"", value: 'x' }]]);
    const formula = (): string | undefined => two.at(0, 0)?.formula?.text;
    await run(fake, (context) => {
      sheetOf(context).name = "It's";
    });
    expect(formula()).toBe("'It''s'!A1&'It''s'!B1&\"'One'!\"");
    await run(fake, (context) => {
      context.workbook.worksheets.getItem("It's").delete();
    });
    expect(formula()).toBe('#REF!A1&#REF!B1&"\'One\'!"');
  });

  test('answers a batch while a cell is typed in as it was told to', async () => {
    const fake = withSheet();
    fake.startEditing();
    const nothing: Batch = (context) => sheetOf(context).load('name');
    await expect(run(fake, nothing)).rejects.toHaveProperty(
      'code',
      'InvalidOperationInCellEditMode',
    );
    const waiting = run(fake, nothing, { delayForCellEdit: true });
    fake.stopEditing();
    await expect(waiting).resolves.toBeUndefined();
  });
});
