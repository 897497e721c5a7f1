import { describe, expect, test } from '@jest/globals';
import { listPieces } from '../../src/planning/pieces/list-pieces.ts';
import { count } from '../deep.ts';
import { seededNumbers } from '../seeded-numbers.ts';
import { jobOf } from './make-job.ts';
import { beside, meet, reach, turned, type Line } from './houses/plane-geometry.ts';

const HEAD =
  'Room,Run,Profile,Length,Measured as,Left end,Right end,Left corner,Right corner,Reveal';
const PROFILES =
  'Profile,Make,Blank width,Blank thickness,Spring,Miter across\nCasing,buy,3 1/2,3/4,,\nLining,buy,3 1/2,3/4,,thickness';
const cut = (row: string, profiles = PROFILES): number => {
  const job = jobOf({ runs: `${HEAD}\n${row}`, openings: 'Room,Kind,Width,Height', profiles });
  return Number(listPieces(job).pieces[0]!.cutLength);
};

describe('casing at a corner that is not square', () => {
  // By hand [D]: the casing's outer edge is a polygon's side 3 11/16 outside the opening's. Of an
  // octagon's 20 in side: 20 + 2 · 3.6875 · cot 67.5° = 23.0548, up to 23 1/16.
  test('goes round an octagon window of 20 in sides with eight pieces of 23 1/16', () => {
    const row = 'Oct,side,Casing,20,opening,outside miter,outside miter,135,135';
    expect(cut(row)).toBe(23 + 1 / 16);
  });

  // Each by hand [D] from 40 in, one end square: 40 + 3.6875 · cot(C / 2).
  test.each([
    [45, 3.6875 * 2.414213562, 48 + 15 / 16],
    [60, 3.6875 * 1.732050808, 46 + 7 / 16],
    [92, 3.6875 * 0.965688775, 43 + 9 / 16],
    [90, 3.6875, 43 + 11 / 16],
  ])('adds reveal and width alike at a corner of %s°', (corner, added, expected) => {
    const row = `Hall,leg,Casing,40,opening,square,outside miter,,${corner}`;
    expect(cut(row)).toBe(expected);
    expect(expected - 40 - added).toBeGreaterThanOrEqual(0);
    expect(expected - 40 - added).toBeLessThan(1 / 16);
  });

  test('measured to its short point, or through its thickness, goes by the same rule', () => {
    // 20 + 2 · 3 1/2 · cot 67.5° = 22.8995; 20 + 2 (3/16 + 3/4) cot 67.5° = 20.7767.
    const ends = 'outside miter,outside miter,135,135';
    expect(cut(`Oct,side,Casing,20,short point,${ends}`)).toBe(22 + 15 / 16);
    expect(cut(`Oct,side,Lining,20,opening,${ends}`)).toBe(20 + 13 / 16);
  });

  test('takes its own reveal where Runs gives one', () => {
    // 20 + 2 (1/2 + 3 1/2) cot 67.5° = 23.3137; at a square corner 20 + 8.
    expect(cut('Oct,side,Casing,20,opening,outside miter,outside miter,135,135,1/2')).toBe(
      23 + 3 / 8,
    );
    expect(cut('Hall,head,Casing,20,opening,outside miter,outside miter,,,1/2')).toBe(28);
    expect(cut('Hall,head,Casing,20,opening,outside miter,outside miter,,,0')).toBe(27);
  });
});

const MEASURES = ['wall', 'opening', 'long point', 'short point', 'finished'] as const;
const ENDS = ['square', 'inside miter', 'outside miter', 'cope', 'return'] as const;
const SORTS = ['flat', 'thickness', 'face', 'crown'] as const;
type Sort = (typeof SORTS)[number];

const ROUND_PIECES = count(2_000, 500);
const WIDTH = 2.75;
const THICK = 0.8125;
const SPRING = 38;
const LINES: Readonly<Record<Sort, string>> = {
  flat: `M,buy,${WIDTH},${THICK},,`,
  thickness: `M,buy,${WIDTH},${THICK},,thickness`,
  face: `M,buy,${WIDTH},${THICK},,face`,
  crown: `M,buy,${WIDTH},${THICK},${SPRING},`,
};

/** How far the molding reaches across the miter: seen from above, or from the front where it lies flat. */
function acrossOf(sort: Sort, measured: string, end: string): number {
  const lies = sort === 'face' || (sort === 'flat' && /opening|short/u.test(measured));
  if (sort === 'crown') return turned([WIDTH, 0], SPRING)[1];
  return lies && end === 'outside miter' ? WIDTH : THICK;
}

/**
 * What an end adds, drawn: `measured` and the far side of the molding are lines beside each other, and
 * both turn the corner. Where each meets its neighbor is a point, and what the end adds is how far the
 * long point lies past the one that the tape was on.
 */
function drawnEnd(
  measured: string,
  end: string,
  corner: number,
  across: number,
  reveal: number,
): number {
  const isAround = measured === 'opening' || measured === 'short point';
  const isMitered = end === 'outside miter' || (end === 'inside miter' && isAround);
  if (!isMitered || measured === 'long point' || measured === 'finished') return 0;
  // The corner's inner side: one line comes to the corner, the other leaves it, `corner` between them.
  const here: Line = { through: [0, 0], along: [1, 0] };
  const next: Line = { through: [0, 0], along: turned([-1, 0], -corner) };
  const out = across + (measured === 'opening' ? reveal : 0);
  const long = meet(beside(here, -out), beside(next, -out));
  return reach(here, long);
}

describe('the cut length of any run', () => {
  test(`is what points and lines give, in ${ROUND_PIECES} runs of every measure and end`, () => {
    const chance = seededNumbers(13);
    const one = <T>(list: readonly T[]): T => list[Math.floor(chance() * list.length)]!;
    const rows: string[] = [];
    for (let at = 0; at < ROUND_PIECES; at++) {
      const sort = one(SORTS);
      const measured = one(MEASURES);
      const ends = [one(ENDS), one(ENDS)] as const;
      const corners = [0, 0].map(() =>
        chance() < 0.2 ? 90 : Math.round(450 + chance() * 1050) / 10,
      );
      const reveal =
        measured === 'opening' && chance() < 0.5 ? Math.floor(chance() * 17) / 32 : undefined;
      const length = 20 + Math.floor(chance() * 3200) / 32;
      const row = `R,r${at},M,${length},${measured},${ends.join(',')},${corners.join(',')},${reveal ?? ''}`;
      const added = ends.map((end, side) =>
        drawnEnd(measured, end, corners[side]!, acrossOf(sort, measured, end), reveal ?? 3 / 16),
      );
      const exact = length + added[0]! + added[1]!;
      const wanted = Math.ceil((exact - 4e-6) * 16) / 16;
      const got = cut(
        row,
        `Profile,Make,Blank width,Blank thickness,Spring,Miter across\n${LINES[sort]}`,
      );
      if (got !== wanted) rows.push(`${row} ${sort}: ${got}, drawn ${exact}`);
    }
    expect(rows).toEqual([]);
  });
});
