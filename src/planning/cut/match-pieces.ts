/** Which pieces of a job the pieces that are cut already are. */
import { own } from '../../core/faults/argument.ts';
import { fault, placeFault, type Caution } from '../../core/faults/fault.ts';
import type { ExactInches } from '../../core/units/length.ts';
import { spliceOverlap } from '../splice-overlap.ts';
import { nameKey, type Job } from '../job.ts';
import type { Piece } from '../piece.ts';
import { endsOfPiece, type CutAlready, type PieceThen } from './cut-already.ts';
import { findRecuts, type LeftOver } from './find-recuts.ts';

/** The piece of the job that a cut one is, or the set-up spare of its cove. */
export type Served = Piece | 'spare';

/** A part that is still to be cut of a piece of which another part is cut. */
export interface PartLeft {
  readonly piece: Piece;
  /** From 1. */
  readonly part: number;
  readonly length: ExactInches;
}

export interface MatchedPieces {
  /** Absent: nothing asks for it any more. */
  readonly servedBy: ReadonlyMap<PieceThen, Served>;
  readonly served: ReadonlySet<string>;
  /** What is left over, with a piece still to be cut that could be made from it. */
  readonly recuts: ReadonlyMap<PieceThen, Piece>;
  readonly partsLeft: readonly PartLeft[];
  readonly cautions: readonly Caution[];
}

const NOTHING_CUT: MatchedPieces = {
  servedBy: new Map(),
  served: new Set(),
  recuts: new Map(),
  partsLeft: [],
  cautions: [],
};

/**
 * A cut piece is the job's piece of the same id where profile, length and ends are the same. What is
 * left over then serves another piece of the job that is just so: a room may have got another name.
 */
export function matchPieces(
  job: Job,
  pieces: readonly Piece[],
  cut: readonly CutAlready[],
  spares: ReadonlySet<string>,
): MatchedPieces {
  if (cut.length === 0) return NOTHING_CUT;
  const byId = new Map(pieces.map((one) => [one.id, one]));
  const servedBy = new Map<PieceThen, Served>();
  const served = new Set<string>();
  const cautions: Caution[] = [];
  const all = cut.flatMap((stick) => stick.pieces.map((then) => ({ stick, then })));
  const parts = new Map<string, PieceThen[]>();
  for (const { stick, then } of all) {
    if (then.ends === '') {
      if (!spares.has(then.id) || served.has(then.id)) continue;
      servedBy.set(then, 'spare');
      served.add(then.id);
      continue;
    }
    const piece = byId.get(then.id);
    if (piece === undefined || !isSame(job, piece, stick.profile, then)) continue;
    if (then.part === undefined) {
      if (served.has(piece.id)) continue;
    } else {
      const known = parts.get(piece.id) ?? [];
      if (known.some(({ part }) => part === then.part)) continue;
      parts.set(piece.id, [...known, then]);
    }
    servedBy.set(then, piece);
    served.add(piece.id);
  }
  const open = openPieces(pieces, served);
  const leftOver: LeftOver[] = [];
  for (const { stick, then } of all) {
    if (servedBy.has(then) || !then.isCut) continue;
    const key = keyOf(stick.profile, then.whole, then.ends);
    const other = then.ends === '' || then.part !== undefined ? undefined : open.get(key)?.shift();
    if (other === undefined) {
      cautions.push(sayLeftOver(stick, then, byId.get(then.id), spares));
      leftOver.push({ stick, then });
      continue;
    }
    servedBy.set(then, other);
    served.add(other.id);
    const details = { serves: other.id };
    const one = fault('job.cut-serves-other', own(stick.id), then.id, { details });
    cautions.push(placeFault(one, other.where));
  }
  const partsLeft = [...parts].flatMap(([id, known]) => listPartsLeft(byId.get(id), known));
  cautions.push(...brokenMatches(pieces, served));
  const isOpen = ({ id, done }: Piece): boolean => !done && !served.has(id);
  const recuts = findRecuts(leftOver, pieces.filter(isOpen), job.shop.crosscutKerf);
  cautions.push(...leftOver.flatMap((one) => sayRecut(one, recuts.get(one.then))));
  return { servedBy, served, recuts, partsLeft, cautions };
}

function isSame(job: Job, piece: Piece, profile: string, then: PieceThen): boolean {
  if (nameKey(piece.profile) !== nameKey(profile)) return false;
  if (!piece.cutLength.equals(then.whole) || endsOfPiece(piece) !== then.ends) return false;
  if (then.part === undefined) return true;
  if (piece.onePiece || then.parts === undefined) return false;
  const overlap = spliceOverlap(
    job.profiles.find(({ name }) => name === piece.profile),
    job.shop,
  );
  if (overlap === undefined) return false;
  const joints = then.parts.length - 1;
  const [first = piece.cutLength, ...others] = then.parts;
  const together = others.reduce((sum, length) => sum.add(length), first);
  const least = piece.cutLength.add(overlap.mul(joints));
  // As parts are planned: each may be rounded up to the shop's precision.
  return together.gte(least) && together.lte(least.add(job.shop.lengthPrecision.mul(joints)));
}

/** Pieces that nothing that is cut serves, by what they are. */
function openPieces(pieces: readonly Piece[], served: ReadonlySet<string>): Map<string, Piece[]> {
  const open = new Map<string, Piece[]>();
  for (const piece of pieces) {
    if (piece.done || served.has(piece.id)) continue;
    const key = keyOf(piece.profile, piece.cutLength, endsOfPiece(piece));
    const list = open.get(key) ?? [];
    open.set(key, list);
    list.push(piece);
  }
  return open;
}

function keyOf(profile: string, length: ExactInches, ends: string): string {
  return JSON.stringify([nameKey(profile), length.toFraction(), ends]);
}

function sayLeftOver(
  { id: stick }: CutAlready,
  then: PieceThen,
  piece: Piece | undefined,
  spares: ReadonlySet<string>,
): Caution {
  const given = { inches: Number(then.length) };
  if (piece === undefined || then.ends === '') {
    const why =
      then.ends === '' && !spares.has(then.id)
        ? 'Shop asks for no set-up spare now'
        : 'the job has no such piece any more';
    return fault('job.cut-piece-gone', own(then.id), given, { details: { stick, why } });
  }
  const isLonger = piece.cutLength.gt(then.whole);
  const isShorter = piece.cutLength.lt(then.whole);
  const what = isLonger
    ? 'too short'
    : isShorter
      ? 'longer than it need be'
      : 'cut with other ends, or in other parts,';
  const limit = { inches: Number(piece.cutLength) };
  const one = fault('job.cut-piece-changed', own(then.id), given, {
    limit,
    details: { stick, what },
  });
  return placeFault(one, piece.where);
}

function sayRecut({ stick, then }: LeftOver, piece: Piece | undefined): Caution[] {
  if (piece === undefined) return [];
  const limit = { inches: Number(piece.cutLength) };
  const details = { stick: stick.id, recut: piece.id };
  const given = { inches: Number(then.length) };
  const one = fault('job.cut-could-recut', own(then.id), given, { limit, details });
  return [placeFault(one, piece.where)];
}

function listPartsLeft(piece: Piece | undefined, known: readonly PieceThen[]): PartLeft[] {
  const [{ parts = [] } = { parts: [] }] = known;
  if (piece === undefined) return [];
  return parts.flatMap((length, at) =>
    known.some(({ part }) => part === at + 1) ? [] : [{ piece, part: at + 1, length }],
  );
}

/** Of a matched group some are cut, others are not: these can't come from that stick any more. */
function brokenMatches(pieces: readonly Piece[], served: ReadonlySet<string>): Caution[] {
  const groups = new Map<string, Piece[]>();
  for (const piece of pieces) {
    if (piece.match === '' || (piece.done && !served.has(piece.id))) continue;
    const key = nameKey(piece.match);
    groups.set(key, [...(groups.get(key) ?? []), piece]);
  }
  return [...groups.values()].flatMap((group) => {
    const left = group.filter(({ id }) => !served.has(id));
    const [first] = left;
    if (first === undefined || left.length === group.length) return [];
    const details = { others: String(left.length) };
    return [
      placeFault(
        fault('job.cut-match-broken', own(first.id), first.match, { details }),
        first.where,
      ),
    ];
  });
}
