import { beforeAll, describe, expect, test } from '@jest/globals';
import { listAllPieces } from '../../src/exports/piece-lists.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import type { WorkbookDescription } from '../../src/sheets/grammar/description.ts';
import { listLabels } from '../../src/sheets/labels/list-labels.ts';
import { PLAIN, planOf, type Tables } from '../planning/make-job.ts';
import { cutPieces } from './cut-rows.ts';
import { sheetOf, textsOf } from './sheet-jobs.ts';

/**
 * Base on a wall of 17 ft 4 in from sticks of 16 ft, a door across from 25 in along it, all to spring in. By
 * hand: 208 1/8 with a lap of 3/4 is a left part of 16 k + 3/8 and the rest, 208 1/2 - 16 k: the longest
 * part is 176 1/2 at k = 2 and 176 3/8 at k = 11.
 */
const LONG_ROOM: Tables = {
  runs: 'Room,Run,Profile,Length',
  walls: "Room,Wall,Length\nDen,1,17' 4\nDen,2,10'\nDen,3,17' 4\nDen,4,10'",
  trim: 'Room,Profile,Where,Walls,Note\nDen,Base,floor,"1, 2",primed',
  openings: `${PLAIN.openings}\nDen,3,door,30,80,Casing,168`,
  shop: `${PLAIN.shop}\nspring-in,1/8`,
};
const PLACED =
  'on stud 11 at 16" from there: find the stud first; its left part laps over the right one';

let plan: JobPlan;
let workbook: WorkbookDescription;

beforeAll(async () => {
  plan = await planOf(LONG_ROOM);
  workbook = describePlan(plan);
});

const noteWith = (sheet: string, word: string): string =>
  textsOf(sheetOf(workbook, sheet)).find((text) => text.includes(word)) ?? '';

describe('A joint on a wall', () => {
  test.each(['Rooms', 'Pieces'])('is placed on %s, with what is longer than its wall', (sheet) => {
    const note = noteWith(sheet, 'joint ');
    expect(note).toContain('1/8" over, to spring in');
    expect(note).toContain(`joint 176" from the wall's left corner, ${PLACED}`);
    expect(note.endsWith('; primed')).toBe(true);
  });

  test('is placed in the list of pieces for other programs', () => {
    const notes = listAllPieces(plan).rows.map((row) => String(row.at(-1)));
    expect(notes.find((note) => note.includes('joint '))).toContain(PLACED);
  });

  test('laps on Cutting and on labels as it is to be seen from the door', () => {
    const scarfs = (side: 'left' | 'right'): string[] =>
      cutPieces(sheetOf(workbook, 'Cutting'))
        .map((row) => row[side])
        .filter((end) => end.includes('scarf'));
    // Long at the face on the left part, long at the back on the right one.
    expect(scarfs('right')).toEqual(['◣ scarf 45°']);
    expect(scarfs('left')).toEqual(['◥ scarf 45°']);
    const labels = listLabels(plan).filter((one) => one.kind === 'piece' && one.part !== '');
    expect(
      labels.map((one) =>
        one.kind === 'piece' ? [one.part, one.left.shape, one.right.shape] : [],
      ),
    ).toEqual(
      expect.arrayContaining([
        ['part 1 of 2', 'square', 'long in front'],
        ['part 2 of 2', 'long behind', 'square'],
      ]),
    );
  });

  test('that no stud would hold is to be backed with a block', async () => {
    const tight = await planOf({ ...LONG_ROOM, shop: `${PLAIN.shop}\nleast part,101` });
    const said = textsOf(sheetOf(describePlan(tight), 'Rooms')).find((one) =>
      one.includes('joint'),
    );
    expect(said).toContain("from the wall's left corner, on no stud: put a block behind it");
  });
});
