/** A plan at a glance, in words. */
import Fraction from 'fraction.js';
import type { PriceRange } from '../../core/bid/price-range.ts';
import { formatFixed, type DecimalSign } from '../../core/units/format-number.ts';
import type { ExactInches } from '../../core/units/length.ts';
import type { CuttingGroup, JobPlan, ProfilePlan } from '../../planning/job-plan.ts';
import { hoursOf } from '../../planning/work/hours.ts';
import type { Shop } from '../../planning/shop.ts';
import { sayVolume, VOLUME } from '../../sheets/words/lumber-volume.ts';
import { count, printTotal } from '../../sheets/words/print-length.ts';
import { sayMoney } from '../../core/units/say-money.ts';
import { sayAmount, sayRange } from '../../sheets/words/say-bid.ts';
import { sayOption } from '../../sheets/words/say-option.ts';
import { proofOfGroup, sayCost, sayProof, sumProofs } from '../../sheets/words/say-proof.ts';
import { listPriceLines, PRICE_LINES } from '../../sheets/words/price-lines.ts';
import { sayOtherBasis } from '../../sheets/words/say-basis.ts';
import type { Fact } from '../../sheets/words/set-up-facts.ts';
import { sayCutSticks } from '../../sheets/words/tick-marks.ts';

const METRES_PER_INCH = 0.0254;

export interface ProfileLine {
  readonly name: string;
  readonly text: string;
  /** How near its lumber is to the least cost. */
  readonly bound: string;
}

/** What a plan is judged by first, in four numbers. */
export function sayInFour({ totals, job }: JobPlan): Fact[] {
  const { shop } = job;
  const money = (cents: number): string => sayMoney(cents, shop.currency, shop.decimalSign);
  return [
    { label: 'Price', value: money(totals.priceCents) },
    { label: 'Cost', value: money(totals.costCents) },
    { label: 'Sticks', value: String(totals.sticks) },
    { label: 'Hours', value: formatFixed(totals.hours, 1, shop.decimalSign) },
  ];
}

export function sayResult(plan: JobPlan): Fact[] {
  const { totals, job, profiles, groups } = plan;
  const { shop } = job;
  const { name } = VOLUME[shop.unit];
  const money = (cents: number): string => sayMoney(cents, shop.currency, shop.decimalSign);
  const number = (value: number): string => formatFixed(value, 1, shop.decimalSign);
  const proof = sumProofs(groups.map(proofOfGroup));
  const kept = offcuts(profiles, true);
  return [
    {
      label: 'Pieces',
      value: String(totals.pieces),
      ...(totals.done === 0 ? {} : { note: `${totals.done} more are done already` }),
    },
    {
      label: 'Sticks',
      value: String(totals.sticks),
      ...(totals.sticksCut === 0
        ? {}
        : {
            note: `${sayCutSticks(totals.sticksCut, totals.sticks)}: they stay, and their cost is in it`,
          }),
    },
    { label: 'Length, net', value: sayLong(totals.lengthNet, shop) },
    { label: 'Length, bought or from the rack', value: sayLong(totals.lengthBought, shop) },
    {
      label: 'Offcuts',
      value: sayLong(offcuts(profiles, false).add(kept), shop),
      note: `${sayLong(kept, shop)} of it long enough to keep`,
    },
    { label: `${name}, net`, value: sayVolume(totals.boardFeetNet, shop) },
    {
      label: `${name}, with allowance`,
      value: sayVolume(totals.boardFeetWithAllowance, shop),
    },
    {
      label: `${name}, as bought`,
      value:
        totals.boardFeetBought === undefined
          ? 'not known'
          : sayVolume(totals.boardFeetBought, shop),
    },
    { label: 'Passes over the blade', value: String(totals.passes) },
    { label: 'Hours', value: number(totals.hours) },
    {
      label: 'Lumber',
      value: money(proof.lumberCents),
      note: `${proof.creditCents === 0 ? '' : `${sayCost(proof, money)}: `}${sayProof(proof, money, shop.decimalSign)}`,
    },
    { label: 'Cost', value: money(totals.costCents) },
    ...listPriceLines(totals).map(({ line, cents }) => ({
      label: PRICE_LINES[line],
      value: money(cents),
    })),
    {
      label: 'Price',
      value: money(totals.priceCents),
      note: `${totals.taxCents === 0 ? '' : `and ${money(totals.taxCents)} tax on it; `}${sayOtherBasis(plan)}`,
    },
    ...(plan.range === undefined ? [] : [sayBand(plan.range, shop)]),
    ...plan.options.map((one): Fact => {
      const said = sayOption(plan, one);
      const label = `Option ${one.option.name}`;
      if (one.more === undefined) return { label, value: 'in the price', note: said };
      const { priceCents, taxCents } = one.more;
      const tax = taxCents === 0 ? '' : `, and ${money(taxCents)} tax on it`;
      return { label, value: `${money(priceCents)} more`, note: `${said}${tax}` };
    }),
  ];
}

/** What the office's copy shows drawn. */
function sayBand(range: PriceRange, shop: Shop): Fact {
  const [low, high] = [range.low, range.high].map((price) => sayAmount(price, shop));
  return {
    label: 'Price, eight jobs of ten',
    value: `${low} to ${high}`,
    note: sayRange(range, shop),
  };
}

/** A line a profile: what it takes, and how near the least cost the lumber is that it is planned with. */
export function sayProfiles({ profiles, groups, job }: JobPlan): ProfileLine[] {
  const { shop } = job;
  const money = (cents: number): string => sayMoney(cents, shop.currency, shop.decimalSign);
  return profiles.map(({ profile, tally, money: own }) => {
    const hours = formatFixed(hoursOf(tally.hours), 1, shop.decimalSign);
    const group = groups.find((one) => one.profiles.includes(profile));
    return {
      name: profile.name,
      text: `${count(tally.pieces, 'piece')} from ${count(tally.sticks, 'stick')}, ${hours} hours, price ${money(own.priceCents)}.`,
      bound: group === undefined ? '' : sayLumber(group, money, shop.decimalSign),
    };
  });
}

/** Profiles that share stock have one cost and one bound. */
function sayLumber(
  group: CuttingGroup,
  say: (cents: number) => string,
  decimalSign: DecimalSign,
): string {
  const { profiles, name } = group;
  const proof = proofOfGroup(group);
  const of = profiles.length === 1 ? '' : ` of ${name} together`;
  return `Lumber${of} ${sayCost(proof, say)}, ${sayProof(proof, say, decimalSign)}.`;
}

/** A sum of lengths as the yard thinks of it: feet and inches, or metres. */
export function sayLong(inches: ExactInches, shop: Shop): string {
  if (shop.unit === 'in') return printTotal(inches, shop);
  return `${formatFixed(Number(inches) * METRES_PER_INCH, 2, shop.decimalSign)} m`;
}

function offcuts(profiles: readonly ProfilePlan[], kept: boolean): ExactInches {
  return profiles
    .flatMap(({ sticks }) => sticks)
    .filter(({ offcutKept }) => offcutKept === kept)
    .reduce((total, { offcut }) => total.add(offcut), new Fraction(0));
}
