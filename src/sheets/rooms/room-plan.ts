/** A room's plan as its page draws it: walls, openings, and each piece that Trim asks for. */
import type { Drawing } from '../../drawings/drawing.ts';
import { drawRoom } from '../../drawings/room.ts';
import type { RoomOpening, RoomRun } from '../../drawings/room-view.ts';
import type { LengthReading } from '../../core/units/length.ts';
import type { FittedTrim, RoomFittings } from '../../planning/rooms/room-fittings.ts';
import { orderOf } from './rooms-words.ts';

/** A job may have hundreds of rooms. */
const DOTS_PER_INCH = 200;
const PLACES = ['floor', 'height', 'opening', 'ceiling'] as const;

export function drawPlan(
  fittings: RoomFittings,
  { unit, decimalSign }: LengthReading,
  width: number,
): Drawing {
  const { room } = fittings;
  const drawing = drawRoom({
    room,
    openings: placedOpenings(fittings),
    runs: runsInPlan(fittings),
    unit,
    decimalSign,
    width,
  });
  return { ...drawing, dotsPerInch: DOTS_PER_INCH };
}

/** Where each opening is known to be. */
function placedOpenings({ openings }: RoomFittings): RoomOpening[] {
  return openings.flatMap(({ wall, side }): RoomOpening[] => {
    const { position, opening } = side;
    if (position === undefined || opening.quantity > 1) return [];
    const to = position.add(opening.width);
    return [{ wall, kind: opening.kind, from: Number(position), to: Number(to) }];
  });
}

/** `door on wall 2`, of those that can't be drawn. */
export function listUndrawn({ openings, room }: RoomFittings): string[] {
  return openings.flatMap(({ wall, side: { name, position, opening } }) =>
    position === undefined || opening.quantity > 1
      ? [`${name} on wall ${room.walls[wall]?.name ?? ''}`]
      : [],
  );
}

/**
 * What is at the floor is next to the walls, what is at the ceiling farthest from them.
 *
 * @param only the trim, from 0, that is drawn where the others are not
 */
export function runsInPlan({ trims, room }: RoomFittings, only?: number): RoomRun[] {
  const placeOf = ({ place }: FittedTrim): number => PLACES.indexOf(place.at);
  const drawn = trims.filter((_, at) => only === undefined || at === only);
  const outward = [...drawn].sort((one, other) => placeOf(one) - placeOf(other));
  return trims.flatMap((trim, at) =>
    trim.pieces.flatMap((fitted): RoomRun[] => {
      const { piece, wall, goesOn } = fitted;
      const length = room.walls[wall]?.length ?? 0;
      const lies = piece.onWall?.lies;
      const ring = outward.indexOf(trim);
      if (piece.kind !== 'run' || ring < 0) return [];
      return [
        {
          wall,
          from: lies === undefined ? 0 : Number(lies.from),
          to: lies === undefined ? length : Math.min(length, Number(lies.to)),
          ring,
          mark: orderOf(at, fitted),
          left: piece.left.kind,
          right: piece.right.kind,
          ...(goesOn === undefined ? {} : { goesOn }),
        },
      ];
    }),
  );
}
