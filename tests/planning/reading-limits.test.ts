/** Readings at their limits, and rows whose faults leave something to go on with. */
import { describe, expect, test } from '@jest/globals';
import type { Fault } from '../../src/core/faults/fault.ts';
import { INCHES_AND_POINT } from '../../src/core/units/length.ts';
import type { RawTable } from '../../src/planning/input/raw-table.ts';
import { readJob } from '../../src/planning/input/read-job.ts';
import { readProfiles } from '../../src/planning/input/read-profiles.ts';
import { readTables, tablesOf } from './make-job.ts';

describe('a number with limits', () => {
  const springs = (...given: readonly string[]) =>
    readTables({
      profiles: `Profile,Spring\n${given.map((spring, at) => `${at === 0 ? 'Base' : `P${at}`},${spring}`).join('\n')}`,
    });

  test('may stand at either limit: a spring of 2° or of 89°', () => {
    const { job } = springs('2', '89');
    expect(job!.profiles.map(({ spring }) => spring)).toEqual([2, 89]);
  });

  test('is refused beyond them, with the limit', () => {
    const { faults } = springs('1.99', '0', '89.01', '90');
    expect(faults.map(({ code, limit }) => [code, limit])).toEqual([
      ['angle.spring-tiny', { degrees: 2 }],
      ['angle.spring-tiny', { degrees: 2 }],
      ['number.too-large', 89],
      ['number.too-large', 89],
    ]);
  });
});

describe('a yes or no', () => {
  const onePieces = (words: readonly (string | number | boolean)[]) => {
    const runs: RawTable = {
      name: 'Runs',
      source: { kind: 'sheet', name: 'Runs' },
      headings: { line: 1, cells: ['Room', 'Profile', 'Length', 'One piece'] },
      rows: words.map((word, at) => ({ line: at + 2, cells: ['Hall', 'Base', 12, word] })),
    };
    return readJob([runs, ...tablesOf({}).filter((table) => table.name !== 'Runs')], 'x');
  };

  test.each([
    [true, ['yes', 'Y', 'TRUE', 'x', '1', 1, true]],
    [false, ['no', 'N', 'False', '0', 0, false]],
  ])('is %j in each of its words', (meant, words) => {
    const { job } = onePieces(words);
    expect(job!.runs.map(({ onePiece }) => onePiece)).toEqual(words.map(() => meant));
  });

  test('is refused in any other', () => {
    const { faults } = onePieces(['maybe', '2', 10]);
    expect(faults.map(({ code }) => code)).toEqual(Array(3).fill('word.unknown'));
  });
});

describe('a cove at fault', () => {
  const read = (profiles: string) => {
    const [table] = tablesOf({ profiles }).filter(({ name }) => name === 'Profiles');
    const findings = { faults: [] as Fault[], cautions: [] };
    return { rows: readProfiles(table!, INCHES_AND_POINT, findings), ...findings };
  };
  const HEADINGS = 'Profile,Make,Cove width,Cove depth,Blank width,Blank thickness,Spring\n';

  test('keeps its name known to runs and openings when a needed size is wrong', () => {
    const { rows } = read(`${HEADINGS}C,cove,3,x,4 1/2,1,\nD,cove,3,1/2,,1,`);
    expect(rows).toEqual([
      { name: 'C', species: '' },
      { name: 'D', species: '' },
    ]);
  });

  test('is refused for its spring alone, and still read as a cove', () => {
    const { rows, faults } = read(`${HEADINGS}C,crown cove,3,1/2,4 1/2,1,90`);
    expect(rows[0]?.profile).toMatchObject({ make: 'cove', cove: { width: 3, depth: 0.5 } });
    expect(faults.map(({ code }) => code)).toEqual(['number.too-large']);
  });
});
