import { describe, expect, test } from '@jest/globals';

import { INCHES_AND_POINT } from '../../src/core/units/length.ts';
import { soundRange } from '../../src/core/cells/cell-range.ts';
import { isCovePlan, type JobPlan } from '../../src/planning/job-plan.ts';
import { CODE_COLUMN } from '../../src/sheets/set-ups/set-up-columns.ts';
import { columnPoints, POINTS_PER_MM } from '../../src/sheets/grammar/page-size.ts';
import type { SheetDescription } from '../../src/sheets/grammar/description.ts';
import { sayLeastRadius } from '../../src/sheets/words/set-up-facts.ts';
import { describeSetUps } from '../../src/sheets/set-ups/set-ups-sheet.ts';
import { saySide } from '../../src/sheets/words/say-marks.ts';
import { DEMO_FOLDER, folderTables, planOf, type Tables } from '../planning/make-job.ts';
import { cellAt, DEMO, JOBS, rowWith, textsOf } from './sheet-jobs.ts';

const MILLIMETRES = { unit: 'mm', decimalSign: '.' } as const;

async function setUpsOf(tables: Tables): Promise<{ sheet: SheetDescription; plan: JobPlan }> {
  const plan = await planOf(tables);
  return { sheet: describeSetUps(plan), plan };
}

/** What stands beside a label, at the left or at the right of the page. */
function beside(sheet: SheetDescription, label: string): string {
  const isLeft = sheet.rows.some(({ cells }) => cells[0]?.value === label);
  const [at, value] = isLeft ? [0, 2] : [6, 10];
  return String(cellAt(sheet, rowWith(sheet, label, at), value)?.value);
}

/** A row's texts from its label on. */
function across(sheet: SheetDescription, label: string): unknown[] {
  const cells = sheet.rows[rowWith(sheet, label)]?.cells ?? [];
  return cells.slice(1, 5).flatMap((cell) => (cell === null ? [] : [cell.value]));
}

// A blade without thickness, 10 in across, cuts 1 in deep and 3 in wide at 30 degrees, worked by
// hand: the chord is 2 sqrt(1 * 9) = 6 in, and 6 sin 30 = 3.
const BY_HAND: Tables = {
  runs: 'Room,Run,Profile,Length\nHall,north,Cove,90',
  profiles:
    'Profile,Make,Blank width,Blank thickness,Species,Cove width,Cove depth,Class\n' +
    'Cove,cove,4,1 1/2,Poplar,3,1,6/4',
  shop: 'Setting,Value\nhourly rate,60\nkerf,0\ntable front,10\ntable back,14\nslot to blade,5\nset-up spare,0',
  stock: "For,Kind,Class,Width,Length,Price,Per,Have,Buy\nPoplar,board,6/4,4,12',5,board foot,,",
};

describe('A set-up page', () => {
  test('has a code of its own where the page’s address is known, at the right of the board’s end', async () => {
    const coded = { ...DEMO, shop: `${DEMO.shop!.trimEnd()}\npage address,https://example.org/` };
    const { sheet, plan } = await setUpsOf(coded);
    const { sheet: without } = await setUpsOf(DEMO);
    expect(sheet.print.breaksAfter?.length).toBe(without.print.breaksAfter?.length);
    const codes = (sheet.drawings ?? []).filter(({ drawing }) => drawing.alt.includes('saw.html#'));
    expect(codes).toHaveLength(plan.profiles.filter(isCovePlan).length);
    for (const { at, drawing } of codes) {
      const { top, left } = soundRange(at);
      const { height = NaN, cells } = sheet.rows[top]!;
      expect([left, cells.slice(0, 5).filter((cell) => (cell?.value ?? null) !== null)]).toEqual([
        CODE_COLUMN,
        [],
      ]);
      const room = sheet.columns
        .slice(CODE_COLUMN, 5)
        .reduce((sum, one) => sum + columnPoints(one.width), 0);
      expect(drawing.width * POINTS_PER_MM).toBeLessThanOrEqual(room);
      expect(drawing.height * POINTS_PER_MM).toBeLessThanOrEqual(height);
      expect(drawing.width).toBeGreaterThan(25);
    }
  });

  test("begins with the manual's word, before any number that a saw can be set to", async () => {
    const { sheet } = await setUpsOf(BY_HAND);
    const first = rowWith(sheet, 'Set the saw');
    const before = sheet.rows.slice(0, first).flatMap(({ cells }) => cells);
    expect(before.filter((cell) => cell?.style === 'caution').map((cell) => cell?.value)).toEqual([
      "Read your saw's manual first. If it forbids this cut, or requires guard or riving knife for it, don't make it on that saw.",
    ]);
  });

  test('gives the approach from the blade line and from the front edge, and says so', async () => {
    const { sheet } = await setUpsOf(BY_HAND);
    expect(beside(sheet, 'Approach, from the blade line')).toBe('30°');
    expect(beside(sheet, 'Approach, from the front edge')).toBe('60°');
    expect(beside(sheet, 'Tilt of the blade, from upright, it stands upright')).toBe('0°');
    expect(beside(sheet, 'Highest tooth above table, last pass')).toBe('1" (1.0000 in)');
    expect(textsOf(sheet)).toContain('Measure both: blade 10" (10.0000 in), kerf 0" (0.0000 in)');
  });

  test('marks the rails from the blade line and from the slot, on both edges', async () => {
    const { sheet } = await setUpsOf(BY_HAND);
    // By hand: rails lie at u = -2 and 2. Left to right, y = (x sin 30 - u) / cos 30 to the right.
    // Front edge x = -10: (-5 + 2) / 0.8660 = -3.4641, (-5 - 2) / 0.8660 = -8.0829.
    // Back edge x = 14: (7 + 2) / 0.8660 = 10.3923, (7 - 2) / 0.8660 = 5.7735.
    // The slot is 5 to the left: each mark is 5 further to its right.
    expect(across(sheet, 'Rail, edge')).toEqual(['from blade line', 'from left miter slot']);
    // Each with its side in words and an arrow.
    expect(across(sheet, 'Near, front')).toEqual(['← 3 15/32" left', '→ 1 17/32" right']);
    expect(across(sheet, 'Near, back')).toEqual(['→ 10 13/32" right', '→ 15 13/32" right']);
    expect(across(sheet, 'Far, front')).toEqual(['← 8 3/32" left', '← 3 3/32" left']);
    expect(across(sheet, 'Far, back')).toEqual(['→ 5 25/32" right', '→ 10 25/32" right']);
    expect(beside(sheet, 'Between the faces of the rails')).toBe('4"');
    // (10 + 14) / cos 30 = 27.7128, and 4 in of lip at each end.
    expect(textsOf(sheet).join(' ')).toContain('4" to clamp each end: at least 35 23/32".');
  });

  test('gives the radius that smooths all of the cove, rounded down', async () => {
    const { sheet } = await setUpsOf(BY_HAND);
    // By hand: upright it is R sin² a = 5 sin² 30 = 1 1/4; see tests/core/cove/least-radius.test.ts.
    expect(textsOf(sheet).join(' ')).toContain('Sanding dowel, at most 1 1/4" radius');
    expect(sayLeastRadius(1.3124, 'in')).toBe('1 1/4"');
    expect(sayLeastRadius(1.3125, 'in')).toBe('1 5/16"');
    expect(sayLeastRadius(1 / 17, 'in')).toBe('under 1/16"');
    expect(sayLeastRadius(1.3124, 'mm')).toBe('33 mm');
    expect(sayLeastRadius(0.03, 'mm')).toBe('under 1 mm');
  });

  test('marks the side edges where a rail runs off the table', async () => {
    const shop = `${BY_HAND.shop}\ntable width,16`;
    const { sheet } = await setUpsOf({ ...BY_HAND, shop });
    expect(across(sheet, 'Far, front')).toEqual(['off the table at this edge']);
    // By hand: y = -8 where x sin 30 = 2 - 8 cos 30, x = -9.8564.
    expect(across(sheet, "Far, left, from the blade's middle")).toEqual(['9 27/32" in front']);
  });

  test('marks no side edge of a table whose width is only assumed, and says what to give', async () => {
    // By hand: at the far edge of a table 70 in deep behind the blade the rails lie
    // (70 sin 30 + 2) / cos 30 = 42.72 to the right, past the widest tables' 36.
    const shop = BY_HAND.shop!.replace('table back,14', 'table back,70');
    const { sheet, plan } = await setUpsOf({ ...BY_HAND, shop });
    expect(across(sheet, 'Near, back')).toEqual(['off the table at this edge']);
    const texts = textsOf(sheet);
    expect(texts.filter((text) => /^(?:Near|Far), (?:left|right),/u.test(text))).toEqual([]);
    expect(texts.filter((text) => text.startsWith('No marks for the sides'))).toHaveLength(1);
    const cautions = plan.cautions.filter(({ code }) => code.startsWith('rails.'));
    expect(cautions.map(({ code }) => code)).toEqual(Array(2).fill('rails.off-usual-table'));
    expect(cautions[0]?.message).toContain('42.7');
    expect(cautions[0]?.message).toContain('table width');
  });

  test('says where marks are missing for want of a table', async () => {
    const shop = 'Setting,Value\nhourly rate,60\nkerf,0';
    const { sheet } = await setUpsOf({ ...BY_HAND, shop });
    expect(textsOf(sheet).filter((text) => text.startsWith('No marks: Shop'))).toHaveLength(1);
    expect(beside(sheet, 'Between the faces of the rails')).toContain('4"');
  });

  test('lists the passes from the first to the depth, a box to tick for each', async () => {
    const { sheet, plan } = await setUpsOf(BY_HAND);
    const heights = plan.profiles[0]!.setUp!.passHeights;
    const heads = sheet.rows.findIndex(({ cells }) => cells[6]?.value === 'Passes, to tick');
    const rows = sheet.rows.slice(heads + 2);
    const boxes = rows.flatMap(({ cells }) => cells.filter((cell) => cell?.style === 'tick'));
    expect(boxes).toHaveLength(heights.length);
    // Down the first column, then on at the top of the second.
    const passes = [6, 9].flatMap((column) =>
      rows.flatMap(({ cells }) => {
        const number = cells[column]?.value;
        return /^\d+$/u.test(String(number)) ? [[number, cells[column + 1]]] : [];
      }),
    );
    expect(passes.map(([number]) => number)).toEqual(heights.map((_, at) => String(at + 1)));
    // First pass 1/16, the last at the depth, 1 in, in bold.
    expect(passes[0]![1]).toEqual({ value: '1/16"', style: 'passRight' });
    expect(passes.at(-1)![1]).toEqual({ value: '1"', style: 'figureRight' });
  });

  test('says what the rounded setting cuts, and that an exact one changes nothing', async () => {
    const { sheet } = await setUpsOf(BY_HAND);
    const said = textsOf(sheet).join(' ');
    expect(said).toContain(
      'Set by the scales of this saw: 30° from the blade line (60° from the front edge), tilt 0° from upright. The cove is then 3.0000 in wide (no change) and 0.0000 in off center (no change).',
    );
    // By hand: 6 sin 30.5 = 6 * 0.507538 = 3.0452, so 0.0452 more for half a degree.
    expect(said).toContain(
      'half a degree more approach: width 0.0452 in more, off center no change',
    );
  });

  test('tells the side to which the blade leans and the deep side, left and right', async () => {
    const demo = folderTables(DEMO_FOLDER);
    const left = await setUpsOf(demo);
    const saw = ({ sheet }: typeof left): string[] =>
      textsOf(sheet).filter((text) => /^(?:Tilt of the blade|Feed, front to back)/u.test(text));
    expect(saw(left).slice(0, 2)).toEqual([
      'Tilt of the blade, from upright, its top to the left',
      'Feed, front to back: left to right, deep side at the far rail',
    ]);
    const shop = demo.shop!.replace('tilt side,left', 'tilt side,right');
    const right = await setUpsOf({ ...demo, shop });
    expect(saw(right).slice(0, 2)).toEqual([
      'Tilt of the blade, from upright, its top to the right',
      'Feed, front to back: right to left, deep side at the far rail',
    ]);
  });

  test('gives miter and bevel for the corners that the runs have, and no others', async () => {
    const { sheet } = await setUpsOf(JOBS['sprung']!);
    // Crown of 38 degrees in a square corner: miter 31.62, bevel 33.86, printed on the scales of
    // miter saws and in their manuals [C].
    const square = '90°, inside, miter or cope: 1 end';
    expect(across(sheet, square)).toEqual(['31.62°', '33.86°']);
    // By hand: atan(sin 38 / tan 67.5) = atan(0.615661 * 0.414214) = 14.31,
    // asin(cos 38 * cos 67.5) = asin(0.788011 * 0.382683) = 17.55.
    expect(across(sheet, '135°, outside: 1 end')).toEqual(['14.31°', '17.55°']);
    // Nested, half of what the corner lacks of 180°, and an upright blade.
    expect(textsOf(sheet)).toContain(
      'Nested, upside down, the blade upright: miter 45° at 90°, 22.5° at 135°',
    );
    const rows = sheet.rows.filter(({ cells }) => /°, (in|out|ret)/u.test(String(cells[0]?.value)));
    expect(rows).toHaveLength(2);
    // 4 5/8 * cos 38 = 3.6446, 4 5/8 * sin 38 = 2.8474.
    expect(beside(sheet, 'Drop, down the wall')).toBe('3 21/32"');
    expect(beside(sheet, 'Projection, along the ceiling')).toBe('2 27/32"');
  });

  test("carries the cautions of its own cove, not another's", async () => {
    const profiles =
      'Profile,Make,Blank width,Blank thickness,Species,Cove width,Cove depth,Class\n' +
      'Steep,cove,6,1 1/2,Poplar,5 1/2,1,6/4\nMild,cove,4,1 1/2,Poplar,3,1,6/4';
    const runs = 'Room,Run,Profile,Length\nHall,north,Steep,90\nHall,south,Mild,90';
    const stock =
      "For,Kind,Class,Width,Length,Price,Per,Have,Buy\nPoplar,board,6/4,7,12',5,board foot,,";
    const { sheet, plan } = await setUpsOf({ ...BY_HAND, profiles, runs, stock });
    const steep = plan.cautions.filter((one) => one.code === 'cove.steep-approach');
    expect(steep).toHaveLength(1);
    const mild = rowWith(sheet, 'Mild');
    const at = sheet.rows.findIndex(({ cells }) => cells[0]?.value === steep[0]!.message);
    expect(at).toBeGreaterThan(0);
    expect(at).toBeLessThan(mild);
    expect(textsOf(sheet).filter((text) => text === steep[0]!.message)).toHaveLength(1);
  });
});

describe('Words on the sheets', () => {
  test('tell left from right, and a mark on the line from both', () => {
    expect(saySide(-2.5, 'the blade line', INCHES_AND_POINT)).toBe('2 1/2" left of the blade line');
    expect(saySide(2.5, 'the left miter slot', INCHES_AND_POINT)).toBe(
      '2 1/2" right of the left miter slot',
    );
    expect(saySide(-0.001, 'the blade line', INCHES_AND_POINT)).toBe('on the blade line');
    expect(saySide(0.001, 'the blade line', MILLIMETRES)).toBe('on the blade line');
    expect(saySide(0.5, 'the blade line', INCHES_AND_POINT)).toBe('1/2" right of the blade line');
    expect(saySide(-1, 'the blade line', MILLIMETRES)).toBe('25.5 mm left of the blade line');
  });
});
