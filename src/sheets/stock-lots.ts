/** A letter for each row of Stock that is used, so that every stick and board has a short name to chalk on it. */
import type { CutStick, JobPlan } from '../planning/job-plan.ts';
import { listCutStock } from '../planning/cut/cut-stock.ts';
import type { StockItem } from '../planning/job.ts';
import { columnLetters } from '../core/cells/cell-range.ts';

/** What is opened of one row of Stock. */
export interface StockLot {
  readonly letter: string;
  readonly item: StockItem;
  /** Numbers of the sticks or boards, from 1, in their order. */
  readonly fromRack: readonly number[];
  readonly bought: readonly number[];
  /** Those of both that something is cut from already. */
  readonly cut: ReadonlySet<number>;
  /** Whose pieces are cut from them, in the order of Profiles. */
  readonly profiles: readonly string[];
}

export type LotLetters = ReadonlyMap<StockItem, string>;

/** In the order of Stock. */
export function listLots({ job, profiles }: JobPlan): StockLot[] {
  const cut = listCutStock(profiles);
  const used = new Map<StockItem, Used>();
  for (const { profile, sticks } of profiles) {
    for (const { item, unit, fromRack } of sticks) {
      const lot = used.get(item) ?? newUse();
      used.set(item, lot);
      lot.units.set(unit, fromRack);
      if (lot.profiles.at(-1) !== profile.name) lot.profiles.push(profile.name);
    }
  }
  const inOrder = job.stock.filter((item) => used.has(item));
  return inOrder.map((item, at): StockLot => {
    const { units, profiles: names } = used.get(item) ?? newUse();
    const numbers = [...units.keys()].sort((one, other) => one - other);
    return {
      letter: columnLetters(at),
      item,
      fromRack: numbers.filter((unit) => units.get(unit) === true),
      bought: numbers.filter((unit) => units.get(unit) === false),
      cut: new Set(cut.get(item)?.keys()),
      profiles: names,
    };
  });
}

/** Whether each of its sticks or boards comes from the rack, by number. */
interface Used {
  readonly units: Map<number, boolean>;
  readonly profiles: string[];
}

function newUse(): Used {
  return { units: new Map(), profiles: [] };
}

export function lettersOf(lots: readonly StockLot[]): LotLetters {
  return new Map(lots.map(({ item, letter }) => [item, letter]));
}

/** @throws RangeError for an item that no lot is of. */
export function letterOf(letters: LotLetters, item: StockItem): string {
  const letter = letters.get(item);
  if (letter === undefined) throw new RangeError(`No lot is of ${item.for}.`);
  return letter;
}

/** `A3`: the third stick or board of the lot. */
export function nameUnit(letters: LotLetters, item: StockItem, unit: number): string {
  return `${letterOf(letters, item)}${unit}`;
}

/** `A1 to A4, A7`, of numbers in ascending order. */
export function nameUnits(letter: string, units: readonly number[]): string {
  const spans: { first: number; last: number }[] = [];
  for (const unit of units) {
    const span = spans.at(-1);
    if (span?.last === unit - 1) span.last = unit;
    else spans.push({ first: unit, last: unit });
  }
  const named = spans.map(({ first, last }) => {
    if (first === last) return `${letter}${first}`;
    return `${letter}${first} ${last === first + 1 ? 'and' : 'to'} ${letter}${last}`;
  });
  return named.join(', ');
}

/** `board A3, blank 2 of 2, from the rack`; of one that is cut, that it is. */
export function sayWhich(letters: LotLetters, stick: CutStick): string {
  const { item, unit, strip, strips, fromRack, isCut } = stick;
  const blank = strips === 1 ? [] : [`blank ${strip} of ${strips}`];
  const from = isCut === true ? 'cut or begun' : fromRack ? 'from the rack' : 'to buy';
  return [`${item.kind} ${nameUnit(letters, item, unit)}`, ...blank, from].join(', ');
}
