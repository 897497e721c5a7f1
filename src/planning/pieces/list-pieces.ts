/** Every piece of a job, with its id, cut length and ends. */
import { degrees } from '../../core/units/angle.ts';
import { fault, placeFault, type Caution, type Fault } from '../../core/faults/fault.ts';
import Fraction from 'fraction.js';
import {
  nameKey,
  sameName,
  type Job,
  type Opening,
  type Profile,
  type Run,
  type RunEnd,
} from '../job.ts';
import type { Piece } from '../piece.ts';
import { casingRuns } from './casing-runs.ts';
import { cutAwayBase } from './cut-away-base.ts';
import { computeCutLength, projectionOf } from './cut-length.ts';

export const MOST_PIECES = 100_000;

export interface PieceList {
  readonly pieces: readonly Piece[];
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

/**
 * The pieces in the order of the runs, those of openings after them. An id is room / run / number,
 * numbered within that room and run alone; a return piece is its run piece's id with its side.
 */
export function listPieces(job: Job): PieceList {
  const byName = new Map(job.profiles.map((one) => [nameKey(one.name), one]));
  const profileOf = (name: string): Profile | undefined => byName.get(nameKey(name));
  const cut = cutAwayBase(job.runs, job.openings, profileOf);
  const faults = [...cut.faults];
  const openings = job.openings.map((one) => ({ ...one, room: roomAsInRuns(one.room, job.runs) }));
  const runs = [...cut.runs, ...openingRuns(openings, profileOf)];
  const count = runs.reduce((sum, run) => sum + run.quantity, 0);
  if (count > MOST_PIECES) {
    faults.push(fault('job.quantity-too-large', 'Runs', count, { limit: MOST_PIECES }));
    return { pieces: [], faults, cautions: cut.cautions };
  }
  const pieces: Piece[] = [];
  const numbers = new Map<string, number>();
  for (const run of runs) {
    const profile = profileOf(run.profile);
    if (profile === undefined) continue;
    const cutLength = computeCutLength(run, profile, job.shop);
    if (!cutLength.ok) faults.push(...cutLength.faults.map((one) => placeFault(one, run.where)));
    const returns = returnSides(run).map((side) => {
      const returned = computeCutLength(returnRun(run, profile, side), profile, job.shop);
      return { side, returned };
    });
    const [first] = returns;
    if (first?.returned.ok === false) {
      faults.push(...first.returned.faults.map((one) => placeFault(one, run.where)));
    }
    if (!cutLength.ok) continue;
    for (let copy = 0; copy < run.quantity; copy++) {
      const key = `${run.room}\u0000${run.run}`;
      const number = (numbers.get(key) ?? 0) + 1;
      numbers.set(key, number);
      const piece: Piece = { ...describe(run, profile, number), ...cutLength.value, kind: 'run' };
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
  return { pieces, faults, cautions: cut.cautions };
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
  };
}

/** A stroke within a name is doubled, so that two rooms and runs never share an id. */
function idPart(name: string): string {
  return name.replaceAll('/', '//');
}

/** An opening belongs to the room of the runs, however its case is typed. */
function roomAsInRuns(room: string, runs: readonly Run[]): string {
  const exact = runs.some((run) => run.room === room);
  return exact ? room : (runs.find((run) => sameName(run.room, room))?.room ?? room);
}

/** Openings of one kind on one wall are numbered among themselves, in the order of their rows. */
function openingRuns(
  openings: readonly Opening[],
  profileOf: (name: string) => Profile | undefined,
): Run[] {
  const seen = new Map<string, number>();
  return openings.flatMap((opening) => {
    const label = `${opening.wall} ${opening.kind}`.trim();
    const key = `${nameKey(opening.room)}\u0000${nameKey(label)}`;
    const number = (seen.get(key) ?? 0) + 1;
    seen.set(key, number);
    const casing = opening.casing === undefined ? undefined : profileOf(opening.casing);
    return casingRuns(opening, number === 1 ? label : `${label} ${number}`, casing);
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
