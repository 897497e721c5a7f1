/** The stick planner's whole numbers turned back into sticks, pieces, boards and a pick list. */
import Fraction from 'fraction.js';
import type {
  PlannedPiece,
  PlannedStick,
  Rip,
  StickAnswer,
  StickProblem,
} from '../cutting/problem/problem.ts';
import {
  behind,
  spareId,
  type StatedGroup,
  type StatedSupply,
  type UsedStock,
} from './group-problem.ts';
import type { Profile, StockItem } from './job.ts';
import type { CutStick, RippedBoard, RippedStrip, StockUse } from './job-plan.ts';
import type { Piece } from './piece.ts';
import type { Blank } from './share-stock.ts';

/** A group's problem, its answer, and what stands behind them. */
export interface AnsweredGroup extends StatedGroup {
  readonly answer: StickAnswer;
  /** What earlier groups have used of each row of Stock: boards of one row are numbered through all. */
  readonly used: UsedStock;
}

/** A profile's sticks, numbered in the order of the plan. */
export function readSticks(
  profile: Profile,
  group: AnsweredGroup,
  pieces: ReadonlyMap<string, Piece>,
): CutStick[] {
  const { problem, answer } = group;
  const inches = (whole: number): Fraction => new Fraction(whole, problem.unitsPerInch);
  const before = unitsBefore(group);
  const own = answer.plan.sticks.filter((stick) => stick.profile === profile.name);
  return own.map((stick, index) => {
    const { item } = stockOf(group, stick.supplyId);
    const unit = (before.get(stick.supplyId) ?? 0) + stick.unit + 1;
    return {
      id: `${profile.name} #${index + 1}`,
      item,
      unit,
      strip: stick.strip + 1,
      strips: ripOf(group, stick).reduce((sum, { count }) => sum + count, 0),
      fromRack: unit <= item.have,
      length: item.length,
      pieces: inSawOrder(stick.pieces, profile, problem).map(({ demandId, length, part }) => {
        const piece = pieces.get(demandId);
        return {
          id: demandId,
          length: inches(length),
          ...(piece === undefined ? {} : { piece }),
          ...(part === undefined ? {} : { part: part + 1 }),
        };
      }),
      offcut: inches(stick.offcut),
      offcutKept: stick.offcut > 0 && stick.offcut >= problem.keepOffcutsOver,
    };
  });
}

/** Pieces shorter than this are cut while the stick is still long. Common practice [C]. */
const SHORT_PIECE_INCHES = 12;

/** The set-up spare first, for trial cuts; then short pieces, off the long stick; then the longest. */
function inSawOrder(
  pieces: readonly PlannedPiece[],
  profile: Profile,
  problem: StickProblem,
): PlannedPiece[] {
  const spare = spareId(profile);
  const rank = ({ demandId, length }: PlannedPiece): number => {
    if (demandId === spare) return 0;
    return length < SHORT_PIECE_INCHES * problem.unitsPerInch ? 1 : 2;
  };
  return [...pieces].sort((one, other) => {
    const byRank = rank(one) - rank(other);
    if (byRank !== 0) return byRank;
    return rank(one) === 1 ? one.length - other.length : other.length - one.length;
  });
}

/** What to pull from the rack and what to buy, an entry for each row of Stock that is used. */
export function readStockUse(group: AnsweredGroup): StockUse[] {
  const before = unitsBefore(group);
  const opened = openedUnits(group);
  return group.problem.supplies.flatMap((supply) => {
    const units = opened.get(supply.id) ?? new Map<number, readonly PlannedStick[]>();
    if (units.size === 0) return [];
    const { item, priceCents, boardFeet } = stockOf(group, supply.id);
    const first = before.get(supply.id) ?? 0;
    const fromRack = [...units.keys()].filter((unit) => first + unit < item.have).length;
    const unusedBlanks = [...units.values()].reduce((sum, sticks) => {
      const [stick] = sticks;
      const rip = stick === undefined ? [] : ripOf(group, stick);
      return sum + rip.reduce((all, { count }) => all + count, 0) - sticks.length;
    }, 0);
    return [
      {
        item,
        fromRack,
        bought: units.size - fromRack,
        unusedBlanks,
        priceCents,
        costCents: units.size * priceCents,
        ...(boardFeet === undefined ? {} : { boardFeet: units.size * boardFeet }),
      },
    ];
  });
}

/** Every opened board with its blanks side by side, row by row of Stock. */
export function readBoards(group: AnsweredGroup): RippedBoard[] {
  const before = unitsBefore(group);
  const opened = openedUnits(group);
  return group.problem.supplies.flatMap(({ id }) => {
    const { item } = stockOf(group, id);
    if (item.kind !== 'board') return [];
    const units = [...(opened.get(id) ?? [])].sort(([one], [other]) => one - other);
    return units.map(([at, sticks]): RippedBoard => {
      const unit = (before.get(id) ?? 0) + at + 1;
      return { item, unit, fromRack: unit <= item.have, strips: readStrips(group, item, sticks) };
    });
  });
}

function readStrips(
  group: AnsweredGroup,
  item: StockItem,
  sticks: readonly PlannedStick[],
): RippedStrip[] {
  const [first] = sticks;
  const rip = first === undefined ? [] : ripOf(group, first);
  const profileOf = new Map(sticks.map(({ strip, profile }) => [strip, profile]));
  const widths = rip.flatMap(({ blank, count }) =>
    Array.from(
      { length: count },
      () => behind(group.blanks, blank, `blank ${blank}`).width ?? item.width,
    ),
  );
  return widths.map((width = item.length, strip) => {
    const profile = profileOf.get(strip);
    return profile === undefined ? { width } : { width, profile };
  });
}

/** How many ways of cutting a stick there are: sticks of one row, for one profile, with the same lengths. */
export function countLayouts({ plan }: StickAnswer): number {
  const layouts = plan.sticks.map(({ supplyId, profile, pieces }) => {
    const lengths = pieces.map(({ length }) => length).sort((one, other) => one - other);
    return JSON.stringify([supplyId, profile, ...lengths]);
  });
  return new Set(layouts).size;
}

/**
 * Board feet of the opened boards and sticks, and of the pieces cut from them: a stick's own, times
 * the part of its width that the blank takes and the part of its length that the pieces take.
 * Derived. Both are absent where the board feet of an opened one aren't known.
 */
export function sumBoardFeet(group: AnsweredGroup): {
  boardFeetBought?: number;
  boardFeetUsed?: number;
} {
  const { problem, answer } = group;
  let bought = 0;
  for (const [id, units] of openedUnits(group)) {
    const { boardFeet } = stockOf(group, id);
    if (boardFeet === undefined) return {};
    bought += units.size * boardFeet;
  }
  const used = answer.plan.sticks.map((stick) => {
    const { item, boardFeet = 0 } = stockOf(group, stick.supplyId);
    const cut = stick.pieces.reduce((sum, { length }) => sum + length, 0);
    const long = cut / (Number(item.length) * problem.unitsPerInch);
    const { width } = blankOf(group, stick.profile);
    const wide = item.width === undefined || width === undefined ? 1 : width.div(item.width);
    return boardFeet * Math.min(1, Number(wide)) * long;
  });
  return { boardFeetBought: bought, boardFeetUsed: used.reduce((sum, one) => sum + one, 0) };
}

/** The sticks of each opened stick or board of each supply, by supply and unit. */
function openedUnits({
  answer,
}: AnsweredGroup): ReadonlyMap<string, ReadonlyMap<number, readonly PlannedStick[]>> {
  const opened = new Map<string, Map<number, PlannedStick[]>>();
  for (const stick of answer.plan.sticks) {
    const units = opened.get(stick.supplyId) ?? new Map<number, PlannedStick[]>();
    opened.set(stick.supplyId, units);
    const sticks = units.get(stick.unit);
    if (sticks === undefined) units.set(stick.unit, [stick]);
    else sticks.push(stick);
  }
  return opened;
}

/** How many of each supply's row are numbered before its own: by earlier groups, and by supplies of another price. */
function unitsBefore(group: AnsweredGroup): ReadonlyMap<string, number> {
  const opened = openedUnits(group);
  const next = new Map<StockItem, number>(group.used);
  const before = new Map<string, number>();
  for (const { id } of group.problem.supplies) {
    const { item } = stockOf(group, id);
    const first = next.get(item) ?? 0;
    before.set(id, first);
    next.set(item, first + (opened.get(id)?.size ?? 0));
  }
  return before;
}

/** The blank that a profile is made from. */
export function blankOf({ problem, blanks }: StatedGroup, profile: string): Blank {
  const stated = problem.profiles?.find((one) => one.id === profile);
  return behind(blanks, stated?.blank ?? '', `the blank of ${profile}`);
}

export function stockOf({ supplies }: StatedGroup, supplyId: string): StatedSupply {
  return behind(supplies, supplyId, `supply ${supplyId}`);
}

function ripOf(group: StatedGroup, { supplyId, rip: place }: PlannedStick): Rip {
  const rip = stockOf(group, supplyId).rips[place];
  if (rip === undefined) throw new RangeError(`Supply ${supplyId} has no rip ${place}.`);
  return rip;
}
