/** A cutting plan for machines: lengths in inches, money in the prices' own, nothing rounded. */
import type { Caution, Fault } from '../core/faults/fault.ts';
import { faultsToJson } from '../core/faults/fault-json.ts';
import type { StickAnswer } from '../cutting/problem/problem.ts';
import { nameKey } from '../planning/job.ts';
import type { PieceRow, StickRow } from './read-cut.ts';
import type { CutOrder, StatedCut } from './state-cut.ts';

/** Grows when a field changes its meaning or goes; new fields alone don't change it. */
const CUT_JSON_VERSION = 1;

/** What was optimized is under the same names for money and for inches but in bound's parts. */
export function cutToJson(
  order: CutOrder,
  stated: StatedCut,
  answer: StickAnswer,
  faults: readonly Fault[],
  cautions: readonly Caution[],
) {
  const { problem, optimized, perCent } = stated;
  const { plan, bound, status } = answer;
  const isCost = optimized === 'cost';
  const measured = (cents: number): number => Number(perCent.mul(cents));
  // In the prices' money, or in inches of stick.
  const worth = (cents: number) =>
    isCost ? { money: measured(cents) } : { inches: measured(cents) };
  const ofMaterial = ({ material }: Pick<PieceRow, 'material'>) => {
    const named = stated.materials.get(nameKey(material));
    return named === undefined ? {} : { material: named };
  };
  const inches = (units: number): number => units / problem.unitsPerInch;
  return {
    version: CUT_JSON_VERSION,
    optimized,
    cost: isCost ? measured(plan.costCents) : null,
    currency: stated.currency === '' ? null : stated.currency,
    length: plan.sticks.reduce(
      (sum, { supplyId }) => sum + Number(stickBehind(stated, supplyId).length),
      0,
    ),
    bound: measured(bound.costCents),
    kerf: Number(order.kerf),
    endTrim: Number(order.endTrim),
    status,
    proven: status === 'proven',
    sticks: plan.sticks.map(({ supplyId, pieces, offcut }) => {
      const stick = stickBehind(stated, supplyId);
      return {
        length: Number(stick.length),
        ...ofMaterial(stick),
        price: priceOf(stick),
        pieces: pieces.map(({ length }) => inches(length)),
        labels: pieces.map(({ demandId }) => pieceBehind(stated, demandId).label),
        offcut: inches(offcut),
      };
    }),
    unserved: plan.unserved.map(({ demandId, why }) => {
      const piece = pieceBehind(stated, demandId);
      return { label: piece.label, length: Number(piece.length), ...ofMaterial(piece), why };
    }),
    duals: bound.duals.map(({ length, cents, profile }) => ({
      length: inches(length),
      ...ofMaterial({ material: profile }),
      ...worth(cents),
    })),
    credits: bound.credits.map(({ supplyId, cents }) => {
      const stick = stickBehind(stated, supplyId);
      const { length, count } = stick;
      return {
        length: Number(length),
        ...ofMaterial(stick),
        price: priceOf(stick),
        count,
        ...worth(cents),
      };
    }),
    // What the duals alone come to, where the rest of the bound is known from trying all that is left.
    ...(bound.tried === undefined ? {} : { tried: { prices: measured(bound.tried.pricesCents) } }),
    faults: faultsToJson(faults),
    cautions: faultsToJson(cautions),
  };
}

export function pieceBehind({ pieceOf }: StatedCut, demandId: string): PieceRow {
  const piece = pieceOf.get(demandId);
  if (piece === undefined) throw new RangeError(`No row of pieces stands behind ${demandId}.`);
  return piece;
}

export function stickBehind({ stickOf }: StatedCut, supplyId: string): StickRow {
  const stick = stickOf.get(supplyId);
  if (stick === undefined) throw new RangeError(`No row of sticks stands behind ${supplyId}.`);
  return stick;
}

function priceOf({ priceCents }: StickRow): number | null {
  return priceCents === null ? null : priceCents / 100;
}
