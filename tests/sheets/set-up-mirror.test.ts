import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';

import { readMiterGauge } from '../../src/core/cove/miter-gauge.ts';
import { feedFor } from '../../src/core/cove/rails.ts';
import { degrees, toDegrees, toRadians } from '../../src/core/units/angle.ts';
import { drawTable } from '../../src/drawings/table.ts';
import type { SheetDescription } from '../../src/sheets/grammar/description.ts';
import { describeSetUps } from '../../src/sheets/set-ups/set-ups-sheet.ts';
import { anyTable, areasIn } from '../drawings/drawn-coves.ts';
import { planOf, type Tables } from '../planning/make-job.ts';
import { DEMO, JOBS, textsOf } from './sheet-jobs.ts';
import { count } from '../deep.ts';

const OFF_THE_TABLE: Tables = {
  runs: 'Room,Profile,Length\nHall,Steep,90\nHall,Flat,90',
  profiles:
    'Profile,Make,Blank width,Blank thickness,Species,Cove width,Cove depth,Off-center,Class\n' +
    'Steep,cove,6,1 1/2,Poplar,5,1,1/4,6/4\nFlat,cove,4,1 1/2,Poplar,2 1/2,1,1/4,6/4',
  shop: 'Setting,Value\nhourly rate,60\ntable front,12\ntable back,15\ntable width,27',
  stock: "For,Kind,Class,Width,Length,Price,Per,Have,Buy\nPoplar,board,6/4,7,12',5,board foot,,",
};

const MIRRORED: Readonly<Record<string, string>> = {
  '←': '→',
  '→': '←',
  left: 'right',
  right: 'left',
  clockwise: 'counterclockwise',
  counterclockwise: 'clockwise',
};

/** The words as the mirror shows them, but where they tell no side of the work: a slot, "right after". */
const inMirror = (text: string): string =>
  text.replace(
    /[←→]|\b(?:counterclockwise|clockwise|left|right)\b(?! miter slot| after| above)/gu,
    (word) => {
      return MIRRORED[word]!;
    },
  );

async function setUpsOn(tables: Tables, tiltSide: 'left' | 'right'): Promise<SheetDescription> {
  const shop = `${tables.shop!.replace(/^tilt side,.*\n?/mu, '').trimEnd()}\ntilt side,${tiltSide}`;
  return describeSetUps(await planOf({ ...tables, shop }));
}

/** Each row's words, what is measured with its number. */
const rowsOf = ({ rows }: SheetDescription): string[] =>
  rows.map(({ cells }) => cells.flatMap((one) => one?.value ?? []).join(' | '));

/** A shop whose slots lie alike on both sides has no left one to measure from. */
const withoutSlot = (tables: Tables): Tables => ({
  ...tables,
  shop: tables.shop!.replace(/^slot to blade,.*\n?/mu, '').trimEnd(),
});

describe('The set-ups of a right-tilt saw', () => {
  test.each([
    ['the demo', DEMO],
    ['millimetres', JOBS['millimetres']!],
    ['rails that leave the table at its sides', OFF_THE_TABLE],
  ])('are those of a left-tilt saw in the mirror, text by text: %s', async (_, tables) => {
    const [left, right] = await Promise.all(
      (['left', 'right'] as const).map(async (side) =>
        rowsOf(await setUpsOn(withoutSlot(tables), side)),
      ),
    );
    expect(left!.filter((text) => text !== inMirror(text)).length).toBeGreaterThan(5);
    // Marks of the sides are listed the left one first on either saw.
    const sorted = (texts: readonly string[]): string[] => texts.toSorted();
    expect(sorted(right!)).toEqual(sorted(left!.map(inMirror)));
  });

  test('have every mark from the left slot as far from it as the blade line tells', async () => {
    for (const side of ['left', 'right'] as const) {
      const shop = `${OFF_THE_TABLE.shop!}\nslot to blade,5\ntilt side,${side}`;
      const plan = await planOf({ ...OFF_THE_TABLE, shop });
      const marks = plan.profiles.flatMap(({ setUp }) =>
        [setUp!.rails!.near, setUp!.rails!.far].flatMap(({ front, back }) => [front, back]),
      );
      expect(marks).toHaveLength(8);
      for (const { fromBlade, fromSlot } of marks) expect(fromSlot).toBeCloseTo(fromBlade + 5, 12);
    }
  });
});

describe('The miter gauge', () => {
  test('turns by the approach, clockwise where the board is fed left to right', () => {
    const approach = toRadians(degrees(30));
    expect(readMiterGauge(approach, 'left to right')).toEqual({
      turn: approach,
      way: 'clockwise',
      along: 'square',
    });
    expect(readMiterGauge(approach, 'right to left').way).toBe('counterclockwise');
    // No head turns 70 degrees; the other way 20 are left, and its face does without a square.
    const steep = readMiterGauge(toRadians(degrees(70)), 'left to right');
    expect(toDegrees(steep.turn)).toBeCloseTo(20, 12);
    expect([steep.way, steep.along]).toEqual(['counterclockwise', 'head']);
  });

  test('lies along the rails as they are drawn, and never turns more than 45 degrees', () => {
    fc.assert(
      fc.property(anyTable, (view) => {
        const { approach } = view.setting;
        const { turn, way, along } = readMiterGauge(approach, feedFor(view.tiltSide));
        expect(turn).toBeLessThanOrEqual(Math.PI / 4);
        // On the drawing, seen from above with y down, clockwise turns x toward y.
        const angle = (way === 'clockwise' ? 1 : -1) * turn;
        const face = [Math.cos(angle), Math.sin(angle)] as const;
        const shown = along === 'head' ? face : ([-face[1], face[0]] as const);
        const rails = areasIn(drawTable(view), 'rail');
        expect(rails).toHaveLength(2);
        for (const { points } of rails) {
          const [x, y] = [points[3]![0] - points[0]![0], points[3]![1] - points[0]![1]];
          const length = Math.hypot(x, y);
          expect(Math.abs(x * shown[1] - y * shown[0]) / length).toBeLessThan(1e-9);
        }
      }),
      { numRuns: count(200) },
    );
  });

  test('stands on the page with what its scale says, in either count', async () => {
    const texts = textsOf(await setUpsOn(OFF_THE_TABLE, 'left'));
    const plan = await planOf(OFF_THE_TABLE);
    const [steep, flat] = plan.profiles.map(({ setUp }) => toDegrees(setUp!.setting.approach));
    const say = (angle: number): string => `${Number(angle.toFixed(2))}°`;
    expect(steep).toBeGreaterThan(45);
    expect(flat).toBeLessThan(45);
    expect(texts).toContain(`${say(90 - steep!)} counterclockwise`);
    expect(texts).toContain(`${say(flat!)} clockwise`);
    const notes = texts.filter((text) => text.startsWith('Seen from above.'));
    expect(notes[0]).toContain(`then says ${say(steep!)}`);
    expect(notes[0]).toContain("The head's own face lies along the rails");
    expect(notes[1]).toContain(`then says ${say(90 - flat!)}`);
    expect(notes[1]).toContain('Hold a framing square');
  });
});
