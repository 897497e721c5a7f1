/** A plan at a glance, in words. */
import Fraction from 'fraction.js';
import type { ExactInches } from '../../core/units/length.ts';
import { hoursOf, type JobPlan, type ProfilePlan } from '../../planning/job-plan.ts';
import type { Shop } from '../../planning/shop.ts';
import { count, printTotal } from '../../sheets/print-length.ts';
import { sayBound, sayMoney } from '../../sheets/say-money.ts';
import type { NumberRow } from '../profile/say-set-up.ts';

const METRES_PER_INCH = 0.0254;

export interface ProfileLine {
  readonly name: string;
  readonly text: string;
  /** How near its lumber is to the least cost. */
  readonly bound: string;
}

export function sayResult(plan: JobPlan): NumberRow[] {
  const { totals, job, profiles } = plan;
  const { shop } = job;
  const money = (cents: number): string => sayMoney(cents, shop.currency, shop.decimalSign);
  const number = (value: number): string => value.toFixed(1).replace('.', shop.decimalSign);
  const lumberCents = sum(profiles, ({ answer }) => answer.plan.costCents);
  const boundCents = sum(profiles, ({ answer }) => answer.bound.costCents);
  const kept = offcuts(profiles, true);
  return [
    {
      label: 'Pieces',
      value: String(totals.pieces),
      ...(totals.done === 0 ? {} : { note: `${totals.done} more are done already` }),
    },
    { label: 'Sticks', value: String(totals.sticks) },
    { label: 'Length, net', value: sayLong(totals.lengthNet, shop) },
    { label: 'Length, bought or from the rack', value: sayLong(totals.lengthBought, shop) },
    {
      label: 'Offcuts',
      value: sayLong(offcuts(profiles, false).add(kept), shop),
      note: `${sayLong(kept, shop)} of it long enough to keep`,
    },
    { label: 'Board feet, net', value: number(totals.boardFeetNet) },
    { label: 'Board feet, with allowance', value: number(totals.boardFeetWithAllowance) },
    { label: 'Passes over the blade', value: String(totals.passes) },
    { label: 'Hours', value: number(totals.hours) },
    {
      label: 'Lumber',
      value: money(lumberCents),
      note: `${sayBound(lumberCents, boundCents, money)}${profiles.length > 1 ? ' (each profile by itself, in the order of Profiles)' : ''}`,
    },
    { label: 'Cost', value: money(totals.costCents) },
    {
      label: 'Price',
      value: money(totals.priceCents),
      ...(totals.taxCents === 0 ? {} : { note: `and ${money(totals.taxCents)} tax on it` }),
    },
  ];
}

/** A line a profile: what it takes, and how near the least cost that is. */
export function sayProfiles({ profiles, job }: JobPlan): ProfileLine[] {
  const { shop } = job;
  const money = (cents: number): string => sayMoney(cents, shop.currency, shop.decimalSign);
  return profiles.map(({ profile, tally, money: own, answer }) => {
    const hours = hoursOf(tally.hours).toFixed(1).replace('.', shop.decimalSign);
    const { plan, bound } = answer;
    return {
      name: profile.name,
      text: `${count(tally.pieces, 'piece')} from ${count(tally.sticks, 'stick')}, ${hours} hours, price ${money(own.priceCents)}.`,
      bound: `Lumber ${money(plan.costCents)}, ${sayBound(plan.costCents, bound.costCents, money)}.`,
    };
  });
}

/** A sum of lengths as the yard thinks of it: feet and inches, or metres. */
function sayLong(inches: ExactInches, shop: Shop): string {
  if (shop.unit === 'in') return printTotal(inches, 'in');
  const metres = (Number(inches) * METRES_PER_INCH).toFixed(2);
  return `${metres.replace('.', shop.decimalSign)} m`;
}

function offcuts(profiles: readonly ProfilePlan[], kept: boolean): ExactInches {
  return profiles
    .flatMap(({ sticks }) => sticks)
    .filter(({ offcutKept }) => offcutKept === kept)
    .reduce((total, { offcut }) => total.add(offcut), new Fraction(0));
}

function sum(profiles: readonly ProfilePlan[], value: (one: ProfilePlan) => number): number {
  return profiles.reduce((all, one) => all + value(one), 0);
}
