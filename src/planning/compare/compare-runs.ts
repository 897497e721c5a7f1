/** Runs of a plan, and what of one is not as it was. */
import Fraction from 'fraction.js';
import type { ExactInches } from '../../core/units/length.ts';
import { endsOfPiece } from '../cut/cut-already.ts';
import { nameKey } from '../job.ts';
import type { JobPlan } from '../job-plan.ts';
import type { Piece } from '../piece.ts';
import type { RunDifference, RunState } from './comparison.ts';

export function keyOf(...names: readonly string[]): string {
  return JSON.stringify(names.map(nameKey));
}

export interface RunPieces {
  readonly room: string;
  readonly run: string;
  readonly profile: string;
  readonly pieces: readonly Piece[];
}

export function runsOf({ pieces }: JobPlan): Map<string, RunPieces> {
  const runs = new Map<string, { room: string; run: string; profile: string; pieces: Piece[] }>();
  for (const piece of pieces) {
    const { room, run, profile } = piece;
    const key = keyOf(room, run, profile);
    const known = runs.get(key);
    if (known === undefined) runs.set(key, { room, run, profile, pieces: [piece] });
    else known.pieces.push(piece);
  }
  return runs;
}

const sumOf = (lengths: readonly ExactInches[]): ExactInches =>
  lengths.reduce((sum, one) => sum.add(one), new Fraction(0));

export function stateOf({ pieces }: RunPieces): RunState {
  return {
    pieces: pieces.length,
    done: pieces.filter(({ done }) => done).length,
    length: sumOf(pieces.map(({ cutLength }) => cutLength)),
  };
}

/** Its pieces in any order; a match is of one group whatever the group is called. */
const TELLING: readonly (readonly [RunDifference, (piece: Piece) => string])[] = [
  ['lengths', ({ cutLength }) => cutLength.toFraction()],
  ['ends', endsOfPiece],
  ['done', ({ done }) => String(done)],
  ['one piece', ({ onePiece }) => String(onePiece)],
  ['match', ({ match }) => nameKey(match)],
];

export function differences(before: RunPieces, after: RunPieces): RunDifference[] {
  // More of the same are more, and nothing else.
  const isMore = before.pieces.length !== after.pieces.length;
  const tell = ({ pieces }: RunPieces, say: (piece: Piece) => string): string => {
    const told = pieces.map(say).sort();
    return JSON.stringify(isMore ? [...new Set(told)] : told);
  };
  const found = TELLING.flatMap(([is, say]) =>
    tell(before, say) === tell(after, say) ? [] : [is],
  );
  if (isMore) return ['pieces', ...found];
  if (found.length > 0) return found;
  // The same lengths and the same ends, but not on the same pieces.
  const whole = (piece: Piece): string => TELLING.map(([, say]) => say(piece)).join();
  return tell(before, whole) === tell(after, whole) ? [] : ['ends'];
}
