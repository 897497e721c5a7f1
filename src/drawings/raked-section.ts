/**
 * The section of a raked molding that meets a level cove in the miter round a square corner, as it stands on
 * the wall: the wall at the left.
 */
import type { Blade, Setting } from '../core/cove/cove.ts';
import { computeCut } from '../core/cove/cut.ts';
import { computeFlats } from '../core/cove/stock.ts';
import type { WallEdge } from '../core/crown/bevel-wood.ts';
import { computeRakedPoint, type ProfilePoint } from '../core/crown/raked-profile.ts';
import { placeOnWall, type BlankPoint } from '../core/crown/section-on-wall.ts';
import { QUARTER_TURN, type Radians } from '../core/units/angle.ts';
import { CHORD_ERROR_INCHES, type BoardEndView } from './board-end.ts';
import type { Point } from './drawing.ts';
import { fineOutline } from './fine-outline.ts';
import type { Outline } from './part-on-paper.ts';

export interface RakedView {
  /** Those of the level cove. */
  readonly blade: Blade;
  readonly setting: Setting;
  readonly blank: BoardEndView['blank'];
  /** Of the level cove, from the wall; absent for one whose back lies on the wall. */
  readonly spring?: Radians;
  /** Which edge of the level cove is the lower one, on the wall. */
  readonly lower: WallEdge;
  /** From level: above 0 rising from an outside corner, below 0 falling from it. */
  readonly slope: Radians;
}

/** In inches: x out from the wall, y square to the slope, up from its lowest place. */
export interface RakedSection extends Outline {
  /** The curve alone, from the lower edge's side to the upper. */
  readonly cove: readonly Point[];
}

/**
 * No stretch of the curve grows by more, and so does how far it is off its chords: raking takes out and up
 * to (out, up cos θ + out sin θ), whose greatest stretch squared is 1 + sin θ.
 */
const MOST_STRETCH = Math.SQRT2;

/** @throws RangeError for a slope of a right angle (a bug of the caller's) */
export function planRaked(view: RakedView): RakedSection {
  const { blank, spring, slope } = view;
  const level = placeOnWall(listCove(view), blank, spring);
  const rake = (point: ProfilePoint): ProfilePoint => {
    const raked = computeRakedPoint({ point, slope, corner: QUARTER_TURN });
    if (!raked.ok) throw new RangeError(`No molding is raked by ${slope} radians.`);
    return raked.value;
  };
  const around = level.around.map(rake);
  const lowest = Math.min(...around.map(({ up }) => up));
  const place = ({ out, up }: ProfilePoint): Point => [out, up - lowest];
  return {
    around: around.map(place),
    cove: level.cove.map(rake).map(place),
    width: Math.max(...around.map(({ out }) => out)),
    height: Math.max(...around.map(({ up }) => up)) - lowest,
  };
}

/** The cove's outline from its lower edge's side to the other. */
function listCove({ blade, setting, blank, lower }: RakedView): BlankPoint[] {
  const { width: blankWidth, nearFlat } = blank;
  const cut = computeCut(blade, setting);
  const flats = computeFlats(cut.width, {
    blankWidth,
    ...(nearFlat === undefined ? {} : { nearFlat }),
  });
  const fromNear = fineOutline(blade, setting, CHORD_ERROR_INCHES / MOST_STRETCH).map(
    ({ u, depth }) => ({ along: u - cut.near + flats.near, deep: depth }),
  );
  if (lower === 'near') return fromNear;
  return fromNear.map(({ along, deep }) => ({ along: blankWidth - along, deep })).reverse();
}
