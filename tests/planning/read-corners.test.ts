/** Corners and springs as they are typed: what can't be meant as degrees is asked about, what isn't used is said. */
import { describe, expect, test } from '@jest/globals';
import { fault } from '../../src/core/faults/fault.ts';
import { askAboutCorner, cautionCorner } from '../../src/core/units/plausible-angle.ts';
import { crownMiter } from '../../src/functions/worksheet/crown-miter.ts';
import { readTables } from './make-job.ts';

const RUNS = 'Room,Run,Profile,Length,Left end,Right end,Left corner,Right corner';
const run = (ends: string) => {
  const { job, faults, cautions } = readTables({ runs: `${RUNS}\nHall,n,Base,100,${ends}` });
  const own = ({ code }: { code: string }) => /corner/u.test(code);
  return {
    corners: job?.runs.map(({ left, right }) => [Number(left.corner), Number(right.corner)]),
    faults: faults.map(({ code, where }) => [code, where && 'column' in where && where.column]),
    cautions: cautions
      .filter(own)
      .map(({ code, where }) => [code, where && 'column' in where && where.column]),
    said: [...faults, ...cautions.filter(own)].map(({ message }) => message),
  };
};

describe('The corner of two walls, typed at an end of a run', () => {
  test.each(['1.57', '1.5708', '0.785', '0.5', '2.356', '0', '9.9'])(
    'is refused where no two walls meet so sharply: %s',
    (typed) => {
      const left = run(`outside miter,square,${typed},`);
      expect([left.faults, left.corners]).toEqual([[['angle.corner-tiny', 7]], undefined]);
      expect(run(`square,inside miter,,${typed}`).faults).toEqual([['angle.corner-tiny', 8]]);
    },
  );

  test('is told from radians', () => {
    expect(run('outside miter,square,1.57,').said).toEqual([
      'Left corner is 1.57; no two walls meet at less than 10°. It looks like radians: 1.57 of them are 89.95°. Write the angle between the walls in degrees; a square corner is 90.',
    ]);
    expect(run('outside miter,square,8,').said[0]).not.toMatch(/radians/u);
  });

  test.each(['45', '22.5', '30', '59.9'])('may be the miter, which is cautioned: %s', (typed) => {
    const { corners, faults, cautions } = run(`outside miter,square,${typed},`);
    expect([corners, faults]).toEqual([[[Number(typed), 90]], []]);
    expect(cautions).toEqual([['angle.corner-sharp', 7]]);
  });

  test('that may be the miter is said with the corner that the miter belongs to', () => {
    expect(run('outside miter,square,22.5,').said).toEqual([
      "Left corner is 22.5°, which is taken as the angle between the two walls. Where it is the saw's miter from a square cut, write the corner instead: 135°.",
    ]);
  });

  test.each(['60', '67.5', '90', '92', '135', '150', '179'])('is taken as it is: %s', (typed) => {
    const { corners, faults, cautions } = run(`outside miter,cope,${typed},${typed}`);
    expect([corners, faults, cautions]).toEqual([[[Number(typed), Number(typed)]], [], []]);
  });

  test.each(['square', 'return'])('is said not to be used at an end that is %s', (end) => {
    const { corners, faults, cautions } = run(`${end},${end},135,90`);
    expect([corners, faults, cautions]).toEqual([[[90, 90]], [], [['job.corner-unused', 7]]]);
  });

  test('is asked about where it is odd and nothing says what the end is', () => {
    const { faults, said } = run(',,135,90');
    expect(faults).toEqual([['job.corner-without-end', 7]]);
    expect(said).toEqual([
      "Left corner is 135°, and Left end is blank, which is a square end: whether it is mitered there isn't told. Write square, inside miter, outside miter or cope under Left end; or leave Left corner blank.",
    ]);
  });
});

describe('The corner of two walls, typed in Walls', () => {
  const walls = (typed: string) => {
    const text = `Room,Wall,Length,Corner\nHall,N,100,${typed}\nHall,E,100,\nHall,S,100,\nHall,W,100,`;
    return readTables({ walls: text, trim: 'Room,Profile,Where,Walls\nHall,Base,floor,all' });
  };

  test('is asked about in the same words', () => {
    const { faults } = walls('1.57');
    expect(faults.map(({ code, where }) => [code, where])).toEqual([
      ['angle.corner-tiny', { file: 'walls.csv', line: 2, column: 4 }],
    ]);
    const sharp = walls('45').cautions.filter(({ code }) => code === 'angle.corner-sharp');
    expect(sharp).toHaveLength(1);
  });
});

describe('A spring angle', () => {
  test('of radians is refused at its cell, one of degrees is taken', () => {
    const spring = (typed: string) =>
      readTables({
        runs: 'Room,Profile,Length\nHall,Crown,90',
        profiles: `Profile,Make,Blank width,Blank thickness,Spring\nCrown,buy,4,3/4,${typed}`,
      }).faults.map(({ code }) => code);
    expect([spring('0.663'), spring('0.785'), spring('38')]).toEqual([
      ['angle.spring-tiny'],
      ['angle.spring-tiny'],
      [],
    ]);
  });

  test('and a corner in radians are bad input to the functions, other corners are computed', () => {
    const of = (spring: number, corner: number): unknown =>
      crownMiter([[spring]], [[corner]])[0]?.[0];
    expect(typeof of(38, 90)).toBe('number');
    expect(typeof of(38, 5)).toBe('number');
    expect([of(38, 1.5708), of(0.663, 90)]).toMatchObject([
      { code: '#VALUE!' },
      { code: '#VALUE!' },
    ]);
  });

  test('has a limit of its own, and so has a corner', () => {
    expect(askAboutCorner('corner', 10)).toBeUndefined();
    expect(cautionCorner('corner', 60)).toBeUndefined();
    expect(askAboutCorner('corner', 5)).toEqual(
      fault('angle.corner-tiny', 'corner', 5, { limit: { degrees: 10 } }),
    );
  });
});
