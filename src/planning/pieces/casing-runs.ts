/** An opening becomes runs of casing, apron and stool, each traceable to it. */
import { degrees } from '../../core/units/angle.ts';
import type { ExactInches } from '../../core/units/length.ts';
import type { MeasuredAs, Run, RunEnd } from '../job.ts';
import { nameOnWall, outsideWidth, type OpeningSide } from './opening-sides.ts';

const SQUARE: RunEnd = { kind: 'square', corner: degrees(90) };
const MITER: RunEnd = { kind: 'outside miter', corner: degrees(90) };

/**
 * The runs around one opening, measured as the opening is, for each cased side: two legs and a head,
 * mitered where they meet. A window with neither stool nor apron is cased all round; with either, the
 * legs stand square on it. The second side stands in its own room's list where that is named. Apron and
 * stool belong to the first side alone: the apron is as long as the casing is wide from outside to
 * outside, and the stool reaches a horn further at each end.
 *
 * @param sides Of that opening: the first, and the second where its room is named.
 */
export function casingRuns([first, second]: readonly [OpeningSide, OpeningSide?]): Run[] {
  const { opening } = first;
  const { width, height, kind, sidesCased, stool, apron, cells } = opening;
  const allRound = kind === 'window' && stool === undefined && apron === undefined;
  const foot = allRound ? MITER : SQUARE;
  const runs: Run[] = [];
  const add = (
    of: OpeningSide,
    part: string,
    profile: string | undefined,
    length: ExactInches,
    [left, right]: readonly [RunEnd, RunEnd],
    measuredAs: MeasuredAs = 'opening',
  ): void => {
    if (profile === undefined) return;
    runs.push({
      room: of.room,
      run: `${nameOnWall(of)}, ${part}`,
      profile,
      length,
      measuredAs,
      reveal: opening.reveal,
      quantity: opening.quantity,
      left,
      right,
      onePiece: part !== 'apron',
      match: '',
      done: false,
      note: '',
      where: opening.where,
      cells: {
        profile: cells[part === 'apron' ? 'apron' : part === 'stool' ? 'stool' : 'casing'],
        measuredAs: opening.where,
        quantity: cells.quantity,
        match: opening.where,
      },
    });
  };
  for (let side = 1; side <= sidesCased; side++) {
    const of = side === 1 ? first : (second ?? first);
    const on = sidesCased === 1 ? '' : ` side ${side}`;
    add(of, `left leg${on}`, opening.casing, height, [foot, MITER]);
    add(of, `right leg${on}`, opening.casing, height, [MITER, foot]);
    add(of, `head${on}`, opening.casing, width, [MITER, MITER]);
    if (allRound) add(of, `foot${on}`, opening.casing, width, [MITER, MITER]);
  }
  const outside = outsideWidth(first);
  const stoolLength = outside.add(opening.horn.mul(2));
  add(first, 'apron', apron, outside, [SQUARE, SQUARE], 'finished');
  add(first, 'stool', stool, stoolLength, [SQUARE, SQUARE], 'finished');
  return runs;
}
