import { describe, expect, test } from '@jest/globals';
import { checkJobPlan } from '../../src/planning/check-job-plan.ts';
import { listJoints, listSpliced } from '../../src/planning/joints.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { planToJson } from '../../src/planning/plan-json.ts';
import { count } from '../deep.ts';
import { seededNumbers } from '../seeded-numbers.ts';
import { PLAIN, planOf, type Tables } from './make-job.ts';

const NO_RUNS = 'Room,Run,Profile,Length';
const TRIM = 'Room,Profile,Where,Walls,Inside corners';
const shopOf = (...rows: readonly string[]): string => [PLAIN.shop, ...rows].join('\n');

/** A room of four walls as the plan sees it from above, and base along its first wall alone. */
function longRoom(length: string, more: Tables = {}): Tables {
  return {
    runs: NO_RUNS,
    walls: `Room,Wall,Length\nDen,1,${length}\nDen,2,10'\nDen,3,${length}\nDen,4,10'`,
    trim: `${TRIM}\nDen,Base,floor,1,`,
    ...more,
  };
}

/** The parts of each spliced piece and its joints: `32 3/8 + 184 3/8: 32 on 2, right`. */
function saidOf(plan: JobPlan): string[] {
  const joints = listJoints(plan);
  return listSpliced(plan.profiles.flatMap(({ sticks }) => sticks)).map(({ id, parts }) => {
    const lengths = parts.map((one) => one.toFraction(true)).join(' + ');
    const places = joints
      .get(id)!
      .map(({ at, stud, front }) => `${at?.toFraction(true) ?? '?'} on ${stud ?? '-'}, ${front}`);
    return `${lengths}: ${places.join('; ')}`;
  });
}

describe('The joint of base on a wall of 18 ft, from sticks of 16 ft', () => {
  // By hand: 190 in of a stick are left without its end trims; a scarf at 45° through 3/4 in laps 3/4.
  // The lap's middle is on the stud at 16 k in where the left part is 16 k + 3/8 long; the right one is
  // 216 3/4 less that. None under 24 and none over 190: k from 2 to 11. Where nothing else is cut, the
  // longest offcut comes with the longest part: 184 3/8, at k = 2; at k = 11 it is 176 3/8.
  const hall: Tables = {
    runs: NO_RUNS,
    walls: "Room,Wall,Length,Turn\nHall,long,18',end",
    trim: `${TRIM}\nHall,Base,floor,,`,
  };

  test('lies on a stud at 16 in from the left corner', async () => {
    const plan = await planOf(hall);
    expect(checkJobPlan(plan)).toEqual([]);
    expect(saidOf(plan)).toEqual(['32 3/8 + 184 3/8: 32 on 2, right']);
    expect(plan.cautions.filter(({ code }) => code === 'job.joint-off-stud')).toEqual([]);
    const [piece] = planToJson(plan).pieces;
    expect(piece).toMatchObject({
      length: 216,
      sprungIn: 0,
      joints: [{ at: 32, stud: 2, front: 'right' }],
    });
  });

  test('lies wherever the sticks are used best where the spacing is not known', async () => {
    const plan = await planOf({ ...hall, shop: shopOf('stud spacing,0') });
    // 190 and the rest; the lap's middle is 3/8 before the left part's end.
    expect(saidOf(plan)).toEqual(['190 + 26 3/4: 189 5/8 on -, right']);
    expect(plan.cautions.filter(({ code }) => code === 'job.joint-off-stud')).toEqual([]);
  });

  test('lies where no stud is, which is said, where parts must not be so short', async () => {
    // No part under 105: the left one from 105 to 111 3/4, and 96 3/8 and 112 3/8 would be on studs. So both
    // are evened out.
    const plan = await planOf({ ...hall, shop: shopOf('least part,105') });
    expect(checkJobPlan(plan)).toEqual([]);
    expect(saidOf(plan)).toEqual(['108 3/8 + 108 3/8: 108 on -, right']);
    const [off] = plan.cautions.filter(({ code }) => code === 'job.joint-off-stud');
    expect(off).toMatchObject({
      where: { file: 'walls.csv', line: 2, column: 3 },
      given: { inches: 16 },
      details: { at: { inches: 108 } },
    });
    expect(off?.message).toContain('Back the joint with a block');
  });

  test('has no place up a slope, where studs are farther apart along it', async () => {
    const profiles =
      'Profile,Make,Blank width,Blank thickness,Spring,Slope\nCrown,buy,4 5/8,3/4,45,18';
    const plan = await planOf({
      ...hall,
      profiles,
      trim: `${TRIM}\nHall,Crown,ceiling,,`,
      stock: "For,Kind,Length,Price,Per\nCrown,stick,16',2,foot",
    });
    expect(saidOf(plan)).toEqual(['190 + 26 3/4: ? on -, right']);
  });

  test('of a run that somebody typed for no wall lies anywhere, as ever', async () => {
    const plan = await planOf({ runs: "Room,Run,Profile,Length\nHall,long,Base,18'" });
    expect(saidOf(plan)).toEqual(['190 + 26 3/4: ? on -, right']);
  });
});

describe('A joint', () => {
  // By hand: 208 is 13 studs of 16: parts of 32 3/8 and 176 3/8, in either order. Wall 3 faces wall 1, its
  // left end across from wall 1's right one: a door of 30 in, 10 in from there, has its middle at
  // 208 - 25 = 183 in along wall 1; one 168 in from there has it at 25.
  const withDoor = (position: number): Tables =>
    longRoom("17' 4", {
      openings: `${PLAIN.openings}\nDen,3,door,30,80,Casing,${position}`,
      shop: shopOf('spring-in,0'),
    });

  test('lies away from the door where the parts are the same, and its scarf opens away from it', async () => {
    const [right, left] = [await planOf(withDoor(10)), await planOf(withDoor(168))];
    const base = (plan: JobPlan): string => saidOf(plan).join();
    expect(base(right)).toBe('32 3/8 + 176 3/8: 32 on 2, right');
    expect(base(left)).toBe('176 3/8 + 32 3/8: 176 on 11, left');
  });

  test('counts from the corner where an outside miter begins before it', async () => {
    // Round an outside corner at its left end base of 3/4 in begins 3/4 before it: 16 k + 3/8 + 3/4.
    const walls =
      "Room,Wall,Length,Turn\nHall,short,30,outside\nHall,long,18',inside\nHall,end,40,end";
    const trim = `${TRIM}\nHall,Base,floor,except end,`;
    const plan = await planOf({ runs: NO_RUNS, walls, trim, shop: shopOf('least part,34') });
    expect(checkJobPlan(plan)).toEqual([]);
    const [said = ''] = saidOf(plan);
    const [left = '', at] = [said.split(' + ')[0], Number(/: (\d+) on/u.exec(said)?.[1])];
    expect(at % 16).toBe(0);
    expect(left).toBe(`${at + 1} 1/8`);
  });

  test('has no place where an opening is cut out by its total', async () => {
    const plan = await planOf(
      longRoom("24'", { openings: `${PLAIN.openings}\nDen,1,door,30,80,Casing,` }),
    );
    const [piece] = planToJson(plan).pieces;
    expect(piece?.joints).toEqual([{ at: null, stud: null, front: 'right' }]);
  });
});

describe('Joints of random rooms', () => {
  test('lie on studs in the fewest parts, or no stud would do; parts add up and fit their sticks', async () => {
    const next = seededNumbers(15);
    const of = <One>(list: readonly One[]): One => list[Math.floor(next() * list.length)]!;
    const tally = { on: 0, off: 0 };
    for (let drawn = 0; drawn < count(120, 25); drawn++) {
      const spacing = of([12, 16, 19.2, 24]);
      const least = of([12, 24, 48]);
      const precision = of([1 / 16, 1 / 8]);
      const lengths = [96, 120, 144, 192].filter(() => next() < 0.6);
      const sticks = lengths.length === 0 ? [144] : lengths;
      const [wide, deep] = [100 + Math.floor(next() * 400), 90 + Math.floor(next() * 300)];
      const door = 12 + Math.floor(next() * (wide - 60));
      const plan = await planOf({
        runs: NO_RUNS,
        walls: `Room,Wall,Length\nDen,1,${wide}\nDen,2,${deep}\nDen,3,${wide}\nDen,4,${deep}`,
        trim: `${TRIM}\nDen,Base,floor,,\nDen,Crown,ceiling,,miter`,
        openings: `${PLAIN.openings}\nDen,${of([1, 3])},door,30,80,Casing,${door}`,
        shop: shopOf(
          `stud spacing,${spacing}`,
          `least part,${least}`,
          `length precision,${precision}`,
        ),
        stock: [
          'For,Kind,Length,Price,Per',
          ...sticks.flatMap((one) => [`Base,stick,${one},2,foot`, `Crown,stick,${one},4,foot`]),
          'Casing,stick,192,3,foot',
        ].join('\n'),
      });
      expect(checkJobPlan(plan)).toEqual([]);
      const longest = Math.floor((Math.max(...sticks) - 2) / precision) * precision;
      const joints = listJoints(plan);
      for (const { profile, sticks: cut } of plan.profiles) {
        // 3/4 of base, 11/16 of crown, up to the precision.
        const lap = Math.ceil(Number(profile.blankThickness) / precision - 1e-9) * precision;
        for (const { id, piece, parts } of listSpliced(cut)) {
          const lies = piece!.onWall!.lies!;
          const start = Number(lies.from) - Number(piece!.left.added);
          const whole = Number(piece!.cutLength);
          const cuts = parts.map(Number);
          expect(cuts.reduce((sum, one) => sum + one, 0)).toBeCloseTo(
            whole + (cuts.length - 1) * lap,
            9,
          );
          expect((cuts.length - 1) * (longest - lap) + lap).toBeLessThan(whole);
          expect(Math.max(...cuts)).toBeLessThanOrEqual(longest);
          let end = start;
          const middles = cuts.slice(0, -1).map((one) => (end += one - lap) + lap / 2);
          expect(joints.get(id)!.map(({ at }) => Number(at))).toEqual(
            middles.map((one) => expect.closeTo(one, 9)),
          );
          const off = (one: number): number => Math.abs(one - Math.round(one / spacing) * spacing);
          const isOn = middles.every((one) => off(one) <= precision / 2 + 1e-9);
          const even = Math.floor((whole + (cuts.length - 1) * lap) / cuts.length / precision);
          const shortest = Math.min(least, even * precision);
          const can = canLieOnStuds(
            whole,
            cuts.length,
            lap,
            [shortest, longest],
            (middle) => {
              const exact = middle - start + lap / 2;
              return Math.round(exact / precision + 1e-9) * precision;
            },
            spacing,
            start,
          );
          expect([id, isOn]).toEqual([id, can]);
          tally[isOn ? 'on' : 'off'] += 1;
          const told = plan.cautions.filter(({ code }) => code === 'job.joint-off-stud');
          if (!isOn && middles.some((one) => off(one) > 3 / 4)) expect(told).not.toEqual([]);
          for (const { at, front } of joints.get(id)!) {
            expect(front).toBe(Number(at) > piece!.onWall!.door! ? 'left' : 'right');
          }
        }
      }
    }
    expect(tally.on).toBeGreaterThan(30);
    expect(tally.off).toBeGreaterThan(2);
  }, 120_000);
});

/** By trying every stud for every joint. `endAt` is how long the piece is, from its left end, to the end of a part whose joint lies so. */
function canLieOnStuds(
  whole: number,
  parts: number,
  lap: number,
  [least, longest]: readonly [number, number],
  endAt: (middle: number) => number,
  spacing: number,
  start: number,
): boolean {
  const slack = 1e-9;
  const fits = (part: number): boolean => part >= least - slack && part <= longest + slack;
  const ends: number[] = [];
  for (let stud = 1; stud * spacing < start + whole + spacing; stud++) {
    const end = endAt(stud * spacing);
    if (end > lap && end < whole) ends.push(end);
  }
  const from = (before: number, left: number): boolean =>
    left === 1
      ? fits(whole - before + lap)
      : ends.some((end) => fits(end - before + lap) && from(end, left - 1));
  return from(lap, parts);
}
