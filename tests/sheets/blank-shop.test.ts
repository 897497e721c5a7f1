import { describe, expect, test } from '@jest/globals';
import type { LengthUnit } from '../../src/core/units/length-unit.ts';
import { blankLists } from '../../src/exports/blank-lists.ts';
import { readCsvTable } from '../../src/hosts/file/read-csv.ts';
import { readJob } from '../../src/planning/input/read-job.ts';
import type { RawCell, RawTable } from '../../src/planning/input/raw-table.ts';
import { USUAL_WORK } from '../../src/planning/work/usual-work.ts';
import { checkJobPlan } from '../../src/planning/check-job-plan.ts';
import { planJob } from '../../src/planning/plan-job.ts';
import { planToJson } from '../../src/planning/plan-json.ts';
import { SETTINGS, type SettingKey } from '../../src/planning/shop.ts';
import { describeInput } from '../../src/sheets/describe-input.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import { STYLES, type CellStyle } from '../../src/sheets/grammar/styles.ts';
import { readTables, type Tables } from '../planning/make-job.ts';

/** A room, two typed coves and bought trim, in millimetres with the comma; Shop says its unit and little else. */
const METRIC_JOB: Tables = {
  shop: 'Setting,Value\nunit,mm\ndecimal sign,","\nhourly rate,55\ncurrency,€\ntable front,300\ntable back,380\ntable width,1000\nslot to blade,120\nlabels,a4 3 x 8',
  walls:
    'Room,Wall,Length,Corner,Turn\nSalon,1,4800,,\nSalon,2,3600,,\nSalon,3,4800,,\nSalon,4,3600,,',
  trim: 'Room,Profile,Where\nSalon,Sockel,floor\nSalon,Kehle,ceiling',
  openings:
    'Room,Wall,Kind,Width,Height,Casing,Position,Stool,Apron,Sill\n' +
    'Salon,1,door,900,2100,Zarge,1000,,,\nSalon,3,window,1200,1200,Zarge,1500,Bank,Zarge,900',
  profiles:
    'Profile,Make,Cove width,Cove depth,Off-center,Spring,Blank width,Blank thickness,Species\n' +
    'Kehle,cove,75,"13,5",4,,110,22,Oak\nKarnies,crown cove,60,10,,38,100,22,Oak\n' +
    'Sockel,buy,,,,,70,16,Pine\nZarge,buy,,,,,60,16,Pine\nBank,buy,,,,,150,25,Pine',
  runs:
    'Room,Run,Profile,Length,Left end,Right end\nDiele,Nord,Karnies,2400,inside miter,outside miter\n' +
    'Diele,Ost,Karnies,1337,outside miter,cope',
  stock:
    'For,Kind,Width,Length,Price,Per,Have,Buy\nOak,board,230,3000,1800,m³,,yes\n' +
    'Sockel,stick,,2400,"8,5",metre,,yes\nSockel,stick,,5000,"8,5",metre,,yes\n' +
    'Zarge,stick,,2400,9,piece,,yes\nBank,stick,,2400,29,piece,,yes',
};

/** The blank workbook's Shop as it is read, with some of its settings typed over. */
function blankShop(typed: Readonly<Record<string, string>>, made: LengthUnit = 'in'): RawTable {
  const sheet = describeInput([], made).sheets.find(({ name }) => name === 'Shop');
  const [headings = [], ...rows] = (sheet?.rows ?? []).map(({ cells }) =>
    cells.map((cell): RawCell => cell?.value ?? null),
  );
  return {
    name: 'Shop',
    source: { kind: 'sheet', name: 'Shop' },
    headings: { line: 1, cells: headings },
    rows: rows.map((cells, index) => {
      const [name = ''] = cells;
      const own = typeof name === 'string' ? typed[name] : undefined;
      const filled = own === undefined ? cells : cells.map((one, at) => (at === 1 ? own : one));
      return { line: index + 2, cells: filled };
    }),
  };
}

test.each(['in', 'mm'])(
  'The blank workbook passes its own defaults, in %s with either decimal sign',
  (unit) => {
    const shopWith = (sign: string) => {
      const { faults, asRead } = readJob([blankShop({ unit, 'decimal sign': sign })], 'blank');
      const found = faults.filter(({ where }) => where !== undefined);
      expect(found.map(({ where, message }) => [where, message])).toEqual([]);
      return { ...asRead.shop, decimalSign: '' };
    };
    const [point, comma] = ['.', ','].map(shopWith);
    expect(comma).toEqual(point);
    const usual = readJob([], 'none').asRead.shop;
    expect(point).toEqual({
      ...usual,
      unit,
      decimalSign: '',
      lengthPrecision: point?.lengthPrecision,
    });
  },
);

describe('A metric shop', () => {
  const metric = { name: 'Shop', unit: 'mm' } as const;
  const usual = readTables({ shop: 'Setting,Value\nunit,mm' }).asRead.shop;

  test('has whole or half millimetres as usual lengths, none far from those in inches', () => {
    const inches = readJob([], 'none').asRead.shop;
    const lengths = (Object.keys(SETTINGS) as SettingKey[]).filter(
      (key) => SETTINGS[key].kind === 'length' && usual[key] !== undefined,
    );
    expect(lengths.length).toBeGreaterThan(12);
    for (const key of lengths) {
      const length = Number(usual[key]) * 25.4;
      // A full kerf is 3.2 mm; a precision of 1/16 in is more than one of 1 mm.
      if (key === 'kerf') expect(length).toBeCloseTo(3.2, 9);
      else expect([key, length * 2]).toEqual([key, expect.closeTo(Math.round(length * 2), 9)]);
      if (key === 'lengthPrecision') continue;
      const share = Number(inches[key]) === 0 ? 1 : Number(usual[key]) / Number(inches[key]);
      // The last pass, of 1/32 in, is the shortest: half a millimetre, a third less.
      const [least, most] = key === 'lastPass' ? [0.6, 1] : [0.94, 1.02];
      expect([key, share >= least && share <= most]).toEqual([key, true]);
    }
    expect([usual.paper, usual.feed * 0.3048, usual.smoothingMinutes / 0.3048 ** 2]).toEqual([
      'a4',
      expect.closeTo(1.8, 9),
      expect.closeTo(75, 9),
    ]);
  });

  test.each(['.', ','] as const)(
    'has a blank workbook and blank CSV files that pass their own defaults, with the sign %s',
    (sign) => {
      const csv = blankLists(sign, metric.unit);
      const inFile = (name: string): RawTable => {
        const path = `${name.toLowerCase()}.csv`;
        const table = readCsvTable(csv.find((one) => one.path === path)!.text, path, name);
        if (!table.ok) throw new Error(table.faults[0]!.message);
        return table.value;
      };
      const inWorkbook = blankShop({ 'decimal sign': sign }, metric.unit);
      for (const tables of [[inWorkbook], [inFile('Shop'), inFile('Work')]]) {
        const { faults, cautions, asRead } = readJob(tables, 'blank');
        expect([...faults, ...cautions].filter(({ where }) => where !== undefined)).toEqual([]);
        expect({ ...asRead.shop, decimalSign: '.' }).toEqual(usual);
        expect(asRead.work.filter(({ typed }) => typed !== undefined)).toEqual([]);
      }
    },
  );

  test('reads minutes of smoothing by its own square, and by the foot under the older name', () => {
    const minutesOf = (row: string): number =>
      readTables({ shop: `Setting,Value,Unit\nunit,mm,\n${row}` }).asRead.shop.smoothingMinutes;
    expect(minutesOf('smoothing minutes,50,')).toBeCloseTo(50 * 0.3048 ** 2, 9);
    expect(minutesOf('smoothing minutes,50,min/m²')).toBeCloseTo(50 * 0.3048 ** 2, 9);
    expect(minutesOf('smoothing minutes,7,min/sq ft')).toBe(7);
    expect(minutesOf('smoothing minutes per square foot,7,min')).toBe(7);
    expect(readTables({ shop: 'Setting,Value\nsmoothing minutes,8' }).asRead.shop).toMatchObject({
      smoothingMinutes: 8,
    });
  });
});

/** Words of inches, and fraction bars; a grade's name and a slope's are none of them. */
const INCH_WORDS =
  /\b(?:inch(?:es)?|feet|foot|ft|sq|board f\w+|sq ft)\b|(?<![A-Z]\d*)\d\/\d|["″′]/iu;
/** Numbers with two decimals and more that are lengths. */
const FINE_MILLIMETRES = /\d[.,]\d\d+ mm\b/u;

test('A metric job has no inch, no foot, no board foot and nothing finer than a tenth of a millimetre on any sheet', async () => {
  const { job, faults } = readTables(METRIC_JOB);
  expect(faults).toEqual([]);
  const { plan } = await planJob(job!, { budget: { steps: 20 } });
  const { sheets } = describePlan(plan!);
  const wrong: string[] = [];
  for (const { name, rows, drawings = [] } of sheets) {
    const headings = new Map<number, string>();
    const say = (text: string): void => {
      // Money of a metre reads alike; tenths of a percent and degrees are no lengths.
      const worded = text.replace('yellow-poplar 4/4', '');
      if (INCH_WORDS.test(worded) || FINE_MILLIMETRES.test(text)) wrong.push(`${name}: ${text}`);
    };
    for (const { cells } of rows) {
      if (cells.some((one) => one?.style === 'section')) headings.clear();
      cells.forEach((one, column) => {
        if (one === null) return;
        const { value, style = 'plain' } = one;
        if (typeof value === 'string') say(value);
        if (typeof value === 'string' && style.startsWith('heading')) headings.set(column, value);
        const isLength = /\(mm\)/u.test(headings.get(column) ?? '');
        if (!isLength || typeof value !== 'number') return;
        const format = (STYLES[style] as CellStyle).format ?? '';
        const isShownFine = /0\.00/u.test(format);
        const isFine =
          Math.abs(value * 10 - Math.round(value * 10)) > 1e-6 && !/0\.0[^#0]/u.test(format);
        if (isShownFine || isFine)
          wrong.push(`${name}: ${headings.get(column)} ${value} as ${format}`);
      });
    }
    for (const { drawing } of drawings) {
      for (const shape of drawing.shapes) if (shape.kind === 'text') say(shape.text);
    }
  }
  expect(wrong).toEqual([]);
  const texts = sheets.flatMap(({ rows }) =>
    rows.flatMap(({ cells }) => cells.map((one) => one?.value)),
  );
  for (const word of ['m³, net', 'm²', 'metre a pass', 'square metre'])
    expect(texts).toContain(word);
  // Half millimetres on the way, the cove's depth at last.
  for (const { setUp } of plan!.profiles) {
    const heights = (setUp?.passHeights ?? []).map((height) => height * 50.8);
    for (const height of heights) expect(height).toBeCloseTo(Math.round(height), 6);
  }
  // 15 mm: a board of 3 m at 230 mm and 22 mm is 0.01518 m³, at 1800 for one 27.32.
  const oak = plan!.groups
    .flatMap(({ stockUse }) => stockUse)
    .find(({ item }) => item.for === 'Oak')!;
  expect([oak.eachCents, checkJobPlan(plan!)]).toEqual([2732, []]);
  const { units, totals } = planToJson(plan!);
  expect(units.shop).toBe('mm');
  const net = plan!.pieces
    .filter(({ profile }) => profile === 'Kehle' || profile === 'Karnies')
    .reduce((all, { profile, cutLength }) => {
      const wide = profile === 'Kehle' ? 0.11 : 0.1;
      return all + Number(cutLength) * 0.0254 * wide * 0.022;
    }, 0);
  expect(totals.metric.cubicMetresNet).toBeCloseTo(net, 9);
});

test.each(['in', 'mm'])(
  'The rows of Work in a new workbook, and in new CSV files, change nothing of a job, in %s with either decimal sign',
  (unit) => {
    for (const sign of ['.', ','] as const) {
      const shop = blankShop({ unit, 'decimal sign': sign });
      const without = readJob([shop], 'blank').asRead.work;
      const sheet = describeInput().sheets.find(({ name }) => name === 'Work')!;
      const cells = sheet.rows.map((row) => row.cells.map((one): RawCell => one?.value ?? null));
      const inWorkbook: RawTable = {
        name: 'Work',
        source: { kind: 'sheet', name: 'Work' },
        headings: { line: 1, cells: cells[0]! },
        rows: cells.slice(1).map((row, at) => ({ line: at + 2, cells: row })),
      };
      const csv = blankLists(sign).find(({ path }) => path === 'work.csv')!;
      const inFile = readCsvTable(csv.text, 'work.csv', 'Work');
      if (!inFile.ok) throw new Error(inFile.faults[0]!.message);
      for (const table of [inWorkbook, inFile.value]) {
        expect(table.rows.filter((row) => row.cells[0] !== null)).toHaveLength(USUAL_WORK.length);
        const { faults, cautions, asRead } = readJob([shop, table], 'blank');
        expect([...faults, ...cautions].filter(({ where }) => where !== undefined)).toEqual([]);
        expect(asRead.work).toEqual(without);
      }
      // A person's own yes takes a kind into the price.
      const own = inWorkbook.rows.map((row) =>
        row.cells[0] === 'miter'
          ? { ...row, cells: row.cells.map((one) => (one === 'no' ? 'yes' : one)) }
          : row,
      );
      const { asRead } = readJob([shop, { ...inWorkbook, rows: own }], 'blank');
      const typed = asRead.work.filter((row) => row.typed !== undefined);
      expect(typed.map(({ work, minutes, isOurs }) => [work, minutes, isOurs])).toEqual([
        ['miter', 1, true],
      ]);
    }
  },
);
