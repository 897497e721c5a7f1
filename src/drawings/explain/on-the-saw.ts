/** What the functions about coves ask and answer, drawn: one example cove in its board and on the saw's table. */
import { USUAL_BLADE, type Cove } from '../../core/cove/cove.ts';
import { computeOutline } from '../../core/cove/outline.ts';
import { planPasses } from '../../core/cove/passes.ts';
import { solveSetting } from '../../core/cove/set-up.ts';
import { INCHES_AND_POINT } from '../../core/units/length.ts';
import { area, compose, line, LINE } from '../compose.ts';
import { onPaper, uprightMeasure } from '../dimension.ts';
import type { Drawing, Point, Shape } from '../drawing.ts';
import { textAbout } from '../lettering.ts';
import { drawSection } from '../section.ts';
import { drawTable } from '../table.ts';

/** Millimetres on paper. */
export const EXPLAIN_WIDTH = 100;
const SIZE = 3.2;
/** As the functions' own examples have it, inches. */
const COVE: Cove = { width: 3.625, depth: 0.875, offCenter: 0.375 };
const BLANK = { width: 4.5, thickness: 1.25 };
const TABLE = { front: 16.5, back: 10.5, width: 27 };

function settingOf(cove: Cove) {
  const setting = solveSetting(cove, USUAL_BLADE);
  if (setting === undefined) throw new RangeError('The example cove has no setting.');
  return setting;
}

/** The board on the saw, its end toward us: width, depth, off-center and what stays beside and above. */
export function drawCoveInBoard(title: string, alt: string): Drawing {
  return {
    ...drawSection({
      blade: USUAL_BLADE,
      setting: settingOf(COVE),
      blank: BLANK,
      tiltSide: 'left',
      width: EXPLAIN_WIDTH,
      ...INCHES_AND_POINT,
    }),
    title,
    alt,
  };
}

/** The table from above: the approach from the blade line and from the front edge, and the rails. */
export function drawCoveOnTable(title: string, alt: string, marks: boolean): Drawing {
  const beside = (BLANK.width - COVE.width) / 2;
  return {
    ...drawTable({
      blade: USUAL_BLADE,
      setting: settingOf(COVE),
      flats: { near: beside, far: beside },
      ...(marks ? { table: TABLE } : {}),
      tiltSide: 'left',
      width: EXPLAIN_WIDTH,
      ...INCHES_AND_POINT,
    }),
    title,
    alt,
  };
}

/** The board's end on the table, and the blade that leans from upright toward the deep side. */
export function drawTilt(title: string, alt: string): Drawing {
  const setting = settingOf(COVE);
  const [scale, middle, face] = [17, EXPLAIN_WIDTH / 2 - 5, 34];
  const at = (u: number, depth: number): Point => [middle - u * scale, face - depth * scale];
  const cove = computeOutline(USUAL_BLADE, setting).map(({ u, depth }) => at(u, depth));
  const half = BLANK.width / 2;
  const board = [at(half, 0), at(half, BLANK.thickness), at(-half, BLANK.thickness), at(-half, 0)];
  const top = at(COVE.offCenter, COVE.depth);
  const along = (reach: number): Point => [
    top[0] + reach * Math.sin(setting.tilt),
    top[1] + reach * Math.cos(setting.tilt),
  ];
  const center = along(40);
  const upright: Point = [center[0], top[1] - 6];
  const look = { anchor: 'start', tone: 'measure' } as const;
  const arc = Array.from({ length: 13 }, (_, step): Point => {
    const angle = (setting.tilt * step) / 12;
    return [center[0] - 24 * Math.sin(angle), center[1] - 24 * Math.cos(angle)];
  });
  const near = cove[0] ?? top;
  const outline = near[0] > middle ? cove : [...cove].reverse();
  return compose({ title, alt, width: EXPLAIN_WIDTH }, [
    area([...outline, ...board], 'wood', { tone: 'ink', width: LINE.strong }),
    line(
      [
        [4, face],
        [EXPLAIN_WIDTH - 4, face],
      ],
      'metal',
      1,
    ),
    line([center, upright], 'faint', LINE.usual, [1.2, 0.8]),
    line([center, top], 'feed', 1),
    line(arc, 'measure', LINE.usual),
    textAbout([center[0] + 3, face + 6], 'tilt, from upright', SIZE, look),
    textAbout([center[0] + 3, center[1] - 3], 'blade', SIZE, { ...look, tone: 'feed' }),
    textAbout([4, face + 5], 'far rail, deep side', SIZE, { anchor: 'start', tone: 'ink' }),
  ]);
}

/** A cove upside down on the table, a line for each pass. */
export function drawPasses(title: string, alt: string): Drawing {
  const depth = 0.75;
  const setting = settingOf({ width: 3.25, depth, offCenter: 0 });
  const scale = 17;
  const [middle, face] = [EXPLAIN_WIDTH / 2 - 5, 30];
  const cove = computeOutline(USUAL_BLADE, setting).map(({ u, depth: deep }): Point => [
    middle + u * scale,
    face - deep * scale,
  ]);
  const half = 2 * scale;
  const top = face - 1.1 * scale;
  const board: Point[] = [
    [middle + half, face],
    [middle + half, top],
    [middle - half, top],
    [middle - half, face],
  ];
  const { heights } = planPasses(depth);
  const levels = heights.map((height, at): Shape => {
    const y = face - height * scale;
    const wide = cove.filter((point) => point[1] <= y + 1e-6).map(([x]) => x);
    const [left, right] = [Math.min(...wide, middle - 1), Math.max(...wide, middle + 1)];
    const isLast = at === heights.length - 1;
    return line(
      [
        [left, y],
        [right, y],
      ],
      isLast ? 'feed' : 'faint',
      isLast ? LINE.strong : LINE.thin,
    );
  });
  const beside = middle + half + 5;
  return compose({ title, alt, width: EXPLAIN_WIDTH }, [
    area([...cove, ...board], 'wood', { tone: 'ink', width: LINE.strong }),
    ...levels,
    line(
      [
        [4, face],
        [EXPLAIN_WIDTH - 4, face],
      ],
      'metal',
      1,
    ),
    ...uprightMeasure(beside, face - depth * scale, face),
    textAbout([beside + 2, face - (depth * scale) / 2], 'depth', SIZE, {
      anchor: 'start',
      tone: 'measure',
    }),
    textAbout([middle, top - 3], `${heights.length} passes, the last one light`, SIZE, {
      anchor: 'middle',
      tone: 'ink',
    }),
  ]);
}

/** The cove's curve as points: across from the near edge, and how deep it is there. */
export function drawOutlinePoints(title: string, alt: string): Drawing {
  const outline = [...computeOutline(USUAL_BLADE, settingOf(COVE))].sort((a, b) => a.u - b.u);
  const scale = 21;
  const [middle, face] = [EXPLAIN_WIDTH / 2, 8];
  const at = (u: number, depth: number): Point => [middle + u * scale, face + depth * scale];
  const curve = outline.map(({ u, depth }) => at(u, depth));
  const some = curve.filter((_, index) => index % Math.ceil(curve.length / 14) === 0);
  const shown = some[5] ?? at(0, 0);
  const low = face + COVE.depth * scale + 7;
  const [left, right] = [4, EXPLAIN_WIDTH - 4];
  const wood: Point[] = [[left, face], ...curve, [right, face], [right, low], [left, low]];
  return compose({ title, alt, width: EXPLAIN_WIDTH }, [
    area(wood, 'wood', { tone: 'ink', width: LINE.usual }),
    line(curve, 'ink', LINE.strong),
    ...some.map((center): Shape => ({ kind: 'circle', center, radius: 0.8, fill: 'feed' })),
    line([[shown[0], face], shown], 'measure', LINE.usual),
    ...onPaper(
      textAbout([shown[0], face - 4], 'so deep, here', SIZE, { anchor: 'middle', tone: 'measure' }),
    ),
  ]);
}
