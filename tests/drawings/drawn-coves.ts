/** Coves, blanks and saws for drawings, and how a test measures what was drawn. */
import fc from 'fast-check';

import type { Blade, Setting } from '../../src/core/cove/cove.ts';
import { computeCut } from '../../src/core/cove/cut.ts';
import { computeOutline } from '../../src/core/cove/outline.ts';
import { computeFlats } from '../../src/core/cove/stock.ts';
import { solveSetting } from '../../src/core/cove/set-up.ts';
import { radians } from '../../src/core/units/angle.ts';
import type { Drawing, PathShape, Point, TextShape, Tone } from '../../src/drawings/drawing.ts';
import type { SectionView } from '../../src/drawings/section-plan.ts';
import type { TableView } from '../../src/drawings/table-plan.ts';

export const BLADE: Blade = { diameter: 10, kerf: 1 / 8 };

export function settingFor(
  width: number,
  depth: number,
  offCenter: number,
  blade = BLADE,
): Setting {
  const setting = solveSetting({ width, depth, offCenter }, blade);
  if (setting === undefined) throw new Error(`no setting cuts ${width} by ${depth}`);
  return setting;
}

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const sixteenths = (least: number, most: number) =>
  fc.integer({ min: least * 16, max: most * 16 }).map((count) => count / 16);
const unit = fc.constantFrom('in' as const, 'mm' as const);
const decimalSign = fc.constantFrom('.' as const, ',' as const);
const tiltSide = fc.constantFrom('left' as const, 'right' as const);
const width = fc.oneof(fc.constant(65), number(65, 200));

/** Settings from the lightest to the deepest, upright and tilted, shallow and steep. */
const cut = fc
  .record({
    diameter: number(7, 14),
    kerf: fc.constantFrom(0, 3 / 32, 1 / 8, 1 / 4),
    approach: number(0.03, 1.5),
    tilt: fc.oneof(fc.constant(0), number(0.01, 0.85)),
    share: fc.oneof(number(0.02, 0.1), number(0.1, 0.75)),
  })
  .map(({ diameter, kerf, approach, tilt, share }) => {
    const slope = (share * diameter) / 2;
    const height = slope * Math.cos(tilt) + (kerf / 2) * Math.sin(tilt);
    const blade = { diameter, kerf };
    return { blade, setting: { approach: radians(approach), tilt: radians(tilt), height } };
  });

/** Sections of every kind, with and without a blank, also of blanks that are too small. */
export const anySection: fc.Arbitrary<SectionView> = fc
  .record({
    cut,
    more: fc.option(
      fc.record({ side: number(-0.2, 3), near: number(0.05, 0.95), web: number(-0.2, 2) }),
    ),
    even: fc.boolean(),
    tiltSide,
    unit,
    decimalSign,
    view: fc.constantFrom('on the saw' as const, 'face up' as const),
    width,
  })
  .map(({ cut: { blade, setting }, more, even, ...rest }) => {
    const cove = computeCut(blade, setting);
    if (more === null) return { blade, setting, ...rest };
    const side = Math.max(more.side, 0.01 - cove.width);
    const blank = {
      width: cove.width + side,
      thickness: Math.max(0.05, cove.depth + more.web),
      ...(even ? {} : { nearFlat: side * more.near }),
    };
    return { blade, setting, blank, ...rest };
  });

/** The flats of a section's blank. */
export function flatsOf({ blade, setting, blank }: SectionView): CoveFlats | undefined {
  if (blank === undefined) return undefined;
  const { width: blankWidth, nearFlat } = blank;
  const { width: coveWidth } = computeCut(blade, setting);
  return computeFlats(coveWidth, { blankWidth, ...(nearFlat === undefined ? {} : { nearFlat }) });
}
type CoveFlats = ReturnType<typeof computeFlats>;

/** Sections with wood all round the cove. */
export const fittingSection = cut.chain(({ blade, setting }) => {
  const cove = computeCut(blade, setting);
  const outside = Math.max(0, ...computeOutline(blade, setting).map(({ u }) => u - cove.far));
  return fc
    .record({
      near: number(0.05, 2),
      far: number(0.05, 2),
      web: number(0.05, 2),
      tiltSide,
      unit,
      decimalSign,
      width,
    })
    .map(({ near, far, web, ...rest }) => {
      const across = cove.width + near + far + outside;
      const blank = { width: across, thickness: cove.depth + web, nearFlat: near };
      return { blade, setting, blank, ...rest } satisfies SectionView;
    });
});

const flats = fc.record({ near: sixteenths(0.125, 2), far: sixteenths(0.125, 2) });
const table = fc
  .record({
    front: number(7, 24),
    back: number(7, 24),
    width: fc.option(number(14, 84)),
    slotToBlade: fc.option(fc.oneof(number(2, 7), number(0.5, 30))),
  })
  .map(({ front, back, width: wide, slotToBlade }) => ({
    front,
    back,
    ...(wide === null ? {} : { width: wide }),
    ...(slotToBlade === null ? {} : { slotToBlade }),
  }));

export const anyTable: fc.Arbitrary<TableView> = fc
  .record({
    cut,
    flats: fc.option(flats),
    table: fc.option(table),
    tiltSide,
    unit,
    decimalSign,
    width,
  })
  .map(({ cut: { blade, setting }, flats: beside, table: top, ...rest }) => ({
    blade,
    setting,
    ...(beside === null ? {} : { flats: beside }),
    ...(top === null ? {} : { table: top }),
    ...rest,
  }));

export function textsIn({ shapes }: Drawing): TextShape[] {
  return shapes.filter((shape) => shape.kind === 'text');
}

export function areasIn({ shapes }: Drawing, fill: Tone): PathShape[] {
  return shapes.filter((shape) => shape.kind === 'path').filter((one) => one.fill === fill);
}

/** The tips of all arrow heads on measures, two to a measure. */
export function measureTips(drawing: Drawing): Point[] {
  return areasIn(drawing, 'measure').map(({ points }) => points[0]!);
}

/** Whether a level measure runs from one place to another. */
export function isMeasured(drawing: Drawing, from: number, to: number): boolean {
  const tips = measureTips(drawing);
  const at = (x: number): number[] =>
    tips.filter((tip) => Math.abs(tip[0] - x) < 1e-6).map(([, y]) => y);
  const others = at(to);
  return at(from).some((y) => others.some((other) => Math.abs(other - y) < 1e-6));
}

/** Whether an upright measure runs from one height to another. */
export function isMeasuredUpright(drawing: Drawing, from: number, to: number): boolean {
  const turned = { ...drawing, shapes: areasIn(drawing, 'measure').map(swapped) };
  return isMeasured(turned, from, to);
}

function swapped(shape: PathShape): PathShape {
  return { ...shape, points: shape.points.map(([x, y]): Point => [y, x]) };
}

/** The shoelace formula; without a sign. */
export function areaOf(points: readonly Point[]): number {
  let twice = 0;
  points.forEach(([x, y], index) => {
    const [nextX, nextY] = points[(index + 1) % points.length]!;
    twice += x * nextY - nextX * y;
  });
  return Math.abs(twice) / 2;
}

/**
 * The room of a text: 0.62 em for each of its letters, which is more than the fonts in use take on
 * the mean; 0.75 em above the base line and 0.22 em below it.
 */
export function roomOf(shape: TextShape): {
  left: number;
  right: number;
  top: number;
  bottom: number;
} {
  const { size, text } = shape;
  const [x, y] = shape.at;
  const long = Array.from(text).length * 0.62 * size;
  const before = { start: 0, middle: long / 2, end: long }[shape.anchor];
  const [over, under] = [0.75 * size, 0.22 * size];
  if (shape.turn === undefined) {
    return { left: x - before, right: x - before + long, top: y - over, bottom: y + under };
  }
  if (shape.turn !== -90) throw new Error('only level and upright texts are measured');
  return { left: x - over, right: x + under, top: y + before - long, bottom: y + before };
}

/** Everything that is wrong with where a drawing's texts and lines are. */
export function misplacedIn(drawing: Drawing): string[] {
  const wrong: string[] = [];
  const slack = 1e-6;
  const texts = textsIn(drawing).map((shape) => ({ text: shape.text, ...roomOf(shape) }));
  texts.forEach((one, index) => {
    const inside =
      one.left >= -slack &&
      one.top >= -slack &&
      one.right <= drawing.width + slack &&
      one.bottom <= drawing.height + slack;
    if (!inside) wrong.push(`"${one.text}" leaves the drawing`);
    for (const other of texts.slice(index + 1)) {
      const apart =
        one.right <= other.left + slack ||
        other.right <= one.left + slack ||
        one.bottom <= other.top + slack ||
        other.bottom <= one.top + slack;
      if (!apart) wrong.push(`"${one.text}" and "${other.text}" overlap`);
    }
  });
  for (const shape of drawing.shapes) {
    if (shape.kind !== 'path') continue;
    for (const [x, y] of shape.points) {
      const inside =
        x >= -slack && y >= -slack && x <= drawing.width + slack && y <= drawing.height + slack;
      if (!inside)
        wrong.push(
          `a ${shape.fill ?? shape.stroke?.tone ?? ''} line leaves the drawing at ${x}, ${y}`,
        );
    }
  }
  return wrong;
}

/** Checks that one drawing is the other's mirror image, letters apart; gives the texts as pairs. */
export function mirrored(
  one: Drawing,
  other: Drawing,
): { same: boolean; texts: (readonly [string, string])[] } {
  const close = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;
  const texts: (readonly [string, string])[] = [];
  const same = one.shapes.map((shape, index) => {
    const image = other.shapes[index];
    // The patch behind a text is as wide as its letters.
    if (shape.kind === 'path' && one.shapes[index + 1]?.kind === 'text')
      return shape.kind === image?.kind;
    if (shape.kind === 'path' && image?.kind === 'path') {
      return (
        shape.points.length === image.points.length &&
        shape.points.every(
          ([x, y], at) =>
            close(x, one.width - image.points[at]![0]) && close(y, image.points[at]![1]),
        )
      );
    }
    if (shape.kind === 'text' && image?.kind === 'text') {
      texts.push([shape.text, image.text]);
      const [here, there] = [roomOf(shape), roomOf({ ...image, text: shape.text })];
      const level = shape.turn === undefined;
      const middle = (room: typeof here): number => (room.left + room.right) / 2;
      return (
        close(here.top, there.top) &&
        (level
          ? close(middle(here), one.width - middle(there))
          : Math.abs(middle(here) + middle(there) - one.width) < 1)
      );
    }
    return false;
  });
  return {
    same:
      same.every(Boolean) &&
      one.shapes.length === other.shapes.length &&
      close(one.height, other.height),
    texts,
  };
}
