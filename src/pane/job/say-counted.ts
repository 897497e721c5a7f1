/** What a list comes to, profile by profile and in all, in words. */
import Fraction from 'fraction.js';
import { formatFixed } from '../../core/units/format-number.ts';
import { sayMoney } from '../../core/units/say-money.ts';
import { toCubicMetres } from '../../core/lumber/board-feet.ts';
import type { JobPlan } from '../../planning/job-plan.ts';
import type { Shop } from '../../planning/shop.ts';
import { count } from '../../sheets/words/print-length.ts';
import { sayLong } from '../plan/say-result.ts';

export interface CountedLine {
  readonly name: string;
  readonly price: string;
  /** Length, sticks, board feet. */
  readonly amount: string;
}

/** A line a profile in the order of Profiles; the last is all of them, with what the job bears as a whole. */
export function sayCounted({ profiles, totals, job }: JobPlan): CountedLine[] {
  const { shop } = job;
  const say = (name: string, of: Amount, priceCents: number): CountedLine => ({
    name,
    price: sayMoney(priceCents, shop.currency, shop.decimalSign),
    amount: [
      sayLong(of.lengthNet, shop),
      count(of.sticks, 'stick'),
      ...sayVolume(of.boardFeetNet, shop),
    ].join(', '),
  });
  return [
    ...profiles.map(({ profile, tally, money }) => say(profile.name, tally, money.priceCents)),
    say('All', totals, totals.priceCents),
  ];
}

type Amount = Pick<JobPlan['profiles'][number]['tally'], 'lengthNet' | 'sticks' | 'boardFeetNet'>;

/** Nothing of what is bought ready made. */
function sayVolume(boardFeet: number | undefined, { unit, decimalSign }: Shop): string[] {
  if (boardFeet === undefined || boardFeet === 0) return [];
  return unit === 'mm'
    ? [`${formatFixed(Number(toCubicMetres(new Fraction(boardFeet))), 3, decimalSign)} m³`]
    : [`${formatFixed(boardFeet, 1, decimalSign)} board feet`];
}
