/** Every piece of a job, with its id, cut length and ends. */
import { degrees } from '../../core/units/angle.ts';
import {
  fault,
  placeFault,
  type Caution,
  type Fault,
  type Where,
} from '../../core/faults/fault.ts';
import { COVE_SIZES } from '../../core/cove/cove-sizes.ts';
import Fraction from 'fraction.js';
import { nameKey, type Job, type Profile, type Run, type RunEnd } from '../job.ts';
import type { Piece } from '../piece.ts';
import { casingRuns } from './casing-runs.ts';
import { cutAway, type CutAway } from './cut-away.ts';
import { computeCutLength, projectionOf } from './cut-length.ts';
import { markPieces } from './piece-marks.ts';
import { listSides, sideArgument, type OpeningSide } from './opening-sides.ts';

/** Planned and written within 1 GB (tests/cli/limit-suite.ts); a house has some hundreds. */
export const MOST_PIECES = 20_000;

export interface PieceList {
  readonly pieces: readonly Piece[];
  /** What openings take out of runs, in the order of the runs. */
  readonly cutAways: readonly CutAway[];
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

/**
 * The pieces in the order of the runs, those of openings after them. An id is room / run / number,
 * numbered within that room and run alone; a return piece is its run piece's id with its side. Marks: see markPieces.
 */
export function listPieces(job: Job): PieceList {
  const byName = new Map(job.profiles.map((one) => [nameKey(one.name), one]));
  const profileOf = (name: string): Profile | undefined => byName.get(nameKey(name));
  const sides = listSides(job.openings, job.runs, profileOf);
  const cut = cutAway(job.runs, sides, profileOf, job.walls);
  const { cutAways, cautions } = cut;
  const faults = [...cut.faults, ...casingWithoutWidth(sides, profileOf)];
  const runs = [...cut.runs, ...openingRuns(sides)];
  const count = runs.reduce((sum, run) => sum + run.quantity, 0);
  if (count > MOST_PIECES) {
    const tooMany = fault('job.quantity-too-large', 'sheet.Runs', count, { limit: MOST_PIECES });
    const where = cellOfMost(runs);
    faults.push(where === undefined ? tooMany : placeFault(tooMany, where));
    return { pieces: [], cutAways, faults, cautions };
  }
  const pieces: Omit<Piece, 'mark'>[] = [];
  const sizesNeeded: Fault[] = [];
  const numbers = new Map<string, number>();
  for (const run of runs) {
    const profile = profileOf(run.profile);
    if (profile === undefined) continue;
    const cutLength = computeCutLength(run, profile, job.shop);
    if (!cutLength.ok) sizesNeeded.push(...cutLength.faults);
    const returns = returnSides(run).map((side) => {
      const returned = computeCutLength(returnRun(run, profile, side), profile, job.shop);
      return { side, returned };
    });
    const [first] = returns;
    if (first?.returned.ok === false) {
      sizesNeeded.push(...first.returned.faults);
    }
    if (!cutLength.ok) continue;
    for (let copy = 0; copy < run.quantity; copy++) {
      const key = `${run.room}\u0000${run.run}`;
      const number = (numbers.get(key) ?? 0) + 1;
      numbers.set(key, number);
      const piece: Omit<Piece, 'mark'> = {
        ...describe(run, profile, number),
        ...cutLength.value,
        kind: 'run',
      };
      pieces.push(piece);
      for (const { side, returned } of returns) {
        if (!returned.ok) continue;
        pieces.push({
          ...piece,
          ...returned.value,
          id: `${piece.id} return ${side}`,
          kind: 'return',
          onePiece: true,
          match: '',
        });
      }
    }
  }
  return {
    pieces: markPieces(pieces),
    cutAways,
    faults: [...faults, ...eachOnce(sizesNeeded)],
    cautions,
  };
}

/** A size of a profile that many runs need is to be filled in once. */
function eachOnce(faults: readonly Fault[]): Fault[] {
  const byCell = new Map(faults.map((one) => [JSON.stringify([one.where, one.message]), one]));
  return [...byCell.values()];
}

/** Where the count of most pieces stands. */
function cellOfMost(runs: readonly Run[]): Where | undefined {
  const most = Math.max(...runs.map(({ quantity }) => quantity));
  return runs.find(({ quantity }) => quantity === most)?.cells.quantity;
}

function describe(run: Run, profile: Profile, number: number) {
  return {
    id: `${idPart(run.room)} / ${idPart(run.run)} / ${number}`,
    room: run.room,
    run: run.run,
    number,
    profile: profile.name,
    onePiece: run.onePiece,
    match: run.match,
    done: run.done,
    note: run.note,
    where: run.where,
    ...(run.made === undefined ? {} : { made: run.made }),
    ...(run.onWall === undefined ? {} : { onWall: run.onWall }),
  };
}

/** A stroke within a name is doubled, so that two rooms and runs never share an id. */
function idPart(name: string): string {
  return name.replaceAll('/', '//');
}

/** Each opening's first side, its second one beside it where that is listed by itself. */
function openingRuns(sides: readonly OpeningSide[]): Run[] {
  return sides.flatMap((side, at) => {
    if (side.side === 2) return [];
    const next = sides[at + 1];
    return casingRuns(next?.side === 2 ? [side, next] : [side]);
  });
}

/** A casing mitered through its thickness has its length without a width; what it takes out of a wall has not. */
function casingWithoutWidth(
  sides: readonly OpeningSide[],
  profileOf: (name: string) => Profile | undefined,
): Fault[] {
  return sides.flatMap((side) => {
    const casing = side.opening.casing === undefined ? undefined : profileOf(side.opening.casing);
    if (side.side === 2 || casing?.miterAcross !== 'thickness') return [];
    if (casing.blankWidth !== undefined) return [];
    const details = { needed: COVE_SIZES.blankWidth.label };
    const one = fault('job.casing-needs-width', sideArgument(side), casing.name, { details });
    return [placeFault(one, casing.cells.blankWidth)];
  });
}

function returnSides(run: Run): ('left' | 'right')[] {
  const sides: ('left' | 'right')[] = [];
  if (run.left.kind === 'return') sides.push('left');
  if (run.right.kind === 'return') sides.push('right');
  return sides;
}

/**
 * A return piece goes from its miter back to the wall: as long as the molding stands out. Seen from
 * its own face it meets the run at its right end on the run's left, at its left end on the right.
 */
function returnRun(run: Run, profile: Profile, side: 'left' | 'right'): Run {
  const miter: RunEnd = { kind: 'outside miter', corner: degrees(90) };
  const square: RunEnd = { kind: 'square', corner: degrees(90) };
  const projection = projectionOf(profile);
  // Where the size is missing, asking as a wall run with an outside miter gives the fault by name.
  const length = new Fraction(projection.ok ? Math.round(projection.value * 2 ** 20) / 2 ** 20 : 1);
  const measuredAs = projection.ok ? 'long point' : 'wall';
  const ends = side === 'left' ? { left: square, right: miter } : { left: miter, right: square };
  return { ...run, ...ends, length, measuredAs, quantity: 1 };
}
