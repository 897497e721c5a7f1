/** Takes the sticks that are cut already over into a job that may have changed since they were planned. */
import { own, phrase } from '../../core/faults/argument.ts';
import { fault, placeFault, type Caution, type Fault } from '../../core/faults/fault.ts';
import { nameKey, type Job, type Profile, type StockItem } from '../job.ts';
import type { CutPiece, CutStick } from '../job-plan.ts';
import type { Piece } from '../piece.ts';
import { isSameRow, rowOfStock } from '../same-row.ts';
import { sizesOfProfile, type CutAlready, type PieceThen } from './cut-already.ts';
import { matchPieces, type PartLeft, type Served } from './match-pieces.ts';

/** A cut stick as the new plan has it. */
export interface CarriedStick {
  readonly profile: Profile;
  readonly stick: CutStick;
  /** How wide the blanks of its board are, in their order; none for a stick. */
  readonly blankWidths: CutAlready['blankWidths'];
}

export interface CarriedOver {
  readonly sticks: readonly CarriedStick[];
  /** All of the job. One that is cut counts in the plan, also where Runs marks it as done. */
  readonly pieces: readonly Piece[];
  /** Ids of the pieces that are cut, or are still to be cut from a stick that is begun; set-up spares too. */
  readonly served: ReadonlySet<string>;
  /** Parts that are still to be cut of pieces of which another part is cut. */
  readonly partsLeft: readonly PartLeft[];
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

/**
 * A stick that is cut stays: its pieces, its stock, what is left of it, its number. What no longer
 * stands in Profiles or Stock, or is of other sizes there, is a fault at the stick: its cost would be
 * lost, or its pieces taken for another molding. A piece that nothing asks for any more, or that is of
 * another length or with other ends, is left over: that is a caution which names it, and the piece that
 * is asked for now is planned anew.
 *
 * @param spares ids of the set-up spares that the job asks for
 */
export function carryOver(
  job: Job,
  pieces: readonly Piece[],
  cut: readonly CutAlready[],
  spares: ReadonlySet<string>,
): CarriedOver {
  const faults: Fault[] = [];
  const known = cut.flatMap((then) => {
    const profile = job.profiles.find(({ name }) => nameKey(name) === nameKey(then.profile));
    const item = rowOf(job, then);
    const wrong = whatIsGone(then, profile, item);
    faults.push(...wrong);
    return profile === undefined || item === undefined || wrong.length > 0
      ? []
      : [{ then, profile, item }];
  });
  const matched = matchPieces(
    job,
    pieces,
    known.map(({ then }) => then),
    spares,
  );
  const sticks = known.map(({ then, profile, item }): CarriedStick => {
    const { id, unit, strip, blankWidths } = then;
    const cuts = then.pieces.flatMap((one) =>
      cutPiece(one, matched.servedBy.get(one), matched.recuts.get(one)),
    );
    const isWhole = cuts.length === then.pieces.length;
    const offcut = isWhole ? then.offcut : restOf(then, cuts, job);
    return {
      profile,
      blankWidths,
      stick: {
        id,
        item,
        unit,
        strip,
        strips: Math.max(1, blankWidths.length),
        fromRack: unit <= item.have,
        length: item.length,
        pieces: cuts,
        offcut,
        offcutKept: offcut.gt(0) && offcut.gte(job.shop.keepOffcutsOver),
        isCut: true,
      },
    };
  });
  return {
    sticks,
    pieces: pieces.map((one) =>
      one.done && matched.served.has(one.id) ? { ...one, done: false } : one,
    ),
    served: matched.served,
    partsLeft: matched.partsLeft,
    faults,
    cautions: [...matched.cautions, ...haveCautions(known)],
  };
}

/** The row of Stock for the same thing; of several at different prices the one that it was. */
function rowOf({ stock }: Job, { row }: CutAlready): StockItem | undefined {
  const alike = stock.filter((item) => isSameRow(rowOfStock(item), row));
  return alike.find(({ price, per }) => price === row.price && per === row.per) ?? alike[0];
}

function whatIsGone(
  { id, profile: name, sizes, row }: CutAlready,
  profile: Profile | undefined,
  item: StockItem | undefined,
): Fault[] {
  if (profile === undefined) return [fault('job.cut-profile-gone', own(id), name)];
  const ofProfile =
    sizesOfProfile(profile) === sizes
      ? []
      : [placeFault(fault('job.cut-profile-changed', own(id), profile.name), profile.where)];
  const details = { of: row.for };
  const ofStock =
    item === undefined
      ? [fault('job.cut-stock-gone', own(id), { inches: Number(row.length) }, { details })]
      : [];
  return [...ofProfile, ...ofStock];
}

function cutPiece(
  then: PieceThen,
  piece: Served | undefined,
  recutTo: Piece | undefined,
): CutPiece[] {
  const { id, length, isCut, part } = then;
  const cut = isCut ? { isCut: true as const } : {};
  if (piece === undefined) {
    // What is not off the stick yet is not cut from it any more.
    if (!isCut) return [];
    const recut = recutTo === undefined ? {} : { recutTo };
    return [{ id, length, ...cut, unneeded: then, ...recut }];
  }
  const ofPart = part === undefined ? {} : { part };
  if (piece === 'spare') return [{ id, length, ...cut }];
  return [{ id: piece.id, piece, length, ...ofPart, ...cut }];
}

/** What is left of a stick from which fewer pieces are cut than were planned. */
function restOf(
  { row }: CutAlready,
  cuts: readonly CutPiece[],
  { shop }: Job,
): CutAlready['offcut'] {
  const room = row.length.sub(shop.endTrim.mul(2));
  const rest = cuts.reduce((left, { length }) => left.sub(length).sub(shop.crosscutKerf), room);
  return rest.lt(0) ? rest.mul(0) : rest;
}

/**
 * Have is what there was when the job began, and what came since: whoever takes cut sticks off it, or
 * counts anew what is there, counts them twice.
 */
function haveCautions(
  known: readonly { readonly then: CutAlready; readonly item: StockItem }[],
): Caution[] {
  const rows = new Map<StockItem, { before: number; units: Set<number> }>();
  for (const { then, item } of known) {
    const row = rows.get(item) ?? { before: then.row.have, units: new Set<number>() };
    rows.set(item, row);
    if (then.unit <= Math.max(then.row.have, item.have)) row.units.add(then.unit);
  }
  return [...rows].flatMap(([item, { before, units }]) => {
    if (item.have === before || units.size === 0) return [];
    const details = { cut: String(units.size), before: String(before) };
    const one = fault(
      'job.cut-have-changed',
      phrase('stockFor', { name: own(item.for) }),
      item.have,
      { details },
    );
    return [placeFault(one, item.where)];
  });
}
