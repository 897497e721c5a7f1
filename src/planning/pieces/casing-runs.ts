/** An opening becomes runs of casing, apron and stool, each traceable to it. */
import Fraction from 'fraction.js';
import { degrees } from '../../core/units/angle.ts';
import type { ExactInches } from '../../core/units/length.ts';
import type { MeasuredAs, Opening, Profile, Run, RunEnd } from '../job.ts';

/** How far a stool's ends stand out beyond the casing. Common practice [C]. */
export const STOOL_HORN_INCHES = new Fraction(1);

const SQUARE: RunEnd = { kind: 'square', corner: degrees(90) };
const MITER: RunEnd = { kind: 'outside miter', corner: degrees(90) };

/**
 * The runs around one opening, measured as the opening is, for each cased side: two legs and a head,
 * mitered where they meet. A window with neither stool nor apron is cased all round; with either, the
 * legs stand square on it. Apron and stool belong to the first side alone: the apron is as long as the
 * casing is wide from outside to outside, and the stool reaches a horn further at each end.
 *
 * @param name of the opening, within its room
 * @param casing the profile found for it
 */
export function casingRuns(opening: Opening, name: string, casing: Profile | undefined): Run[] {
  const { width, height, kind, sidesCased, stool, apron } = opening;
  const allRound = kind === 'window' && stool === undefined && apron === undefined;
  const foot = allRound ? MITER : SQUARE;
  const runs: Run[] = [];
  const add = (
    part: string,
    profile: string | undefined,
    length: ExactInches,
    [left, right]: readonly [RunEnd, RunEnd],
    measuredAs: MeasuredAs = 'opening',
  ): void => {
    if (profile === undefined) return;
    runs.push({
      room: opening.room,
      run: `${name}, ${part}`,
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
    });
  };
  for (let side = 1; side <= sidesCased; side++) {
    const on = sidesCased === 1 ? '' : ` side ${side}`;
    add(`left leg${on}`, opening.casing, height, [foot, MITER]);
    add(`right leg${on}`, opening.casing, height, [MITER, foot]);
    add(`head${on}`, opening.casing, width, [MITER, MITER]);
    if (allRound) add(`foot${on}`, opening.casing, width, [MITER, MITER]);
  }
  const outside = outsideWidth(opening, casing);
  add('apron', apron, outside, [SQUARE, SQUARE], 'finished');
  add('stool', stool, outside.add(STOOL_HORN_INCHES.mul(2)), [SQUARE, SQUARE], 'finished');
  return runs;
}

/** From outside to outside of the casing: what the opening takes out of a wall's base. */
export function outsideWidth(opening: Opening, casing: Profile | undefined): ExactInches {
  return opening.width.add(outsideMargin(opening, casing).mul(2));
}

/** Reveal and casing beside the opening, on one side. */
export function outsideMargin(opening: Opening, casing: Profile | undefined): ExactInches {
  if (casing === undefined) return new Fraction(0);
  return opening.reveal.add(casing.blankWidth ?? 0);
}
