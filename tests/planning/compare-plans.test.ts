import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { comparePlans, ticksOf } from '../../src/planning/compare/compare-plans.ts';
import type { Comparison } from '../../src/planning/compare/comparison.ts';
import { cutFromPlan, markCut } from '../../src/planning/cut/cut-from-plan.ts';
import { cutKey, NO_TICKS } from '../../src/planning/cut/cut-already.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { planJob } from '../../src/planning/plan-job.ts';
import { count } from '../deep.ts';
import { jobOf, PLAIN, planOf } from './make-job.ts';

const runs = (...rows: readonly string[]): string =>
  ['Room,Run,Profile,Length,Quantity,Left end,One piece,Match,Done', ...rows].join('\n');

const jobByChance = fc
  .record({
    rows: fc.array(
      fc.record({
        room: fc.constantFrom('Hall', 'Den', 'DEN'),
        run: fc.constantFrom('north', 'east', 'North'),
        profile: fc.constantFrom('Base', 'Cove', 'Crown'),
        length: fc.integer({ min: 20, max: 180 }),
        quantity: fc.integer({ min: 1, max: 3 }),
        left: fc.constantFrom('square', 'inside miter', 'outside miter', 'return'),
        done: fc.constantFrom('', '', '', 'yes'),
      }),
      { minLength: 1, maxLength: 8 },
    ),
    rate: fc.constantFrom(0, 45, 61.37),
    tax: fc.constantFrom(0, 8.875),
    depth: fc.constantFrom('1/2', '3/8'),
  })
  .map(({ rows, rate, tax, depth }) => ({
    runs: runs(
      ...rows.map(
        ({ room, run, profile, length, quantity, left, done }) =>
          `${room},${run},${profile},${length},${quantity},${left},,,${done}`,
      ),
    ),
    profiles: PLAIN.profiles.replace(',3,1/2,', `,3,${depth},`),
    shop: `Setting,Value\nhourly rate,${rate}\ntax %,${tax}\nmargin %,12.5\noverhead %,7`,
  }));

const QUICK = { budget: { steps: 1 } };
const CASES = count(150, 25);

/** What is told of a comparison whichever way it is looked at. */
function mirrored({ added, gone, changed, same, lines, profiles, totals, openCents }: Comparison) {
  const turned = (list: readonly { before?: unknown; after?: unknown }[]) =>
    list.map(({ before, after, ...rest }) => said({ ...rest, before: after, after: before }));
  return {
    added: turned(gone).sort(),
    gone: turned(added).sort(),
    changed: turned(changed).sort(),
    same,
    lines: turned(lines).sort(),
    profiles: turned(profiles).sort(),
    totals: said({ before: totals.after, after: totals.before }),
    open: said({ before: openCents.after, after: openCents.before }),
  };
}

/** In one order of its fields; a name is as either plan writes it. */
function said(thing: unknown): string {
  return JSON.stringify(thing, (_, value: unknown) =>
    typeof value === 'object' && value !== null && !Array.isArray(value) && !('toFraction' in value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : typeof value === 'string'
        ? value.toLowerCase()
        : typeof value === 'bigint'
          ? String(value)
          : value,
  );
}

function asTold({ added, gone, changed, same, lines, profiles, totals, openCents }: Comparison) {
  const each = (list: readonly unknown[]) => list.map(said).sort();
  return {
    added: each(added),
    gone: each(gone),
    changed: each(changed),
    same,
    lines: each(lines),
    profiles: each(profiles),
    totals: said(totals),
    open: said(openCents),
  };
}

describe('Two plans against each other', () => {
  test('a plan differs in nothing from itself', async () => {
    await fc.assert(
      fc.asyncProperty(jobByChance, async (tables) => {
        const plan = await planOf(tables, QUICK);
        const { added, gone, changed, lines, profiles, totals } = comparePlans(plan, plan);
        expect([added, gone, changed]).toEqual([[], [], []]);
        for (const { before, after } of [...lines, ...profiles, totals]) {
          expect(after).toEqual(before);
        }
        expect(profiles.some(({ isMadeOtherwise }) => isMadeOtherwise)).toBe(false);
      }),
      { numRuns: CASES },
    );
  });

  test('from after to before is the mirror of from before to after', async () => {
    await fc.assert(
      fc.asyncProperty(jobByChance, jobByChance, async (one, other) => {
        const [before, after] = [await planOf(one, QUICK), await planOf(other, QUICK)];
        expect(asTold(comparePlans(after, before))).toEqual(mirrored(comparePlans(before, after)));
      }),
      { numRuns: CASES },
    );
  });

  test('differences of runs, lines and profiles add up to those of the totals, money to the cent', async () => {
    await fc.assert(
      fc.asyncProperty(jobByChance, jobByChance, async (one, other) => {
        const [before, after] = [await planOf(one, QUICK), await planOf(other, QUICK)];
        const { lines, profiles, totals, ...told } = comparePlans(before, after);
        const { added, gone, changed, same } = told;
        const more = (list: readonly { before?: Priced; after?: Priced }[]): number =>
          list.reduce(
            (sum, { before: was, after: is }) =>
              sum + (is?.priceCents ?? 0) - (was?.priceCents ?? 0),
            0,
          );
        const due = totals.after.priceCents - totals.before.priceCents;
        expect([more(lines), more(profiles)]).toEqual([due, due]);
        expect(due).toBe(after.totals.priceCents - before.totals.priceCents);
        const cost = profiles.reduce(
          (sum, pair) => sum + (pair.after?.costCents ?? 0) - (pair.before?.costCents ?? 0),
          0,
        );
        expect(cost).toBe(totals.after.costCents - totals.before.costCents);
        // Pieces of a run are planned or done: together they are all that the totals have.
        const pieces = [...added, ...gone, ...changed].reduce(
          (sum, { before: was, after: is }) => sum + (is?.pieces ?? 0) - (was?.pieces ?? 0),
          0,
        );
        const all = ({ pieces: cut, done }: JobPlan['totals']): number => cut + done;
        expect(pieces).toBe(all(after.totals) - all(before.totals));
        const keys = ({ pieces: listed }: JobPlan) =>
          new Set(
            listed.map(({ room, run, profile }) => `${room}|${run}|${profile}`.toLowerCase()),
          );
        expect(gone.length + changed.length + same).toBe(keys(before).size);
        expect(added.length + changed.length + same).toBe(keys(after).size);
      }),
      { numRuns: CASES },
    );
  });

  interface Priced {
    readonly priceCents: number;
  }

  test('a run is told by what of it is otherwise', async () => {
    const rows = {
      stays: 'Hall,stays,Base,40,1,,,,',
      longer: 'Hall,longer,Base,40,1,,,,',
      more: 'Hall,more,Base,41,1,,,,',
      mitered: 'Hall,mitered,Base,42,1,,,,',
      done: 'Hall,done,Base,43,1,,,,',
      whole: 'Hall,whole,Base,44,1,,,,',
      matched: 'Hall,matched,Base,45,1,,,,',
      gone: 'Hall,gone,Base,46,1,,,,',
    };
    const before = await planOf({ runs: runs(...Object.values(rows)) });
    const now = {
      stays: rows.stays,
      longer: 'Hall,Longer,Base,50,1,,,,',
      more: 'Hall,more,Base,41,2,,,,',
      mitered: 'Hall,mitered,Base,42,1,inside miter,,,',
      done: 'Hall,done,Base,43,1,,,,yes',
      whole: 'Hall,whole,Base,44,1,,yes,,',
      matched: 'Hall,matched,Base,45,1,,,grain,',
      new: 'Hall,new,Cove,46,1,,,,',
    };
    const told = comparePlans(before, await planOf({ runs: runs(...Object.values(now)) }));
    expect(told.changed.map(({ run, differs }) => [run, differs])).toEqual([
      ['longer', ['lengths']],
      ['more', ['pieces']],
      ['mitered', ['ends']],
      ['done', ['done']],
      ['whole', ['one piece']],
      ['matched', ['match']],
    ]);
    expect([told.added, told.gone].map(([one]) => one!.run)).toEqual(['new', 'gone']);
    expect(told.same).toBe(1);
    expect(told.lines.map(({ profile, before: was }) => [profile, was?.pieces])).toEqual([
      ['Base', 8],
      ['Cove', undefined],
    ]);
  });

  test('what is cut is told by whether the job still asks for it, and what is spent stays in the price', async () => {
    const rows = ['Hall,a,Base,100,1,,,,', 'Hall,b,Base,90,1,,,,', 'Hall,c,Base,80,1,,,,yes'];
    const plan = await planOf({ runs: runs(...rows) });
    const [stick] = plan.profiles[0]!.sticks;
    const [first] = stick!.pieces;
    const ticks = { ...NO_TICKS, cuts: new Set([cutKey(stick!.id, 1)]) };
    const before = markCut(plan, ticks);
    expect(ticksOf(before)).toEqual(ticks);
    const without = rows.filter((row) => !row.includes(`,${first!.piece!.run},`));
    const job = jobOf({ runs: runs(...without.map((row) => row.replace(',80,', ',81,'))) });
    const cut = cutFromPlan(before, ticksOf(before));
    const after = (await planJob(job, { cut, earlier: before })).plan!;
    const told = comparePlans(before, after);
    expect(told.cut.map(({ id, need, stick: from }) => [id, need, from])).toEqual([
      [first!.id, 'gone', stick!.id],
      ['Hall / c / 1', 'changed', undefined],
    ]);
    expect(told.sticksBegun).toBe(1);
    // The stick of the piece that nobody wants any more is paid for.
    const bare = (await planJob(job)).plan!;
    expect(told.totals.after.sticks).toBeGreaterThanOrEqual(bare.totals.sticks);
    expect(after.profiles[0]!.sticks.some(({ isCut }) => isCut)).toBe(true);
  });

  test('a cove cut to another depth is made otherwise, though its runs are as they were', async () => {
    const tables = { runs: runs('Hall,a,Cove,60,1,,,,') };
    const deeper = PLAIN.profiles.replace(',3,1/2,', ',3,3/8,');
    const told = comparePlans(await planOf(tables), await planOf({ ...tables, profiles: deeper }));
    expect([told.same, told.profiles.map(({ isMadeOtherwise }) => isMadeOtherwise)]).toEqual([
      1,
      [true],
    ]);
  });
});
