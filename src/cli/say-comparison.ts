/** Two plans against each other, in words: runs, profiles, what it comes to, what is cut already. */
import { formatFixed } from '../core/units/format-number.ts';
import { sayMoney } from '../core/units/say-money.ts';
import type { Comparison, Pair } from '../planning/compare/comparison.ts';
import type { JobPlan } from '../planning/job-plan.ts';
import type { ComparedPlans } from '../sheets/changes/changes-sheet.ts';
import {
  listLost,
  listOtherwise,
  NOTHING_OTHERWISE,
  sayCounts,
  sayCut,
  sayNeed,
  sayOpen,
  sayProfile,
  sayWhat,
} from '../sheets/changes/changes-words.ts';
import { printTotal } from '../sheets/words/print-length.ts';
import { MANUAL_CAUTION } from '../sheets/words/standing-cautions.ts';
import type { Paragraph } from './report.ts';
import { drawTable } from './text-table.ts';

const RUNS = [
  { heading: 'Run' },
  { heading: 'Profile' },
  { heading: 'What' },
  { heading: 'Pieces', align: 'right' },
  { heading: 'Length', align: 'right' },
] as const;
const PROFILES = [
  { heading: 'Profile' },
  { heading: 'Pieces', align: 'right' },
  { heading: 'Hours', align: 'right' },
  { heading: 'Price', align: 'right' },
  { heading: 'Difference', align: 'right' },
] as const;

/** @param plan The one after: lengths and money are said as its shop has them. */
export function sayComparison(
  comparison: Comparison,
  plans: ComparedPlans,
  plan: JobPlan,
): Paragraph[] {
  const { shop } = plan.job;
  const say = (cents: number): string => sayMoney(cents, shop.currency, shop.decimalSign);
  const signed = (cents: number): string => `${cents > 0 ? '+' : ''}${say(cents)}`;
  const hours = (value: number): string => formatFixed(value, 1, shop.decimalSign);
  const runs = listOtherwise(comparison);
  const { before, after } = comparison.totals;
  const lost = listLost(comparison).map(
    (one) =>
      `  ${one.id}, ${one.profile}, ${printTotal(one.length, shop)}${one.stick === undefined ? '' : `, from ${one.stick}`}: ${sayNeed(one)}`,
  );
  const cut = sayCut(comparison);
  const open = sayOpen(comparison, say);
  const money = (what: string, from: number, to: number): string =>
    `  ${what} ${arrow(say(from), say(to))}, ${signed(to - from)}`;
  return [
    [`Before: ${plans.before}`, `After: ${plans.after}`],
    sayCounts(comparison),
    runs.length === 0
      ? NOTHING_OTHERWISE
      : drawTable(
          RUNS,
          runs.map((one) => [
            `${one.room} / ${one.run}`,
            one.profile,
            [sayWhat(one), one.differs.join(', ')].filter((text) => text !== '').join(': '),
            fromTo(one, ({ pieces }) => String(pieces)),
            fromTo(one, ({ length }) => printTotal(length, shop)),
          ]),
        ),
    drawTable(
      PROFILES,
      comparison.profiles.map((one) => [
        sayProfile(one),
        fromTo(one, ({ pieces }) => String(pieces)),
        fromTo(one, (figures) => hours(figures.hours)),
        fromTo(one, ({ priceCents }) => say(priceCents)),
        signed((one.after?.priceCents ?? 0) - (one.before?.priceCents ?? 0)),
      ]),
    ),
    [
      'In all:',
      `  pieces ${arrow(String(before.pieces), String(after.pieces))}, hours ${arrow(hours(before.hours), hours(after.hours))}`,
      money('cost', before.costCents, after.costCents),
      money('price', before.priceCents, after.priceCents),
      money('to pay', before.priceCents + before.taxCents, after.priceCents + after.taxCents),
    ],
    ...(cut === undefined ? [] : [[cut, ...lost]]),
    ...(open === undefined ? [] : [open]),
    ...(plan.profiles.some(({ setUp }) => setUp !== undefined) ? [MANUAL_CAUTION] : []),
  ];
}

export function arrow(from: string, to: string): string {
  return from === to ? from : `${from} -> ${to}`;
}

/** A dash stands where a plan has none of it. */
function fromTo<State>({ before, after }: Pair<State>, say: (state: State) => string): string {
  const [from, to] = [before, after].map((state) => (state === undefined ? '-' : say(state)));
  return arrow(from ?? '', to ?? '');
}
