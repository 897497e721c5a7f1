import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { own } from '../../src/core/faults/argument.ts';
import { checkPlan } from '../../src/cutting/check/check-plan.ts';
import { countSticks, type StickCount, type StickOrder } from '../../src/cutting/count-sticks.ts';

function counted(
  lengths: readonly number[],
  stickLength: number,
  more: Partial<StickOrder> = {},
): StickCount {
  const pieces = lengths.map((length, at) => ({ name: own(`Piece ${at}`), length, quantity: 1 }));
  const outcome = countSticks({ pieces, stickLength, kerf: 0, endTrim: 0, ...more });
  if (!outcome.ok) throw new Error(outcome.faults.map(({ message }) => message).join(' '));
  return outcome.value;
}

/** Every way to share few pieces among sticks, one piece after the other. */
function fewestOf(lengths: readonly number[], room: number, kerf: number): number {
  const place = (at: number, used: readonly number[]): number => {
    const length = lengths[at];
    if (length === undefined) return used.length;
    const ways = used.flatMap((sum, stick) =>
      sum + length <= room + 1e-9
        ? [
            place(
              at + 1,
              used.map((one, other) => (other === stick ? one + length + kerf : one)),
            ),
          ]
        : [],
    );
    return Math.min(...ways, place(at + 1, [...used, length + kerf]));
  };
  return place(0, []);
}

describe('counting sticks', () => {
  test('takes 38 sticks for sixteen doors cased both sides', () => {
    // A published puzzle (thedailywtf.com, "Avoiding the Splice"); 34 by feet alone.
    const doors = Array.from({ length: 32 }, () => [84, 84, 32]).flat();
    const { sticks, fewest } = counted(doors, 192);
    expect(sticks).toBe(38);
    expect(fewest).toBe(Math.ceil((32 * 200) / 192));
  });

  test('gives a plan that stands up to the check, never below its bound, nor above by much', () => {
    const eighths = fc.integer({ min: 8, max: 760 }).map((parts) => parts / 8);
    const kerfs = fc.constantFrom(0, 1 / 8, 0.1);
    fc.assert(
      fc.property(fc.array(eighths, { minLength: 1, maxLength: 40 }), kerfs, (lengths, kerf) => {
        const { sticks, fewest, problem, plan } = counted(lengths, 96, { kerf });
        expect(checkPlan(problem, plan)).toEqual([]);
        expect(plan.unserved).toEqual([]);
        expect(plan.sticks).toHaveLength(sticks);
        expect(sticks).toBeGreaterThanOrEqual(fewest);
        // No two sticks could be one, so each two together are fuller than one: fewer than twice the volume.
        expect(sticks).toBeLessThanOrEqual(2 * fewest);
      }),
    );
  });

  test('is the true least for few pieces, or one more', () => {
    const inches = fc.integer({ min: 6, max: 60 });
    let least = 0;
    let taken = 0;
    fc.assert(
      fc.property(fc.array(inches, { minLength: 1, maxLength: 7 }), (lengths) => {
        const { sticks, fewest } = counted(lengths, 62, { kerf: 1 / 8, endTrim: 1 });
        const trueLeast = fewestOf(lengths, 60, 1 / 8);
        expect(fewest).toBeLessThanOrEqual(trueLeast);
        expect(sticks).toBeGreaterThanOrEqual(trueLeast);
        expect(sticks).toBeLessThanOrEqual(trueLeast + 1);
        least += trueLeast;
        taken += sticks;
      }),
    );
    expect(taken).toBeLessThanOrEqual(least * 1.02);
  });

  test('rounds what was calculated to the safe side: a hair too long does not fit', () => {
    expect(counted([48, 48], 96).sticks).toBe(1);
    expect(counted([48.001, 48], 96).sticks).toBe(2);
    expect(counted([1220 / 25.4, 1220 / 25.4], 2440 / 25.4).sticks).toBe(1);
    expect(counted([0.1 + 0.2, 0.3], 0.6).sticks).toBe(1);
  });

  test('refuses pieces longer than a stick or shorter than a cut, trims that use it up, and too much at once', () => {
    const piece = { name: 'thePiece' as const, length: 10, quantity: 1 };
    const order = { pieces: [piece], stickLength: 12, kerf: 0, endTrim: 0 };
    const codes = (more: Partial<StickOrder>): readonly string[] => {
      const outcome = countSticks({ ...order, ...more });
      return outcome.ok ? [] : outcome.faults.map(({ code }) => code);
    };
    expect(codes({})).toEqual([]);
    expect(codes({ endTrim: 1.5 })).toEqual(['cutting.piece-too-long']);
    expect(codes({ kerf: 10 })).toEqual([]);
    expect(codes({ kerf: 10.1 })).toEqual(['cutting.kerf-longer-than-piece']);
    expect(codes({ endTrim: 6 })).toEqual(['cutting.stick-shorter-than-trim']);
    expect(codes({ pieces: [{ ...piece, quantity: 20_001 }] })).toEqual([
      'cutting.too-many-pieces',
    ]);
    expect(codes({ stickLength: 60_000, kerf: 60_000 })).toEqual([
      'length.too-long',
      'length.too-long',
    ]);
    expect(codes({ pieces: [{ ...piece, length: 99, quantity: 0 }] })).toEqual([]);
  });
});
