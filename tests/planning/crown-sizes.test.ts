import { describe, expect, test } from '@jest/globals';
import { computeCutLength } from '../../src/planning/pieces/cut-length.ts';
import { jobOf, readTables } from './make-job.ts';

const HEAD = 'Profile,Make,Blank width,Blank thickness,Spring,Drop,Projection';
const profiles = (row: string): string => `${HEAD}\n${row}`;
const RUNS =
  'Room,Run,Profile,Length,Measured as,Left end,Right end\nHall,bay,Crown,100,wall,square,outside miter';
const STOCK = "For,Kind,Length,Price,Per\nCrown,stick,16',4,foot";
const read = (row: string) =>
  readTables({ runs: RUNS, stock: STOCK, profiles: profiles(row) }).faults;

describe('drop and projection of bought crown', () => {
  // Stock 4 5/8, labeled 3 5/8 by 2 5/8. By hand, a square outside corner: cot 45° is 1, so the run
  // grows by the projection: 2 5/8 as labeled, 4 5/8 · sin 38° = 2.8474, up to 2 7/8, as computed.
  test.each([
    ['Crown,buy,4 5/8,11/16,38,3 5/8,2 5/8', 102.625],
    ['Crown,buy,4 5/8,11/16,38,,2 5/8', 102.625],
    ['Crown,buy,4 5/8,11/16,38,3 5/8,', 102.875],
    ['Crown,buy,4 5/8,11/16,38,,', 102.875],
    ['Crown,buy,,,38,,2 5/8', 102.625],
  ])('%s makes an outside corner %d long', (row, length) => {
    const job = jobOf({ runs: RUNS, stock: STOCK, profiles: profiles(row) });
    const cut = computeCutLength(job.runs[0]!, job.profiles[0]!, job.shop);
    expect(cut.ok && Number(cut.value.cutLength)).toBe(length);
  });

  test.each([
    ['Crown,buy,4 5/8,11/16,,3 5/8,', 'drop', 'crown.size-without-spring'],
    ['Crown,buy,4 5/8,11/16,,,2 5/8', 'projection', 'crown.size-without-spring'],
    ['Crown,buy,4 5/8,11/16,38,3 5/8,3 5/8', 'drop', 'crown.size-beyond-face'],
    ['Crown,buy,4 5/8,11/16,38,,4 3/4', 'projection', 'crown.size-beyond-face'],
    ['Crown,buy,4 5/8,11/16,38,0,', 'drop', 'length.not-positive'],
  ])('%s is refused at its %s', (row, argument, code) => {
    const faults = read(row);
    expect(faults.map((one) => [one.code, one.argument])).toEqual([[code, argument]]);
    expect(faults[0]!.where).toMatchObject({ line: 2, column: argument === 'drop' ? 6 : 7 });
  });

  // By hand: 3 5/8 and 2 15/16 ask for 4.666, within a label's 1/16 of 4 5/8.
  test('may ask for a face that is a label too wide, and no more', () => {
    expect(read('Crown,buy,4 5/8,11/16,38,3 5/8,2 15/16')).toEqual([]);
    const [only] = read('Crown,buy,4 5/8,11/16,38,3 5/8,3');
    expect(only!.message).toMatch(/and Projection 3 in: that takes a face 4\.7\d+ in wide/u);
  });
});

test('a saw whose heights are not given is cautioned once, at Shop, where coves are cut', () => {
  const said = (shop: string, profile: string) =>
    readTables({
      shop,
      profiles: `Profile,Make,Blank width,Blank thickness,Cove width,Cove depth,Off-center\n${profile}`,
      runs: 'Room,Run,Profile,Length\nHall,north,C,100',
    }).cautions.filter(({ code }) => code.includes('height'));
  const [only, ...more] = said(
    'Setting,Value\nblade diameter,9',
    'C,cove,4,1 1/4,2 3/8,1/2,\nD,cove,4,1,2,1/2,',
  );
  expect(more).toEqual([]);
  // By hand: 4 1/2 less 1 7/8.
  expect(only!.message).toMatch(/2 5\/8 in above the table is assumed.*Measure your saw/u);
  expect(only!.where).toMatchObject({ file: 'shop.csv', line: 1 });
  expect(said('Setting,Value\nkerf,1/8', 'C,buy,4,1,,,')).toEqual([]);
  const upright = 'Setting,Value\ngreatest height upright,3';
  expect(said(upright, 'C,cove,4,1 1/4,2 3/8,1/2,').map(({ code }) => code)).toEqual([]);
  expect(said(upright, 'C,cove,4,1 1/4,2 3/8,1/2,1/4').map(({ code }) => code)).toEqual([
    'job.height-at-45-assumed',
  ]);
});
