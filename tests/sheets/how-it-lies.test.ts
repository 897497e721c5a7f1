import { describe, expect, test } from '@jest/globals';

import { edgeMark, railOf, sayLie } from '../../src/sheets/cutting/how-it-lies.ts';
import { PLAIN, planOf } from '../planning/make-job.ts';

const laid = async (offCenter: string, nearFlat: string) => {
  const { profiles } = await planOf({
    ...PLAIN,
    runs: 'Room,Run,Profile,Length\nHall,north,Cove,60',
    profiles: `Profile,Make,Blank width,Blank thickness,Species,Cove width,Cove depth,Off-center,Near flat,Class\nCove,cove,4 1/2,1,Poplar,2,1/2,${offCenter},${nearFlat},4/4`,
  });
  const { profile } = profiles[0]!;
  return [edgeMark(profile), railOf(profile), sayLie(profile)];
};

describe('How a cove is laid', () => {
  test('is by its deep side, by its wide flat, or either way round where its edges are alike', async () => {
    expect(await laid('1/4', '')).toEqual([
      'deep side',
      'far',
      'face up, deep side as ticked above',
    ]);
    // 4 1/2 less 2 leaves 2 1/2: beside 3/8 there is a flat of 2 1/8, beside 1 1/4 one of the same.
    expect(await laid('', '3/8')).toEqual([
      'wide flat',
      'far',
      'face up, wide flat as ticked above',
    ]);
    expect((await laid('', '2 1/8')).slice(0, 2)).toEqual(['wide flat', 'near']);
    expect(await laid('', '1 1/4')).toEqual([undefined, 'far', 'face up']);
    expect((await laid('', ''))[0]).toBeUndefined();
  });
});
