/** The stick planner's whole numbers turned back into sticks, pieces and a pick list. */
import Fraction from 'fraction.js';
import type { PlannedPiece, StickAnswer, StickProblem } from '../cutting/problem.ts';
import { spareId, type UsedStock } from './group-problem.ts';
import type { Profile } from './job.ts';
import type { CutStick, StockUse } from './job-plan.ts';
import type { Piece } from './piece.ts';
import type { StockUnit } from './stock-units.ts';

export function readSticks(
  profile: Profile,
  problem: StickProblem,
  answer: StickAnswer,
  units: readonly StockUnit[],
  used: UsedStock,
  pieces: ReadonlyMap<string, Piece>,
): CutStick[] {
  const inches = (whole: number): Fraction => new Fraction(whole, problem.unitsPerInch);
  return answer.plan.sticks.map((stick, index) => {
    const { item, strips } = unitOf(units, stick.supplyId);
    const supply = problem.supplies[Number(stick.supplyId)];
    return {
      id: `${profile.name} #${index + 1}`,
      item,
      // Boards of one row are numbered through all profiles, so that no two are called the same.
      unit: (used.get(item) ?? 0) + stick.unit + 1,
      strip: stick.strip + 1,
      strips,
      fromRack: stick.unit < (supply?.have ?? 0),
      length: item.length,
      pieces: inSawOrder(stick.pieces, profile, problem).map(({ demandId, length, part }) => {
        const piece = pieces.get(demandId);
        return {
          id: demandId,
          length: inches(length),
          ...(piece === undefined ? {} : { piece }),
          ...(part === undefined ? {} : { part: part + 1 }),
        };
      }),
      offcut: inches(stick.offcut),
      offcutKept: stick.offcut > 0 && stick.offcut >= problem.keepOffcutsOver,
    };
  });
}

/** Pieces shorter than this are cut while the stick is still long. Common practice [C]. */
const SHORT_PIECE_INCHES = 12;

/** The set-up spare first, for trial cuts; then short pieces, off the long stick; then the longest. */
function inSawOrder(
  pieces: readonly PlannedPiece[],
  profile: Profile,
  problem: StickProblem,
): PlannedPiece[] {
  const spare = spareId(profile);
  const rank = ({ demandId, length }: PlannedPiece): number => {
    if (demandId === spare) return 0;
    return length < SHORT_PIECE_INCHES * problem.unitsPerInch ? 1 : 2;
  };
  return [...pieces].sort((one, other) => {
    const byRank = rank(one) - rank(other);
    if (byRank !== 0) return byRank;
    return rank(one) === 1 ? one.length - other.length : other.length - one.length;
  });
}

/** What to pull from the rack and what to buy, a row for each row of Stock that is used. */
export function readStockUse(
  problem: StickProblem,
  answer: StickAnswer,
  units: readonly StockUnit[],
): StockUse[] {
  const opened = new Map<string, Set<number>>();
  for (const stick of answer.plan.sticks) {
    const set = opened.get(stick.supplyId) ?? new Set();
    opened.set(stick.supplyId, set.add(stick.unit));
  }
  return problem.supplies.flatMap((supply) => {
    const count = opened.get(supply.id)?.size ?? 0;
    if (count === 0) return [];
    const { item, strips, priceCents, boardFeet } = unitOf(units, supply.id);
    const used = answer.plan.sticks.filter((stick) => stick.supplyId === supply.id).length;
    const fromRack = Math.min(count, supply.have);
    return [
      {
        item,
        fromRack,
        bought: count - fromRack,
        unusedBlanks: count * strips - used,
        priceCents,
        costCents: count * priceCents,
        ...(boardFeet === undefined ? {} : { boardFeet: count * boardFeet }),
      },
    ];
  });
}

function unitOf(units: readonly StockUnit[], supplyId: string): StockUnit {
  const unit = units[Number(supplyId)];
  if (unit === undefined) throw new RangeError(`No stock stands behind supply ${supplyId}.`);
  return unit;
}
