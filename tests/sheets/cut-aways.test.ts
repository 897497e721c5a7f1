import { describe, expect, test } from '@jest/globals';
import { parse } from 'csv-parse/sync';
import { sayPlan } from '../../src/cli/say-plan.ts';
import { exportPlan } from '../../src/exports/export-plan.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { planToJson } from '../../src/planning/plan-json.ts';
import { checkDescription } from '../../src/sheets/grammar/check/check-description.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import { planOf, type Tables } from '../planning/make-job.ts';
import { DEMO, rowWith, sheetOf } from './sheet-jobs.ts';

const shopOf = (settings: string): string => `Setting,Value\nhourly rate,60\n${settings}`;
const TABLES: Tables = {
  runs: "Room,Run,Profile,Length\nHall,North,Base,12'\nHall,North,Chair rail,12'\nStudy,South,Base,12'",
  openings:
    'Room,Wall,Kind,Width,Height,Casing,Position,Sides cased,Other room,Other wall,Other position\n' +
    'Hall,North,door,36 in,80 in,Casing,10 in,2,Study,South,60 in\nHall,North,door,24 in,80 in,Casing,90 in,1,,,',
  profiles:
    'Profile,Blank width,Blank thickness,Height\nBase,5 in,3/4 in,\nChair rail,3 in,3/4 in,32 in\nCasing,3 in,3/4 in,',
  stock:
    "For,Kind,Length,Price,Per\nBase,stick,14',14,piece\nChair rail,stick,14',14,piece\nCasing,stick,14',14,piece",
};

/** Rows of the table on Production, from its headings on. */
function onProduction(plan: JobPlan): unknown[][] {
  const sheet = sheetOf(describePlan(plan), 'Production');
  const from = rowWith(sheet, 'Cut away for openings') + 2;
  const rows = sheet.rows.slice(from);
  const end = rows.findIndex(({ cells }) => cells.every((one) => one === null));
  return rows
    .slice(0, end)
    .map(({ cells }) =>
      cells.flatMap((one) => (one === null || one.value === null ? [] : [one.value])),
    );
}

// By hand: 36 + 2 · 3 3/16 and 24 + 2 · 3 3/16; a metric reveal is 5 mm: 914.4 + 2 · 81.2, 609.6 + 2 · 81.2.
const WIDE = 42.375;
const NARROW = 30.375;
const WIDE_MM = 1076.8;
const NARROW_MM = 772;

describe('what openings cut away', () => {
  test('stands on Production as a table with headings, a row for each opening and run', async () => {
    const plan = await planOf({ ...TABLES, shop: shopOf('') });
    expect(onProduction(plan)).toEqual([
      ['Room', 'Wall', 'Out of', 'For', 'Taken', 'Taken (in)'],
      ['Hall', 'North', 'Base', 'door', '42 3/8"', WIDE],
      ['Hall', 'North', 'Base', 'door 2', '30 3/8"', NARROW],
      ['Hall', 'North', 'Chair rail', 'door', '42 3/8"', WIDE],
      ['Hall', 'North', 'Chair rail', 'door 2', '30 3/8"', NARROW],
      ['Study', 'South', 'Base', 'door', '42 3/8"', WIDE],
    ]);
    expect(checkDescription(describePlan(plan))).toEqual([]);
  });

  test('is told alike on the terminal, in JSON and in the exported list, in inches and metric', async () => {
    for (const settings of ['', 'unit,mm\ndecimal sign,","']) {
      const plan = await planOf({ ...TABLES, shop: shopOf(settings) });
      const said = sayPlan(plan).find((one) => one[0] === 'Cut away for openings:');
      const isMetric = settings !== '';
      const wide = isMetric ? '1076,8 mm' : '42 3/8"';
      const lines = said!.slice(1);
      expect(lines).toHaveLength(plan.cutAways.length);
      expect(lines[0]).toBe(`  Hall, North: ${wide} taken out of Base for the door`);
      const [one, other] = isMetric ? [WIDE_MM / 25.4, NARROW_MM / 25.4] : [WIDE, NARROW];
      const taken = planToJson(plan).cutAways.map((cut) => cut.taken);
      [one, other, one, other, one].forEach((inches, at) => {
        expect(taken[at]).toBeCloseTo(inches, 9);
      });
      const file = exportPlan(plan).find(({ path }) => path === 'lists/cut-aways.csv');
      const rows = parse(file!.text, { bom: true, delimiter: isMetric ? ';' : ',' });
      expect(rows[0]).toEqual([
        'Room',
        'Wall',
        'Out of',
        'For',
        isMetric ? 'Taken (mm)' : 'Taken (in)',
      ]);
      expect(rows[1]).toEqual(['Hall', 'North', 'Base', 'door', isMetric ? '1076,8' : '42.375']);
      expect(rows).toHaveLength(6);
    }
  });

  test('is said nowhere where nothing is cut away', async () => {
    const plan = await planOf({});
    expect(JSON.stringify(describePlan(plan))).not.toContain('Cut away');
    expect(sayPlan(plan).flat().join('\n')).not.toContain('Cut away');
  });

  test('of a job with many doors fills pages row by row, none torn from its headings', async () => {
    const walls = Array.from({ length: 120 }, (_, at) => `w${at}`);
    const plan = await planOf({
      ...TABLES,
      shop: shopOf(''),
      runs: `Room,Run,Profile,Length\n${walls.map((one) => `Hall,${one},Base,12'`).join('\n')}`,
      openings: `Room,Wall,Kind,Width,Height,Position\n${walls.map((one) => `Hall,${one},door,30,80,40`).join('\n')}`,
    });
    const sheet = sheetOf(describePlan(plan), 'Production');
    const heads = rowWith(sheet, 'Cut away for openings') + 3;
    const breaks = sheet.print.breaksAfter!;
    expect(onProduction(plan)).toHaveLength(121);
    expect(breaks.filter((row) => row >= heads - 2 && row <= heads)).toEqual([]);
    expect(breaks.some((row) => row > heads && row < heads + 120)).toBe(true);
  });
});

describe('the demo', () => {
  test('shows a cased opening whose other side is in another room, and what openings cut away', async () => {
    const { cutAways, cautions } = await planOf(DEMO);
    expect(new Set(cutAways.map(({ profile }) => profile))).toEqual(new Set(['Tall base']));
    expect(cutAways.map(({ room, wall, opening }) => `${room}, ${wall}: ${opening}`)).toContain(
      'Map room, north: door',
    );
    expect(cautions.map(({ code }) => code)).toContain('job.opening-by-total');
  });
});
