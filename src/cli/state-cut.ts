/** Rows of pieces and sticks as a problem of whole numbers for the stick planner. */
import Fraction from 'fraction.js';
import {
  failed,
  fault,
  ok,
  placeFault,
  type Fault,
  type Outcome,
  type Where,
} from '../core/faults/fault.ts';
import type { DecimalSign } from '../core/units/format-number.ts';
import type { ExactInches } from '../core/units/length.ts';
import { FINEST_UNITS_PER_INCH, MOST_PRICE_CENTS, MOST_UNITS } from '../cutting/problem/limits.ts';
import type { StickProblem } from '../cutting/problem/problem.ts';
import { commonUnit } from '../planning/group-problem.ts';
import { nameKey } from '../planning/job.ts';
import { materialsOf } from './cut-materials.ts';
import type { PieceRow, StickRow } from './read-cut.ts';

export interface CutOrder {
  readonly pieces: readonly PieceRow[];
  readonly sticks: readonly StickRow[];
  readonly kerf: ExactInches;
  /** Comes off each end of every stick, its own cut included. */
  readonly endTrim: ExactInches;
  /** Of the answer in words. */
  readonly decimalSign: DecimalSign;
}

/** What is least: what the sticks cost; or, where none has a price, how long they are together. */
export type Optimized = 'cost' | 'length';

export interface StatedCut {
  /** What it calls cents are hundredths of the prices' own money, or shares of an inch: see perCent. */
  readonly problem: StickProblem;
  readonly optimized: Optimized;
  /** What a cent of the problem stands for: money, or inches. */
  readonly perCent: ExactInches;
  /** What the prices are in, a sign or letters; empty where none of them says it. */
  readonly currency: string;
  /** Where sticks are of several, each is planned by itself: as typed first, by their keys; else none. */
  readonly materials: ReadonlyMap<string, string>;
  /** The row behind each demand and each supply, by id. */
  readonly pieceOf: ReadonlyMap<string, PieceRow>;
  readonly stickOf: ReadonlyMap<string, StickRow>;
}

/** Faults: lengths that no common unit measures, sticks that their trims use up; each placed. */
export function stateCut({
  pieces,
  sticks,
  kerf,
  endTrim,
}: Omit<CutOrder, 'decimalSign'>): Outcome<StatedCut> {
  const rows = [...pieces, ...sticks];
  const unitsPerInch = commonUnit([kerf, endTrim, ...rows.map(({ length }) => length)]);
  const unmeasured = checkUnit(rows, unitsPerInch);
  if (unmeasured.length > 0) return failed(...unmeasured);
  const twoTrims = endTrim.mul(2);
  const usedUp = sticks.filter(({ length }) => length.lte(twoTrims));
  if (usedUp.length > 0) {
    const limit = { inches: Number(twoTrims) };
    const faults = usedUp.map(({ length, where }) =>
      placeFault(
        fault('cutting.stick-shorter-than-trim', 'aStick', { inches: Number(length) }, { limit }),
        where,
      ),
    );
    return failed(...faults);
  }
  const priced = priceSticks(sticks);
  if (!priced.ok) return priced;
  const { optimized, perCent, centsOf } = priced.value;
  const whole = (length: ExactInches): number => Number(length.mul(unitsPerInch));
  const pieceOf = new Map<string, PieceRow>();
  for (const piece of pieces) {
    for (let number = 1; number <= piece.quantity; number++) {
      pieceOf.set(`${sayPlace(piece.where)}, no. ${number}`, piece);
    }
  }
  const stickOf = new Map(sticks.map((stick) => [sayPlace(stick.where), stick]));
  // Sticks of a material that no piece is of serve nothing.
  const materials = new Map(materialsOf(sticks).map((one) => [nameKey(one), one]));
  const isApart = materials.size > 0;
  const wanted = isApart ? [...new Set(pieces.map(({ material }) => nameKey(material)))] : [];
  const isWanted = ({ material }: StickRow): boolean =>
    !isApart || wanted.includes(nameKey(material));
  const problem: StickProblem = {
    unitsPerInch,
    kerf: whole(kerf),
    endTrim: whole(endTrim),
    ...(wanted.length === 0 ? {} : { profiles: wanted.map((id) => ({ id, blank: id })) }),
    demands: [...pieceOf].map(([id, { length, material }]) => ({
      id,
      length: whole(length),
      onePiece: true,
      ...(isApart ? { profile: nameKey(material) } : {}),
    })),
    supplies: [...stickOf]
      .filter(([, stick]) => isWanted(stick))
      .map(([id, stick]) => ({
        id,
        length: whole(stick.length),
        priceCents: centsOf(stick),
        strips: 1,
        have: 0,
        buyMost: stick.count,
        ...(isApart ? { rips: [[{ blank: nameKey(stick.material), count: 1 }]] } : {}),
      })),
    keepOffcutsOver: 0,
  };
  const currency = sticks.find((stick) => stick.currency !== undefined)?.currency ?? '';
  return ok({ problem, optimized, perCent, currency, materials, pieceOf, stickOf });
}

interface Priced extends Pick<StatedCut, 'optimized' | 'perCent'> {
  readonly centsOf: (stick: StickRow) => number;
}

/**
 * Without prices a stick's price is its length, in the coarsest unit that all of them are whole in: sticks of
 * 8 and 12 ft cost 2 and 3.
 */
function priceSticks(sticks: readonly StickRow[]): Outcome<Priced> {
  if (sticks.some(({ priceCents }) => priceCents !== null)) {
    const centsOf = ({ priceCents }: StickRow): number => priceCents ?? 0;
    return ok({ optimized: 'cost', perCent: new Fraction(1, 100), centsOf });
  }
  const perCent = sticks.reduce((common, { length }) => common.gcd(length), new Fraction(0));
  const centsOf = ({ length }: StickRow): number => Number(length.div(perCent));
  const tooFine = sticks.filter((stick) => centsOf(stick) > MOST_PRICE_CENTS);
  if (tooFine.length === 0) return ok({ optimized: 'length', perCent, centsOf });
  const limit = FINEST_UNITS_PER_INCH;
  const faults = tooFine.map(({ length, where }) => {
    const given = { inches: Number(length) };
    return placeFault(fault('cutting.length-too-fine', 'length', given, { limit }), where);
  });
  return failed(...faults);
}

/** A length too fine by itself is named at its own cell; else all of them together. */
function checkUnit(rows: readonly (PieceRow | StickRow)[], unitsPerInch: number): Fault[] {
  const limit = FINEST_UNITS_PER_INCH;
  if (unitsPerInch > limit) {
    const fine = rows.filter(({ length }) => length.d > BigInt(limit));
    if (fine.length === 0)
      return [fault('cutting.unit-too-fine', 'piecesAndSticks', unitsPerInch, { limit })];
    return fine.map(({ length, where }) =>
      placeFault(
        fault('cutting.length-too-fine', 'length', { inches: Number(length) }, { limit }),
        where,
      ),
    );
  }
  const longest = new Fraction(MOST_UNITS, unitsPerInch);
  return rows
    .filter(({ length }) => length.gt(longest))
    .map(({ length, where }) => {
      const more = { limit: { inches: Number(longest) } };
      return placeFault(
        fault('length.too-long', 'length', { inches: Number(length) }, more),
        where,
      );
    });
}

function sayPlace(where: Where): string {
  return 'line' in where ? `on line ${where.line}` : `in ${where.cell}`;
}
