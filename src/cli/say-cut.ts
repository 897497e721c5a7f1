/** A cutting plan in words: what to get, how each stick is cut, what it costs. */
import type Fraction from 'fraction.js';
import { sayQuantity } from '../core/faults/quantity.ts';
import type { PlannedStick, StickAnswer } from '../cutting/problem/problem.ts';
import { pieceBehind, stickBehind } from './cut-json.ts';
import { sayMoney } from '../core/units/say-money.ts';
import { proofOf, sayProof } from '../sheets/words/say-proof.ts';
import type { CutOrder, StatedCut } from './state-cut.ts';
import type { Paragraph } from './report.ts';
import { drawTable } from './text-table.ts';

const COLUMNS = [
  { heading: 'Sticks', align: 'right' },
  { heading: 'Of', align: 'right' },
  { heading: 'Cut from each' },
  { heading: 'Left over', align: 'right' },
  { heading: 'Price each', align: 'right' },
] as const;

export function sayCut(order: CutOrder, stated: StatedCut, answer: StickAnswer): Paragraph[] {
  const { plan } = answer;
  const count = plan.sticks.length;
  const pieces = plan.sticks.reduce((sum, stick) => sum + stick.pieces.length, 0);
  const loss = `Counted in: ${sayLength(order.kerf)} for each cut between two pieces, ${sayLength(order.endTrim)} off each end of every stick.`;
  if (count === 0) return [loss, 'No stick is cut.'];
  return [
    drawTable(COLUMNS, sayPatterns(stated, plan.sticks)),
    loss,
    `${pieces} ${pieces === 1 ? 'piece' : 'pieces'} from ${count} ${count === 1 ? 'stick' : 'sticks'} for ${sayMoney(plan.costCents)}; ${sayProof(proofOf(answer), (cents) => sayMoney(cents), '.')}.`,
  ];
}

/** Sticks that are cut alike are one line, in the order of the plan. */
function sayPatterns(stated: StatedCut, sticks: readonly PlannedStick[]): string[][] {
  const patterns = new Map<string, { count: number; cells: readonly string[] }>();
  for (const stick of sticks) {
    const { length, priceCents } = stickBehind(stated, stick.supplyId);
    const cells = [
      sayLength(length),
      sayPieces(stated, stick),
      sayInches(stick.offcut / stated.problem.unitsPerInch),
      sayMoney(priceCents),
    ];
    const key = [stick.supplyId, ...cells].join('\n');
    patterns.set(key, { count: (patterns.get(key)?.count ?? 0) + 1, cells });
  }
  return [...patterns.values()].map(({ count, cells }) => [String(count), ...cells]);
}

/** `2 × 84 in leg + 32 in head`. */
function sayPieces(stated: StatedCut, { pieces }: PlannedStick): string {
  const counts = new Map<string, number>();
  for (const { demandId } of pieces) {
    const { length, label } = pieceBehind(stated, demandId);
    const said = `${sayLength(length)} ${label}`.trim();
    counts.set(said, (counts.get(said) ?? 0) + 1);
  }
  return [...counts]
    .map(([said, count]) => (count === 1 ? said : `${count} × ${said}`))
    .join(' + ');
}

function sayLength(length: Fraction): string {
  return sayInches(Number(length));
}

function sayInches(inches: number): string {
  return sayQuantity({ inches }, 'in');
}
