/** The saw's table from above, to scale, its front edge below: blade, rails, marks, lean and feed. */
import { area, arrowHead, compose, line, LINE, lowestOf } from './compose.ts';
import type { Drawing, PathShape, Point, Shape } from './drawing.ts';
import { breakLines, lineHeight, textAbout } from './lettering.ts';
import { sayTable, titleTable } from './table-alt.ts';
import { labelTable } from './table-labels.ts';
import { markTable } from './table-marks.ts';
import {
  planTable,
  reachAt,
  type TablePlan,
  type TablePoint,
  type TableView,
} from './table-plan.ts';

/** Steps along the blade's rim. */
const RIM_STEPS = 24;
const MARGIN = 1;
const DASHES = [1.4, 1];
/** Long and short dashes: a line through a middle. */
const CENTER = [2, 0.8, 0.4, 0.8];
/** On paper, in millimetres. */
const LEAN_ARROW = 4;
const FEED = { shaft: 1, head: 3.2, room: 1.5 } as const;

/**
 * Draws where rails and blade are on the table, with tape marks for both rails on the front and back
 * edges (on the side edges where a rail leaves the table there), the approach from the blade line and
 * from the front edge, the blade's lean and the feed. A right-tilt saw is the mirror image of a
 * left-tilt one.
 *
 * @param view Blade, setting, flats and table in inches, angles in radians; the drawing's width in
 *   millimetres.
 * @returns Shapes in millimetres, with a text alternative that says every number.
 * @throws RangeError for numbers that no saw has (a bug of the caller's).
 */
export function drawTable(view: TableView): Drawing {
  const plan = planTable(view);
  const labels = labelTable(plan);
  const shapes = [
    ...drawTop(plan),
    ...drawRails(plan),
    ...drawBlade(plan),
    ...drawFeed(plan),
    ...markTable(plan),
    ...labels.shapes,
  ];
  shapes.push(...writeUnder(plan, labels.left, lowestOf(shapes)));
  const what = { title: titleTable(plan), alt: sayTable(plan), width: plan.width };
  return compose(what, shapes, { sides: plan.hand < 0 });
}

/** The table itself; where only its front and back are shown its sides stay open. */
function drawTop({ view, table, sides, halfShown, at }: TablePlan): Shape[] {
  const { front, back } = table;
  const half = sides ?? halfShown;
  const corners = [at([-front, -half]), at([-front, half]), at([back, half]), at([back, -half])];
  const dash = view.table === undefined ? DASHES : undefined;
  const edge = (...points: Point[]): PathShape => line(points, 'ink', LINE.strong, dash);
  const [frontLeft, frontRight, backRight, backLeft] = corners as [Point, Point, Point, Point];
  const edges =
    sides === undefined
      ? [edge(frontLeft, frontRight), edge(backLeft, backRight)]
      : [edge(frontLeft, frontRight, backRight, backLeft, frontLeft)];
  return [area(corners, 'removed'), ...edges];
}

function drawRails({ bands, at }: TablePlan): Shape[] {
  const outline = { tone: 'ink', width: LINE.usual } as const;
  return [
    area(bands.board.map(at), 'wood'),
    area(bands.near.map(at), 'rail', outline),
    area(bands.far.map(at), 'rail', outline),
  ];
}

/** The blade line, the slot that the blade fills in the table, and what stands over it. */
function drawBlade({ view, table, halfChord, at }: TablePlan): Shape[] {
  const { blade, setting } = view;
  const slant = Math.tan(setting.tilt);
  const rim: TablePoint[] = [];
  for (let step = -RIM_STEPS; step <= RIM_STEPS; step++) {
    const level = setting.height * (1 - (step / RIM_STEPS) ** 2);
    rim.push([Math.sign(step) * reachAt(blade, setting, level), -level * slant]);
  }
  const halfSlot = blade.kerf / 2 / Math.cos(setting.tilt);
  const slot: TablePoint[] = [
    [-halfChord, -halfSlot],
    [-halfChord, halfSlot],
    [halfChord, halfSlot],
    [halfChord, -halfSlot],
  ];
  const middle = line([at([-table.front, 0]), at([table.back, 0])], 'ink', LINE.thin, CENTER);
  const shapes: Shape[] = [middle];
  if (setting.tilt > 0) {
    const outline = { tone: 'ink', width: LINE.thin } as const;
    const [x, y] = at([0, 0]);
    const tip = x - LEAN_ARROW;
    shapes.push(area(rim.map(at), 'metal', outline));
    shapes.push(
      line(
        [
          [x, y],
          [tip + 1, y],
        ],
        'ink',
        LINE.usual,
      ),
      arrowHead([tip, y], Math.PI, 'ink'),
    );
  }
  return [...shapes, area(slot.map(at), 'ink', { tone: 'ink', width: LINE.usual })];
}

/** An arrow along the rails, from before the table to where the board meets the blade. */
function drawFeed({ bands, view, halfChord, scale, at }: TablePlan): Shape[] {
  const { approach } = view.setting;
  const along = (v: number): Point => at([v * Math.cos(approach), v * Math.sin(approach)]);
  const starts = bands.board
    .slice(0, 2)
    .map(([x, y]) => x * Math.cos(approach) + y * Math.sin(approach));
  const start = Math.max(...starts) + FEED.room / scale;
  const end = Math.min(-halfChord - FEED.room / scale, start / 2);
  const way = approach - Math.PI / 2;
  const tip = along(end);
  const neck: Point = [tip[0] - 2 * Math.cos(way), tip[1] - 2 * Math.sin(way)];
  return [line([along(start), neck], 'feed', FEED.shaft), arrowHead(tip, way, 'feed', FEED.head)];
}

/** Under everything else: where one stands, what had no room on the table, what isn't known. */
function writeUnder(plan: TablePlan, left: readonly string[], lowest: number): Shape[] {
  const { size, width, view, table, layout, sideMarks, hasMarks } = plan;
  const notes: string[] = [];
  if (view.table === undefined)
    notes.push('No marks: the table is not given; a usual one is drawn');
  if (view.flats === undefined) notes.push('No marks: the blank is not given');
  if (hasMarks && sideMarks.length > 0) {
    notes.push('Marks at the sides: from level with the middle of the blade');
  }
  const marks = [layout.near, layout.far].flatMap(({ front, back }) => [front, back]);
  if (hasMarks && table.width === undefined && marks.some(({ onTable }) => !onTable)) {
    notes.push('No marks at the sides: the table width is not given');
  }
  const room = width - 2 * MARGIN;
  const broken = (text: string): readonly string[] => breakLines(text, size, room);
  const all = ['front of the saw', ...[...left, ...notes].flatMap(broken)];
  return all.map((text, index) => {
    const tone = index === 0 ? 'faint' : 'ink';
    const y = lowest + lineHeight(size) * (index + 0.6);
    return textAbout([width / 2, y], text, size, { anchor: 'middle', tone });
  });
}
