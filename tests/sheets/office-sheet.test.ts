import { beforeAll, describe, expect, test } from '@jest/globals';

import { nameKey } from '../../src/planning/job.ts';
import type { JobPlan, ProfilePlan } from '../../src/planning/job-plan.ts';
import { totalsBy } from '../../src/planning/price-bases.ts';
import { hoursOf } from '../../src/planning/work/hours.ts';
import type { WorkLine } from '../../src/planning/work/work-row.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import type { CellValue, SheetDescription } from '../../src/sheets/grammar/description.ts';
import { count } from '../deep.ts';
import { randomPlans } from './random-jobs.ts';
import { planOf } from '../planning/make-job.ts';
import { cellAt, JOBS, numberAt, rowWith, sheetOf } from './sheet-jobs.ts';

/** Cents that a share may be off: one or the other way of rounding the same exact half. */
const A_CENT = 0.010001;

const plans = new Map<string, { plan: JobPlan; sheet: SheetDescription }>();

beforeAll(async () => {
  const all = new Map(await randomPlans(count(200)));
  for (const [name, tables] of Object.entries(JOBS)) all.set(name, await planOf(tables));
  for (const [name, plan] of all) {
    plans.set(name, { plan, sheet: sheetOf(describePlan(plan), 'Office') });
  }
}, 240_000);

/** Rows of a section below its note and headings, up to the next blank row. */
function rowsOf(sheet: SheetDescription, section: string): (CellValue | null)[][] {
  const first = rowWith(sheet, section) + 3;
  const rows: (CellValue | null)[][] = [];
  for (let at = first; (sheet.rows[at]?.cells.length ?? 0) > 0; at += 1) {
    rows.push(sheet.rows[at]!.cells.map((one) => one?.value ?? null));
  }
  return rows;
}

/** What a line of labor costs the client, worked again from the shop's own figures. */
function laborPrice({ job: { shop } }: JobPlan, lines: readonly WorkLine[]): number {
  const dollars = lines.reduce(
    (sum, { row, count: many, factor }) =>
      sum + many * ((row.minutes * factor * shop.hourlyRate) / 60 + row.money),
    0,
  );
  const withOverhead = dollars + (dollars * shop.overhead) / 100;
  const beforeMargin =
    withOverhead + (withOverhead * shop.contingency) / 100 + (dollars * shop.laborMarkup) / 100;
  return beforeMargin / (1 - shop.margin / 100);
}

function lumberPrice({ job: { shop } }: JobPlan, { money }: ProfilePlan): number {
  const dollars = (money.lumberCents - money.offcutCreditCents) / 100;
  const withOverhead = dollars + (dollars * shop.overhead) / 100;
  const beforeMargin =
    withOverhead + (withOverhead * shop.contingency) / 100 + (dollars * shop.materialMarkup) / 100;
  return beforeMargin / (1 - shop.margin / 100);
}

/** The shop's long unit in inches. */
const LONG = { in: 12, mm: 1000 / 25.4 } as const;
const ENDS_AND_CUTS = /^(?:set-up|piece|crosscut|miter|compound miter|cope|return|joint)$/u;

function lengthOf(plan: JobPlan, pieces: JobPlan['pieces']): number {
  return (
    pieces.reduce((sum, { cutLength }) => sum + Number(cutLength), 0) / LONG[plan.job.shop.unit]
  );
}

test('Every column of money says which money', () => {
  const ofMoney = /^(?:A (?:ft|m)\b|Each|More|Of the price|Price|At its|Moves it|to below)/u;
  for (const { plan, sheet } of plans.values()) {
    const headings = sheet.rows
      .flatMap(({ cells }) => cells)
      .filter(
        (one) =>
          one?.style === 'headingRight' &&
          ofMoney.test(String(one.value)) &&
          !/%|hours/u.test(String(one.value)),
      );
    expect(headings.length).toBeGreaterThan(9);
    const bare = headings.filter(
      (one) => !String(one?.value).includes(`(${plan.job.shop.currency})`),
    );
    expect(bare).toEqual([]);
  }
});

describe('By molding', () => {
  test('has lumber, labor and price of each, and what the job comes to in the head', () => {
    for (const [name, { plan, sheet }] of plans) {
      const { totals, profiles, job } = plan;
      const first = rowWith(sheet, 'By molding: lumber, labor and price');
      const isNoted = job.shop.priceBasis === 'allowance' ? 1 : 0;
      profiles.forEach(({ profile, tally, money }, at) => {
        const value = (column: number) => cellAt(sheet, first + isNoted + 2 + at, column)?.value;
        expect([name, value(0)]).toEqual([name, profile.name]);
        expect(value(1)).toBeCloseTo(hoursOf(tally.hours), 9);
        expect([2, 3, 4, 5, 6, 7, 8, 9].map(value)).toEqual([
          money.lumberCents / 100,
          0 - money.offcutCreditCents / 100,
          money.laborCents / 100,
          money.overheadCents / 100,
          money.costCents / 100,
          money.contingencyCents / 100,
          money.markupCents / 100,
          money.priceCents / 100,
        ]);
      });
      const head = (label: string): number => numberAt(sheet, rowWith(sheet, label), 2);
      const { currency } = totals;
      expect(head(`Cost (${currency})`)).toBeCloseTo(totals.costCents / 100, 9);
      expect(head(`Price (${currency})`)).toBeCloseTo(totals.priceCents / 100, 9);
      const withTax = (totals.priceCents + totals.taxCents) / 100;
      expect(head(`Price with tax (${currency})`)).toBeCloseTo(withTax, 9);
      expect(head('Hours')).toBe(totals.hours);
      const more =
        (totalsBy(plan, 'plan').priceCents - totalsBy(plan, 'allowance').priceCents) / 100;
      if (profiles.length > 0) {
        expect(head(`More by the plan (${currency})`)).toBeCloseTo(more, 9);
      }
      const lines = rowsOf(sheet, 'By room and molding').filter(
        ([line]) => typeof line === 'number',
      );
      expect(lines.map(([, room, , , molding, , , price]) => [room, molding, price])).toEqual(
        plan.rooms.map(({ room, profile, priceCents }) => [room, profile, priceCents / 100]),
      );
    }
  });

  test('says what profiles bear of lumber in common, the last what the others leave', () => {
    const { plan, sheet } = plans.get('shared')!;
    expect(plan.groups.map((group) => group.name)).toEqual(['Wide, Flat, Narrow', 'Base']);
    const at = rowWith(sheet, 'Shares of the lumber that profiles have in common');
    const names = ['Wide', 'Flat', 'Narrow'];
    const rows = names.map((name) => rowWith(sheet, name, 0, at));
    const shares = rows.map((row) => numberAt(sheet, row, 8));
    names.forEach((name, index) => {
      const own = plan.profiles.find(({ profile }) => profile.name === name);
      expect(shares[index]).toBe(own!.money.lumberCents / 100);
    });
    expect(rows.map((row) => cellAt(sheet, row, 8)?.formula)).toEqual([
      undefined,
      undefined,
      expect.stringMatching(/^SUM\(I\d+:I\d+\)-SUM\(I\d+:I\d+\)$/u),
    ]);
    const [first, second, last] = shares;
    expect(first! + second! + last!).toBeCloseTo(plan.groups[0]!.lumberCents / 100, 9);
  });
});

describe('By length', () => {
  test('each molding has its price with and without set-up, and what more of it costs, worked again', () => {
    let setUps = 0;
    for (const [name, { plan, sheet }] of plans) {
      const rows = rowsOf(sheet, 'By length');
      const more = plan.job.shop.unit === 'in' ? 10 : 3;
      plan.profiles.forEach((planned, at) => {
        const { profile, money, work } = planned;
        const own = plan.pieces.filter((one) => !one.done && one.profile === profile.name);
        const long = lengthOf(plan, own);
        const price = money.priceCents / 100;
        const setUp = laborPrice(
          plan,
          work.filter(({ row }) => row.per === 'set-up'),
        );
        const growing = work.filter(({ row }) => !ENDS_AND_CUTS.test(row.per));
        const next = ((lumberPrice(plan, planned) + laborPrice(plan, growing)) / long) * more;
        const [called, length, paid, perLong, without, ofSetUp, share, forMore] = rows[at]!;
        expect([name, called, paid]).toEqual([name, profile.name, price]);
        expect(length).toBeCloseTo(long, 6);
        expect(perLong).toBeCloseTo(price / long, 6);
        expect(Math.abs(Number(ofSetUp) - setUp)).toBeLessThan(A_CENT);
        expect(Number(without) * long + Number(ofSetUp)).toBeCloseTo(price, 6);
        expect(Math.abs(Number(forMore) - next)).toBeLessThan(A_CENT);
        if (setUp > 0) expect(share).toBeCloseTo((Number(ofSetUp) / price) * 100, 6);
        if (setUp > 0) setUps += 1;
      });
    }
    expect(setUps).toBeGreaterThan(20);
  });

  test('moldings, and rooms, with the whole job’s work come to the price of the lines, to the cent', () => {
    for (const [name, { plan, sheet }] of plans) {
      const { linesCents, jobWorkCents } = plan.totals;
      const sums = ['By length', 'By room'].map((section) => {
        const rows = rowsOf(sheet, section);
        const at = section === 'By length' ? 2 : 3;
        const listed = rows.slice(0, -1).map((cells) => Math.round(Number(cells[at] ?? 0) * 100));
        return [
          Math.round(Number(rows.at(-1)![at]) * 100),
          listed.reduce((sum, one) => sum + one, 0),
        ];
      });
      const all = linesCents + jobWorkCents;
      expect([name, ...sums.flat()]).toEqual([name, all, all, all, all]);
    }
  });
});

describe('By opening', () => {
  test('a kind’s pieces are at their moldings’ price by length, and its moldings sum to it', () => {
    let kinds = 0;
    for (const { plan, sheet } of plans.values()) {
      const rows = rowsOf(sheet, 'By opening');
      let at = 0;
      for (const kind of ['door', 'window', 'cased opening']) {
        const lines = plan.job.openings.filter((one) => one.kind === kind);
        const places = new Map(lines.map((one) => [JSON.stringify(one.where), one]));
        const own = plan.pieces.filter(
          ({ where, done, made }) => !done && !made && places.has(JSON.stringify(where)),
        );
        if (own.length === 0) continue;
        kinds += 1;
        const head = rows[at]!;
        const asked = new Set(own.map(({ where }) => JSON.stringify(where)));
        const openings = [...asked].reduce((sum, key) => sum + places.get(key)!.quantity, 0);
        expect([head[0], head[3]]).toEqual([kind, openings]);
        at += 1;
        let cents = 0;
        for (const { profile, money } of plan.profiles) {
          const pieces = own.filter((one) => one.profile === profile.name);
          if (pieces.length === 0) continue;
          const all = plan.pieces.filter((one) => !one.done && one.profile === profile.name);
          const price = (money.priceCents / 100) * (lengthOf(plan, pieces) / lengthOf(plan, all));
          const cells = rows[at]!;
          expect(cells[1]).toBe(profile.name);
          expect(Math.abs(Number(cells[5]) - price)).toBeLessThan(A_CENT);
          expect(Number(cells[6]) * Number(cells[3])).toBeCloseTo(Number(cells[5]), 6);
          cents += Math.round(Number(cells[5]) * 100);
          at += 1;
        }
        expect(Math.round(Number(head[5]) * 100)).toBe(cents);
        expect(Number(head[6]) * openings).toBeCloseTo(cents / 100, 6);
      }
    }
    expect(kinds).toBeGreaterThan(5);
  });
});

describe('By room', () => {
  test('has each room’s lines, and its walls where Walls has them', () => {
    let walled = 0;
    for (const { plan, sheet } of plans.values()) {
      const rows = rowsOf(sheet, 'By room');
      const rooms = [...new Set(plan.rooms.map(({ room }) => room))];
      rooms.forEach((room, at) => {
        const cents = plan.rooms
          .filter((line) => line.room === room)
          .reduce((sum, { priceCents }) => sum + priceCents, 0);
        const [called, , , price, walls, perWall] = rows[at]!;
        expect([called, Math.round(Number(price) * 100)]).toEqual([room, cents]);
        if (walls === null || walls === undefined) return;
        walled += 1;
        const long = plan.job.walls
          .filter((one) => nameKey(one.room) === nameKey(room))
          .reduce((sum, { length }) => sum + Number(length), 0);
        expect(walls).toBeCloseTo(long / LONG[plan.job.shop.unit], 6);
        expect(Number(perWall) * Number(walls)).toBeCloseTo(Number(price), 6);
      });
    }
    expect(walled).toBeGreaterThan(2);
  });
});

describe('By joint', () => {
  test('has the moldings with joints, and what their work comes to, each and together', () => {
    let joined = 0;
    for (const { plan, sheet } of plans.values()) {
      const rows = rowsOf(sheet, 'By joint');
      const own = plan.profiles.filter(({ tally }) => tally.joints > 0);
      if (own.length === 0) {
        expect(rows.map(([only]) => only)).toEqual(['No piece is joined from parts.']);
      }
      own.forEach(({ profile, tally, work }, at) => {
        const [called, , , joints, price, each] = rows[at]!;
        const wanted = laborPrice(
          plan,
          work.filter(({ row }) => row.per === 'joint'),
        );
        expect([called, joints]).toEqual([profile.name, tally.joints]);
        expect(Math.abs(Number(price) - wanted)).toBeLessThan(A_CENT);
        expect(Number(each) * tally.joints).toBeCloseTo(Number(price), 6);
        joined += 1;
      });
    }
    expect(joined).toBeGreaterThan(2);
  });
});

describe('Rates as the hours have them', () => {
  const COVES = {
    runs: 'Room,Profile,Length,Measured as\nHall,Cove,60,finished\nHall,Cove,60,finished',
  };

  test('stand where the job has hours, in words, and nothing of them is in a price', async () => {
    const without = await planOf(COVES);
    const plan = await planOf({
      ...COVES,
      hours: 'Work,Hours\nset up a cove,60 min\ncope,2',
    });
    const sheet = sheetOf(describePlan(plan), 'Office');
    const rows = rowsOf(sheet, 'Rates as the hours have them');
    expect(rows[0]).toEqual([
      'set up a cove',
      null,
      '1 h, 0.67 h by the rates until now',
      ...rows[0]!.slice(3),
    ]);
    expect(rows[1]![2]).toContain('none of it');
    // 0.88 h by hand (tests/planning/hours.test.ts), 0.2 h its spread.
    const [name, , value, note, , , home] = rows[3]!;
    expect([name, value, home]).toEqual([
      'set up a cove, per set-up',
      '52.8 min',
      'a new row of Work',
    ]);
    expect(note).toBe('until now 40 min; in eight cases of ten between 37.4 min and 68.2 min');
    const plain = sheetOf(describePlan(without), 'Office');
    expect(JSON.stringify(plain.rows)).not.toContain('Rates as the hours have them');
    // Formulas point to rows of Production, which says more cautions.
    const valuesOf = ({ rows: all }: SheetDescription) =>
      all.map(({ cells }) => cells.map((one) => one?.value ?? null));
    expect(valuesOf(sheet).slice(0, plain.rows.length)).toEqual(valuesOf(plain));
  });
});
