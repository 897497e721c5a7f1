/**
 * The end of a blank with its cove cut out, face down, as it is seen from the front of the saw along
 * the feed: on a left-tilt saw the far rail is then at the left (left of the feed is +u: cove.ts).
 */
import type { Blade, Setting } from '../core/cove/cove.ts';
import { computeCut, type CutCove } from '../core/cove/cut.ts';
import type { TiltSide } from '../core/cove/rails.ts';
import { computeFlats } from '../core/cove/stock.ts';
import type { Point } from './drawing.ts';
import { fineOutline } from './fine-outline.ts';

export interface BoardEndView {
  readonly blade: Blade;
  /** The setting that cuts the cove. */
  readonly setting: Setting;
  /** Inches. The cove sits midway without a near flat. */
  readonly blank: {
    readonly width: number;
    readonly thickness: number;
    readonly nearFlat?: number;
  };
  readonly tiltSide: TiltSide;
}

/** In inches: x to the right from the board's left side, y up from its face. */
export interface BoardEnd {
  readonly cut: CutCove;
  readonly flats: { readonly near: number; readonly far: number };
  readonly width: number;
  readonly thickness: number;
  /** From one edge of the cove to the other, left to right. */
  readonly cove: readonly Point[];
  /** All round, the cove cut out; closed. */
  readonly board: readonly Point[];
  readonly middle: Point;
  readonly deepest: Point;
  readonly farSide: 'left' | 'right';
  /** Whether the blade leans, so that one side of the cove is the deep one: that of the far rail. */
  readonly hasDeepSide: boolean;
}

/** Nothing that a pencil, a bandsaw or a router can tell. */
export const CHORD_ERROR_INCHES = 0.0005;

/** @throws RangeError for a cove that leaves no wood round it (a bug of the caller's). */
export function planBoardEnd({ blade, setting, blank, tiltSide }: BoardEndView): BoardEnd {
  const cut = computeCut(blade, setting);
  const { width, thickness, nearFlat } = blank;
  const stock = { blankWidth: width, ...(nearFlat === undefined ? {} : { nearFlat }) };
  const flats = computeFlats(cut.width, stock);
  if (!(Math.min(flats.near, flats.far) > 0 && thickness > cut.depth && cut.depth > 0)) {
    throw new RangeError(`No cove ${cut.width} by ${cut.depth} fits in ${width} by ${thickness}.`);
  }
  const farSide = tiltSide;
  const place = (u: number, depth: number): Point => {
    const fromFar = cut.far + flats.far - u;
    return [farSide === 'left' ? fromFar : width - fromFar, depth];
  };
  const outline = fineOutline(blade, setting, CHORD_ERROR_INCHES);
  const along = outline.map(({ u, depth }) => place(u, depth));
  const cove = farSide === 'left' ? along.reverse() : along;
  return {
    cut,
    flats,
    width,
    thickness,
    cove,
    board: [[0, 0], ...cove, [width, 0], [width, thickness], [0, thickness]],
    middle: place((cut.near + cut.far) / 2, 0),
    deepest: place(cut.deepestLine, cut.depth),
    farSide,
    hasDeepSide: setting.tilt > 0,
  };
}
