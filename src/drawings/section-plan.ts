/** What a cove's section is drawn from, in inches, and how it comes to paper. */
import type { Blade, Setting } from '../core/cove/cove.ts';
import { computeCut, type CutCove } from '../core/cove/cut.ts';
import { computeOutline, type OutlinePoint } from '../core/cove/outline.ts';
import type { TiltSide } from '../core/cove/rails.ts';
import { computeFlats } from '../core/cove/stock.ts';
import type { LengthReading } from '../core/units/length.ts';
import { fitsInLine, TAIL } from './dimension.ts';
import type { Point } from './drawing.ts';
import { LEAST_WIDTH_MM, letterSize, soundWidth, textWidth } from './lettering.ts';
import { sayLength } from './say.ts';

/** Beside a code on paper there is no more room. */
const NARROW_SECTION_MM = 61;

export interface SectionView extends LengthReading {
  readonly blade: Blade;
  /** The setting that cuts the cove. */
  readonly setting: Setting;
  /** Absent where the cove alone is known; inches. The cove sits midway without a near flat. */
  readonly blank?: {
    readonly width: number;
    readonly thickness: number;
    readonly nearFlat?: number;
  };
  readonly tiltSide: TiltSide;
  readonly view?: 'on the saw' | 'face up';
  /** In whose words its sides are told; the shop's where absent. */
  readonly words?: 'shop' | 'client';
  /** Of the drawing, in millimetres; 65, the least, where absent: 246 CSS pixels. */
  readonly width?: number;
}

/** What the parts of the drawing are made from: inches, and millimetres of paper. */
export interface SectionPlan {
  readonly view: SectionView;
  readonly cut: CutCove;
  readonly blank: { readonly width: number; readonly thickness: number } | undefined;
  /** Beside the cove; a hint of wood where no blank is known. */
  readonly flats: { readonly near: number; readonly far: number };
  /** Whether the cove leaves wood on both sides and over it; true where no blank is known. */
  readonly fits: boolean;
  /** From the near edge over the top to the far edge. */
  readonly outline: readonly OutlinePoint[];
  readonly size: number;
  readonly width: number;
  readonly scale: number;
  /** Names of what is measured stand beside the numbers where the drawing is wide enough. */
  readonly named: boolean;
  /** Paper position of a point of the board: across the feed, and above its face. */
  readonly at: (u: number, depth: number) => Point;
}

const OUTLINE_STEPS = 96;
/** Widest piece of the page that a board may take in height. */
const TALLEST_SHARE = 0.75;
/** At the paper's left and right, in millimetres. */
export const MARGIN = 1;
/** Wood drawn where the blank isn't known, as shares of the cove's width and depth. */
export const HINT = { flat: 0.16, web: 0.5 } as const;
const NAMED_FROM_MM = 100;

/** From the board's edge to its upright measures, past a rail or not, in millimetres. */
const [BESIDE_RAIL, BESIDE_BOARD] = [5.6, 1.8];
/** Room for the arrow of a measure whose number stands beside it. */
const BESIDE_SHORT = TAIL + 0.3;
export function planSection(view: SectionView): SectionPlan {
  const { blade, setting, blank } = view;
  const width = soundWidth(view.width ?? LEAST_WIDTH_MM, NARROW_SECTION_MM);
  const cut = computeCut(blade, setting);
  const numbers = [cut.width, cut.depth, blank?.width ?? 1, blank?.thickness ?? 1];
  if (!numbers.every((number) => number > 0 && Number.isFinite(number))) {
    throw new RangeError(`No section can be drawn from the sizes ${numbers.join(', ')}.`);
  }
  const flats = flatsOf(cut.width, blank);
  const size = letterSize(width);
  const named = width >= NAMED_FROM_MM;
  const outline = computeOutline(blade, setting, OUTLINE_STEPS);
  // A blank too narrow for the cove doesn't reach to its sides, nor to those of a deep undercut.
  const nearEnd = Math.min(cut.near - flats.near, ...outline.map(({ u }) => u));
  const farEnd = Math.max(cut.far + flats.far, ...outline.map(({ u }) => u));
  const across = farEnd - nearEnd;
  const fits =
    blank === undefined ||
    (flats.near > 0 &&
      flats.far > 0 &&
      nearEnd === cut.near - flats.near &&
      farEnd === cut.far + flats.far &&
      blank.thickness > cut.depth);
  const high = Math.max(blank?.thickness ?? 0, cut.depth * (1 + HINT.web));
  const highest = (width * TALLEST_SHARE) / high;
  const roomBeside = ({ left, right }: SectionColumns): number => width - 2 * MARGIN - left - right;
  const frame = { view, cut, outline, blank, flats, fits, size, width, named };
  const bare = sectionColumns(frame);
  // Numbers of flats too narrow to hold them stand in the columns too.
  const columns = sectionColumns(frame, Math.min(roomBeside(bare) / across, highest));
  const room = roomBeside(columns);
  const scale = Math.min(room / across, highest);
  const start = MARGIN + columns.left + (room - across * scale) / 2;
  const at = (u: number, level: number): Point => [start + (farEnd - u) * scale, -level * scale];
  return { ...frame, scale, at };
}

function flatsOf(coveWidth: number, blank: SectionView['blank']): SectionPlan['flats'] {
  const hint = HINT.flat * coveWidth;
  if (blank === undefined) return { near: hint, far: hint };
  const { width, nearFlat } = blank;
  const stock = { blankWidth: width, ...(nearFlat === undefined ? {} : { nearFlat }) };
  return computeFlats(coveWidth, stock);
}

interface SectionColumns {
  readonly left: number;
  readonly right: number;
}

/** Room at both sides for numbers beside the board; those of flats too, once a scale is known. */
function sectionColumns(plan: Omit<SectionPlan, 'at' | 'scale'>, scale?: number): SectionColumns {
  const { cut, blank, flats, size } = plan;
  const room = (text: string): number => textWidth(text, size) + 1.2;
  const beside = columnStart(plan);
  const depth = beside + room(label(plan, 'deep', cut.depth));
  if (blank === undefined) return { left: 3, right: depth };
  const flat = (inches: number): number => {
    const text = label(plan, 'flat', inches);
    if (scale === undefined || inches <= 0 || fitsInLine(inches * scale, text, size)) return 0;
    return room(text) + BESIDE_SHORT;
  };
  const thick = beside + room(label(plan, 'thick', blank.thickness));
  const web = beside + room(label(plan, 'web', Math.max(0, blank.thickness - cut.depth)));
  return {
    left: Math.max(thick, flat(flats.far)),
    right: Math.max(depth, web, flat(flats.near)),
  };
}

/** From the board's edge to its upright measures, in millimetres. */
export function columnStart({ view, blank }: Pick<SectionPlan, 'view' | 'blank'>): number {
  return view.view === 'face up' || blank === undefined ? BESIDE_BOARD : BESIDE_RAIL;
}

/** The number of a measure, with its name where the drawing has room for names. */
export function label(
  { named, view }: Pick<SectionPlan, 'named' | 'view'>,
  name: string,
  inches: number,
): string {
  return `${named ? `${name} ` : ''}${sayLength(inches, view)}`;
}
