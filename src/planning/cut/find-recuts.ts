/** Which pieces that are still to be cut could be made from those that are cut and left over. */
import type { ExactInches } from '../../core/units/length.ts';
import { nameKey } from '../job.ts';
import type { Piece } from '../piece.ts';
import { endOfPiece, type CutAlready, type PieceThen } from './cut-already.ts';

/** A piece that is cut, and that nothing of the job is just like. */
export interface LeftOver {
  readonly stick: CutAlready;
  readonly then: PieceThen;
}

/**
 * Each is offered for one piece at most, and each piece once: the piece that it was cut for first, else
 * the longest that it is long enough for; the shortest left over choose first. Parts of a splice and
 * set-up spares are none, nor is anything offered for a return, which is too short to be held, or for a
 * matched piece, which comes from one stick with its group.
 *
 * @param open pieces that are still to be cut
 */
export function findRecuts(
  leftOver: readonly LeftOver[],
  open: readonly Piece[],
  kerf: ExactInches,
): ReadonlyMap<PieceThen, Piece> {
  const recuts = new Map<PieceThen, Piece>();
  const offered = new Set<Piece>();
  const offer = (then: PieceThen, piece: Piece | undefined): void => {
    if (piece === undefined) return;
    recuts.set(then, piece);
    offered.add(piece);
  };
  const wholes = leftOver
    .filter(({ then }) => then.ends !== '' && then.part === undefined)
    .sort((one, other) => one.then.length.compare(other.then.length));
  const byLength = open
    .filter(({ kind, match }) => kind === 'run' && match === '')
    .sort((one, other) => other.cutLength.compare(one.cutLength));
  const byId = new Map(byLength.map((piece) => [piece.id, piece]));
  const fits = ({ stick, then }: LeftOver, piece: Piece): boolean =>
    !offered.has(piece) &&
    nameKey(piece.profile) === nameKey(stick.profile) &&
    canBeRecut(then, piece, kerf);
  for (const one of wholes) {
    const own = byId.get(one.then.id);
    if (own !== undefined && fits(one, own)) offer(one.then, own);
  }
  for (const one of wholes) {
    if (recuts.has(one.then)) continue;
    offer(
      one.then,
      byLength.find((piece) => fits(one, piece)),
    );
  }
  return recuts;
}

/**
 * One cut takes one end off, a kerf or more, and another end may be cut there: as far in as that was, or
 * any where it was square. An end that is to be another can be cut anew only where it was square: of a
 * slanted or coped one it isn't known how much of the length is whole.
 */
function canBeRecut({ length, ends }: PieceThen, piece: Piece, kerf: ExactInches): boolean {
  const [left = '', right = ''] = ends.split(', ');
  const anew = [
    [left, endOfPiece(piece.left)] as const,
    [right, endOfPiece(piece.right)] as const,
  ].filter(([was, is]) => was !== is);
  if (anew.some(([was]) => !was.startsWith('square '))) return false;
  return length.gte(piece.cutLength.add(kerf.mul(Math.max(1, anew.length))));
}
