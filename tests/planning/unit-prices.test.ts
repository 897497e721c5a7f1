import { describe, expect, test } from '@jest/globals';
import Fraction from 'fraction.js';

import type { JobPlan, ProfilePlan } from '../../src/planning/job-plan.ts';
import { priceLines } from '../../src/planning/money.ts';
import {
  priceFactors,
  priceMore,
  priceOfWork,
  priceOpenings,
  priceRooms,
  setUpLines,
} from '../../src/planning/unit-prices.ts';
import { planOf } from './make-job.ts';

const RATES =
  'Setting,Value\nhourly rate,60\nend allowance,0\noverhead %,10\ncontingency %,5\n' +
  'material markup %,20\nlabor markup %,4.5\nmargin %,20\nset-up minutes,40\nset-up spare,0';

function profileOf({ profiles }: JobPlan, name: string): ProfilePlan {
  return profiles.find(({ profile }) => profile.name === name)!;
}

describe('What lumber and labor make of the price', () => {
  test('is by hand 1.69375 and 1.5 times of them at round rates', async () => {
    // [D] 1.1 x 1.05 = 1.155; (1.155 + 0.2) / 0.8 = 1.69375; (1.155 + 0.045) / 0.8 = 1.5.
    const { job } = await planOf({ shop: RATES });
    const { material, labor } = priceFactors(job.shop);
    expect(material).toBeCloseTo(1.69375, 12);
    expect(labor).toBeCloseTo(1.5, 12);
  });

  test('is what a thousand more of each adds to a price, to within the rounding of its lines', async () => {
    const { job } = await planOf({ shop: RATES });
    const factors = priceFactors(job.shop);
    const price = (lumber: number, hours: number): number =>
      priceLines(lumber, 0, { hours, money: 0 }, job.shop).priceCents;
    expect(price(123_456 + 100_000, 7) - price(123_456, 7)).toBeCloseTo(
      100_000 * factors.material,
      -1,
    );
    expect(price(123_456, 7 + 10) - price(123_456, 7)).toBeCloseTo(60_000 * factors.labor, -1);
  });
});

describe('A set-up in the price', () => {
  test('is by hand its minutes at the rate, times what labor makes of the price', async () => {
    const plan = await planOf({
      shop: RATES,
      runs: 'Room,Run,Profile,Length\nHall,north,Cove,100',
    });
    const { shop } = plan.job;
    // [D] 40 minutes at 60 an hour are 40.00; times 1.5 that is 60.00.
    expect(priceOfWork(setUpLines(profileOf(plan, 'Cove')), shop)).toBe(60_00);
    const bought = await planOf({ shop: RATES });
    expect(priceOfWork(setUpLines(profileOf(bought, 'Base')), shop)).toBe(0);
  });

  test('is what the profile’s price is less without its minutes, to within the rounding of lines', async () => {
    const runs = 'Room,Run,Profile,Length\nHall,north,Cove,100';
    const plan = await planOf({ shop: RATES, runs });
    const without = await planOf({ shop: RATES.replace('minutes,40', 'minutes,0'), runs });
    const part =
      profileOf(plan, 'Cove').money.priceCents - profileOf(without, 'Cove').money.priceCents;
    const share = priceOfWork(setUpLines(profileOf(plan, 'Cove')), plan.job.shop);
    expect(Math.abs(part - share)).toBeLessThanOrEqual(4);
  });
});

describe('More of a molding', () => {
  test('costs by hand its lumber and what goes by the foot, and no cut more', async () => {
    const plan = await planOf({
      shop: RATES,
      // A stick of 16 ft at 2 a foot for 10 ft of base: 32.00, so 3.20 a foot.
      runs: 'Room,Run,Profile,Length\nHall,north,Base,120',
      work: 'Work,Per,Minutes,Money,For,Ours\ninstall,foot,3,0.5,,\nlabel and bundle,piece,7,,,',
    });
    const base = profileOf(plan, 'Base');
    expect(base.money.lumberCents - base.money.offcutCreditCents).toBe(32_00);
    // [D] 10 ft: 32.00 x 1.69375 = 54.20; 30 minutes at 60 and 5.00 are 35.00, x 1.5 = 52.50.
    expect(priceMore(base, new Fraction(120), plan.job.shop)).toBe(106_70);
    expect(priceMore(base, new Fraction(60), plan.job.shop)).toBe(53_35);
    expect(base.money.priceCents).toBeGreaterThan(106_70);
  });

  test('of a cove is the passes of its blanks and its curve too, in proportion, and no set-up', async () => {
    const plan = await planOf({
      shop: RATES,
      runs: 'Room,Run,Profile,Length\nHall,north,Cove,100',
    });
    const cove = profileOf(plan, 'Cove');
    const { passes, smoothing } = cove.tally.hours;
    const { lumberCents, offcutCreditCents } = cove.money;
    const ofIt = (lumberCents - offcutCreditCents) * 1.69375 + (passes + smoothing) * 6000 * 1.5;
    expect(passes).toBeGreaterThan(0);
    expect(priceMore(cove, new Fraction(50), plan.job.shop)).toBe(Math.round(ofIt / 2));
    expect(priceMore(cove, new Fraction(0), plan.job.shop)).toBe(0);
  });

  test('has no price where nothing is left to go by', async () => {
    const plan = await planOf({});
    const base = profileOf(plan, 'Base');
    const none = { ...base, tally: { ...base.tally, lengthNet: new Fraction(0) } };
    expect(priceMore(none, new Fraction(120), plan.job.shop)).toBeUndefined();
  });
});

describe('Openings', () => {
  const OPENINGS =
    'Room,Wall,Kind,Width,Height,Casing,Quantity,Stool,Apron\n' +
    'Hall,,door,32,80,Casing,2,,\nHall,,window,36,48,Casing,1,Base,Casing\n' +
    'Hall,,door,30,80,Casing,1,,\nHall,,cased opening,60,80,,1,,';

  test('are priced by kind: their pieces at the molding’s price by length', async () => {
    const plan = await planOf({
      runs: 'Room,Run,Profile,Length\nHall,north,Casing,100\nHall,south,Base,90',
      openings: OPENINGS,
    });
    const kinds = priceOpenings(plan);
    expect(kinds.map(({ kind, openings }) => [kind, openings])).toEqual([
      ['door', 3],
      ['window', 1],
    ]);
    // Reveal 3/16 and casing 3 1/2: a leg 80 + 3 11/16, a head the width + 7 3/8, three doors.
    const [doors, windows] = kinds;
    const legs = 6 * (80 + 3 + 11 / 16);
    const heads = 2 * (32 + 7 + 3 / 8) + 30 + 7 + 3 / 8;
    const casing = profileOf(plan, 'Casing');
    expect(doors!.moldings).toHaveLength(1);
    expect(Number(doors!.moldings[0]!.lengthNet)).toBe(legs + heads);
    expect(doors!.moldings[0]!.priceCents).toBe(
      Math.round((casing.money.priceCents * (legs + heads)) / Number(casing.tally.lengthNet)),
    );
    // The apron is of casing; the stool of base, a horn of 1 in longer at each end.
    const [stool, around] = windows!.moldings;
    expect(stool!.planned.profile.name).toBe('Base');
    expect(Number(stool!.lengthNet)).toBe(36 + 7 + 3 / 8 + 2);
    expect(Number(around!.lengthNet)).toBe(2 * (48 + 3 + 11 / 16) + 2 * (36 + 7 + 3 / 8));
  });

  test('come with the runs beside them to all of each molding’s price', async () => {
    const plan = await planOf({ openings: OPENINGS });
    const casing = profileOf(plan, 'Casing');
    const all = priceOpenings(plan)
      .flatMap(({ moldings }) => moldings)
      .filter(({ planned }) => planned === casing);
    const sum = all.reduce((cents, { priceCents }) => cents + priceCents, 0);
    expect(Math.abs(sum - casing.money.priceCents)).toBeLessThanOrEqual(all.length);
  });
});

describe('Rooms', () => {
  test('have the walls that Walls gives them, and together the moldings’ price', async () => {
    const plan = await planOf({
      runs: 'Room,Run,Profile,Length\nden,shelf,Base,30\nDen,other,Base,40\nHall,a,Base,50',
      walls:
        'Room,Wall,Length,Corner,Turn\nHall,1,100,,\nHall,2,80,,\nHall,3,100,,\nHall,4,80,,\n' +
        'Den,1,40,,\nDen,2,30,,\nDen,3,40,,\nDen,4,30,,',
    });
    const rooms = priceRooms(plan);
    const sum = rooms.reduce((cents, { priceCents }) => cents + priceCents, 0);
    expect(sum).toBe(plan.totals.linesCents);
    const hall = rooms.find(({ room }) => room === 'Hall');
    expect(Number(hall!.wallLength)).toBe(360);
    // Two rooms that differ in case alone: whose the walls are isn't known.
    const dens = rooms.filter(({ room }) => room.toLowerCase() === 'den');
    expect(dens.map(({ wallLength }) => wallLength)).toEqual(dens.map(() => undefined));
    expect(dens).toHaveLength(2);
  });
});
