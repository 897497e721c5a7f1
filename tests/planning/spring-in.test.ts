import { describe, expect, test } from '@jest/globals';
import { checkJobPlan } from '../../src/planning/check-job-plan.ts';
import { listPieces } from '../../src/planning/pieces/list-pieces.ts';
import { planToJson } from '../../src/planning/plan-json.ts';
import { jobOf, PLAIN, planOf, readTables, type Tables } from './make-job.ts';

const TRIM = 'Room,Profile,Where,Height,Walls,Inside corners';

/** A room of 10 ft by 8; base all round. */
const den = (more: Tables = {}): Tables => ({
  runs: 'Room,Run,Profile,Length',
  walls: 'Room,Wall,Length\nDen,1,120\nDen,2,96\nDen,3,120\nDen,4,96',
  trim: `${TRIM}\nDen,Base,floor,,,`,
  ...more,
});

/** `120 1/16 with 1/16` of each piece of base, to the right. */
function lengthsOf(tables: Tables): string[] {
  const { pieces, faults } = listPieces(jobOf(tables));
  expect(faults).toEqual([]);
  return pieces
    .filter(({ profile }) => profile !== 'Casing')
    .map(({ cutLength, sprungIn }) =>
      [cutLength.toFraction(true), sprungIn?.toFraction(true)].filter(Boolean).join(' with '),
    );
}

describe('Base between two walls', () => {
  test('is cut 1/16 over, to spring in, and says so', async () => {
    expect(lengthsOf(den())).toEqual([
      '120 1/16 with 1/16',
      '96 1/16 with 1/16',
      '120 1/16 with 1/16',
      '96 1/16 with 1/16',
    ]);
    const plan = await planOf(den());
    expect(checkJobPlan(plan)).toEqual([]);
    expect(planToJson(plan).pieces.map(({ sprungIn }) => sprungIn)).toEqual(Array(4).fill(1 / 16));
  });

  test('is cut longer by what Shop says, up to the next of its precision, and by nothing at 0', () => {
    const shop = (...rows: readonly string[]): Tables =>
      den({ shop: [PLAIN.shop, ...rows].join('\n') });
    expect(lengthsOf(shop('spring-in,1/8'))[0]).toBe('120 1/8 with 1/8');
    expect(lengthsOf(shop('spring-in,0'))[0]).toBe('120');
    // A metric shop springs in by 1.5 mm: 3001.5.
    const metric = shop('unit,mm').shop!;
    const walls = 'Room,Wall,Length\nDen,1,3000\nDen,2,2000\nDen,3,3000\nDen,4,2000';
    const [first] = listPieces(jobOf(den({ walls, shop: metric }))).pieces;
    expect(Number(first?.cutLength) * 25.4).toBeCloseTo(3002, 9);
    expect(Number(first?.sprungIn)).toBeCloseTo(1.5 / 25.4, 12);
  });

  test.each([
    ['at the ceiling', den({ trim: `${TRIM}\nDen,Base,ceiling,,,` }), '120'],
    ['at a height', den({ trim: `${TRIM}\nDen,Base,height,30,,` }), '120'],
    ['mitered', den({ trim: `${TRIM}\nDen,Base,floor,,,miter` }), '120'],
    [
      'on a wall of 4 ft',
      den({ walls: 'Room,Wall,Length\nDen,1,48\nDen,2,48\nDen,3,48\nDen,4,48' }),
      '48',
    ],
    ['beside an end', den({ walls: 'Room,Wall,Length,Turn\nDen,1,120,\nDen,2,96,end' }), '120'],
    [
      'parted by a door',
      den({ openings: `${PLAIN.openings}\nDen,1,door,30,80,Casing,10` }),
      // 10 less the casing of 3 1/2 and its reveal of 3/16.
      '6 5/16',
    ],
    [
      'shortened by a door somewhere',
      den({ openings: `${PLAIN.openings}\nDen,1,door,30,80,Casing,` }),
      // 30, twice 3 1/2 and twice 3/16 less.
      '82 5/8',
    ],
    ['of Runs alone', { runs: 'Room,Run,Profile,Length\nDen,1,Base,120' }, '120'],
  ])('is as long as its wall where it is %s', (_, tables, first) => {
    expect(lengthsOf(tables)[0]).toBe(first);
  });

  test('beside an outside corner is as long as its wall and its miter', () => {
    const walls = `Room,Wall,Length,Turn\nDen,1,60,inside\nDen,2,96,outside\nDen,3,60,inside\nDen,4,60,end`;
    expect(lengthsOf(den({ walls }))).toEqual(['60', '96 3/4', '60 3/4', '60']);
  });

  test('is sprung in, and has its joints on studs, also where somebody took its run over', () => {
    const runs = (...rows: readonly string[]): Tables =>
      den({ runs: ['Room,Run,Profile,Length,Left end', ...rows].join('\n') });
    const ofTyped = (tables: Tables): string[] => lengthsOf(tables).slice(0, -3);
    // Measured anew: 119 7/8.
    const taken = runs('den,1,BASE,119 7/8,cope');
    expect(ofTyped(taken)).toEqual(['119 15/16 with 1/16']);
    expect(readTables(taken).asRead.runs[0]?.onWall).toMatchObject({
      at: 'floor',
      lies: { isWhole: true },
    });
    // Not from corner to corner, in two pieces, mitered: as long as it is typed.
    expect(ofTyped(runs('Den,1,Base,100,cope'))).toEqual(['100']);
    expect(ofTyped(runs('Den,1,Base,119,cope', 'Den,1,Base,1,'))).toEqual(['119', '1']);
    expect(ofTyped(runs('Den,1,Base,120,inside miter'))).toEqual(['120']);
  });
});

describe('The settings of walls', () => {
  const cautions = (tables: Tables): string =>
    readTables(tables)
      .cautions.filter(({ code }) => code === 'job.usual-values')
      .map(({ message }) => message)
      .join();

  test('stand in with their usual values, which is said where there is Trim', () => {
    expect(cautions(den())).toContain('stud spacing 16 in');
    expect(cautions(den())).toContain('spring-in 1/16 in');
    expect(cautions({})).not.toContain('stud spacing');
    expect(cautions({})).not.toContain('spring-in');
  });

  test.each([
    ['stud spacing,16 mm', 'number.too-small'],
    ['stud spacing,5', 'number.too-small'],
    ['stud spacing,-16', 'length.negative'],
    ['stud spacing,406', 'length.asked-about'],
    ['spring-in,16', 'length.asked-about'],
    ['spring-in,-1/16', 'length.negative'],
  ])('are refused as %s', (row, code) => {
    const { faults } = readTables(den({ shop: `${PLAIN.shop}\n${row}` }));
    expect(faults).toMatchObject([{ code, where: { file: 'shop.csv', line: 4, column: 2 } }]);
  });
});
