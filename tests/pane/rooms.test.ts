import { describe, expect, test } from '@jest/globals';

import { INCHES_AND_POINT } from '../../src/core/units/length.ts';
import { drawRoom } from '../../src/drawings/room.ts';
import { readWalls } from '../../src/planning/input/read-walls.ts';
import { lookAtRooms, type RoomLook } from '../../src/planning/rooms/look-at-rooms.ts';
import { chosenRoom, optionOf } from '../../src/pane/job/chosen-room.ts';
import { readTables, tablesOf, type Tables } from '../planning/make-job.ts';

function looksAt(tables: Tables): RoomLook[] {
  const table = tablesOf(tables).find(({ name }) => name === 'Walls')!;
  const { walls, unread } = readWalls(table, INCHES_AND_POINT, { faults: [], cautions: [] });
  return lookAtRooms(walls, unread, readTables(tables).asRead.openings);
}

const DEN = 'Den,1,120\nDen,2,96\nDen,3,120\nDen,4,96';
const HEADS = 'Room,Wall,Length,Corner,Turn';

describe('Rooms as they are being typed', () => {
  test('are drawn with their openings', () => {
    const [den] = looksAt({
      walls: `${HEADS}\n${DEN}`,
      openings: 'Room,Wall,Kind,Width,Height,Position\nden,2,door,32,80,10\nDen,1,window,200,40,5',
    });
    expect(den).toMatchObject({ name: 'Den', isAtFault: false });
    // A window wider than its wall is a fault at its cell, and can't be drawn.
    expect(den!.drawn!.openings).toEqual([{ wall: 1, kind: 'door', from: 10, to: 42 }]);
    expect(den!.drawn!.suspects).toEqual([]);
  });

  test('have the wall marked that most likely is wrong, and are drawn first', () => {
    const rooms = looksAt({
      walls: `${HEADS}\nHall,1,60\nHall,2,60\nHall,3,60\nHall,4,60\n${DEN.replace('3,120', '3,130')}`,
    });
    const chosen = chosenRoom(rooms, undefined)!;
    expect([chosen.name, optionOf(chosen)]).toEqual(['Den', 'Den: not right yet']);
    const { drawn } = chosen;
    // Of two walls that go the same way either may be wrong.
    expect(drawn!.suspects.map(({ is, wall }) => `${is} ${wall}`).sort()).toEqual([
      'length 0',
      'length 2',
    ]);
    expect(drawRoom({ ...drawn!, ...INCHES_AND_POINT }).alt).toContain(
      'Marked, since it may be wrong: the length of wall',
    );
    expect(chosenRoom(rooms, 'HALL')?.name).toBe('Hall');
    expect(chosenRoom(rooms, 'gone')?.name).toBe('Den');
    expect(chosenRoom([], 'Hall')).toBeUndefined();
  });

  test('are not drawn where a wall can not be read, or is no measure of a room', () => {
    for (const length of ['12 x', '-5', '']) {
      const [den] = looksAt({ walls: `${HEADS}\n${DEN.replace('3,120', `3,${length}`)}` });
      expect([length, den!.isAtFault, den!.drawn]).toEqual([length, true, undefined]);
    }
  });

  test('whose walls cross have the wall at fault marked', () => {
    const walls = `${HEADS}\nDen,1,120,90,inside\nDen,2,60,90,inside\nDen,3,60,90,inside\nDen,4,100,,end`;
    const [den] = looksAt({ walls });
    expect(den!.isAtFault).toBe(true);
    expect(den!.drawn!.suspects).toEqual([{ is: 'length', wall: 3 }]);
  });
});
