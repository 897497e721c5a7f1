/** A room from above, to scale, as one faces its first wall: names and lengths, openings, what may be wrong. */
import { area, arrowHead, compose, line, LINE, lowestOf } from './compose.ts';
import type { Drawing, Point, Shape } from './drawing.ts';
import { breakLines, lineHeight, textAbout } from './lettering.ts';
import { titleRoom, sayRoom, sayGap } from './room-alt.ts';
import { labelRoom } from './room-labels.ts';
import { placeRoom, type PlacedRoom, type RoomOpening, type RoomView } from './room-view.ts';
import { drawRuns } from './room-runs.ts';
import type { PlanWall } from '../core/room/room-plan.ts';

const MARGIN = 1;
const NO_BREAK = '\u00A0';
/** On paper, in millimetres. */
const JAMB = 1.1;
const PANE = 0.45;
const SUSPECT_LINE = 1;
const SUSPECT_RADIUS = 2.2;
const ARROW = { inward: 1.6, from: 2, length: 6 } as const;
const SUSPECT_DASH = [1.8, 0.9];
const GAP_DASH = [0.6, 0.6];

/**
 * Draws a room as its lengths and corners lay it out, a gap left open; with each wall's name and length, and the
 * corners that aren't square, and trim along the walls, each piece a line with its ends and its mark. A length that may be wrong is a broken heavy line, a corner a ring about it.
 *
 * @param view The room with its openings in inches, angles in radians; the drawing's width in millimetres.
 * @returns Shapes in millimetres, with a text alternative that says every number.
 * @throws RangeError for a room without walls (a bug of the caller's).
 */
export function drawRoom(view: RoomView): Drawing {
  const placed = placeRoom(view);
  const marks = [...markSuspects(placed), ...drawOrder(placed)];
  const shapes = [
    ...drawFloor(placed),
    ...placed.plan.flatMap((wall, at) => drawWall(placed, wall, at)),
    ...drawGap(placed),
    ...marks,
  ];
  const runs = drawRuns(placed);
  const labels = labelRoom(placed, marks, runs);
  shapes.push(...runs.shapes, ...labels.shapes);
  shapes.push(...writeUnder(placed, labels.left, runs.left, lowestOf(shapes)));
  return compose({ title: titleRoom(placed), alt: sayRoom(placed), width: placed.width }, shapes);
}

function drawFloor({ plan, isClosed, at }: PlacedRoom): Shape[] {
  return isClosed
    ? [
        area(
          plan.map(({ from }) => at(from)),
          'removed',
        ),
      ]
    : [];
}

/** The wall's face between its openings, and the openings themselves. */
function drawWall(placed: PlacedRoom, wall: PlanWall, at: number): Shape[] {
  const { view, beside } = placed;
  const length = view.room.walls[at]?.length ?? 0;
  const openings = (view.openings ?? [])
    .filter((one) => one.wall === at)
    .sort((one, other) => one.from - other.from);
  const isSuspect = view.suspects?.some((one) => one.is === 'length' && one.wall === at) ?? false;
  const face = (from: number, to: number): Shape[] => {
    if (to <= from) return [];
    const ends = [beside(wall, from, 0), beside(wall, to, 0)];
    return isSuspect
      ? [line(ends, 'feed', SUSPECT_LINE, SUSPECT_DASH)]
      : [line(ends, 'ink', LINE.strong)];
  };
  const shapes: Shape[] = [];
  let from = 0;
  for (const one of openings) {
    shapes.push(...face(from, one.from), ...drawOpening(placed, wall, one));
    from = Math.max(from, one.to);
  }
  return [...shapes, ...face(from, length)];
}

/** Jambs across the wall's line: a door leaves it open, a cased opening is dashed, a window has two panes. */
function drawOpening(
  { beside }: PlacedRoom,
  wall: PlanWall,
  { kind, from, to }: RoomOpening,
): Shape[] {
  const along = (inward: number): Point[] => [beside(wall, from, inward), beside(wall, to, inward)];
  const jambs = [from, to].map((end) =>
    line([beside(wall, end, -JAMB), beside(wall, end, JAMB)], 'ink', LINE.usual),
  );
  if (kind === 'door') return jambs;
  if (kind === 'cased opening') return [...jambs, line(along(0), 'ink', LINE.thin, [1, 0.8])];
  return [...jambs, ...[-PANE, PANE].map((inward) => line(along(inward), 'ink', LINE.thin))];
}

/** From where the last wall ends to where the first begins. */
function drawGap({ plan, gap, at, view }: PlacedRoom): Shape[] {
  const [first, last] = [plan[0], plan[plan.length - 1]];
  if (gap === undefined || first === undefined || last === undefined) return [];
  if (sayGap(gap, view) === undefined) return [];
  return [line([at(last.to), at(first.from)], 'feed', LINE.usual, GAP_DASH)];
}

function markSuspects({ plan, view, at }: PlacedRoom): Shape[] {
  return (view.suspects ?? []).flatMap((one): Shape[] => {
    const wall = plan[one.wall];
    if (wall === undefined || one.is !== 'corner') return [];
    const stroke = { tone: 'feed', width: LINE.strong } as const;
    return [{ kind: 'circle', center: at(wall.to), radius: SUSPECT_RADIUS, stroke }];
  });
}

/** The way round: a short arrow inside the first wall. */
function drawOrder({ plan, beside, scale, view }: PlacedRoom): Shape[] {
  const [first] = plan;
  // Runs stand there, and have arrows of their own.
  if ((view.runs ?? []).length > 0) return [];
  const length = (view.room.walls[0]?.length ?? 0) * scale;
  if (first === undefined || length < ARROW.from + ARROW.length + 1) return [];
  const along = (millimetres: number): Point => beside(first, millimetres / scale, ARROW.inward);
  const tip = along(ARROW.from + ARROW.length);
  return [
    line([along(ARROW.from), along(ARROW.from + ARROW.length - 1)], 'faint', LINE.usual),
    arrowHead(tip, first.heading, 'faint'),
  ];
}

/** Under everything else: what had no room in it, and how it closes. */
function writeUnder(
  placed: PlacedRoom,
  left: readonly string[],
  runsLeft: readonly string[],
  lowest: number,
): Shape[] {
  const { size, width, view, gap } = placed;
  // A wall's name and length stay on one line.
  const whole = left.map((text) => text.replaceAll(' ', NO_BREAK)).join(', ');
  const notes = whole === '' ? [] : [`not beside their walls: ${whole}`];
  if (runsLeft.length > 0) notes.push(`no room to mark here: ${runsLeft.join(', ')}`);
  const open = gap === undefined ? undefined : sayGap(gap, view);
  if (open !== undefined) notes.push(`open by ${open} where it should close`);
  const names = (is: 'length' | 'corner'): string[] =>
    (view.suspects ?? [])
      .filter((one) => one.is === is)
      .map(({ wall }) => view.room.walls[wall]?.name ?? '');
  const [lengths, corners] = [names('length'), names('corner')];
  if (lengths.length > 0) notes.push(`broken line, may be wrong: wall ${lengths.join(', ')}`);
  if (corners.length > 0) {
    notes.push(`ring, may be wrong: corner at the right of wall ${corners.join(', ')}`);
  }
  const lines = notes.flatMap((note) => breakLines(note, size, width - 2 * MARGIN));
  return lines.map((text, index) => {
    const y = lowest + lineHeight(size) * (index + 0.7);
    return textAbout([width / 2, y], text, size, { anchor: 'middle', tone: 'ink' });
  });
}
