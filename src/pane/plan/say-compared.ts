/** A comparison in words that fit a narrow pane: a row each for totals, runs, profiles and lines. */
import { formatFixed } from '../../core/units/format-number.ts';
import { sayMoney } from '../../core/units/say-money.ts';
import type { Comparison, RunPair } from '../../planning/compare/comparison.ts';
import type { Shop } from '../../planning/shop.ts';
import {
  listOtherwise,
  sayCounts,
  sayProfile,
  sayWhat,
} from '../../sheets/changes/changes-words.ts';
import { sayChanged, sayRowsOfLine } from '../../sheets/words/say-copy.ts';
import { changedLines, takenUp, type ReturnedCopy } from '../../planning/compare/returned-copy.ts';
import { count, printExact, printTotal } from '../../sheets/words/print-length.ts';
import type { Fact } from '../../sheets/words/set-up-facts.ts';
import type { Compared } from '../state/pane-state.ts';

/** What is to be heard of it. */
export function sayCompared(compared: Compared): string {
  return compared.kind === 'plans' ? sayCounts(compared.comparison) : sayChanged(compared.returned);
}

/** Something that is otherwise: its name, and how. */
export interface ChangedRow {
  readonly name: string;
  readonly text: string;
}

interface Says {
  readonly money: (from: number, to: number) => string;
  readonly hours: (from: number, to: number) => string;
}

function saysOf({ currency, decimalSign }: Shop): Says {
  const say = (cents: number): string => sayMoney(cents, currency, decimalSign);
  const one = (hours: number): string => formatFixed(hours, 1, decimalSign);
  return {
    money: (from, to) =>
      from === to
        ? `${say(to)}, as it was`
        : `${say(from)} → ${say(to)} (${to > from ? '+' : ''}${say(to - from)})`,
    hours: (from, to) => arrow(one(from), one(to)),
  };
}

export function sayTotals({ totals: { before, after } }: Comparison, shop: Shop): Fact[] {
  const { money, hours } = saysOf(shop);
  return [
    { label: 'Pieces', value: arrow(String(before.pieces), String(after.pieces)) },
    { label: 'Hours', value: hours(before.hours, after.hours) },
    { label: 'Cost', value: money(before.costCents, after.costCents) },
    { label: 'Price', value: money(before.priceCents, after.priceCents) },
    {
      label: 'To pay',
      value: money(before.priceCents + before.taxCents, after.priceCents + after.taxCents),
    },
  ];
}

export function sayRuns(comparison: Comparison, shop: Shop): ChangedRow[] {
  return listOtherwise(comparison).map((one) => ({
    name: `${one.room} / ${one.run}, ${one.profile}`,
    text: sayRun(one, shop),
  }));
}

function sayRun(one: RunPair, shop: Shop): string {
  const { before, after, differs } = one;
  const what = [sayWhat(one), differs.join(', ')].filter((text) => text !== '').join(': ');
  const pieces = [before, after].flatMap((state) =>
    state === undefined ? [] : [count(state.pieces, 'piece')],
  );
  const lengths = [before, after].flatMap((state) =>
    state === undefined ? [] : [printTotal(state.length, shop)],
  );
  const say = ([from = '', to = from]: readonly string[]): string => arrow(from, to);
  return `${what}; ${say(pieces)}, ${say(lengths)}`;
}

export function sayProfilesCompared({ profiles }: Comparison, shop: Shop): ChangedRow[] {
  const { money, hours } = saysOf(shop);
  return profiles.map((one) => {
    const { before, after } = one;
    const price = money(before?.priceCents ?? 0, after?.priceCents ?? 0);
    return {
      name: sayProfile(one),
      text: `${hours(before?.hours ?? 0, after?.hours ?? 0)} h, ${price}`,
    };
  });
}

export function sayCopyTotals({ price: { quoted, now } }: ReturnedCopy, shop: Shop): Fact[] {
  const { money } = saysOf(shop);
  return [
    { label: 'Pieces', value: arrow(String(quoted.pieces), String(now.pieces)) },
    { label: 'Price', value: money(quoted.priceCents, now.priceCents) },
    { label: 'To pay', value: money(quoted.toPayCents, now.toPayCents) },
  ];
}

export function sayCopyLines(copy: ReturnedCopy, shop: Shop): ChangedRow[] {
  const { money } = saysOf(shop);
  return [
    ...changedLines(copy).map((line) => ({
      name: `${line.room}, ${line.molding}, ${printExact(line.length, shop)}`,
      text: `${line.quantity} → ${line.now}; ${money(line.priceCents, line.nowCents)}. Rows: ${sayRowsOfLine(line)}`,
    })),
    ...takenUp(copy).map(({ name, priceCents }) => ({
      name: `Option ${name}`,
      text: `taken up; ${money(0, priceCents)}. Write yes under Taken in its rows of Options.`,
    })),
  ];
}

function arrow(from: string, to: string): string {
  return from === to ? from : `${from} → ${to}`;
}
