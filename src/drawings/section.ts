/**
 * The section of a cove in its blank, to scale. Drawn first as the board rides on the saw: face
 * down, seen along the feed from the front, on a left-tilt saw, whose far rail is then at the left
 * (left of the feed is +u: cove.ts). A right-tilt saw is its mirror image; face up is the same board
 * rolled over, a half turn.
 */
import type { Blade, Setting } from '../core/cove/cove.ts';
import { computeCut, type CutCove } from '../core/cove/cut.ts';
import { computeOutline, type OutlinePoint } from '../core/cove/outline.ts';
import type { TiltSide } from '../core/cove/rails.ts';
import { computeFlats } from '../core/cove/stock.ts';
import type { LengthReading } from '../core/units/length.ts';
import { area, compose, line, LINE } from './compose.ts';
import type { Drawing, Point, Shape } from './drawing.ts';
import { LEAST_WIDTH_MM, letterSize, soundWidth, textAbout } from './lettering.ts';
import { saySection, titleSection } from './section-alt.ts';
import {
  highestNumber,
  sectionColumns,
  sectionMeasures,
  type SectionColumns,
} from './section-measures.ts';

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
/** On paper, in millimetres: the rails beside the board, not to scale; the table under it. */
const RAIL = { width: 3.2, gap: 0.5 } as const;
const MARGIN = 1;
/** Wood drawn where the blank isn't known, as shares of the cove's width and depth. */
const HINT = { flat: 0.16, web: 0.5 } as const;
const NAMED_FROM_MM = 100;

/**
 * Draws the section of a cove, with the blank's width and thickness, the cove's width and depth, its
 * flats, its web and how far its deepest line lies off center.
 *
 * @param view Blade, setting and blank in inches, angles in radians; the drawing's width in
 *   millimetres.
 * @returns Shapes in millimetres, with a text alternative that says every number.
 * @throws RangeError for numbers that no cove has (a bug of the caller's).
 */
export function drawSection(view: SectionView): Drawing {
  const plan = planSection(view);
  const shapes = [
    ...drawWood(plan),
    ...drawSaw(plan),
    ...drawSides(plan),
    ...sectionMeasures(plan),
  ];
  const faceUp = view.view === 'face up';
  // Rolled over, what was at the left is at the right.
  const sides = (view.tiltSide === 'right') !== faceUp;
  const what = { title: titleSection(plan), alt: saySection(plan), width: plan.width };
  return compose(what, shapes, { sides, topAndBottom: faceUp });
}

function planSection(view: SectionView): SectionPlan {
  const { blade, setting, blank } = view;
  const width = soundWidth(view.width ?? LEAST_WIDTH_MM);
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

/** The blank with the cove cut away, in one outline; a cove that doesn't fit is drawn over it. */
function drawWood({ cut, outline, blank, flats, fits, at }: SectionPlan): Shape[] {
  const cove = outline.map(({ u, depth }) => at(u, depth));
  const top = blank?.thickness ?? cut.depth * (1 + HINT.web);
  const [near, far] = [cut.near - flats.near, cut.far + flats.far];
  const edge = { tone: 'ink', width: LINE.strong } as const;
  const around = [at(far, 0), at(far, top), at(near, top), at(near, 0)];
  if (blank === undefined) {
    const face = [at(near, 0), ...cove, at(far, 0)];
    return [
      area([...around, ...cove], 'wood'),
      line(around, 'faint', LINE.thin, [0.8, 0.8]),
      line(face, 'ink', LINE.strong),
    ];
  }
  if (fits) return [area([...around, ...cove], 'wood', edge)];
  return [area(around, 'wood', edge), area(cove, 'removed', edge)];
}

/** The table under the board, and the rails that it slides between. */
function drawSaw({ view, cut, blank, flats, width, scale, at }: SectionPlan): Shape[] {
  if (view.view === 'face up') return [];
  const [, face] = at(0, 0);
  const table = line(
    [
      [MARGIN, face + 0.5],
      [width - MARGIN, face + 0.5],
    ],
    'metal',
    1,
  );
  if (blank === undefined) return [table];
  const high = Math.min(12, Math.max(4, blank.thickness * scale * 0.7));
  const rails = ([-1, 1] as const).map((way) => {
    const [edge] = way < 0 ? at(cut.far + flats.far, 0) : at(cut.near - flats.near, 0);
    const inner = edge + way * RAIL.gap;
    const outer = inner + way * RAIL.width;
    const corners: Point[] = [
      [inner, face],
      [outer, face],
      [outer, face - high],
      [inner, face - high],
    ];
    return area(corners, 'rail', { tone: 'ink', width: LINE.usual });
  });
  return [table, ...rails];
}

/** Names of the two sides over the board's ends. */
function drawSides(plan: SectionPlan): Shape[] {
  const { view, cut, blank, size, width, at } = plan;
  const top = Math.max(blank?.thickness ?? 0, cut.depth * (1 + HINT.web));
  const y = Math.min(at(0, top)[1], highestNumber(plan)) - size * 1.1;
  const tilted = view.setting.tilt > 0;
  if (view.words === 'client') {
    const look = { anchor: 'start', tone: 'ink' } as const;
    return tilted ? [textAbout([MARGIN, y], 'deep side', size, look)] : [];
  }
  const [near, far, deep] =
    view.view === 'face up'
      ? ['near side', 'far side', ' (deep)']
      : ['near rail', 'far rail', ' (deep side)'];
  return [
    textAbout([MARGIN, y], `${far}${tilted ? deep : ''}`, size, { anchor: 'start', tone: 'ink' }),
    textAbout([width - MARGIN, y], near, size, { anchor: 'end', tone: 'ink' }),
  ];
}
