import { describe, expect, test } from '@jest/globals';
import { checkJobPlan } from '../../src/planning/check-job-plan.ts';
import type { CuttingGroup, JobPlan } from '../../src/planning/job-plan.ts';
import type { RippedStrip } from '../../src/planning/opened-stock.ts';
import { DEMO_FOLDER, folderTables, planOf } from './make-job.ts';
import { planMixed, withCredit } from './shared-boards.ts';

describe('the independent check of a plan', () => {
  type Damage = (plan: JobPlan) => JobPlan;
  const withSticks = (
    plan: JobPlan,
    change: (
      sticks: JobPlan['profiles'][number]['sticks'],
    ) => JobPlan['profiles'][number]['sticks'],
  ): JobPlan => ({
    ...plan,
    profiles: plan.profiles.map((one, index) =>
      index === 0 ? { ...one, sticks: change(one.sticks) } : one,
    ),
  });
  const damages: readonly (readonly [string, Damage])[] = [
    [
      'a piece left out',
      (plan) =>
        withSticks(plan, ([first, ...rest]) => [
          { ...first!, pieces: first!.pieces.slice(1) },
          ...rest,
        ]),
    ],
    [
      'a piece cut twice',
      (plan) =>
        withSticks(plan, ([first, ...rest]) => [
          { ...first!, pieces: [...first!.pieces, first!.pieces[0]!] },
          ...rest,
        ]),
    ],
    ['a cut-away left out', (plan) => ({ ...plan, cutAways: plan.cutAways.slice(1) })],
    [
      'a cut-away of a run that is not there',
      (plan) => ({
        ...plan,
        cutAways: [...plan.cutAways, { ...plan.cutAways[0]!, run: 'no wall' }],
      }),
    ],
    [
      'a run longer than its pieces',
      (plan) => ({
        ...plan,
        job: {
          ...plan.job,
          runs: plan.job.runs.map((run, at) =>
            at === 0 ? { ...run, length: run.length.add(1) } : run,
          ),
        },
      }),
    ],
    ['a stick left out', (plan) => withSticks(plan, (sticks) => sticks.slice(1))],
    [
      'a blank used twice',
      (plan) =>
        withSticks(plan, (sticks) => [
          ...sticks.slice(0, -1),
          {
            ...sticks.at(-1)!,
            unit: sticks[0]!.unit,
            strip: sticks[0]!.strip,
            item: sticks[0]!.item,
          },
        ]),
    ],
    [
      'an offcut that is not there',
      (plan) =>
        withSticks(plan, ([first, ...rest]) => [
          { ...first!, offcut: first!.offcut.add(1) },
          ...rest,
        ]),
    ],
    [
      'a stick too short',
      (plan) =>
        withSticks(plan, ([first, ...rest]) => [
          { ...first!, length: first!.length.div(4) },
          ...rest,
        ]),
    ],
    [
      'a done piece planned',
      (plan) => ({
        ...plan,
        pieces: plan.pieces.map((piece, index) => (index === 8 ? { ...piece, done: true } : piece)),
      }),
    ],
    [
      'a total that lies',
      (plan) => ({ ...plan, totals: { ...plan.totals, sticks: plan.totals.sticks + 1 } }),
    ],
    [
      'a price that lies',
      (plan) => ({ ...plan, totals: { ...plan.totals, priceCents: plan.totals.priceCents + 1 } }),
    ],
    ...(['count', 'hours', 'factor', 'money'] as const).map((part): readonly [string, Damage] => [
      `a line of work that lies, ${part}`,
      (plan) => ({
        ...plan,
        profiles: plan.profiles.map((one, at) => {
          const [first, ...rest] = one.work;
          return at > 0
            ? one
            : { ...one, work: [{ ...first!, [part]: first![part] + 1 }, ...rest] };
        }),
      }),
    ]),
    [
      'a work left out',
      (plan) => ({
        ...plan,
        profiles: plan.profiles.map((one) => ({ ...one, work: one.work.slice(1) })),
      }),
    ],
    ...(['laborCents', 'overheadCents', 'contingencyCents', 'markupCents'] as const).map(
      (line): readonly [string, Damage] => [
        `a line of money that lies, ${line}`,
        (plan) => ({
          ...plan,
          profiles: plan.profiles.map((one, at) =>
            at > 0 ? one : { ...one, money: { ...one.money, [line]: one.money[line] + 1 } },
          ),
        }),
      ],
    ),
    ...(
      [
        'toMinimumCents',
        'deliveryCents',
        'roundingCents',
        'taxableCents',
        'taxCents',
        'costCents',
      ] as const
    ).map((part): readonly [string, Damage] => [
      `a part of the price that lies, ${part}`,
      (plan) => ({ ...plan, totals: { ...plan.totals, [part]: plan.totals[part] + 1 } }),
    ]),
    [
      'a room that pays too much',
      (plan) => ({
        ...plan,
        rooms: plan.rooms.map((line, index) =>
          index === 0 ? { ...line, priceCents: line.priceCents + 1 } : line,
        ),
      }),
    ],
    ['two pieces of one id', (plan) => ({ ...plan, pieces: [...plan.pieces, plan.pieces[0]!] })],
    [
      'lumber that lies',
      (plan) => ({
        ...plan,
        profiles: plan.profiles.map((one) => ({
          ...one,
          byPlan: {
            ...one.byPlan,
            money: { ...one.byPlan.money, lumberCents: one.byPlan.money.lumberCents - 1 },
          },
        })),
      }),
    ],
    [
      'a cost under its bound',
      (plan) => ({
        ...plan,
        groups: plan.groups.map((one) => ({
          ...one,
          answer: { ...one.answer, bound: { ...one.answer.bound, costCents: 1e9 } },
        })),
      }),
    ],
    [
      'an off-precision length',
      (plan) => ({
        ...plan,
        pieces: plan.pieces.map((piece, index) =>
          index === 0 ? { ...piece, cutLength: piece.cutLength.add(1, 100) } : piece,
        ),
      }),
    ],
  ];

  test.each(damages)('finds %s', async (_, damage) => {
    const plan = await planOf(folderTables(DEMO_FOLDER));
    expect(checkJobPlan(damage(plan)).length).toBeGreaterThan(0);
  });
});

/** A board of 8 in with a blank of 4 1/2 for Wide and one of 3 for Narrow, an offcut of each credited. */
describe('the independent check of a board that two profiles share', () => {
  type Damage = (plan: JobPlan) => JobPlan;
  const withGroup =
    (change: (group: CuttingGroup) => Partial<CuttingGroup>): Damage =>
    (plan) => ({ ...plan, groups: plan.groups.map((one) => ({ ...one, ...change(one) })) });
  const withStrips = (change: (strips: readonly RippedStrip[]) => readonly RippedStrip[]): Damage =>
    withGroup(({ boards }) => ({
      boards: boards.map((board) => ({ ...board, strips: change(board.strips) })),
    }));
  const withUse = (change: Partial<CuttingGroup['stockUse'][number]>): Damage =>
    withGroup(({ stockUse }) => ({ stockUse: stockUse.map((use) => ({ ...use, ...change })) }));
  /** Moves cents of one line from the second profile to the first. */
  const withCents =
    (key: 'lumberCents' | 'offcutCreditCents', first: number, second: number): Damage =>
    (plan) => ({
      ...plan,
      profiles: plan.profiles.map((one, at) => {
        const more = at === 0 ? first : second;
        const money = { ...one.byPlan.money, [key]: one.byPlan.money[key] + more };
        return { ...one, byPlan: { ...one.byPlan, money } };
      }),
    });
  const damages: readonly (readonly [said: string, Damage, RegExp])[] = [
    [
      'blanks wider together than the board',
      withStrips(([wide, narrow]) => [wide!, wide!, narrow!]),
      /too narrow for its blanks/u,
    ],
    [
      'a blank of another width than its profile’s',
      withStrips(([wide, narrow]) => [wide!, { ...narrow!, width: narrow!.width.sub(1) }]),
      /not as wide as Narrow asks/u,
    ],
    [
      'blanks given to each other’s profile',
      withStrips(([wide, narrow]) => [
        { ...wide!, profile: 'Narrow' },
        { ...narrow!, profile: 'Wide' },
      ]),
      /is not a blank of its board/u,
    ],
    [
      'a blank that is said to be kept and is cut',
      withStrips(([wide, narrow]) => [wide!, { width: narrow!.width }]),
      /is not a blank of its board/u,
    ],
    ['a board that is not ripped', withGroup(() => ({ boards: [] })), /board that is not opened/u],
    [
      'a board that is ripped twice',
      withGroup(({ boards }) => ({ boards: [...boards, ...boards] })),
      /opens a board twice/u,
    ],
    [
      'a bought board marked as from the rack',
      withGroup(({ boards }) => ({ boards: boards.map((one) => ({ ...one, fromRack: true })) })),
      /not from the rack or bought as it says/u,
    ],
    ['a board more than is cut', withUse({ bought: 2 }), /another count of a stock row/u],
    ['blanks left over that are not', withUse({ unusedBlanks: 1 }), /other blanks left over/u],
    ['a row of stock left out', withGroup(() => ({ stockUse: [] })), /leaves out a stock row/u],
    [
      'a price that lies',
      withUse({ priceCents: 1 }),
      /The lumber of Wide, Narrow does not add up/u,
    ],
    ['a share too many', withCents('lumberCents', 1, 0), /shares of lumber .* do not add up/u],
    [
      'lumber shared by another rule',
      withCents('lumberCents', -400, 400),
      /does not pay for lumber by the strips/u,
    ],
    [
      'credit given to another profile',
      withCents('offcutCreditCents', 100, -100),
      /is not what its kept offcuts are worth/u,
    ],
    [
      'credit that the plan does not have',
      withGroup(() => ({ offcutCreditCents: 446 })),
      /offcut credit of Wide, Narrow does not add up/u,
    ],
    [
      'board feet that lie',
      withGroup(() => ({ boardFeetBought: 3 })),
      /board feet of Wide, Narrow do not add up/u,
    ],
    [
      'more board feet used than bought',
      withGroup(() => ({ boardFeetUsed: 7 })),
      /board feet of Wide, Narrow do not add up/u,
    ],
    ['a profile in no group', (plan) => ({ ...plan, groups: [] }), /Wide is in 0 groups/u],
    [
      'a profile in two groups',
      (plan) => ({ ...plan, groups: [...plan.groups, ...plan.groups] }),
      /Wide is in 2 groups/u,
    ],
  ];

  test('finds nothing wrong with a sound one', async () => {
    expect(checkJobPlan(await planMixed(withCredit))).toEqual([]);
  });

  test.each(damages)('finds %s', async (_, damage, said) => {
    const wrong = checkJobPlan(damage(await planMixed(withCredit)));
    expect(wrong.filter((one) => said.test(one)).length).toBeGreaterThan(0);
  });
});
