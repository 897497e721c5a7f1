import { describe, expect, test } from '@jest/globals';
import { PLAIN, readTables } from './make-job.ts';
import { den, ROOM_CASES, TRIM, WALLS } from './room-cases.ts';

describe('A room at fault', () => {
  test.each(ROOM_CASES)('is told of in that word alone', (spoiled, code) => {
    const { faults } = readTables(spoiled);
    expect([...new Set(faults.map((one) => one.code))]).toEqual([code]);
  });

  test.each(ROOM_CASES)('says what was given, what is allowed and a way on', (spoiled, code) => {
    const { message } = readTables(spoiled).faults.find((one) => one.code === code)!;
    expect(message).not.toMatch(/undefined|NaN|\s{2}|\.\.|\?\?|: \.|\(\)/u);
  });

  test('lacks its walls, or its trim, in words of their own', () => {
    expect(readTables({ ...den(), walls: WALLS }).faults.map(({ code }) => code)).toEqual([
      'table.empty',
    ]);
    const { faults, cautions, asRead } = readTables(den({}, { trim: TRIM, runs: PLAIN.runs }));
    expect(faults.map(({ code }) => code)).not.toContain('table.empty');
    expect(cautions.map(({ code }) => code)).toContain('room.nothing-made');
    expect(asRead.runs).toHaveLength(1);
  });
});
