/** Title and text alternative of a room: every number that the drawing shows. */
import type { LengthReading } from '../core/units/length.ts';
import { formatMark } from '../core/units/format-mark.ts';
import type { PlacedRoom, RoomOpening, RoomView } from './room-view.ts';
import { clipWords } from './stick-bar-labels.ts';
import { marksNothing, sayAngle, sayLength } from './say.ts';

/** Excel takes longer ones; a person who has them read out doesn't. */
const LONGEST = 1_900;
const NAME_LIMIT = 80;

export function titleRoom({ view }: PlacedRoom): string {
  const { walls } = view.room;
  const name = clipWords(view.room.name, NAME_LIMIT);
  return `Room ${name} from above, ${walls.length === 1 ? 'one wall' : `${walls.length} walls`}`;
}

/** How far a room is open, as a tape is marked; undefined for less than that. */
export function sayGap(gap: number, reading: LengthReading): string | undefined {
  return marksNothing(gap, reading)
    ? undefined
    : formatMark(gap, reading.unit, reading.decimalSign);
}

/** As much as can be said: all; or of many pieces and walls how many there are. */
export function sayRoom(placed: PlacedRoom): string {
  const { runs = [] } = placed.view;
  const countRuns = runs.length === 0 ? '' : `Inside it ${runs.length} pieces of trim.`;
  const ways = [
    sayAll(placed, sayRuns(placed.view)),
    sayAll(placed, countRuns),
    `${titleRoom(placed)}, as the table Walls has them. ${countRuns}`.trim(),
  ];
  return ways.find((text) => text.length <= LONGEST) ?? titleRoom(placed);
}

function sayAll({ view, gap }: PlacedRoom, runs: string): string {
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
    `Room ${clipWords(room.name, NAME_LIMIT)} seen from above as one faces its first wall, the walls in order to the right.`,
    ...walls,
    ...(runs === '' ? [] : [runs]),
    ...(open === undefined ? [] : [`The last wall ends ${open} from where the first begins.`]),
    ...(wrong.length === 0 ? [] : [`Marked, since it may be wrong: ${wrong.join(', ')}.`]),
  ].join(' ');
}

/** Of each piece that goes up: its mark, its wall, its ends, which way fitting goes on. */
function sayRuns({ runs = [], room }: RoomView): string {
  if (runs.length === 0) return '';
  const said = runs.map(({ mark, wall, left, right, goesOn }) => {
    const way = goesOn === undefined ? '' : `, ${goesOn}`;
    return `${mark} on wall ${room.walls[wall]?.name ?? ''}, ${left}, ${right}${way}`;
  });
  return `Inside it the trim, by mark, wall, left end, right end and the way that fitting goes on: ${said.join('; ')}.`;
}

function sayOpening({ kind, from, to }: RoomOpening, reading: LengthReading): string {
  return `a ${kind} from ${sayLength(from, reading)} to ${sayLength(to, reading)} from its left corner`;
}
