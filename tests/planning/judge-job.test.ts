import { describe, expect, test } from '@jest/globals';
import { judgeJob } from '../../src/planning/judge-job.ts';
import { readTables, type Tables } from './make-job.ts';

const RUNS = 'Room,Run,Profile,Length,Measured as,Quantity,Left end,Right end,Match';
const PROFILES =
  'Profile,Make,Cove width,Cove depth,Off-center,Blank width,Blank thickness,Near flat,Spring,Species,Class,Miter across';

/** A cove of these sizes, used by a run; `shop` as rows of settings. */
const cove = (sizes: string, shop = ''): Tables => ({
  runs: `${RUNS}\nHall,north,Cove,60,,,,,`,
  profiles: `${PROFILES}\nCove,cove,${sizes},,Poplar,,`,
  shop: `Setting,Value,Unit\n${shop}`,
});

describe('What can’t be made is told as it is typed', () => {
  test('together with what can’t be read', () => {
    const read = readTables({
      ...cove('30,1/2,,31,1,'),
      runs: `${RUNS}\nHall,n,Cove,six,,,,,\nHall,n,Cove,60,,,,,`,
    });
    expect(read.faults.map(({ code }) => code)).toEqual(['length.unreadable']);
    expect(judgeJob(read).faults.map(({ code }) => code)).toEqual(['cove.too-wide']);
  });

  test('but by no usual value where the saw’s own setting is at fault', () => {
    const read = readTables(cove('30,1/2,,31,1,', 'blade diameter,none,'));
    expect(judgeJob(read)).toEqual({ faults: [], cautions: [] });
  });

  test('as a caution of a cove that nothing names, and not of one that is done', () => {
    const spoiled = cove('30,1/2,,31,1,');
    const unnamed = readTables({
      ...spoiled,
      runs: `${RUNS}\nHall,n,Cove 2,60,,,,,`,
      profiles: `${spoiled.profiles!}\nCove 2,cove,3,1/2,,4,1,,,Poplar,,`,
    });
    const judged = judgeJob(unnamed);
    expect([judged.faults, judged.cautions.map(({ code }) => code)]).toEqual([
      [],
      ['cove.too-wide'],
    ]);
    const done = readTables({ ...spoiled, runs: `Room,Profile,Length,Done\nHall,Cove,60,yes` });
    expect(judgeJob(done)).toEqual({ faults: [], cautions: [] });
  });

  test('with advice that a shop could follow', () => {
    const [only] = judgeJob(readTables(cove('30,1/2,,31,1,'))).faults;
    expect(only?.message).toMatch(/Lessen the width to 4 \d+\/\d+ in\.$/u);
  });
});
