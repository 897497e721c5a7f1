import { describe, expect, test } from '@jest/globals';
import { listPieces } from '../../src/planning/pieces/list-pieces.ts';
import { planToJson } from '../../src/planning/plan-json.ts';
import { count } from '../deep.ts';
import { seededNumbers } from '../seeded-numbers.ts';
import { jobOf, planOf } from './make-job.ts';

const HEADS = 'Room,Run,Profile,Length,Quantity,Right end';

function marksOf(rows: readonly string[], openings?: string): Map<string, string> {
  const { pieces } = listPieces(
    jobOf({ runs: [HEADS, ...rows].join('\n'), ...(openings === undefined ? {} : { openings }) }),
  );
  return new Map(pieces.map(({ id, mark }) => [id, mark]));
}

describe('The short mark of a piece', () => {
  test('is the room’s number and the piece’s within the room, returns counted', () => {
    const marks = marksOf([
      'Hall,north,Base,60,2,square',
      'Den,east,Base,30,1,return',
      'Hall,south,Base,40,1,square',
    ]);
    expect([...marks]).toEqual([
      ['Hall / north / 1', 'R1-1'],
      ['Hall / north / 2', 'R1-2'],
      ['Den / east / 1', 'R2-1'],
      ['Den / east / 1 return right', 'R2-2'],
      ['Hall / south / 1', 'R1-3'],
    ]);
  });

  test('counts what goes round an opening after the runs, in a room of its own too', () => {
    const marks = marksOf(
      ['Hall,north,Base,60,1,square'],
      'Room,Wall,Kind,Width,Height,Casing\nDen,,cased opening,30,80,Casing\nHall,,door,30,80,Casing',
    );
    expect(marks.get('Hall / north / 1')).toBe('R1-1');
    const others = [...marks].filter(([id]) => id !== 'Hall / north / 1').map(([, mark]) => mark);
    expect(others.every((mark) => /^R(?:1-[2-9]|2-[1-9])\d*$/u.test(mark))).toBe(true);
    expect(others).toContain('R2-1');
  });

  test('is no other’s, and stays when a run is added to another room', () => {
    const next = seededNumbers(15);
    const below = (most: number): number => Math.floor(next() * most);
    for (let job = 0; job < count(300); job++) {
      const rooms = ['Hall', 'HALL', 'Den', 'Loft'].slice(0, 2 + below(3));
      const rows = Array.from({ length: 2 + below(8) }, (_, at) => {
        const room = rooms[below(rooms.length)]!;
        return `${room},wall ${at},Base,${30 + at},${1 + below(3)},${below(2) ? 'return' : 'square'}`;
      });
      const before = marksOf(rows);
      expect(new Set(before.values()).size).toBe(before.size);
      const [room] = rows[below(rows.length)]!.split(',') as [string];
      const first = rows.findIndex((row) => row.startsWith(`${room},`));
      const place = first + 1 + below(rows.length - first);
      const after = marksOf(rows.toSpliced(place, 0, `${room},new,Base,55,2,return`));
      for (const [id, mark] of before) {
        if (!id.startsWith(`${room} /`)) expect([id, after.get(id)]).toEqual([id, mark]);
      }
      // Below all that there is, nothing that stood there is marked anew, in its own room neither.
      const last = marksOf([...rows, `${room},new,Base,55,2,return`]);
      for (const [id, mark] of before) expect([id, last.get(id)]).toEqual([id, mark]);
    }
  });

  test('is told to other programs', async () => {
    const { pieces } = planToJson(await planOf({}));
    expect(pieces.map(({ id, mark }) => [id, mark])).toEqual([['Hall / north / 1', 'R1-1']]);
  });
});
