import { describe, expect, test } from '@jest/globals';
import {
  filesIn,
  folderWith,
  jsonOf,
  linesOf,
  refusalOf,
  run,
  type Ran,
  type SaidFault,
} from './program.ts';

interface CutAnswer {
  readonly cost: number;
  readonly currency: string | null;
  readonly bound: number;
  readonly status: string;
  readonly proven: boolean;
  readonly sticks: readonly {
    readonly length: number;
    readonly price: number;
    readonly pieces: readonly number[];
    readonly labels: readonly string[];
    readonly offcut: number;
  }[];
  readonly unserved: readonly {
    readonly label: string;
    readonly length: number;
    readonly why: string;
  }[];
  readonly duals: readonly { readonly length: number; readonly money: number }[];
  readonly credits: readonly { readonly count: number; readonly money: number }[];
  readonly faults: readonly SaidFault[];
  readonly cautions: readonly SaidFault[];
}

const PIECES = 'Length,Quantity,Label';
const STICKS = 'Length,Price,Count';

function cut(
  pieces: readonly string[],
  sticks: readonly string[],
  options: readonly string[] = ['--json'],
): Promise<Ran> {
  const folder = folderWith({
    'pieces.csv': `${[PIECES, ...pieces].join('\n')}\n`,
    'sticks.csv': `${[STICKS, ...sticks].join('\n')}\n`,
  });
  return run(folder, ['cut', 'pieces.csv', 'sticks.csv', ...options]);
}

/** Every stick gives its pieces with a kerf between each two and a trim off each end. */
function expectToFit(answer: CutAnswer, kerf: number, trim: number): void {
  for (const { length, pieces, labels, offcut } of answer.sticks) {
    const sum = pieces.reduce((all, one) => all + one, 0);
    expect(labels).toHaveLength(pieces.length);
    expect(sum + kerf * (pieces.length - 1)).toBeLessThanOrEqual(length - 2 * trim + 1e-9);
    const left = Math.max(0, length - 2 * trim - sum - kerf * pieces.length);
    expect(offcut).toBeCloseTo(left, 9);
  }
}

export function cutSuite(): void {
  describe('cut', () => {
    // thedailywtf.com, "Avoiding the Splice": 16 doors cased both sides, each side 84 + 84 + 32 in,
    // sticks of 192 in: by feet 34, truly 38; with a 1/8 kerf and 1 in end trims still 38.
    const DOORS = ['84,64,leg', '32,32,head'];
    test.each([
      { options: ['--kerf', '0', '--end-trim', '0'], kerf: 0, trim: 0 },
      { options: ['--kerf', '1/8', '--end-trim', '1'], kerf: 1 / 8, trim: 1 },
      { options: [], kerf: 1 / 8, trim: 1 },
    ])('sixteen doors take 38 sticks, with $options', async ({ options, kerf, trim }) => {
      const ran = await cut(DOORS, ['192,1,'], [...options, '--json']);
      const answer = answerOf(ran);
      expect([ran.exit, answer.cost, answer.sticks.length]).toEqual([0, 38, 38]);
      expectToFit(answer, kerf, trim);
      const labels = answer.sticks.flatMap((one) => one.labels);
      expect(labels.filter((one) => one === 'leg')).toHaveLength(64);
      expect(labels.filter((one) => one === 'head')).toHaveLength(32);
      expect([answer.unserved, answer.faults, answer.cautions]).toEqual([[], [], []]);
    });

    test('n pieces need n - 1 kerfs, and the end trims come off both ends: to the 64th', async () => {
      // By hand: 2 trims of 1 in, 3 pieces of 30 in, 2 kerfs of 1/8 in make 92 1/4 in.
      const [fits, short] = await Promise.all([
        cut(['30,3,'], ['92 1/4,1,']),
        cut(['30,3,'], ['92 15/64,1,']),
      ]);
      expect(answerOf(fits).sticks.map((one) => one.pieces)).toEqual([[30, 30, 30]]);
      expect(answerOf(short).sticks).toHaveLength(2);
    });

    test('the bound follows from the duals and credits alone', async () => {
      const ran = await cut(['50,7,a', '31,9,b'], ['100,3.50,2', '144,5.25,'], ['--json']);
      const answer = answerOf(ran);
      expectToFit(answer, 1 / 8, 1);
      const worth = new Map(answer.duals.map(({ length, money }) => [length, money]));
      const credit = answer.credits.reduce((sum, { count, money }) => sum + count * money, 0);
      const limit = 7 * worth.get(50)! + 9 * worth.get(31)! - credit;
      // All prices are multiples of 1.75, and so is what any plan costs.
      expect(answer.bound).toBeCloseTo(Math.ceil(limit / 1.75 - 1e-9) * 1.75, 9);
      expect(answer.bound).toBeLessThanOrEqual(answer.cost);
      // No stick can be filled with more than its price and credit: every filling is tried.
      const ofShort = answer.credits.reduce((sum, { money }) => sum + money, 0);
      for (const [length, most] of [
        [100, 3.5 + ofShort],
        [144, 5.25],
      ] as const) {
        for (let fifties = 0; fifties <= 2; fifties++) {
          for (let others = 0; others <= 4; others++) {
            const count = fifties + others;
            const fits = 50 * fifties + 31 * others + (count - 1) / 8 <= length - 2;
            const value = fifties * worth.get(50)! + others * worth.get(31)!;
            if (fits) expect(value).toBeLessThanOrEqual(most + 1e-9);
          }
        }
      }
    });

    test('money is in the prices own unit and adds up stick by stick', async () => {
      const ran = await cut(['60,5,'], ['96,$7.25,2', '128,9.1,']);
      const answer = answerOf(ran);
      const sum = answer.sticks.reduce((all, one) => all + one.price, 0);
      expect(answer.cost).toBeCloseTo(sum, 9);
      expect(answer.sticks.filter((one) => one.length === 96).length).toBeLessThanOrEqual(2);
      expect(answer.proven).toBe(answer.status === 'proven');
    });

    test('millimetres and inches go together without rounding', async () => {
      const options = ['--json', '--kerf', '3 mm', '--end-trim', '0'];
      // Two pieces of 499 1/2 mm, 2 kerfs' worth less one: 999 + 3 = 1002 mm.
      const [fits, short] = await Promise.all([
        cut(['499.5 mm,2,'], ['1.002 m,1,'], options),
        cut(['499.5 mm,2,'], ['1001.9 mm,1,'], options),
      ]);
      expect(answerOf(fits).sticks).toHaveLength(1);
      expect(answerOf(short).sticks).toHaveLength(2);
    });

    test('prices in one currency of whatever kind are told in it; a bare one is in it too', async () => {
      const pieces = ['60,3,'];
      const sticks = ['96,€7.25,2', '128,EUR 9.10,', '144,50,'];
      const answer = answerOf(await cut(pieces, sticks));
      // By hand [D]: two 60s and a kerf fit 128 less two trims; a 96 holds the third: 9.10 + 7.25.
      expect([answer.cost, answer.currency]).toEqual([16.35, '€']);
      const words = await cut(pieces, sticks, []);
      expect(words.out).toMatch(/^3 pieces from 2 sticks for €16\.35; proven least cost\.$/m);
      expect(words.out).toMatch(/ €9\.10$/m);
      const bare = answerOf(await cut(pieces, ['96,7.25,2', '128,9.10,']));
      expect([bare.cost, bare.currency]).toEqual([16.35, null]);
      const letters = await cut(pieces, ['96,7.25 kr.,', '128,9.10 SEK,'], []);
      expect(letters.out).toContain(' for 16.35 kr');
    });

    test('pieces left over are listed by label, with 1; the rest is planned', async () => {
      const ran = await cut(['84,3,leg', '200,1,beam', '33,1,'], ['192,10,1', '100,7,0']);
      const answer = answerOf(ran);
      expect(ran.exit).toBe(1);
      expect(answer.unserved.filter(({ label }) => label === 'beam')).toEqual([
        { label: 'beam', length: 200, why: 'longer than every stick' },
      ]);
      expect(answer.sticks).toHaveLength(1);
      expect(answer.sticks[0]!.pieces.length + answer.unserved.length).toBe(5);
      expect(answer.faults.map(({ code }) => code)).toEqual(
        answer.faults.map(() => 'cutting.left-over'),
      );
      const words = await cut(['200,2,beam', '33,1,'], ['192,10,1'], []);
      expect(words.exit).toBe(1);
      expect(words.out).toMatch(/^ +1 +192 in +33 in /m);
      expect(linesOf(words.err)).toEqual([
        expect.stringMatching(
          /^pieces\.csv, line 2, column 1: beam: 2 of 2 pieces of 200 in left over: longer/,
        ),
      ]);
    });

    test('in words: sticks cut alike are one line, then what is counted in, cost and bound', async () => {
      const { exit, out, err } = await cut(DOORS, ['192,12.50,'], []);
      expect([exit, err]).toEqual([0, '']);
      expect(out).toMatch(/^ +27 +192 in +2 × 84 in leg +21 3\/4 in +12\.50$/m);
      expect(out).toContain('1/8 in for each cut between two pieces, 1 in off each end');
      expect(out).toMatch(/^96 pieces from 38 sticks for 475\.00; /m);
    });

    interface Wrong {
      readonly name: string;
      readonly pieces?: readonly string[];
      readonly sticks?: readonly string[];
      readonly options?: readonly string[];
      readonly says: RegExp;
    }
    const WRONG: readonly Wrong[] = [
      {
        name: 'kerf',
        options: ['--kerf', '-1/8'],
        says: /^--kerf is -1\/8 in; it must be 0 or more/,
      },
      { name: 'trim', options: ['--end-trim', '3/0'], says: /^--end-trim: “3\/0” divides by zero/ },
      {
        name: 'quantity',
        pieces: ['9,2000000,'],
        says: /line 2, column 2: Quantity is 2,000,000; at/,
      },
      {
        name: 'sum',
        pieces: ['9,150000,', '8,150000,'],
        says: /^300,000 pieces are asked for; at/,
      },
      { name: 'half a piece', pieces: ['9,1.5,'], says: /column 2: Quantity is 1\.5; .* whole/ },
      { name: 'no length', pieces: [',3,leg'], says: /line 2, column 1: Length is empty/ },
      {
        name: 'too fine',
        pieces: ['1.23456789,3,leg'],
        says: /column 1: Length: .* finer than 1\/1,000,000/,
      },
      {
        name: 'no price',
        sticks: ['96,1,', '120,,'],
        says: /sticks\.csv, line 3, column 2: Price is empty here, and other sticks have one/,
      },
      {
        name: 'fine price',
        sticks: ['96,1.005,'],
        says: /column 2: Price is 1\.005; .* whole cents/,
      },
      {
        name: 'two currencies',
        sticks: ['96,$1,', '120,USD 2,', '144,€3,'],
        says: /^sticks\.csv, line 4, column 2: Price is in “€” here and in “\$” further up\./,
      },
      {
        name: 'two dollars',
        sticks: ['96,$1,', '120,USD 2,', '144,CAD 3,'],
        says: /line 4, column 2: Price is in “CAD” here and in “USD” further up\./,
      },
      { name: 'minus', sticks: ['96,-1,'], says: /column 2: Price is -1; at least 0/ },
      { name: 'count', sticks: ['96,1,few'], says: /column 3: Count: “few” is not a number/ },
      {
        name: 'short stick',
        sticks: ['96,1,', '2 in,1,'],
        says: /line 3, column 1: .* 2 in is used up/,
      },
      { name: 'no pieces', pieces: [], says: /^pieces\.csv has no rows/ },
    ];
    test.each(WRONG)('refused with one line and 2: $name', async (one) => {
      const { pieces = ['9,1,'], sticks = ['96,1,'], options = [] } = one;
      const { exit, out, err } = await cut(pieces, sticks, options);
      expect([exit, out, linesOf(err).length]).toEqual([2, '', 1]);
      expect(err).toMatch(one.says);
    });

    test('both files and both options are read before anything is said', async () => {
      const folder = folderWith({ 'p.csv': 'Length\n3/0\nx\n', 's.csv': 'Price\n96\n' });
      const args = ['cut', 'p.csv', 's.csv', '--kerf', 'thin', '--end-trim', '1/2/3', '--json'];
      const ran = await run(folder, args);
      const { faults } = refusalOf(ran);
      expect([ran.exit, filesIn(folder)]).toEqual([2, ['p.csv', 's.csv']]);
      expect(faults.map(({ code, argument }) => `${code} ${argument}`)).toEqual([
        'length.unreadable --kerf',
        'length.unreadable --end-trim',
        'length.zero-denominator Length',
        'length.unreadable Length',
        'table.heading-missing Length',
      ]);
    });
  });
}

function answerOf(ran: Ran): CutAnswer {
  return jsonOf(ran) as CutAnswer;
}
