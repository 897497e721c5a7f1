/** A cutting plan for machines: lengths in inches, money in the prices' own, nothing rounded. */
import type { Caution, Fault } from '../core/faults/fault.ts';
import type { StickAnswer } from '../cutting/problem/problem.ts';
import type { PieceRow, StickRow } from './read-cut.ts';
import type { StatedCut } from './state-cut.ts';

export function cutToJson(
  stated: StatedCut,
  answer: StickAnswer,
  faults: readonly Fault[],
  cautions: readonly Caution[],
) {
  const { problem } = stated;
  const { plan, bound, status } = answer;
  const inches = (units: number): number => units / problem.unitsPerInch;
  return {
    cost: money(plan.costCents),
    bound: money(bound.costCents),
    status,
    proven: status === 'proven',
    sticks: plan.sticks.map(({ supplyId, pieces, offcut }) => {
      const stick = stickBehind(stated, supplyId);
      return {
        length: Number(stick.length),
        price: money(stick.priceCents),
        pieces: pieces.map(({ length }) => inches(length)),
        labels: pieces.map(({ demandId }) => pieceBehind(stated, demandId).label),
        offcut: inches(offcut),
      };
    }),
    unserved: plan.unserved.map(({ demandId, why }) => {
      const piece = pieceBehind(stated, demandId);
      return { label: piece.label, length: Number(piece.length), why };
    }),
    duals: bound.duals.map(({ length, cents }) => ({
      length: inches(length),
      money: money(cents),
    })),
    credits: bound.credits.map(({ supplyId, cents }) => {
      const { length, priceCents, count } = stickBehind(stated, supplyId);
      return { length: Number(length), price: money(priceCents), count, money: money(cents) };
    }),
    // What the duals alone come to, where the rest of the bound is known from trying all that is left.
    ...(bound.tried === undefined ? {} : { tried: { prices: money(bound.tried.pricesCents) } }),
    faults,
    cautions,
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

function money(cents: number): number {
  return cents / 100;
}
