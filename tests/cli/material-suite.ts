/** Pieces and sticks of several materials for `cut`, and lists with a decimal comma. */
import { describe, expect, test } from '@jest/globals';
import { folderWith, jsonOf, refusalOf, run, type Ran } from './program.ts';

function cut(pieces: string, sticks: string, ...options: readonly string[]): Promise<Ran> {
  const folder = folderWith({ 'p.csv': pieces, 's.csv': sticks });
  return run(folder, ['cut', 'p.csv', 's.csv', ...options]);
}

interface Stick {
  readonly material?: string;
  readonly length: number;
  readonly pieces: readonly number[];
}
interface CutAnswer {
  readonly cost: number;
  readonly bound: number;
  readonly sticks: readonly Stick[];
  readonly duals: readonly { readonly material?: string }[];
  readonly unserved: readonly { readonly material?: string }[];
}

const PIECES = 'Length,Quantity,Material\n40,2,Oak\n30,2,Poplar\n';
const faultsOf = (ran: Ran) => refusalOf(ran).faults.map(({ code, where }) => [code, where]);
const at = (file: string, line: number, column: number) => ({ file, line, column });

export function materialSuite(): void {
  describe('cut with several materials', () => {
    // By hand [D]: 94 in of a 96 hold both 40s and, by the side of them, no 30; one stick for each is 20 + 8.
    // Were it all one material, the two 30s and a 40 would go into two sticks of poplar, for 16.
    test('cuts each piece from sticks of its own', async () => {
      const ran = await cut(
        PIECES,
        'Length,Price,Material\n96,20,oak\n96,8,POPLAR\n96,1,Pine\n',
        '--json',
      );
      const { cost, bound, sticks, duals } = jsonOf(ran) as CutAnswer;
      expect([ran.exit, cost, bound]).toEqual([0, 28, 28]);
      expect(sticks.map(({ material, pieces }) => [material, pieces])).toEqual(
        expect.arrayContaining([
          ['oak', [40, 40]],
          ['POPLAR', [30, 30]],
        ]),
      );
      expect(new Set(duals.map(({ material }) => material))).toEqual(new Set(['oak', 'POPLAR']));
    });

    test('says what each stick is of, and which piece no stick of its own is long enough for', async () => {
      const pieces = 'Length,Quantity,Species\n40,2,Oak\n100,1,Poplar\n';
      const sticks = 'Length,Price,For\n144,20,Oak\n96,8,Poplar\n';
      const ran = await cut(pieces, sticks);
      expect([ran.exit, ran.out]).toEqual([1, expect.stringMatching(/144 in +Oak +2 × 40 in/u)]);
      const { unserved } = jsonOf(await cut(pieces, sticks, '--json')) as CutAnswer;
      expect(unserved).toEqual([
        { label: '', length: 100, material: 'Poplar', why: 'longer than every stick' },
      ]);
    });

    test.each([
      [
        'sticks that don’t say it',
        PIECES,
        'Length,Price\n96,20\n',
        'cutting.materials-untold',
        at('p.csv', 3, 3),
      ],
      [
        'pieces that don’t',
        'Length\n40\n',
        'Length,Material\n96,Oak\n96,Pine\n',
        'cutting.materials-untold',
        at('s.csv', 3, 2),
      ],
      [
        'a stick that doesn’t',
        PIECES,
        'Length,Material\n96,Oak\n96,\n',
        'cutting.some-materials',
        at('s.csv', 3, 2),
      ],
      [
        'a piece that doesn’t',
        'Length,Material\n40,Oak\n30,\n',
        'Length,Material\n96,Oak\n96,Pine\n',
        'cutting.some-materials',
        at('p.csv', 3, 2),
      ],
      [
        'a material without sticks',
        PIECES,
        'Length,Material\n96,Oak\n',
        'cutting.material-without-sticks',
        at('p.csv', 3, 3),
      ],
    ])('refuses %s', async (_what, pieces, sticks, code, where) => {
      const ran = await cut(pieces, sticks, '--json');
      expect([ran.exit, faultsOf(ran)]).toEqual([2, [[code, where]]]);
    });

    test('asks nothing where all is of one', async () => {
      const one = await cut('Length,Material\n40,Oak\n30,oak\n', 'Length,Price\n96,20\n', '--json');
      const other = await cut('Length\n40\n30\n', 'Length,Price,Material\n96,20,Oak\n', '--json');
      const answers = [one, other].map((ran) => jsonOf(ran) as CutAnswer);
      expect(
        answers.map(({ cost, sticks }) => [cost, sticks.map(({ material }) => material)]),
      ).toEqual([
        [20, [undefined]],
        [20, [undefined]],
      ]);
    });
  });

  describe('A decimal comma in lists', () => {
    const pieces = 'Length;Quantity;Unit\n1200,5;2;mm\n';
    const sticks = 'Length;Price;Unit\n2500;12,50 eur;mm\n';

    test('is read where the call says so, and stands in the answer', async () => {
      const ran = await cut(pieces, sticks, '--decimal', 'comma', '--kerf', '3,2 mm');
      expect(ran.exit).toBe(0);
      expect(ran.out).toMatch(/2500 mm +2 × 1200,5 mm +41,8 mm +12,50 EUR/u);
      const { sticks: cutSticks } = jsonOf(
        await cut(pieces, sticks, '--decimal=,', '--json'),
      ) as CutAnswer;
      expect(cutSticks[0]?.pieces[0]).toBeCloseTo(1200.5 / 25.4, 12);
    });

    test('is refused else, with that option, and the other way round', async () => {
      const ran = await cut(pieces, sticks);
      expect(ran.err).toMatch(/where all numbers use the other, add --decimal comma\./u);
      expect(ran.err).not.toMatch(/Shop/u);
      const points = await cut('Length\n40.5\n', 'Length\n96\n', '--decimal', 'comma');
      expect(points.err).toMatch(/the decimal sign is “,” here.*add --decimal point\./u);
      const unknown = await cut(pieces, sticks, '--decimal', 'coma');
      expect(unknown.err).toMatch(
        /^--decimal: “coma” is not known here\. Allowed: point, comma\./u,
      );
    });

    test('is read by setups alike', async () => {
      const folder = folderWith({ 'c.csv': 'Profile;Cove width;Cove depth\nA;3,5;0,75\n' });
      const [refused, answered] = await Promise.all([
        run(folder, ['setups', 'c.csv']),
        run(folder, ['setups', 'c.csv', '--decimal', 'comma']),
      ]);
      expect([refused.exit, refused.err]).toEqual([
        1,
        expect.stringMatching(/add --decimal comma/u),
      ]);
      expect([answered.exit, answered.out]).toEqual([0, expect.stringMatching(/\d,\d\d°/u)]);
      expect(answered.out).not.toMatch(/\d\.\d\d°/u);
    });
  });
}
