/** Blanks of several widths ripped side by side from one board. */
import type { ExactInches } from '../units/length.ts';

export interface RipList {
  /** Each as so many blanks of every width, in the order of the widths. */
  readonly rips: readonly (readonly number[])[];
  /** There are more ways than were asked for: most mixes of three widths and more are left out. */
  readonly isLimited: boolean;
}

/** One blank with the kerf that parts it from the next, as a whole count of one small unit. */
interface Cut {
  /** Its place among the widths. */
  readonly place: number;
  readonly width: bigint;
}

interface Mix {
  readonly counts: readonly number[];
  readonly rest: bigint;
}

/**
 * Every way to rip a board into blanks of the given widths, none of them within another: all mixes
 * with Σ n · width + (Σ n - 1) · kerf <= board in which no one blank more has room.
 *
 * Derived: counting one kerf more for the board and one for each blank, that is
 * Σ n · (width + kerf) <= board + kerf; and a mix is within another exactly where what it leaves
 * holds the narrowest blank with its kerf. For one width it is the rule of `countBlanks`. Exact.
 *
 * @param boardWidth in inches above 0, its edges straight
 * @param blankWidths in inches above 0; one that the board can't give is 0 in every mix
 * @param kerf of the ripping blade in inches, 0 or more
 * @param most how many ways are listed. Where there are more, those of at most two different widths
 *   are taken, and of these again the ones that waste least, each width in one of them at least
 */
export function listRips(given: {
  readonly boardWidth: ExactInches;
  readonly blankWidths: readonly ExactInches[];
  readonly kerf: ExactInches;
  readonly most: number;
}): RipList {
  const { boardWidth, blankWidths, kerf, most } = given;
  const unit = [boardWidth, kerf, ...blankWidths].reduce(
    (all, { d }) => commonMultiple(all, d),
    1n,
  );
  const whole = (length: ExactInches): bigint => (length.s * length.n * unit) / length.d;
  const board = whole(boardWidth) + whole(kerf);
  const cuts = blankWidths
    .map((width, place): Cut => ({ place, width: whole(width) + whole(kerf) }))
    .filter(({ width }) => width <= board)
    .sort((one, other) => (one.width === other.width ? 0 : one.width < other.width ? 1 : -1));
  const all = listMixes(cuts, board, blankWidths.length, most);
  if (all !== undefined) return { rips: all.map(({ counts }) => counts), isLimited: false };
  const some = keepLeastWaste(listPairs(cuts, board, blankWidths.length), cuts, most);
  return { rips: some.map(({ counts }) => counts), isLimited: true };
}

/** Widest blanks first and most of them first; undefined where there are more than `most`. */
function listMixes(
  cuts: readonly Cut[],
  board: bigint,
  widths: number,
  most: number,
): readonly Mix[] | undefined {
  const mixes: Mix[] = [];
  const counts = Array.from({ length: widths }, () => 0);
  const isWithin = (at: number, room: bigint): boolean => {
    const cut = cuts[at];
    if (cut === undefined) return true;
    const fit = room / cut.width;
    if (at === cuts.length - 1) {
      // As many of the narrowest as there is room for: less would be within this mix.
      counts[cut.place] = Number(fit);
      mixes.push({ counts: [...counts], rest: room - fit * cut.width });
      return mixes.length <= most;
    }
    for (let count = fit; count >= 0n; count--) {
      counts[cut.place] = Number(count);
      if (!isWithin(at + 1, room - count * cut.width)) return false;
    }
    return true;
  };
  return isWithin(0, board) ? mixes : undefined;
}

/** The mixes of one or two different widths to which nothing of these, or of any second one, can be added. */
function listPairs(cuts: readonly Cut[], board: bigint, widths: number): readonly Mix[] {
  const mixOf = (rest: bigint, ...parts: readonly (readonly [Cut, bigint])[]): Mix => {
    const counts = Array.from({ length: widths }, () => 0);
    for (const [{ place }, count] of parts) counts[place] = Number(count);
    return { counts, rest };
  };
  const narrowest = cuts.at(-1);
  return cuts.flatMap((wide, at) => {
    const most = board / wide.width;
    const left = board - most * wide.width;
    const alone =
      narrowest !== undefined && left < narrowest.width ? [mixOf(left, [wide, most])] : [];
    const mixed = cuts.slice(at + 1).flatMap((narrow) => {
      const mixes: Mix[] = [];
      for (let count = most; count > 0n; count--) {
        const room = board - count * wide.width;
        const beside = room / narrow.width;
        if (beside === 0n) continue;
        mixes.push(mixOf(room - beside * narrow.width, [wide, count], [narrow, beside]));
      }
      return mixes;
    });
    return [...alone, ...mixed];
  });
}

function keepLeastWaste(mixes: readonly Mix[], cuts: readonly Cut[], most: number): readonly Mix[] {
  const sorted = [...mixes].sort((one, other) =>
    one.rest === other.rest ? 0 : one.rest < other.rest ? -1 : 1,
  );
  const needed = cuts.flatMap(
    ({ place }) => sorted.find(({ counts }) => (counts[place] ?? 0) > 0) ?? [],
  );
  return [...new Set([...needed, ...sorted])].slice(0, Math.max(most, new Set(needed).size));
}

function commonMultiple(one: bigint, other: bigint): bigint {
  return (one / commonDivisor(one, other)) * other;
}

function commonDivisor(one: bigint, other: bigint): bigint {
  return other === 0n ? one : commonDivisor(other, one % other);
}
