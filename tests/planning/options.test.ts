/** Options: what may be added or made otherwise, each at a price of its own. */
import { describe, expect, test } from '@jest/globals';
import { checkJobPlan } from '../../src/planning/check-job-plan.ts';
import { fingerprint } from '../../src/planning/input/fingerprint.ts';
import { judgeJob } from '../../src/planning/judge-job.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { keepPlan } from '../../src/planning/kept/keep-plan.ts';
import { readKeptPlan } from '../../src/planning/kept/read-kept-plan.ts';
import { planJob } from '../../src/planning/plan-job.ts';
import { planToJson } from '../../src/planning/plan-json.ts';
import { jobOf, PLAIN, planOf, readTables, tablesOf, type Tables } from './make-job.ts';

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

describe('An option', () => {
  // By hand [D]. Base: a stick of 16 ft at 2.00 is 32.00, two crosscuts of 45 s at 60.00 an hour are 1.50:
  // 33.50, up to 34.00, and 3.40 tax. With the crown (64.00 and 1.50) 99.00 and 9.90: 65.00 and 6.50 more.
  // Oak base (80.00 and 1.50) is 81.50, up to 82.00, and 8.20; pine base (16.00 and 1.50) 18.00 and 1.80.
  test('costs what the job with it comes to more than the job without it, rounded as prices are', async () => {
    const plan = await planOf({
      ...HALL,
      options: `${HEAD}\nA,Hall,Crown,,,,By June\nB1,,Base,,oak  BASE,,\nB2,,,poplar,Pine base,no,`,
    }).catch((error: unknown) => String(error));
    // Poplar are base and crown: which one the pine stands for must be said.
    expect(plan).toContain('Name under Profile which one it is for');
    const sound = await planOf({
      ...HALL,
      options: `${HEAD}\nA,Hall,Crown,,,,By June\nB1,,Base,,oak  BASE,,\nB2,,Base,poplar,Pine base,no,`,
    });
    expect([sound.totals.priceCents, sound.totals.taxCents]).toEqual([3400, 340]);
    expect(moreOf(sound)).toEqual([
      [6500, 650],
      [4800, 480],
      [-1600, -160],
    ]);
    expect(sound.pieces.map(({ profile }) => profile)).toEqual(['Base']);
    expect(sound.options[1]!.plan!.pieces.map(({ profile }) => profile)).toEqual(['Oak base']);
    expect(checkJobPlan(sound)).toEqual([]);
    expect(planToJson(sound).options[0]).toMatchObject({
      ...{ option: 'A', note: 'By June', taken: false, price: 65, tax: 6.5 },
      changes: [{ room: 'Hall', profile: 'Crown', instead: null }],
    });
  });

  test('that is taken up is in the price, and the others are priced with it', async () => {
    const plan = await planOf({
      ...HALL,
      options: `${HEAD}\nA,Hall,Crown,,,yes,\nB1,,Base,,Oak base,,\nB2,,Base,,Pine base,yes,`,
    });
    // 65.50 and 17.50 are 83.00; with oak in place of the pine 147.00.
    expect(plan.totals.priceCents).toBe(8300);
    expect(moreOf(plan)).toEqual([null, [6400, 640], null]);
    expect(checkJobPlan(plan)).toEqual([]);
  });

  test('shows only what comes on the minimum charge, and brings no second delivery', async () => {
    const plan = await planOf({
      ...HALL,
      shop: `${MONEY}\nminimum charge,90\ndelivery,20`,
      options: `${HEAD}\nA,,Crown,,,,`,
    });
    // 33.50 up to 90.00, and 20.00: 110.00; with the crown 99.00 and 20.00.
    expect(plan.totals.priceCents).toBe(11_000);
    expect(moreOf(plan)[0]![0]).toBe(900);
  });

  test('leaves what is done as it is, and asks for what isn’t', async () => {
    const plan = await planOf({
      ...HALL,
      runs: 'Room,Run,Profile,Length,Done\nHall,north,Base,100,\nHall,ceiling,Crown,90,yes\nHall,over stair,Crown,80,',
      options: `${HEAD}\nA,Hall,Crown,,,,`,
    });
    expect(plan.pieces.map(({ id, done }) => [id, done])).toEqual([
      ['Hall / north / 1', false],
      ['Hall / ceiling / 1', true],
    ]);
    expect(plan.options[0]!.plan!.pieces).toHaveLength(3);
  });
});

describe('What Options can’t mean is refused at its cell', () => {
  const cases = [
    ['A,Hal,Crown,,,,', 'job.option-room-unknown', 'B2', 'Did you mean Hall?'],
    ['A,,Crowm,,,,', 'job.profile-unknown', 'C2', 'Crowm'],
    ['A,,Crown,,Crwn,,', 'job.profile-unknown', 'E2', 'Crwn'],
    ['A,,,maple,,,', 'job.option-species-unknown', 'D2', 'maple'],
    ['A,Hall,Casing,,,,', 'job.option-picks-none', 'A2', 'in Hall and of Casing'],
    ['A,,Base,,Base,,', 'job.option-instead-same', 'E2', 'Base'],
    ['A,Hall,,,Oak base,,', 'job.option-instead-several', 'E2', 'Base, Crown'],
    ['A,Hall,Base,,Oak base,,\nA,,Base,,,,', 'job.option-mixes', 'A3', 'Base in Hall'],
    ['A,,Crown,,,,\nB,Hall,Crown,,,,', 'job.option-two-additions', 'A3', 'addition of A'],
    ['A,,Crown,,,,\nB,Hall,Crown,,Oak base,,', 'job.option-of-addition', 'A3', 'Take A up'],
    [
      'A,,Base,,Oak base,yes,\nB,,Base,,Pine base,yes,',
      'job.option-two-taken',
      'A3',
      'Take up one',
    ],
    [
      'A,,Base,,Oak base,yes,\nA,,Crown,,Oak base,no,',
      'job.option-taken-differs',
      'F3',
      'as a whole',
    ],
    ['A,,,,,,', 'job.options-all', 'A2', 'Write yes under Taken'],
    ['A,,Base,,,maybe,', 'word.unknown', 'F2', 'yes'],
    [',,Base,,,,', 'text.missing', 'A2', 'Option'],
    [`${'x'.repeat(61)},,Base,,,,`, 'text.too-long', 'A2', '60'],
    [
      Array.from({ length: 21 }, (_, at) => `A${at},,Base,,Oak base,,`).join('\n'),
      'job.options-too-many',
      'A22',
      '20',
    ],
  ] as const;

  test.each(cases)('%s', (rows, code, cell, says) => {
    const { job, faults } = readTables({ ...HALL, options: `${HEAD}\n${rows}` });
    expect(job).toBeUndefined();
    expect(faults.map((one) => one.code)).toEqual([code]);
    const [one] = faults;
    expect(one!.message).toContain(says);
    const column = cell.charCodeAt(0) - 64;
    expect(one!.where).toEqual({ file: 'options.csv', line: Number(cell.slice(1)), column });
  });

  test('and says nothing of rooms and runs that could not be read', () => {
    const { faults } = readTables({
      ...HALL,
      runs: 'Room,Run,Profile,Length\nHall,north,Base,100\nDen,ceiling,Crown,ninety',
      options: `${HEAD}\nA,Den,Crown,,,,`,
    });
    expect(faults.map(({ code }) => code)).toEqual(['length.unreadable']);
  });

  test('and what can’t be made with it taken up is said where it stands, and at the option', async () => {
    const tables = {
      ...HALL,
      stock: STOCK.replace(/\nOak base.*/u, ''),
      options: `${HEAD}\nA,,Base,,Oak base,,`,
    };
    const read = readTables(tables);
    const told = judgeJob(read).faults.map(({ code }) => code);
    expect(told).toEqual(['job.no-stock', 'job.option-at-fault']);
    const { plan, faults } = await planJob(jobOf(tables));
    expect(plan).toBeUndefined();
    expect(faults.map(({ code }) => code)).toEqual(told);
    expect(faults[1]!.where).toEqual({ file: 'options.csv', line: 2, column: 1 });
    expect(faults[1]!.message).toContain('Oak base');
  });

  test('and a caution that comes with it is said of it alone', async () => {
    // As long as its stick, which loses its end trims: a part of a joint is short.
    const long = { ...HALL, runs: HALL.runs!.replace('Crown,90', 'Crown,192') };
    const codes = (of: JobPlan): string[] => of.cautions.map(({ code }) => code);
    const plain = await planOf(long);
    const [option, without] = await Promise.all([
      planOf({ ...long, options: `${HEAD}\nA,,Crown,,,,` }),
      planOf({ ...long, runs: HALL.runs!.split('\n').slice(0, 2).join('\n') }),
    ]);
    expect(codes(plain)).toContain('job.trim-spoils-fit');
    expect(codes(option)).toEqual([...codes(without), 'job.option-caution']);
    expect(option.cautions.at(-1)!.message).toContain('Crown');
  });
});

test('A kept plan has its options again, at the very prices', async () => {
  const tables: Tables = { ...HALL, options: `${HEAD}\nA,,Crown,,,,\nB,,Base,,Oak base,,x` };
  const plan = await planOf(tables);
  const raw = tablesOf(tables);
  const made = { day: '2026-11-30', effort: { steps: 3 } };
  const text = keepPlan({ plan, fingerprint: fingerprint(raw), tables: raw, ...made }, '1');
  const read = await readKeptPlan(text, '1');
  if (!read.ok) throw new Error(read.faults[0]!.message);
  expect(planToJson(read.value.plan)).toEqual(planToJson(plan));
  expect(moreOf(read.value.plan)).toEqual(moreOf(plan));
});

test('Sticks that no option changes are planned once', async () => {
  const problems: string[] = [];
  const { planSticks } = await import('../../src/cutting/plan-sticks.ts');
  await planOf(
    { ...HALL, options: `${HEAD}\nA,,Crown,,,,\nB,,Base,,Oak base,,` },
    {
      planSticks: (problem, options) => {
        problems.push(problem.profiles![0]!.id);
        return planSticks(problem, options);
      },
    },
  );
  expect(problems).toEqual(['Base', 'Crown', 'Oak base']);
});

test('What is cut already stays cut with an option, and is paid for once', async () => {
  const { cutFromPlan } = await import('../../src/planning/cut/cut-from-plan.ts');
  const { NO_TICKS } = await import('../../src/planning/cut/cut-already.ts');
  const tables: Tables = { ...HALL, options: `${HEAD}\nA,,Crown,,,,\nB,,Base,,Oak base,,` };
  const first = await planOf(tables);
  const sticks = new Set(first.profiles.flatMap((one) => one.sticks.map(({ id }) => id)));
  const cut = cutFromPlan(first, { ...NO_TICKS, sticks });
  const next = await planOf(tables, { cut, earlier: first });
  expect(next.totals.priceCents).toBe(first.totals.priceCents);
  expect(moreOf(next)).toEqual([moreOf(first)[0]]);
  // The base is cut: were it of oak, all of it would be left over.
  const said = next.cautions.find(({ code }) => code === 'job.option-cut');
  expect(said).toMatchObject({ given: 'B', where: { line: 3, column: 1 } });
  expect(checkJobPlan(next)).toEqual([]);
});
