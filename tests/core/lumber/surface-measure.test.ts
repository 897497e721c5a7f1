/** Board feet of hardwood by surface measure, against the rule's own examples. */
import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { measureBoard, tallyHardwood } from '../../../src/core/lumber/surface-measure.ts';
import type { HalfGoes, MeasuredBoard } from '../../../src/core/lumber/surface-measure.ts';

function measure(
  thickness: number,
  width: number,
  lengthFeet: number,
  nextHalf: HalfGoes = 'up',
): MeasuredBoard {
  const outcome = measureBoard({ thickness, width, length: lengthFeet * 12 }, nextHalf);
  if (!outcome.ok) throw new Error(outcome.faults[0]!.message);
  return outcome.value;
}

describe('surface measure', () => {
  test('2 × 6 1/4 in × 8 ft: 4 1/6, so 4, so 8 bf', () => {
    // American Hardwood Export Council, "Measurement".
    const board = measure(2, 6.25, 8);
    expect(board.surfaceMeasureFeet).toBe(4);
    expect(board.boardFeet.equals(8)).toBe(true);
  });

  // Illustrated guide to the NHLA grades.
  test.each([
    [6.5, 8, 4],
    [8, 12, 8],
    [10, 13, 11],
  ])('%d in × %d ft has %d', (width, lengthFeet, printed) => {
    expect(measure(1, width, lengthFeet).surfaceMeasureFeet).toBe(printed);
  });

  test('a fraction of a foot of length is dropped, one of an inch of width is not', () => {
    // American Hardwood Export Council, "Measurement": lengths go down to the whole foot.
    expect(measure(1, 8, 12.9).surfaceMeasureFeet).toBe(8);
    expect(measure(1, 8.75, 8).surfaceMeasureFeet).toBe(6);
  });

  test('an exact half goes the way that is handed in, and turns it about', () => {
    // 9 in × 6 ft = 4 1/2. Up the first time, down the next: E. Wengert, WoodWeb, 2007.
    const up = measure(1, 9, 6, 'up');
    expect([up.surfaceMeasureFeet, up.nextHalf]).toEqual([5, 'down']);
    const down = measure(1, 9, 6, up.nextHalf);
    expect([down.surfaceMeasureFeet, down.nextHalf]).toEqual([4, 'up']);
    expect(measure(1, 8, 12, 'down').nextHalf).toBe('down');
  });

  test('thickness under 1 in counts as 1 in, 5/4 by its quarters', () => {
    expect(measure(0.75, 8, 12).boardFeet.equals(8)).toBe(true);
    expect(measure(1.25, 8, 12).boardFeet.equals(10)).toBe(true);
    expect(measure(1.25, 9, 12).boardFeet.toFraction()).toBe('45/4');
  });

  test('is the face counted in 192nds of a square foot, to the nearest whole, halves as told', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 * 16 }),
        fc.integer({ min: 1, max: 20 }),
        (sixteenths, lengthFeet) => {
          const parts = sixteenths * lengthFeet; // 192nds of a square foot
          const whole = Math.floor(parts / 192);
          const past = parts % 192;
          const [up, down] = (['up', 'down'] as const).map((half) =>
            measure(1, sixteenths / 16, lengthFeet, half),
          );
          expect(up!.surfaceMeasureFeet).toBe(past >= 96 ? whole + 1 : whole);
          expect(down!.surfaceMeasureFeet).toBe(past > 96 ? whole + 1 : whole);
        },
      ),
      { numRuns: 300 },
    );
  });

  test('a board under a foot long, or without a size, is a fault', () => {
    const short = measureBoard({ thickness: 1, width: 8, length: 11.5 }, 'up');
    expect(!short.ok && short.faults[0]!.message).toBe(
      'Length is 11 1/2 in; at least 12 in is needed.',
    );
    const none = measureBoard({ thickness: NaN, width: 0, length: -1 }, 'up');
    expect(!none.ok && none.faults.map((one) => one.code)).toEqual([
      'length.unreadable',
      'length.not-positive',
      'length.not-positive',
    ]);
  });
});

describe('a tally', () => {
  const half = { thickness: 1, width: 9, length: 72 };
  const whole = { thickness: 2, width: 8, length: 144 };

  test('lets the halves take turns down the list, over boards that have none', () => {
    const tally = tallyHardwood([half, whole, half, half]);
    if (!tally.ok) throw new Error(tally.faults[0]!.message);
    expect(tally.value.boards.map((board) => board.surfaceMeasureFeet)).toEqual([5, 8, 4, 5]);
    expect(tally.value.boardFeet.equals(5 + 16 + 4 + 5)).toBe(true);
    expect(tally.value.nextHalf).toBe('down');
  });

  test('begins with the half that it is told to, and of nothing is nothing', () => {
    const tally = tallyHardwood([half, half], 'down');
    expect(tally.ok && tally.value.boards.map((board) => board.surfaceMeasureFeet)).toEqual([4, 5]);
    const none = tallyHardwood([]);
    expect(none.ok && [none.value.boardFeet.equals(0), none.value.nextHalf]).toEqual([true, 'up']);
  });

  test('of an even count of equal halves is their true sum', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), (pairs) => {
        const tally = tallyHardwood(Array.from({ length: pairs * 2 }, () => half));
        expect(tally.ok && tally.value.boardFeet.equals(9 * pairs)).toBe(true);
      }),
      { numRuns: 20 },
    );
  });

  test('names every board at fault by its place', () => {
    const tally = tallyHardwood([half, { ...half, width: 0 }, { ...half, length: 6 }]);
    expect(!tally.ok && tally.faults.map((one) => one.message)).toEqual([
      'Board 2, Width is 0 in; it must be more than 0.',
      'Board 3, Length is 6 in; at least 12 in is needed.',
    ]);
  });
});
