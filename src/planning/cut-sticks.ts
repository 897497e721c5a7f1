/** The stick planner's whole numbers turned back into sticks and pieces, beside those that are cut already. */
import Fraction from 'fraction.js';
import type {
  PlannedPiece,
  PlannedStick,
  Rip,
  StickAnswer,
  StickProblem,
} from '../cutting/problem/problem.ts';
import type { ExactInches } from '../core/units/length.ts';
import { behind, partId, spareId, type StatedGroup, type StatedSupply } from './group-problem.ts';
import type { PreparedGroup, PreparedProfile } from './group-profiles.ts';
import type { Profile, StockItem } from './job.ts';
import type { CutPiece, CutStick } from './job-plan.ts';
import { numberUnits, type UsedStock } from './used-stock.ts';

/** A group's problem, its answer, and what stands behind them. */
export interface AnsweredGroup extends StatedGroup {
  readonly answer: StickAnswer;
  /** What is cut already, and what earlier groups have opened of each row of Stock. */
  readonly used: UsedStock;
}

/** A stick of a group's plan with the row of Stock that it is paid from. */
export interface TakenStick {
  readonly profile: Profile;
  readonly stick: CutStick;
  /** The row at its price. */
  readonly supply: StatedSupply;
  /** How wide the blanks of its board are, in their order; none for a stick. */
  readonly blankWidths: readonly ExactInches[];
}

/**
 * All sticks of a group, profile by profile: those that are cut already keep their numbers, the planned
 * ones take the numbers that are free, in the order of the plan.
 */
export function takeSticks(prepared: PreparedGroup, group: AnsweredGroup): TakenStick[] {
  const units = unitNumbers(group);
  return prepared.flatMap((own) => {
    const cut = own.cut.map((one) => ({
      ...one,
      supply: rowOf(group, one.profile, one.stick.item),
    }));
    const taken = new Set(cut.map(({ stick }) => stick.id));
    let number = 0;
    const nextId = (): string => {
      do number += 1;
      while (taken.has(`${own.profile.name} #${number}`));
      return `${own.profile.name} #${number}`;
    };
    const planned = readSticks(own, group, units).map((one) => ({
      ...one,
      stick: { ...one.stick, id: nextId() },
    }));
    if (cut.length === 0) return planned;
    const places = new Map([...cut, ...planned].map((one) => [one, numberOf(one.stick)]));
    return [...places].sort(([, one], [, other]) => one - other).map(([one]) => one);
  });
}

/** The number at the end of a stick's id. */
function numberOf({ id }: CutStick): number {
  return Number(/#(\d+)$/u.exec(id)?.[1] ?? 0);
}

/** A profile's planned sticks, as yet without ids. */
function readSticks(
  { profile, toPlan, partsLeft }: PreparedProfile,
  group: AnsweredGroup,
  units: ReadonlyMap<string, readonly number[]>,
): TakenStick[] {
  const { problem, answer } = group;
  const inches = (whole: number): Fraction => new Fraction(whole, problem.unitsPerInch);
  const pieces = new Map<string, Pick<CutPiece, 'id' | 'piece' | 'part'>>([
    ...toPlan.map((piece) => [piece.id, { id: piece.id, piece }] as const),
    ...partsLeft.map(
      ({ piece, part }) => [partId(piece.id, part), { id: piece.id, piece, part }] as const,
    ),
  ]);
  const own = answer.plan.sticks.filter((stick) => stick.profile === profile.name);
  const endsOf = new Map(
    problem.demands.map(({ id, match = '', ends = '' }) => [id, match === '' ? ends : '']),
  );
  return own.map((stick): TakenStick => {
    const supply = stockOf(group, stick.supplyId);
    const { item } = supply;
    const { unit, strip, strips } = placeOf(group, stick, units);
    return {
      profile,
      supply: supply.ripped === undefined ? supply : rowOf(group, profile, item),
      blankWidths: supply.ripped === undefined ? widthsOf(group, stick) : [],
      stick: {
        id: '',
        item,
        unit,
        strip,
        strips,
        fromRack: unit <= item.have,
        length: item.length,
        pieces: inSawOrder(stick.pieces, profile, endsOf, problem).map(
          ({ demandId, length, part }) => ({
            ...(pieces.get(demandId) ?? { id: demandId }),
            length: inches(length),
            ...(part === undefined ? {} : { part: part + 1 }),
          }),
        ),
        offcut: inches(stick.offcut),
        offcutKept: stick.offcut > 0 && stick.offcut >= problem.keepOffcutsOver,
      },
    };
  });
}

/** Which board a stick is from and which blank of it, from 1. */
function placeOf(
  group: AnsweredGroup,
  stick: PlannedStick,
  units: ReadonlyMap<string, readonly number[]>,
): Pick<CutStick, 'unit' | 'strip' | 'strips'> {
  const { ripped } = stockOf(group, stick.supplyId);
  if (ripped !== undefined) {
    const blank = ripped[stick.unit];
    if (blank === undefined) throw new RangeError(`No ripped blank is ${stick.unit}.`);
    return blank;
  }
  const unit = units.get(stick.supplyId)?.[stick.unit];
  if (unit === undefined) throw new RangeError(`No number is free for ${stick.unit}.`);
  const strips = ripOf(group, stick).reduce((sum, { count }) => sum + count, 0);
  return { unit, strip: stick.strip + 1, strips };
}

/**
 * The row of Stock at the price that a profile pays.
 *
 * @throws RangeError where it doesn't serve the profile
 */
function rowOf({ supplies }: StatedGroup, profile: Profile, item: StockItem): StatedSupply {
  for (const supply of supplies.values()) {
    if (supply.ripped !== undefined || supply.item !== item) continue;
    if (supply.strips.has(profile)) return supply;
  }
  throw new RangeError(`No row of Stock for ${item.for} serves ${profile.name}.`);
}

/** Pieces shorter than this are cut while the stick is still long. Common practice [C]. */
const SHORT_PIECE_INCHES = 12;

/**
 * The set-up spare first, for trial cuts; then short pieces, off the long stick; then the longest. Of one length
 * they stand by their ends, so that sticks cut alike are in the same order; matched pieces as they match.
 */
function inSawOrder(
  pieces: readonly PlannedPiece[],
  profile: Profile,
  endsOf: ReadonlyMap<string, string>,
  problem: StickProblem,
): PlannedPiece[] {
  const spare = spareId(profile);
  const ends = ({ demandId }: PlannedPiece): string => endsOf.get(demandId) ?? '';
  const rank = ({ demandId, length }: PlannedPiece): number => {
    if (demandId === spare) return 0;
    return length < SHORT_PIECE_INCHES * problem.unitsPerInch ? 1 : 2;
  };
  return [...pieces].sort((one, other) => {
    const byRank = rank(one) - rank(other);
    if (byRank !== 0) return byRank;
    const byLength = rank(one) === 1 ? one.length - other.length : other.length - one.length;
    return byLength || (ends(one) < ends(other) ? -1 : ends(one) > ends(other) ? 1 : 0);
  });
}

/** How wide the blanks of a board are that is ripped as planned; none for a stick. */
function widthsOf(group: StatedGroup, stick: PlannedStick): readonly ExactInches[] {
  const { item } = stockOf(group, stick.supplyId);
  if (item.kind !== 'board') return [];
  return ripOf(group, stick).flatMap(({ blank, count }) =>
    Array.from(
      { length: count },
      () => behind(group.blanks, blank, `blank ${blank}`).width ?? item.width ?? item.length,
    ),
  );
}

/** How many sticks or boards of each supply the answer opens. */
function countOpened({ answer }: AnsweredGroup): ReadonlyMap<string, number> {
  const opened = new Map<string, Set<number>>();
  for (const { supplyId, unit } of answer.plan.sticks) {
    const units = opened.get(supplyId) ?? new Set<number>();
    opened.set(supplyId, units.add(unit));
  }
  return new Map([...opened].map(([id, units]) => [id, units.size]));
}

/** How many of each row the answer opens, beside what is opened already. */
export function newlyOpened(group: AnsweredGroup): ReadonlyMap<StockItem, number> {
  const opened = new Map<StockItem, number>();
  for (const [id, count] of countOpened(group)) {
    const { item, ripped } = stockOf(group, id);
    if (ripped === undefined) opened.set(item, (opened.get(item) ?? 0) + count);
  }
  return opened;
}

/** The numbers of the sticks or boards of each supply; supplies of another price come after one another. */
function unitNumbers(group: AnsweredGroup): ReadonlyMap<string, readonly number[]> {
  const counts = countOpened(group);
  const next = new Map<StockItem, number>(group.used.opened);
  const numbers = new Map<string, readonly number[]>();
  for (const { id } of group.problem.supplies) {
    const { item, ripped } = stockOf(group, id);
    if (ripped !== undefined) continue;
    const before = next.get(item) ?? 0;
    const count = counts.get(id) ?? 0;
    next.set(item, before + count);
    numbers.set(id, numberUnits(group.used.cut.get(item), before, count));
  }
  return numbers;
}

export function stockOf({ supplies }: StatedGroup, supplyId: string): StatedSupply {
  return behind(supplies, supplyId, `supply ${supplyId}`);
}

function ripOf(group: StatedGroup, { supplyId, rip: place }: PlannedStick): Rip {
  const rip = stockOf(group, supplyId).rips[place];
  if (rip === undefined) throw new RangeError(`Supply ${supplyId} has no rip ${place}.`);
  return rip;
}
