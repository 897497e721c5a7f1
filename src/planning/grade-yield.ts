/** Boards that are bought by their grade: which share of them the plan can count on. */
import Fraction from 'fraction.js';
import { exactDecimal } from '../core/units/length.ts';
import type { StockItem } from './job.ts';

/** How much is bought for what the plan uses: 1 where boards are taken as clear, 5/4 at a yield of 80 %. */
export function boughtForUsed({ yieldPercent }: Pick<StockItem, 'yieldPercent'>): Fraction {
  return yieldPercent === undefined
    ? new Fraction(1)
    : new Fraction(100).div(exactDecimal(yieldPercent));
}

/** How many boards are bought for so many clear ones of the plan, rounded up. */
export function countToBuy(item: Pick<StockItem, 'yieldPercent'>, clear: number): number {
  return Number(boughtForUsed(item).mul(clear).ceil());
}

/** How many clear boards the plan may count on of so many that may be bought, rounded down. */
export function countClear(item: Pick<StockItem, 'yieldPercent'>, bought: number): number {
  return Number(new Fraction(bought).div(boughtForUsed(item)).floor());
}
