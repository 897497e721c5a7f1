/** A short mark for each piece, as it stands on its label. */
import type { Piece } from '../piece.ts';

/**
 * Marks pieces as `R1-12`: the room's number, in the order in which rooms first come up, and the piece's
 * place in that room's list. A run added below the first of its room so changes no mark in another
 * room; below all of its room's runs, none that stood there before. The pieces of openings come after
 * those of runs. A room typed above the others takes their numbers.
 *
 * @param pieces In the order of the runs, those of openings after them.
 */
export function markPieces(pieces: readonly Omit<Piece, 'mark'>[]): Piece[] {
  const rooms = new Map<string, { readonly number: number; pieces: number }>();
  return pieces.map((piece) => {
    const room = rooms.get(piece.room) ?? { number: rooms.size + 1, pieces: 0 };
    rooms.set(piece.room, room);
    room.pieces += 1;
    return { ...piece, mark: `R${room.number}-${room.pieces}` };
  });
}
