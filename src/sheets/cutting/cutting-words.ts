/** What the cutting sheet says in sentences. */
import type { CuttingGroup, ProfilePlan } from '../../planning/job-plan.ts';
import type { Profile } from '../../planning/job.ts';
import { shortRest } from '../../planning/short-rests.ts';
import type { Shop } from '../../planning/shop.ts';
import { sayVolume, VOLUME } from '../words/lumber-volume.ts';
import { count, printExact } from '../words/print-length.ts';
import { sayMoney } from '../../core/units/say-money.ts';
import { GLYPHS_MEAN } from '../words/say-ends.ts';
import { proofOfGroup, sayCost, sayProof } from '../words/say-proof.ts';
import { sayCutSticks } from '../words/tick-marks.ts';
import { railOf, sayLie, type EdgeMark } from './how-it-lies.ts';

export const BARS =
  'In the bars: hatched is trimmed off or waste, dark is an offcut to keep, a black line is a cut; a slanted end shows which side runs long, not how far.';

/** Where a stick is a clear stretch of a board with defects. */
export const ON_BOARDS =
  ' A stick from a board with defects stands where it lies on the board, its marked end at the left: crossed is what can’t be used, white the rest of that board.';

export function sayHow(shop: Shop): string {
  const { endTrim, crosscutKerf } = shop;
  const trim = `Each stick loses ${printExact(endTrim, shop)} at either end; ${printExact(crosscutKerf, shop)} goes with each cut.`;
  return `${trim} Sticks that are cut alike stand in one block: each length once, from long point to long point, and a column of marks for each stick, #12 A3 its number and the stick that it is cut from (I1/2 is the second blank of board I1). Tick a stick when it is cut, or each piece of it: what is ticked stays when the job is planned again. Pieces stand in the order they are cut, short ones first while the stick is long.`;
}

/** Beside the profile, how it lies and what its angles are from. */
export function sayHowCut(profile: Profile): string {
  const angles =
    profile.spring === undefined
      ? "Miters from square; a cope's angle is the corner of its walls."
      : 'On its back, miter from square and bevel from upright.';
  return `Lay it ${sayLie(profile)}. ${angles}`;
}

export const HOW_IT_LIES = `${GLYPHS_MEAN} Left and right are as you face the molding on its wall: lay it face up, the edge that goes up the wall (a casing's outer edge) away from you, and left is at your left.`;

/** What stands for the bars of more lay-outs than are drawn. */
export function sayMostBars(layOuts: number, most: number): string {
  if (layOuts <= most) return '';
  return ` The first ${most} lay-outs have a bar; with all ${layOuts} drawn, programs could hardly open this workbook. The rows of each say all that its bar would.`;
}

/** A choice that the shop makes once for a profile. */
export function sayEdgeChoice(profile: Profile, mark: EdgeMark): string {
  const what = mark === 'deep side' ? 'Deep side' : 'Wide flat';
  return `${what} on the wall: upper edge or lower edge? Tick one, decide once, and lay every stick of ${profile.name} the same way. It is the edge that ran along the ${railOf(profile)} rail.`;
}

const COVE_FIRST = 'Cut the cove on the whole blanks, and crosscut them afterwards.';
const SPARE_FIRST =
  'Crosscut the set-up spare off first, for trial cuts; then cut the cove on the whole blanks, and crosscut the rest afterwards.';

/** Beside a profile whose spare stays on. */
const OTHERS_FIRST =
  'Where it is not said otherwise below, crosscut the set-up spare off first, for trial cuts. Then cut the coves on the whole blanks, and crosscut them afterwards.';

/** What a group's sticks cost, and how near the least possible that is: on the screen, for it is no shop's print. */
export function sayGroupCost(group: CuttingGroup, { currency, decimalSign }: Shop): string {
  const say = (cents: number): string => sayMoney(cents, currency, decimalSign);
  const proof = proofOfGroup(group);
  const cut = group.cut === undefined ? '' : ' What is cut already is in it, at its cost.';
  return `Lumber ${sayCost(proof, say)}, least possible ${say(proof.boundCents)}: ${sayProof(proof, say, decimalSign)}.${cut}`;
}

/**
 * How many sticks, how they are cut, and what is done first.
 *
 * @param layOuts into how many lay-outs they go, ends and all
 */
export function sayGroup(
  group: CuttingGroup,
  plans: readonly ProfilePlan[],
  layOuts: number,
  shop: Shop,
): string {
  const { unit } = shop;
  const { boardFeetBought, boardFeetUsed, cut } = group;
  const sticks = plans.reduce((all, one) => all + one.sticks.length, 0);
  const area =
    boardFeetBought === undefined || boardFeetUsed === undefined
      ? []
      : [
          `${sayVolume(boardFeetBought, shop)} ${VOLUME[unit].mark} bought or from the rack, ${sayVolume(boardFeetUsed, shop)} used.`,
        ];
  const isMade = plans.some(({ profile }) => profile.make !== 'buy');
  return [
    `${count(sticks, 'stick')} in ${count(layOuts, 'lay-out')}.`,
    ...(cut === undefined ? [] : [`${sayCutSticks(cut.sticks, sticks)} already.`]),
    ...area,
    ...(isMade ? [sayFirst(plans, shop)] : []),
  ].join(' ');
}

function sayFirst(plans: readonly ProfilePlan[], shop: Shop): string {
  if (!shop.setUpSpare.gt(0)) return COVE_FIRST;
  const made = plans.filter(({ profile }) => profile.make !== 'buy');
  const short = made.filter((planned) => shortRest(planned, shop) !== undefined);
  if (short.length === 0) return SPARE_FIRST;
  return short.length === made.length ? COVE_FIRST : OTHERS_FIRST;
}

/** A spare that would leave too short a blank behind stays on its stick. */
export function sayStays(plans: readonly ProfilePlan[], shop: Shop): string | undefined {
  const short = plans.filter((planned) => shortRest(planned, shop) !== undefined);
  if (short.length === 0) return undefined;
  const names = short.map(({ profile }) => profile.name).join(', ');
  return `Don't crosscut the set-up spare of ${names} off first: the rest would be a shorter blank than this shop's least of ${printExact(shop.leastBlankLength, shop)}. Make trial cuts in other scrap, and cut the cove on the whole stick, spare and all.`;
}
