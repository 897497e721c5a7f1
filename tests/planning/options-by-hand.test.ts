/** Options against the same jobs as a person would write them without any. */
import { expect, test } from '@jest/globals';
import fc from 'fast-check';
import { checkJobPlan } from '../../src/planning/check-job-plan.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { planJob } from '../../src/planning/plan-job.ts';
import { count } from '../deep.ts';
import { PLAIN, planOf, readTables, type Tables } from './make-job.ts';
import { READING_ROOM } from './reading-room.ts';

const HEAD = PLAIN.options;
const PROFILES = `${PLAIN.profiles}\nOak base,buy,5 1/4,3/4,,Oak,,,\nPine base,buy,5 1/4,3/4,,Pine,,,\nOak casing,buy,4 1/2,3/4,,Oak,,,`;
const STOCK = `${PLAIN.stock}\nOak base,stick,,,16',5,foot,,\nPine base,stick,,,16',1,foot,,\nOak casing,stick,,,16',6,foot,,`;
const MONEY = 'Setting,Value\nhourly rate,60\nend allowance,0\ntax %,10\nprice rounding,dollar';
const HALL: Tables = {
  runs: 'Room,Run,Profile,Length\nHall,north,Base,100\nHall,ceiling,Crown,90',
  profiles: PROFILES,
  stock: STOCK,
  shop: MONEY,
};

/** Of each option: what it costs more, and the tax on it; null where it is in the price. */
function moreOf(plan: JobPlan): (readonly [number, number] | null)[] {
  return plan.options.map(({ more }) =>
    more === undefined ? null : [more.priceCents, more.taxCents],
  );
}

/** The same job as a person would write it without options: rows taken out, other profiles filled in. */
const WALLED: Tables = {
  ...READING_ROOM,
  profiles: `${READING_ROOM.profiles}\nOak base,buy,7,3/4,,Oak,,,\nOak casing,buy,5,3/4,,Oak,,,`,
  stock: `${READING_ROOM.stock}\nOak base,stick,,,16',5,foot,,\nOak casing,stick,,,16',6,foot,,`,
  shop: `${PLAIN.shop}\nmargin %,20\ntax %,7`,
};
const edited = (edit: (text: string) => string, key: keyof typeof READING_ROOM): Tables => ({
  ...WALLED,
  [key]: edit(READING_ROOM[key]),
});

test.each([
  ['a crown as an addition', 'Crown', '', 'trim', (t: string) => t.replace(/\n.*Crown.*/u, '')],
  [
    'casing as an addition',
    'Casing',
    '',
    'openings',
    (t: string) => t.replaceAll('Casing,', ',').replace('Width,Height,,', 'Width,Height,Casing,'),
  ],
] as const)(
  'By hand in the tables: %s of a room of Walls',
  async (_, profile, instead, key, edit) => {
    const [withOption, without, withAll] = await Promise.all([
      planOf({ ...WALLED, options: `${HEAD}\nA,,${profile},,${instead},,` }),
      planOf(edited(edit, key)),
      planOf(WALLED),
    ]);
    expect(withOption.pieces).toEqual(without.pieces);
    expect(withOption.totals).toEqual(without.totals);
    expect(withOption.options[0]!.plan!.pieces).toEqual(withAll.pieces);
    expect(moreOf(withOption)[0]![0]).toBe(withAll.totals.priceCents - without.totals.priceCents);
  },
);

test.each([
  ['a wider base', 'Base', 'Oak base', 'trim'],
  ['a wider casing, which cuts more of the base', 'Casing', 'Oak casing', 'openings'],
] as const)('By hand in the tables: %s in place of another', async (_, profile, instead, key) => {
  const swap = (text: string): string =>
    text
      .replaceAll(new RegExp(`,${profile},`, 'gu'), `,${instead},`)
      .replace(`,Height,${instead},`, `,Height,${profile},`);
  const [withOption, swapped] = await Promise.all([
    planOf({ ...WALLED, options: `${HEAD}\nA,reading room,${profile},,${instead},,` }),
    planOf(edited(swap, key)),
  ]);
  expect(withOption.options[0]!.plan!.pieces).toEqual(swapped.pieces);
  expect(withOption.options[0]!.plan!.totals).toEqual(swapped.totals);
  const { pieces } = await planOf(WALLED);
  expect(withOption.pieces).toEqual(pieces);
});

const ROOMS = ['Hall', 'Den', 'Attic'];
const NAMES = ['Base', 'Casing', 'Crown', 'Cove'];
const jobs = fc.record({
  runs: fc.array(
    fc.record({
      room: fc.constantFrom(...ROOMS),
      profile: fc.constantFrom(...NAMES),
      length: fc.integer({ min: 20, max: 180 }),
    }),
    { minLength: 2, maxLength: 8 },
  ),
  added: fc.record({ room: fc.constantFrom('', 'Hall'), profile: fc.constant('Crown') }),
  changed: fc.record({
    room: fc.constantFrom('', 'Hall'),
    profile: fc.constantFrom('Base', 'Crown'),
  }),
  tax: fc.constantFrom('all', 'material', 'none'),
  rounding: fc.constantFrom('cent', 'dollar', '5'),
  delivery: fc.constantFrom(0, 40),
});

test('By chance: an option costs the difference of two jobs whose rows of Runs were edited, and taking it up brings it', async () => {
  let priced = 0;
  await fc.assert(
    fc.asyncProperty(jobs, async ({ runs, added, changed, tax, rounding, delivery }) => {
      const shop = `${PLAIN.shop}\nmargin %,15\ntax %,8\ntax on,${tax}\nprice rounding,${rounding}\ndelivery,${delivery}`;
      const fits = (one: { room: string; profile: string }, row: typeof one): boolean =>
        (row.room === '' || row.room === one.room) && row.profile === one.profile;
      runs = [
        ...runs,
        { room: 'Hall', profile: 'Base', length: 100 },
        { room: 'Hall', profile: 'Crown', length: 90 },
      ];
      const write = (isAdded: boolean, isChanged: boolean): Tables => ({
        ...{ ...HALL, shop },
        runs: [
          'Room,Run,Profile,Length',
          ...runs.flatMap((one, at) => {
            if (fits(one, added))
              return isAdded ? [`${one.room},r${at},${one.profile},${one.length}`] : [];
            const profile = isChanged && fits(one, changed) ? 'Oak base' : one.profile;
            return [`${one.room},r${at},${profile},${one.length}`];
          }),
        ].join('\n'),
      });
      const options = (taken: string): string =>
        `${HEAD}\nA,${added.room},${added.profile},,,,\nB,${changed.room},${changed.profile},,Oak base,${taken},`;
      const all = { ...write(true, false) };
      const read = readTables({ ...all, options: options('') });
      if (read.job === undefined) {
        expect(read.faults.every(({ code }) => code.startsWith('job.option'))).toBe(true);
        return;
      }
      const { plan } = await planJob(read.job);
      if (plan === undefined) return;
      const [base, withA, withB] = await Promise.all([
        planOf(write(false, false)),
        planOf(write(true, false)),
        planOf(write(false, true)),
      ]);
      const over = ({ totals }: JobPlan): readonly [number, number] => [
        totals.priceCents - base.totals.priceCents,
        totals.taxCents - base.totals.taxCents,
      ];
      expect(plan.totals).toEqual(base.totals);
      expect(moreOf(plan)).toEqual([over(withA), over(withB)]);
      const taken = await planOf({ ...all, options: options('yes') });
      expect(taken.totals.priceCents).toBe(
        plan.totals.priceCents + plan.options[1]!.more!.priceCents,
      );
      expect(checkJobPlan(plan)).toEqual([]);
      priced += 1;
    }),
    { numRuns: count(300, 40) },
  );
  expect(priced).toBeGreaterThan(10);
}, 120_000);
