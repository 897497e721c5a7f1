/** What a job leaves over, in the columns of Stock: rows that the next job takes in as they are. */
import { NAMES } from '../core/faults/argument-words.ts';
import type { ExactInches } from '../core/units/length.ts';
import { plansOf, type JobPlan } from '../planning/job-plan.ts';
import { shareCents } from '../planning/money.ts';
import type { Shop } from '../planning/shop.ts';
import { headNotUsed } from '../planning/input/headings/meant-headings.ts';
import { keptOf, listKept, type Kept } from '../sheets/kept-offcuts.ts';
import { lettersOf, listLots } from '../sheets/stock-lots.ts';
import { printExact } from '../sheets/words/print-length.ts';
import type { List, ListValue } from './csv-list.ts';

/**
 * A row each: of a stick the rest, for its profile; of a board the blanks that nothing was cut from, for
 * its species. Each is on the rack and none can be bought. Its price is what this job was credited for it,
 * so that the next job pays just that; a clear stretch of a board with defects of which another was used has
 * its share of the board's price, which nobody has paid. Lengths are rounded down to the shop's precision. The rest of a cove
 * that is shorter than a blank may be is left out, since Stock has blanks to cut coves on; it stands in the
 * list of offcuts.
 */
export function listKeptStock(plan: JobPlan): List {
  const { shop } = plan.job;
  const letters = lettersOf(listLots(plan));
  const credits = creditsOf(plan);
  const coves = new Set(
    plan.profiles.filter(({ setUp }) => setUp !== undefined).map(({ profile }) => profile.name),
  );
  const kept = plan.groups
    .flatMap((group) => listKept(plan, group, letters))
    .map((one) => ({ ...one, length: toPrecision(one.length, shop) }))
    .filter(({ stick, of, length }) => {
      const isCove = stick !== undefined && coves.has(of);
      return !isCove || length.gte(shop.leastBlankLength);
    });
  return {
    name: 'kept-as-stock',
    headings: [
      ...[NAMES.for, NAMES.kind, NAMES.thicknessClass, NAMES.width, NAMES.length, NAMES.price],
      ...[NAMES.per, NAMES.have, NAMES.buy, NAMES.grade, headNotUsed('Label')],
    ],
    rows: kept.map((one): ListValue[] => [
      one.of,
      ...sizeOf(one),
      printExact(one.length, shop),
      centsOf(one, credits) / 100,
      ...['piece', 1, 'no', one.grade, one.label],
    ]),
  };
}

/** A stick's size is its profile's own; a blank's is its board's class and its width. */
function sizeOf({ stick, unused, thick, wide }: Kept): ListValue[] {
  if (unused !== undefined) return [unused.item.kind, thick, wide];
  return stick === undefined ? ['board', thick, wide] : ['stick', '', ''];
}

/** Of a clear stretch that nothing is cut from: what it bears of its board, as the board's own row had it. */
function centsOf({ stick, unused, label }: Kept, credits: ReadonlyMap<string, number>): number {
  if (unused !== undefined) return unused.cents;
  return stick === undefined ? 0 : (credits.get(label) ?? 0);
}

/** What a profile was credited, shared among its offcuts by length: cents by label. */
function creditsOf(plan: JobPlan): ReadonlyMap<string, number> {
  const all = plan.groups.flatMap((group) =>
    plansOf(plan, group).flatMap(({ sticks, byPlan: { money } }) => {
      const kept = keptOf(sticks);
      const lengths = kept.map(({ offcut }) => Number(offcut));
      const shares = shareCents(money.offcutCreditCents, lengths);
      return kept.map(({ id }, at) => [`${id} rest`, shares[at] ?? 0] as const);
    }),
  );
  return new Map(all);
}

function toPrecision(length: ExactInches, { lengthPrecision }: Shop): ExactInches {
  return length.div(lengthPrecision).floor().mul(lengthPrecision);
}
