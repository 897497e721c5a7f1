import { describe, expect, test } from '@jest/globals';
import { checkJobPlan } from '../../src/planning/check-job-plan.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { DEMO_FOLDER, folderTables, planOf } from './make-job.ts';

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
          money: { ...one.money, lumberCents: one.money.lumberCents - 1 },
        })),
      }),
    ],
    [
      'a cost under its bound',
      (plan) => ({
        ...plan,
        profiles: plan.profiles.map((one) => ({
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
