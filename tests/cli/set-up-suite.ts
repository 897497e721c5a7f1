import { describe, expect, test } from '@jest/globals';
import {
  folderWith,
  jsonOf,
  linesOf,
  refusalOf,
  run,
  type Ran,
  type SaidFault,
} from './program.ts';

interface Answer {
  readonly profile: string | null;
  readonly ok: boolean;
  readonly approachDeg: number | null;
  readonly approachFromFrontDeg: number | null;
  readonly tiltDeg: number | null;
  readonly passCount: number | null;
  readonly passHeights: readonly number[];
  readonly deepestLine: number | null;
  readonly bladeMiddle: number | null;
  readonly faults: readonly SaidFault[];
  readonly cautions: readonly SaidFault[];
}

const HEADINGS = 'Profile,Cove width,Cove depth,Off-center,Blade diameter,Kerf';

function setUps(rows: readonly string[], headings = HEADINGS): Promise<Ran> {
  const folder = folderWith({ 'coves.csv': `${[headings, ...rows].join('\n')}\n` });
  return run(folder, ['setups', 'coves.csv', '--json']);
}

export function setUpSuite(): void {
  describe('setups', () => {
    test('published and derived coves come out as they are known', async () => {
      const ran = await setUps([
        // Instructables.com, "Making Cove Profiles on a Table Saw": the printed triangle's legs
        // 7.0849 and 6.3406 give 41.827° from the blade.
        'triangle,3,1/2,0,10,1/8',
        // Fence 61° from the front edge, tilt 38°, read to the whole degree [C] common practice,
        // no source. Exact: 59.2 / 37.8 thin, 60.3 / 39.35 with the kerf (regression values).
        'thin,3,3/4,1/2,10,0',
        'full,3,3/4,1/2,10,1/8',
        // Widths at 27° and 1/2 deep: regression values; sizes from Woodworker's Journal 16-6
        // (1992) p. 39, the 10 in one also Popular Woodworking 163 (Aug 2007) p. 27, "about 2 in".
        'ten,1.9789,1/2,,10,0',
        'resharpened,1.9658,1/2,,9 7/8,0',
        'small,1.7874,1/2,,8 1/4,0',
        'large,2.1773,1/2,,12,0',
      ]);
      expect(ran.exit).toBe(0);
      const [triangle, thin, full, ...at27] = answersOf(ran);
      expect(Math.abs(triangle!.approachDeg! - 41.827)).toBeLessThan(5e-4);
      expect(triangle!.tiltDeg).toBe(0);
      expect(thin!.approachFromFrontDeg).toBeCloseTo(59.2, 1);
      expect(thin!.tiltDeg).toBeCloseTo(37.8, 1);
      expect(full!.approachFromFrontDeg).toBeCloseTo(60.3, 1);
      expect(full!.tiltDeg).toBeCloseTo(39.35, 2);
      expect(Math.abs(full!.approachFromFrontDeg! - 61)).toBeLessThan(2);
      expect(Math.abs(full!.tiltDeg! - 38)).toBeLessThan(1.5);
      expect(at27).toHaveLength(4);
      // 5e-5 in of width is 1e-3° of approach here.
      for (const one of at27) expect(Math.abs(one.approachDeg! - 27)).toBeLessThan(1e-3);
    });

    test('each answer has the fields agreed on, complementary angles and rising heights', async () => {
      const ran = await setUps(['A,3 5/8,7/8,3/8,9 7/8,1/8', 'B,40 mm,10 mm,,,']);
      const answers = answersOf(ran);
      for (const one of answers) {
        expect(Object.keys(one)).toEqual([
          ...['profile', 'ok', 'approachDeg', 'approachFromFrontDeg', 'tiltDeg'],
          ...['passCount', 'passHeights', 'deepestLine', 'bladeMiddle', 'faults', 'cautions'],
        ]);
        expect(one.approachDeg! + one.approachFromFrontDeg!).toBeCloseTo(90, 12);
        expect(one.passHeights).toHaveLength(one.passCount!);
        expect([...one.passHeights].sort((a, b) => a - b)).toEqual(one.passHeights);
      }
      expect(answers.map((one) => one.passHeights.at(-1))).toEqual([0.875, 10 / 25.4]);
    });

    test('an off-center leads to the deepest line, or to the blade’s middle where it is asked for', async () => {
      const headings = `${HEADINGS},Off-center to`;
      const sizes = '3 5/8,7/8,3/8,10,1/8';
      const ran = await setUps(
        [
          `A,${sizes},`,
          `B,${sizes},Deepest line`,
          `C,${sizes},blade middle`,
          `D,${sizes},elsewhere`,
        ],
        headings,
      );
      const [blank, deepest, middle, unknown] = answersOf(ran);
      expect(blank!.deepestLine).toBeCloseTo(0.375, 9);
      expect(blank!.bladeMiddle).toBeGreaterThan(0.4);
      expect({ ...deepest, profile: 'A' }).toEqual(blank);
      expect(middle!.bladeMiddle).toBeCloseTo(0.375, 9);
      expect(middle!.deepestLine).toBeLessThan(0.35);
      expect(middle!.tiltDeg!).toBeLessThan(blank!.tiltDeg!);
      expect(unknown!.faults.map(({ where }) => where?.column)).toEqual([7]);
    });

    test('blank and absent columns stand for 0, 10 and 1/8', async () => {
      const [full, blank, absent] = await Promise.all([
        setUps(['A,3,3/4,0,10,1/8']),
        setUps(['A,3,3/4,,,']),
        setUps(['A,3,3/4'], 'cove DEPTH,Cove width,Profile'.split(',').reverse().join(',')),
      ]);
      expect(answersOf(blank)).toEqual(answersOf(full));
      expect(answersOf(absent)).toEqual(answersOf(full));
    });

    test('a row that cannot be made or read is answered with its faults; the others stand', async () => {
      const ran = await setUps([
        'good,3,1/2,,,',
        'too wide,20,1/2,,,',
        'tilts too far,3,3/4,1.2,,',
        'no fraction,3/0,1/2,,,',
        'nothing,,,,,',
        ',3,1/2,,,',
        'minus,-3,1/2,-1,,',
        'words,wide,1e999,NaN,∞,--4',
        'good too,"3-1/2""",5/8,,,',
      ]);
      expect(ran.exit).toBe(1);
      const answers = answersOf(ran);
      expect(answers.map((one) => one.ok)).toEqual([true, ...Array<boolean>(7).fill(false), true]);
      for (const { ok, faults, ...rest } of answers.filter((one) => !one.ok)) {
        expect([ok, faults.length > 0]).toEqual([false, true]);
        const nothing = { approachDeg: null, approachFromFrontDeg: null, tiltDeg: null };
        const lines = { deepestLine: null, bladeMiddle: null };
        expect(rest).toMatchObject({ ...nothing, ...lines, passCount: null, passHeights: [] });
      }
      const places = answers.map(({ faults }) =>
        faults.map(({ code, where }) => `${code} ${where?.line}:${where?.column}`),
      );
      expect(places).toEqual([
        [],
        ['cove.too-wide 3:2'],
        ['cove.tilt-beyond-stop 4:1'],
        ['length.zero-denominator 5:2'],
        ['length.missing 6:2', 'length.missing 6:3'],
        ['text.missing 7:1'],
        ['length.not-positive 8:2', 'length.negative 8:4'],
        [2, 3, 4, 5, 6].map((column) => `length.unreadable 9:${column}`),
        [],
      ]);
      expect(answers[5]!.profile).toBeNull();
    });

    test('in words: the manual first, each angle with what it is measured from, faults apart', async () => {
      const rows = 'A,3 5/8,7/8,3/8,,3/32\nB,20,1/2,,,\n';
      const folder = folderWith({ 'coves.csv': `${HEADINGS}\n${rows}` });
      const { exit, out, err } = await run(folder, ['setups', 'coves.csv']);
      expect(exit).toBe(1);
      expect(out).toMatch(/^Read your saw's manual first\./);
      expect(out).toMatch(/^ {2}Unplug the saw/m);
      expect(out).toMatch(/Never draw the board back over a turning blade/);
      expect(out).toMatch(
        /Approach, from +Approach, from +Tilt of the blade, +Deepest line, +Blade's middle, +Highest tooth above/,
      );
      expect(out).toMatch(
        /the blade line +the front edge +from upright +off center +off center +table, last pass/,
      );
      expect(out).toMatch(
        /^A +\d+\.\d\d° +\d+\.\d\d° +\d+\.\d\d° +0\.375 in +0\.4\d\d in +7\/8 in +15$/m,
      );
      expect(out).toMatch(/^B +can't be made$/m);
      expect(out).toMatch(/\n\nCaution: coves\.csv, line 2, column 6: The kerf is 3\/32 in/);
      expect(linesOf(err)).toHaveLength(1);
      expect(err).toMatch(/^coves\.csv, line 3, column 2: Cove width is 20 in; /);
      // No colors, nothing that steers a terminal.
      expect((out + err).replaceAll('\n', '')).not.toMatch(/\p{Cc}/u);
    });

    test('a heading that nobody knows is said once, with the first row', async () => {
      const ran = await setUps(['A,3,1/2,x', 'B,3,1/2,y'], 'Profile,Cove width,Cove depth,Color');
      expect(ran.exit).toBe(0);
      const codes = answersOf(ran).map((one) => one.cautions.map(({ code }) => code));
      expect(codes).toEqual([['table.heading-unknown'], []]);
    });

    test.each([
      { text: 'Profile,Cove width\nA,3\n', codes: ['table.heading-missing'] },
      { text: 'Nobody,Size\nA,3\n', codes: Array<string>(3).fill('table.heading-missing') },
      { text: 'Name,Cove width,Cove depth\nA,3,1/2\n', codes: ['table.heading-near'] },
      { text: `${HEADINGS},Kerf\nA,3,1/2,,,1/8,1/8\n`, codes: ['table.heading-twice'] },
      { text: `${HEADINGS}\n`, codes: ['table.empty'] },
      { text: '', codes: ['table.empty'] },
    ])('a file without its headings or rows is refused with 2: $codes', async ({ text, codes }) => {
      const folder = folderWith({ 'coves.csv': text });
      const ran = await run(folder, ['setups', 'coves.csv', '--json']);
      const { faults } = refusalOf(ran);
      expect([ran.exit, faults.map(({ code }) => code)]).toEqual([2, codes]);
    });
  });
}

function answersOf(ran: Ran): Answer[] {
  return jsonOf(ran) as Answer[];
}
