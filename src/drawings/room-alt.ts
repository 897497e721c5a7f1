/** Title and text alternative of a room: every number that the drawing shows. */
import type { LengthReading } from '../core/units/length.ts';
import { formatMark } from '../core/units/format-mark.ts';
import type { PlacedRoom, RoomOpening } from './room-view.ts';
import { marksNothing, sayAngle, sayLength } from './say.ts';

export function titleRoom({ view }: PlacedRoom): string {
  const { name, walls } = view.room;
  return `Room ${name} from above, ${walls.length === 1 ? 'one wall' : `${walls.length} walls`}`;
}

/** How far a room is open, as a tape is marked; undefined for less than that. */
export function sayGap(gap: number, reading: LengthReading): string | undefined {
  return marksNothing(gap, reading)
    ? undefined
    : formatMark(gap, reading.unit, reading.decimalSign);
}

export function sayRoom({ view, gap }: PlacedRoom): string {
  const { room, openings = [], suspects = [] } = view;
  const walls = room.walls.map(({ name, length, cornerAtRight, turn }, at) => {
    const corner =
      turn === 'end'
        ? 'which ends there'
        : `then a corner of ${sayAngle(cornerAtRight, view.decimalSign)} ${turn}`;
    const here = openings.filter((one) => one.wall === at).map((one) => sayOpening(one, view));
    const holds = here.length === 0 ? '' : ` with ${here.join(' and ')}`;
    return `Wall ${name}: ${sayLength(length, view)}${holds}, ${corner}.`;
  });
  const open = gap === undefined ? undefined : sayGap(gap, view);
  const wrong = suspects.map(({ is, wall }) => {
    const name = room.walls[wall]?.name ?? '';
    return is === 'length'
      ? `the length of wall ${name}`
      : `the corner at the right of wall ${name}`;
  });
  return [
    `Room ${room.name} seen from above as one faces its first wall, the walls in order to the right.`,
    ...walls,
    ...(open === undefined ? [] : [`The last wall ends ${open} from where the first begins.`]),
    ...(wrong.length === 0 ? [] : [`Marked, since it may be wrong: ${wrong.join(', ')}.`]),
  ].join(' ');
}

function sayOpening({ kind, from, to }: RoomOpening, reading: LengthReading): string {
  return `a ${kind} from ${sayLength(from, reading)} to ${sayLength(to, reading)} from its left corner`;
}
