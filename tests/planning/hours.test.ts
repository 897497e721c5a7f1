/** Hours: what of them is read, what is refused, and the rates that are learned from them. */
import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { readJob } from '../../src/planning/input/read-job.ts';
import { fingerprint } from '../../src/planning/input/fingerprint.ts';
import { planJob } from '../../src/planning/plan-job.ts';
import { homeOfRate } from '../../src/planning/work/home-of-rate.ts';
import { learnFromHours, type LearnedFromHours } from '../../src/planning/work/learn-from-hours.ts';
import { cellsOfLearned } from '../../src/planning/work/learned-rows.ts';
import { count } from '../deep.ts';
import { jobOf, planOf, readTables, tablesOf, type Tables } from './make-job.ts';
import { jobsThatShareStock } from './random-tables.ts';

const HOURS = 'Date,Work,Profile,Hours,Note\n';
const WORK = 'Work,Per,Minutes,Money,For,Ours\n';
/** By hand [D]: two pieces of 60 in and a spare of 36 in of two blanks, 3 + 2 cuts; one set-up. */
const COVES: Tables = {
  runs: 'Room,Profile,Length,Measured as\nHall,Cove,60,finished\nHall,Cove,60,finished',
};

const readHoursOf = (rows: string, more: Tables = COVES) =>
  readTables({ ...more, hours: `${HOURS}${rows}` });
const learnedOf = async (rows: string, more: Tables = COVES): Promise<LearnedFromHours> =>
  learnFromHours([await planOf({ ...more, hours: `${HOURS}${rows}` })]);
/** Minutes for one, by kind. */
const minutesOf = ({ works }: LearnedFromHours): Record<string, number> =>
  Object.fromEntries(works.map(({ row, rate }) => [row.work, rate.rate * 60]));

describe('The table Hours', () => {
  test.each<readonly [typed: string, hours: number]>([
    ['1.5', 1.5],
    ['1.5 h', 1.5],
    ['2 hours', 2],
    ['1:30', 1.5],
    ['0:05', 5 / 60],
    ['1 h 45 min', 1.75],
    ['90 min', 1.5],
    ['37.5 minutes', 0.625],
    ['1200 hrs', 1200],
  ])('reads %s as so many hours', (typed, hours) => {
    const { job, faults } = readHoursOf(`,smooth,,${typed},`);
    expect(faults).toEqual([]);
    expect(job?.hours[0]?.hours).toBeCloseTo(hours, 12);
  });

  test.each<readonly [what: string, row: string, code: string, column: number]>([
    ['none', ',smooth,,,', 'number.unreadable', 4],
    ['nothing done', ',smooth,,0,', 'number.not-positive', 4],
    ['less than nothing', ',smooth,,-2,', 'number.not-positive', 4],
    ['much less than nothing', ',smooth,,-20000,', 'number.not-positive', 4],
    ['a word', ',smooth,,a while,', 'job.hours-unreadable', 4],
    ['more minutes than an hour has', ',smooth,,1:75,', 'job.hours-unreadable', 4],
    ['a length', ',smooth,,3 ft,', 'number.other-unit', 4],
    ['more than a year of work', ',smooth,,24000,', 'number.too-large', 4],
    ['a work that is none', ',smoth,,1,', 'job.hours-work-unknown', 2],
    ['no work', ',,,1,', 'text.missing', 2],
    ['a factor', ',install at height,,1,', 'job.hours-of-factor', 2],
    ['a profile that is none', ',smooth,Covre,1,', 'job.profile-unknown', 3],
    ['a profile for the whole job', ',load and deliver,Cove,1,', 'job.hours-profile-of-job', 3],
    ['no day', '2026-02-30,smooth,,1,', 'day.unreadable', 1],
    ['a day that can be two', '03/04/2026,smooth,,1,', 'day.unreadable', 1],
  ])('refuses %s at its cell', (_, row, code, column) => {
    const { job, faults } = readHoursOf(row);
    expect(job).toBeUndefined();
    expect(faults).toMatchObject([{ code, where: { file: 'hours.csv', line: 2, column } }]);
  });

  test('says what a work and a cell were meant for', () => {
    const [near] = readHoursOf(',smoth,,1,').faults;
    expect(near?.message).toContain('Did you mean smooth?');
    const tables = tablesOf({ ...COVES, hours: `${HOURS},smooth,,1,` }).map((table) =>
      table.name === 'Hours'
        ? {
            ...table,
            rows: [{ line: 2, cells: [null, 'smooth', null, { kind: 'date' }] as const }],
          }
        : table,
    );
    expect(readJob(tables, 'job').faults.map(({ code }) => code)).toEqual(['job.hours-as-time']);
  });

  test('refuses hours of which some may be in others, and a sum below them', () => {
    const mixed = readHoursOf(',smooth,Cove,2,\n,smooth,,5,\n,crosscut,,1,\n,all,,9,').faults;
    expect(mixed.map(({ code, where }) => [code, where])).toEqual([
      ['job.hours-overlap', { file: 'hours.csv', line: 3, column: 2 }],
      ['job.hours-overlap', { file: 'hours.csv', line: 5, column: 2 }],
    ]);
    expect(readHoursOf(',smooth,,2,\n,crosscut,,1,\n,,,3,').faults).toMatchObject([
      { code: 'text.missing' },
    ]);
    expect(readHoursOf(',smooth,,2,\n,total,,3,').job).toBeUndefined();
  });

  test('cautions a row that is there twice, and a day that holds more hours than a day has', () => {
    const twice = readHoursOf(
      '2026-03-02,smooth,,2,\n2026-03-02,smooth,,2,\n2026-03-03,smooth,,2,',
    );
    const ofHours = twice.cautions.filter(({ code }) => code.startsWith('job.hours'));
    expect(ofHours).toMatchObject([{ code: 'job.hours-twice', where: { line: 3, column: 4 } }]);
    const long = readHoursOf('2026-03-02,smooth,,400,');
    expect(long.cautions.map(({ code }) => code)).toContain('job.hours-per-day');
    expect(long.faults).toEqual([]);
    const crew = readHoursOf('2026-03-02,smooth,,16,\n2026-03-02,crosscut,,8,');
    expect(crew.cautions.map(({ code }) => code)).not.toContain('job.hours-per-day');
  });

  test('refuses hours without a job, and a rate of 400 h in Work', () => {
    const none = readHoursOf(',smooth,,2,', { runs: 'Room,Profile,Length' }).faults;
    expect(none.map(({ code }) => code)).toContain('job.hours-without-job');
    const rate = readTables({ ...COVES, work: `${WORK}smooth,,24000,,,` }).faults;
    expect(rate).toMatchObject([{ code: 'number.too-large', where: { line: 2, column: 3 } }]);
  });

  test('changes no plan, no hour and no price, and is no other input of a plan', async () => {
    const hours = `${HOURS},smooth,,90,\n,install,,3,`;
    const [without, beside] = [await planOf(COVES), await planOf({ ...COVES, hours })];
    expect(beside.totals).toEqual(without.totals);
    expect(beside.profiles.map(({ work }) => work.map((line) => line.hours))).toEqual(
      without.profiles.map(({ work }) => work.map((line) => line.hours)),
    );
    expect(fingerprint(tablesOf({ ...COVES, hours }))).toBe(fingerprint(tablesOf(COVES)));
  });

  test('is told where the job has none of the work, where hours are odd, and where runs are Done', async () => {
    const plan = await planOf({
      runs: 'Room,Profile,Length,Done\nHall,Cove,60,\nHall,Cove,60,yes',
      hours: `${HOURS},cope,,2,\n,smooth,,40,`,
    });
    expect(plan.cautions.filter(({ code }) => code.startsWith('job.hours'))).toMatchObject([
      { code: 'job.hours-of-done', given: 1 },
      { code: 'job.hours-of-nothing', given: 2, where: { line: 2, column: 4 } },
      { code: 'job.hours-odd', given: 40, where: { line: 3, column: 4 } },
    ]);
  });
});

describe('Rates learned from a job’s hours', () => {
  test('one work and one job, by hand', async () => {
    // n 1 set-up, h 1 h, s max(1/4, 0.15) = 1/4; r 2/3 h, usual, so t 1/3: in hours
    // (1 / (1/4)² + (2/3) / (1/3)²) / (1 / (1/4)² + 1 / (1/3)²) = (16 + 6) / (16 + 9) = 0.88 [D]
    const { works, hours } = await learnedOf(',set up a cove,,60 min,');
    expect(works).toHaveLength(1);
    const [{ count: many, rate, row }] = works as [LearnedFromHours['works'][number]];
    expect([many, row.work]).toEqual([1, 'set up a cove']);
    expect(rate.old).toBeCloseTo(2 / 3, 12);
    expect(rate.rate).toBeCloseTo(0.88, 12);
    // 1 / sqrt(25) = 0.2 is its spread.
    expect(rate.high - rate.rate).toBeCloseTo(0.2 * 1.28155, 5);
    // 1 h against 0.88 h, over a quarter hour.
    expect(hours[0]?.off).toBeCloseTo(0.48, 12);
  });

  test('of a shop’s own minutes are held more, and of minutes that are 0 go nearly all the way', async () => {
    // Own: t is a quarter of 1 h, s a quarter hour: (16 · 1.6 + 16 · 1) / 32 = 1.3 h [D].
    const work = `${WORK}set up a cove,,60,,,\nsand twice,square foot,0,5,,`;
    const own = await learnedOf(',set up a cove,,1.6,', { ...COVES, work });
    expect(minutesOf(own)['set up a cove']).toBeCloseTo(60 * 1.3, 9);
    // (h n / s² + 0) / (n² / s² + n² / h²) = (h/n) / (1 + s²/h²), s = 0.15 h [D].
    const none = await learnedOf(',sand twice,,4,', { ...COVES, work });
    const [{ count: many }] = none.works as [LearnedFromHours['works'][number]];
    expect(minutesOf(none)['sand twice']).toBeCloseTo(240 / many / 1.0225, 9);
  });

  test('are of the rows that hold for the moldings: those in the price, or where none is, the others', async () => {
    const work = `${WORK}smooth,,9,,Cove,no\nsmooth,,6,,,`;
    const two: Tables = {
      profiles:
        'Profile,Make,Blank width,Blank thickness,Species,Cove width,Cove depth,Class\n' +
        'Cove,cove,4 1/2,1,Poplar,3,1/2,4/4\nSmall,cove,3 1/2,1,Poplar,2,3/8,4/4',
      runs: 'Room,Profile,Length,Measured as\nHall,Cove,60,finished\nHall,Small,60,finished',
      work,
    };
    const all = await learnedOf(',smooth,,2,', two);
    expect(all.works.map(({ row }) => row.minutes)).toEqual([6]);
    const ofCove = await learnedOf(',smooth,Cove,2,', two);
    expect(ofCove.works.map(({ row }) => [row.minutes, row.isOurs])).toEqual([[9, false]]);
    const install = await learnedOf(',install,,2,', two);
    expect(install.works.map(({ row, count: feet }) => [row.work, feet])).toEqual([
      ['install', 10],
    ]);
  });

  test('of all work stand against all that is in the price, and nothing else', async () => {
    const plan = await planOf({ ...COVES, hours: `${HOURS},all,,5,` });
    const { works } = learnFromHours([plan]);
    expect(works.map(({ row }) => row.work)).toEqual(
      plan.profiles.flatMap(({ work }) => work.map(({ row }) => row.work)),
    );
  });

  test('count work by the foot with its factor, as its hours do', async () => {
    const work = `${WORK}install,,3,,,\ninstall at height,,2,,,`;
    const { works } = await learnedOf(',install,,1,', { ...COVES, work });
    expect(works[0]?.count).toBeCloseTo(20, 9);
  });

  test('of several jobs are drawn to the last one’s rates, and grow surer', async () => {
    const plan = (minutes: number, hours: string): Promise<JobPlan> =>
      planOf({ ...COVES, work: `${WORK}set up a cove,,${minutes},,,`, hours: `${HOURS}${hours}` });
    const jobs = [
      await plan(20, ',set up a cove,,1,'),
      await plan(30, ',set up a cove,,1,'),
      await plan(50, ',set up a cove,,1,'),
    ];
    const widths = [jobs.slice(2), jobs.slice(1), jobs].map((some) => {
      const [{ rate }] = learnFromHours(some).works as [LearnedFromHours['works'][number]];
      expect(rate.old).toBeCloseTo(50 / 60, 12);
      return rate.high - rate.low;
    });
    expect(widths[0]!).toBeGreaterThan(widths[1]!);
    expect(widths[1]!).toBeGreaterThan(widths[2]!);
  });

  test('have one place where they are written down: a cell of Work, a row of Shop, or a new row', async () => {
    const said = await planOf({
      ...COVES,
      shop: 'Setting,Value\nhourly rate,60\nend allowance,0\nfeed,5\ncrosscut seconds,45',
      work: `${WORK}smooth,,8,,,`,
      hours: `${HOURS},smooth,,1,\n,feed over the blade,,1,\n,crosscut,,0.25,\n,cope,,1,\n,set up a cove,,1,`,
    });
    const { works } = learnFromHours([said]);
    const homes = works.map(({ row, rate }) => [
      row.work,
      homeOfRate(said.job, row, rate.rate * 60),
    ]);
    expect(Object.fromEntries(homes)).toMatchObject({
      smooth: { kind: 'cell', where: { file: 'work.csv', line: 2, column: 3 } },
      'feed over the blade': { kind: 'setting', setting: 'feed', where: { line: 4 } },
      crosscut: { kind: 'setting', setting: 'crosscutSeconds' },
      'set up a cove': { kind: 'row' },
    });
    // Feet a minute for minutes a foot, seconds for minutes.
    for (const { row, rate } of works) {
      const minutes = rate.rate * 60;
      const home = homeOfRate(said.job, row, minutes);
      if (home.kind !== 'setting') continue;
      const value = home.setting === 'feed' ? 1 / minutes : minutes * 60;
      expect(Math.abs(home.value / value - 1)).toBeLessThan(0.005);
    }
  });

  test('taken over as rows of Work are read as the rates that were shown', async () => {
    const before = await planOf({ ...COVES, hours: `${HOURS},install,,2,\n,set up a cove,,1,` });
    const { works } = learnFromHours([before]);
    const rows = works.map((one) => {
      const cells = cellsOfLearned(one);
      return (['workDone', 'per', 'minutes', 'moneyEach', 'for', 'ours'] as const)
        .map((key) => cells.get(key) ?? '')
        .join(',');
    });
    const after = jobOf({ ...COVES, work: WORK + rows.join('\n') });
    for (const { row, rate } of works) {
      const read = after.work.find(({ work }) => work === row.work);
      expect(read).toMatchObject({ per: row.per, isOurs: row.isOurs });
      expect(Math.abs(read!.minutes / (rate.rate * 60) - 1)).toBeLessThan(0.005);
    }
  });

  test('stay as they are where the hours are those of the rates, and fit by another way of least squares', async () => {
    const sizes = fc.array(fc.double({ min: 0.3, max: 4, noNaN: true }), {
      minLength: 4,
      maxLength: 4,
    });
    await fc.assert(
      fc.asyncProperty(jobsThatShareStock, sizes, async (tables, off) => {
        const { plan: plain } = await planJob(jobOf(tables), { budget: { steps: 0 } });
        fc.pre(plain !== undefined);
        const kinds = ['set up a cove', 'carry round', 'smooth', 'crosscut'];
        const rows = (times: readonly number[]): string =>
          kinds
            .map((kind, at) => {
              const hours = plain.profiles
                .flatMap(({ byPlan }) => byPlan.work)
                .filter(({ row }) => row.work === kind)
                .reduce((sum, line) => sum + line.hours, 0);
              return `,${kind},,${(hours * times[at]!).toFixed(12)},`;
            })
            .join('\n');
        const learn = (times: readonly number[]): LearnedFromHours => {
          const { hours } = jobOf({ ...tables, hours: `${HOURS}${rows(times)}` });
          return learnFromHours([{ ...plain, job: { ...plain.job, hours } }]);
        };
        expect(learnFromHours([plain]).works).toEqual([]);
        for (const { rate } of learn([1, 1, 1, 1]).works) {
          expect(Math.abs(rate.rate / rate.old - 1)).toBeLessThan(1e-7);
        }
        const learned = learn(off);
        expect(learned.works).toHaveLength(4);
        // Each kind stands alone here: its rate goes down the slope of its own miss until it is level.
        const counts = plain.profiles.map(({ byPlan }) => byPlan.counts);
        for (const { row, rate } of learned.works) {
          const per = row.per as 'pass';
          const n = counts.reduce((sum, one) => sum + one[per], 0);
          const spent = learned.hours.find(({ work }) => work === row.work)!.hours;
          const s = Math.max(0.25, 0.15 * spent);
          const t = rate.old / 2;
          let [low, high] = [0, 20 * rate.old];
          for (let step = 0; step < 200; step++) {
            const middle = (low + high) / 2;
            const slope = (-n * (spent - n * middle)) / s ** 2 + (middle - rate.old) / t ** 2;
            if (slope > 0) high = middle;
            else low = middle;
          }
          expect(Math.abs(rate.rate / low - 1)).toBeLessThan(1e-6);
        }
      }),
      { numRuns: count(100) },
    );
  });
});
