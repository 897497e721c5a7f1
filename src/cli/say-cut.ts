/** A cutting plan in words: what to get, how each stick is cut, what it costs. */
import Fraction from 'fraction.js';
import { sayQuantity } from '../core/faults/quantity.ts';
import type { LengthMark } from '../core/units/stated-unit.ts';
import type { PlannedStick, StickAnswer } from '../cutting/problem/problem.ts';
import { pieceBehind, stickBehind } from './cut-json.ts';
import { sayMoney } from '../core/units/say-money.ts';
import { proofOf, sayProof } from '../sheets/words/say-proof.ts';
import { nameKey } from '../planning/job.ts';
import type { CutOrder, StatedCut } from './state-cut.ts';
import type { Paragraph } from './report.ts';
import { drawTable } from './text-table.ts';

const METRIC: readonly LengthMark[] = ['mm', 'cm', 'm'];
const COLUMNS = [
  { heading: 'Sticks', align: 'right' },
  { heading: 'Of', align: 'right' },
  { heading: 'Cut from each' },
  { heading: 'Left over', align: 'right' },
] as const;
const MATERIAL_COLUMN = { heading: 'Material' } as const;
const PRICE_COLUMN = { heading: 'Price each', align: 'right' } as const;

/** What a cent of the problem stands for, times so many: money as the prices are in, or a length. */
export function sayMeasured(order: CutOrder, stated: StatedCut): (cents: number) => string {
  if (stated.optimized === 'cost')
    return (cents) => sayMoney(cents, stated.currency, order.decimalSign);
  const say = sayLengthsOf(order);
  return (cents) => say(stated.perCent.mul(cents));
}

export function sayCut(order: CutOrder, stated: StatedCut, answer: StickAnswer): Paragraph[] {
  const { plan } = answer;
  const say = sayLengthsOf(order);
  const count = plan.sticks.length;
  const pieces = plan.sticks.reduce((sum, stick) => sum + stick.pieces.length, 0);
  const loss = `Counted in: ${say(order.kerf)} for each cut between two pieces, ${say(order.endTrim)} off each end of every stick.`;
  if (count === 0) return [loss, 'No stick is cut.'];
  const isCost = stated.optimized === 'cost';
  const columns = [
    ...COLUMNS.slice(0, 2),
    ...(stated.materials.size > 0 ? [MATERIAL_COLUMN] : []),
    ...COLUMNS.slice(2),
    ...(isCost ? [PRICE_COLUMN] : []),
  ];
  return [
    drawTable(columns, sayPatterns(stated, plan.sticks, say, sayMeasured(order, stated))),
    loss,
    `${sayCount(pieces, 'piece')} from ${sayCount(count, 'stick')} ${sayWhatIsLeast(order, stated, answer)}.`,
  ];
}

/** `for 475.00; proven least cost`, or `of 40 ft together, the least length that …`. */
function sayWhatIsLeast(order: CutOrder, stated: StatedCut, answer: StickAnswer): string {
  const measured = sayMeasured(order, stated);
  const proof = sayProof(proofOf(answer), measured, order.decimalSign);
  const least = measured(answer.plan.costCents);
  if (stated.optimized === 'cost') return `for ${least}; ${proof}`;
  const ofLength = proof.replace('least cost', 'least length');
  return `of ${least} together; ${ofLength}. No stick has a price, so the length of the sticks is what is least`;
}

type SayLength = (length: Fraction) => string;

/** In millimetres where every row of both lists counts in a metric unit. */
function sayLengthsOf({ pieces, sticks, decimalSign }: CutOrder): SayLength {
  const rows = [...pieces, ...sticks];
  const isMetric = rows.every(({ unit }) => METRIC.includes(unit));
  return (length) => sayQuantity({ inches: Number(length) }, isMetric ? 'mm' : 'in', decimalSign);
}

function sayCount(count: number, what: string): string {
  return `${count} ${count === 1 ? what : `${what}s`}`;
}

/** Sticks that are cut alike are one line, in the order of the plan. */
function sayPatterns(
  stated: StatedCut,
  sticks: readonly PlannedStick[],
  say: SayLength,
  sayPrice: (cents: number) => string,
): string[][] {
  const patterns = new Map<string, { count: number; cells: readonly string[] }>();
  for (const stick of sticks) {
    const { length, priceCents, material } = stickBehind(stated, stick.supplyId);
    const named = stated.materials.get(nameKey(material));
    const offcut = new Fraction(stick.offcut, stated.problem.unitsPerInch);
    const cells = [
      say(length),
      ...(named === undefined ? [] : [named]),
      sayPieces(stated, stick, say),
      say(offcut),
      ...(priceCents === null ? [] : [sayPrice(priceCents)]),
    ];
    const key = [stick.supplyId, ...cells].join('\n');
    patterns.set(key, { count: (patterns.get(key)?.count ?? 0) + 1, cells });
  }
  return [...patterns.values()].map(({ count, cells }) => [String(count), ...cells]);
}

/** `2 × 84 in leg + 32 in head`. */
function sayPieces(stated: StatedCut, { pieces }: PlannedStick, say: SayLength): string {
  const counts = new Map<string, number>();
  for (const { demandId } of pieces) {
    const { length, label } = pieceBehind(stated, demandId);
    const said = `${say(length)} ${label}`.trim();
    counts.set(said, (counts.get(said) ?? 0) + 1);
  }
  return [...counts]
    .map(([said, count]) => (count === 1 ? said : `${count} × ${said}`))
    .join(' + ');
}
