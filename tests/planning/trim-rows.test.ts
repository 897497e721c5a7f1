import { describe, expect, test } from '@jest/globals';

import { listPieces } from '../../src/planning/pieces/list-pieces.ts';
import { jobOf, PLAIN, readTables } from './make-job.ts';
import { READING_ROOM, saidOf } from './reading-room.ts';

describe('Runs by rows of Trim', () => {
  test('start where Starts says, are mitered where Trim says, and leave out the walls that it says', () => {
    const trimmed = (row: string, headings = 'Room,Profile,Where,Walls,Inside corners,Starts') =>
      saidOf(
        listPieces(
          jobOf({ ...READING_ROOM, openings: PLAIN.openings, trim: `${headings}\n${row}` }),
        ).pieces,
        'Base',
      );
    expect(trimmed('all,Base,floor,,,3')).toEqual([
      '1: 216 1/16 cope/square 4',
      '2: 120 1/16 cope/cope 5',
      '3: 96 3/4 square/outside miter 1',
      '4: 72 3/4 outside miter/square 1',
      '5: 120 1/16 cope/square 2',
      '6: 192 1/16 cope/square 3',
    ]);
    expect(trimmed('all,Base,floor,"1, 2",miter,')).toEqual([
      '1: 216 square/inside miter 1',
      '2: 120 inside miter/square 2',
    ]);
    // Wall 4 alone ends at the outside corner, where a return hides its end.
    expect(trimmed('all,Base,floor,except 1; 2; 3; 5; 6,,')).toEqual([
      '4: 72 return/square 1',
      '4: 3/4 square/outside miter 1',
    ]);
  });

  test('between two openings have a turn of their own, as fitting comes by', () => {
    // Casing 3 1/2 and reveal 3/16 each side: 23 5/8 in between of 24 to 60 and 91 to 120, and 20 of 1 to 30.
    const openings = `Room,Wall,Kind,Width,Height,Casing,Position
Reading room,6,door,36,80,Casing,24
Reading room,6,door,29,80,Casing,91
Reading room,6,door,20,80,Casing,150
Reading room,3,door,40,80,Casing,2`;
    const base = listPieces(jobOf({ ...READING_ROOM, openings })).pieces;
    expect(saidOf(base, 'Base')).toEqual([
      // Across from the door on wall 3: from it to the right as far as that door, to the left to the door on 6.
      '1: 216 1/16 square/square 1',
      '2: 120 1/16 cope/square 2',
      // Its casing reaches the corner: nothing is left there. Then what lies to the right of it, from the longest on.
      '3: 51 1/16 square/outside miter 6',
      '4: 72 3/4 outside miter/cope 6',
      '5: 120 1/16 square/square 4',
      '6: 20 5/16 cope/square 5',
      '6: 23 5/8 square/square 7',
      '6: 22 5/8 square/square 8',
      '6: 18 5/16 square/cope 3',
    ]);
  });

  test('go by a room’s own row before the one for all, which is told', () => {
    const rows = [
      'all,Base,floor,,,',
      'all,Rail,height,32,,',
      'reading room,BASE,floor,,except 2,miter',
      'Reading room,Rail,height,36,,',
    ];
    const headings = 'Room,Profile,Where,Height,Walls,Inside corners';
    for (const [first, second, third, fourth] of [rows, [rows[2], rows[3], rows[0], rows[1]]]) {
      const trim = [headings, first, second, third, fourth].join('\n');
      const tables = { ...READING_ROOM, openings: PLAIN.openings, trim };
      const { cautions, asRead, faults } = readTables(tables);
      expect(faults).toEqual([]);
      const made = (profile: string) =>
        asRead.runs.filter((one) => one.profile.toLowerCase() === profile);
      expect(made('base').map(({ run }) => run)).toEqual(['1', '3', '4', '5', '6']);
      expect(made('base')[4]!.right.kind).toBe('inside miter');
      // One rail alone, at the height that is said for this room.
      expect(made('rail').map(({ made: from }) => Number(from!.place.height))).toEqual(
        Array.from({ length: 6 }, () => 36),
      );
      const told = cautions.filter(({ code }) => code === 'room.own-row-first');
      expect(told.map(({ message }) => message)).toEqual([
        'Room Reading room: its own row says what runs there of “BASE” (floor), so the row for all is not used in it. Along 2 there is none.',
        'Room Reading room: its own row says what runs there of “Rail” (height), so the row for all is not used in it.',
      ]);
      const line = first === rows[0] ? 4 : 2;
      expect(told[0]!.where).toEqual({ file: 'trim.csv', line, column: 1 });
    }
  });
});
