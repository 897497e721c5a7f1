/** What to buy for a plan, row by row of Stock, as a lumber yard sells it. What is on the rack is not in it. */
import Fraction from 'fraction.js';
import { measureBoard, type HalfGoes } from '../core/lumber/surface-measure.ts';
import { findThicknessClass } from '../core/lumber/thickness-class.ts';
import type { ExactInches } from '../core/units/length.ts';
import { countCutStock, listCutStock } from './cut/cut-stock.ts';
import { boughtForUsed, countToBuy } from './grade-yield.ts';
import type { StockItem } from './job.ts';
import type { JobPlan } from './job-plan.ts';

export interface YardLine {
  readonly item: StockItem;
  /** How many the plan counts on, as clear ones, and how many of them are cut already, so that they are here. */
  readonly pieces: number;
  readonly cut: number;
  /** How many are still to buy: more than the plan counts on where their grade has a yield. */
  readonly toBuy: number;
  /** What one costs, clear or not. */
  readonly priceCents: number;
  /** Inches, of those still to buy. */
  readonly lineal: ExactInches;
  /** Of those still to buy, by the plain rule; absent where the size isn't known, or Stock sells by the piece. */
  readonly boardFeet?: number;
  /** The same board by board, by surface measure; absent for sticks and where there is no class. */
  readonly boardFeetBySurface?: number;
  /** The longest length that is cut from one of them: a shorter one won't do. */
  readonly longest: ExactInches;
}

/**
 * In the order of Stock; rows of which nothing is bought are left out. Surface measure is taken board by
 * board down the list, exact halves going up and down in turns (see measureBoard).
 */
export function listYardOrder(plan: JobPlan): readonly YardLine[] {
  const cut = listCutStock(plan.profiles);
  const uses = plan.groups.flatMap(({ stockUse }) => stockUse);
  let nextHalf: HalfGoes = 'up';
  return plan.job.stock.flatMap((item): YardLine[] => {
    const own = uses.filter((use) => use.item === item && use.bought > 0);
    const [first] = own;
    if (first === undefined) return [];
    const pieces = own.reduce((all, { bought }) => all + bought, 0);
    const here = countCutStock(cut, item, 'buy');
    const left = countToBuy(item, Math.max(0, pieces - here));
    const each =
      (first.boardFeet ?? Number.NaN) /
      (first.fromRack + first.bought) /
      Number(boughtForUsed(item));
    const surface = surfaceFeet(item, left, nextHalf);
    if (surface !== undefined) ({ nextHalf } = surface);
    return [
      {
        item,
        pieces,
        cut: here,
        toBuy: left,
        priceCents: first.eachCents,
        lineal: item.length.mul(left),
        ...(Number.isNaN(each) ? {} : { boardFeet: each * left }),
        ...(surface === undefined ? {} : { boardFeetBySurface: surface.boardFeet }),
        longest: longestFrom(plan, item),
      },
    ];
  });
}

/** So many boards alike; undefined where they aren't sold by their face. */
function surfaceFeet(
  { kind, thicknessClass, width, length }: StockItem,
  boards: number,
  firstHalf: HalfGoes,
): { readonly boardFeet: number; readonly nextHalf: HalfGoes } | undefined {
  if (kind !== 'board' || width === undefined || thicknessClass === '') return undefined;
  const found = findThicknessClass(thicknessClass);
  if (!found.ok) return undefined;
  let [nextHalf, all] = [firstHalf, new Fraction(0)];
  for (let board = 0; board < boards; board += 1) {
    const measured = measureBoard({ thickness: found.value.rough, width, length }, nextHalf);
    if (!measured.ok) return undefined;
    ({ nextHalf } = measured.value);
    all = all.add(measured.value.boardFeet);
  }
  return { boardFeet: Number(all), nextHalf };
}

function longestFrom({ profiles }: JobPlan, item: StockItem): ExactInches {
  const lengths = profiles.flatMap(({ sticks }) =>
    sticks
      .filter((stick) => stick.item === item && !stick.fromRack)
      .flatMap(({ pieces }) => pieces.map(({ length }) => length)),
  );
  return lengths.reduce((most, one) => (one.gt(most) ? one : most), new Fraction(0));
}
