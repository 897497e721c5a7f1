import { entryAt } from '../entry-at.ts';
import type { Proof } from './certify.ts';
import { mostLaborIn, type Instance } from './instance.ts';

/** Boards of each supply and rip, the strips they give, and what they cost beyond what those are worth. */
export interface BoardSet {
  readonly boards: readonly {
    readonly supply: number;
    readonly rip: number;
    readonly count: number;
  }[];
  /** Of each slot. */
  readonly strips: readonly number[];
  /** Of each supply, what the boards leave of its count. */
  readonly stock: readonly number[];
  readonly spare: number;
}

/**
 * Every set of boards that a plan within `budget` might rip: its spare sum is within the budget, and
 * its strips are worth no more than all pieces and the budget together; where no sticks are to be
 * had, no less than the pieces.
 *
 * @returns undefined where there are more than `mostSets`
 */
export function boardSets(
  instance: Instance,
  proof: Proof,
  budget: number,
  mostSets: number,
): readonly BoardSet[] | undefined {
  const { supplies, slots } = instance;
  const needed = instance.items.reduce(
    (sum, { blocks }, at) => sum + blocks.length * entryAt(proof.items, at),
    0,
  );
  // Credit is no part of what pieces are worth: strips may be worth that much less to them. By length
  // no more is credited than the strips are longer than the pieces; by count, each its most.
  const hasSticks = slots.some(({ supply }) => supply >= 0);
  const rate = mostRate(instance);
  const creditShare = (slot: number): number =>
    hasSticks ? mostCredit(instance, slot) : rate * entryAt(slots, slot).capacity;
  const weight = instance.items.reduce((sum, one) => sum + one.blocks.length * one.weight, 0);
  const uncredited = hasSticks ? 0 : Math.floor(rate * weight * proof.grain);
  const kinds = supplies.flatMap(({ supply, rips }, at) =>
    rips.map(({ strips }, rip) => {
      const worth = strips.reduce(
        (sum, one) => sum + one.count * entryAt(proof.slots, one.slot),
        0,
      );
      const spare = supply.priceCents * proof.grain + entryAt(proof.credits, at) - worth;
      const credit = strips.reduce(
        (sum, one) => sum + one.count * Math.ceil(creditShare(one.slot) * proof.grain),
        0,
      );
      // Less labor is what strips are worth; what is cut from them may be worth that much more.
      const gross = strips.reduce(
        (sum, one) =>
          sum + one.count * mostLaborIn(instance, entryAt(slots, one.slot)) * proof.grain,
        worth,
      );
      return { supply: at, rip, strips, worth, gross, sure: worth - credit, spare };
    }),
  );
  // A board is opened for a piece at least.
  const pieces = instance.items.reduce((sum, { blocks }) => sum + blocks.length, 0);
  // Boards that may be worth less than nothing to the pieces leave room for others.
  const slack = kinds.reduce((sum, { sure }) => sum + Math.max(0, -sure) * pieces, 0);
  const leastWorth = hasSticks ? 0 : needed;
  const useful = [...kinds].sort((a, b) => b.worth - a.worth);
  const ripsOf = supplies.map(({ rips }) => rips.length);
  const sets: BoardSet[] = [];
  const counts = useful.map(() => 0);
  const stock = supplies.map(({ count }) => count);
  const strips = slots.map(() => 0);
  let looks = 40 * mostSets;
  const visit = (place: number, worth: number, sure: number, spare: number): void => {
    looks -= 1;
    if (looks < 0 || sets.length > mostSets) return;
    const kind = useful[place];
    if (kind === undefined) {
      if (worth < leastWorth) return;
      const boards = useful.flatMap(({ supply, rip }, at) => {
        const count = entryAt(counts, at);
        return count === 0 ? [] : [{ supply, rip, count }];
      });
      sets.push({ boards, strips: [...strips], stock: [...stock], spare });
      return;
    }
    const add = (by: 1 | -1): void => {
      counts[place] = entryAt(counts, place) + by;
      stock[kind.supply] = entryAt(stock, kind.supply) - by;
      for (const { slot, count } of kind.strips) strips[slot] = entryAt(strips, slot) + by * count;
    };
    let added = 0;
    // What costs nothing and bars nothing else is there as often as it could be wanted.
    const isFree = kind.worth === 0 && kind.spare === 0 && ripsOf[kind.supply] === 1;
    for (; isFree && added < pieces && entryAt(stock, kind.supply) >= 1; added += 1) add(1);
    for (;;) {
      visit(
        place + 1,
        worth + added * kind.gross,
        sure + added * kind.sure,
        spare + added * kind.spare,
      );
      if (isFree || entryAt(stock, kind.supply) < 1 || added >= pieces) break;
      const next = added + 1;
      if (spare + next * kind.spare > budget) break;
      const most = needed - uncredited + budget - spare - next * kind.spare;
      if (kind.sure > 0 && sure + next * kind.sure > most + slack) break;
      add(1);
      added = next;
    }
    for (; added > 0; added -= 1) add(-1);
  };
  visit(0, 0, 0, 0);
  return looks < 0 || sets.length > mostSets ? undefined : sets;
}

/** The most that a unit of an offcut is credited, in cents. */
function mostRate({ profiles }: Instance): number {
  return profiles.reduce((most, one) => Math.max(most, one.offcutCredit?.centsPerUnit ?? 0), 0);
}

/** The most that an offcut of a slot is credited, in cents. */
function mostCredit({ slots, profiles }: Instance, at: number): number {
  const { blank, capCents } = entryAt(slots, at);
  return profiles
    .filter((profile) => profile.blank === blank)
    .reduce((most, one) => Math.max(most, Math.min(capCents, one.offcutCredit?.mostCents ?? 0)), 0);
}
