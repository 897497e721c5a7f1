import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { fault, placeFault, type Fault, type Where } from '../../src/core/faults/fault.ts';
import { groupFaults, sayGroup } from '../../src/core/faults/group-faults.ts';

const unknown = (name: string, where?: Where): Fault => {
  const one = fault('job.profile-unknown', 'profile', name);
  return where === undefined ? one : placeFault(one, where);
};
const cell = (sheet: string, name: string): Where => ({ sheet, cell: name });
const line = (at: number): Where => ({ file: 'runs.csv', line: at, column: 3 });

describe('Faults that say the same', () => {
  test('are said once, with all their cells, where they first come', () => {
    const faults = [
      unknown('Door casing', cell('Runs', 'C2')),
      unknown('Base', cell('Runs', 'C3')),
      unknown('Door casing', cell('Runs', 'C9')),
      unknown('Door casing', cell('Openings', 'H3')),
      unknown('Door casing', cell('Openings', 'H3')),
    ];
    expect(groupFaults(faults).map(sayGroup)).toEqual([
      'Runs!C2, C9; Openings!H3: There is no profile “Door casing” in Profiles. Add it there, or correct the name.',
      'Runs!C3: There is no profile “Base” in Profiles. Add it there, or correct the name.',
    ]);
    const inFile = [unknown('Base', line(2)), unknown('Base', line(7))];
    expect(groupFaults(inFile).map(sayGroup)).toEqual([
      'runs.csv, line 2, column 3; line 7, column 3: There is no profile “Base” in Profiles. Add it there, or correct the name.',
    ]);
    expect(groupFaults([unknown('Base')]).map(sayGroup)).toEqual([unknown('Base').message]);
  });

  test('lose no message and no place', () => {
    const faults = fc.array(
      fc.tuple(fc.constantFrom('A', 'B', 'C'), fc.integer({ min: 1, max: 9 })),
    );
    fc.assert(
      fc.property(faults, (drawn) => {
        const all = drawn.map(([name, at]) => unknown(name, line(at)));
        const groups = groupFaults(all);
        const pairs = groups.flatMap(({ message, places }) =>
          places.map((where) => JSON.stringify([message, where])),
        );
        const wanted = all.map(({ message, where }) => JSON.stringify([message, where]));
        expect(new Set(pairs)).toEqual(new Set(wanted));
        expect(pairs).toHaveLength(new Set(wanted).size);
      }),
    );
  });
});
