/** What the cutting sheet says in sentences. */
import type { CuttingGroup, ProfilePlan } from '../../planning/job-plan.ts';
import type { Profile } from '../../planning/job.ts';
import { shortRest } from '../../planning/short-rests.ts';
import type { Shop } from '../../planning/shop.ts';
import { sayVolume, VOLUME } from '../words/lumber-volume.ts';
import { count, printExact } from '../words/print-length.ts';
import { sayMoney } from '../../core/units/say-money.ts';
import { proofOfGroup, sayCost, sayProof } from '../words/say-proof.ts';
import { sayCutSticks } from '../words/tick-marks.ts';
import { railOf, type EdgeMark } from './how-it-lies.ts';

export const BARS =
  'In the bars: hatched is trimmed off or waste, dark is an offcut to keep, a black line is a cut. A slanted end shows which side runs long: above, the side to the wall or the outer edge; below, the face. How far it slants is not to scale.';

/** Where a stick is a clear stretch of a board with defects. */
export const ON_BOARDS =
  ' A stick from a board with defects stands where it lies on the board, its marked end at the left: crossed is what can’t be used, white the rest of that board.';

export function sayHow(shop: Shop): string {
  const { endTrim, crosscutKerf } = shop;
  const trim = `Each stick loses ${printExact(endTrim, shop)} at either end; ${printExact(crosscutKerf, shop)} goes with each cut.`;
  return `${trim} Tick a stick when it is cut, or each piece of it: what is ticked stays when the job is planned again. Pieces stand in the order they are cut, short ones first while the stick is long. Left and right are as you face the molding on its wall: lay it face up, the edge that goes up the wall (a casing's outer edge) away from you, and left is at your left.`;
}

/** What stands for the bars of more sticks than are drawn. */
export function sayMostBars(sticks: number, most: number): string {
  if (sticks <= most) return '';
  return ` The first ${most} sticks have a bar; with all ${sticks} drawn, programs could hardly open this workbook. The rows of each stick say all that its bar would.`;
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

/** What it costs, how near the least possible that is, how it is cut, and what is done first. */
export function sayGroup(group: CuttingGroup, plans: readonly ProfilePlan[], shop: Shop): string {
  const { currency, decimalSign, unit } = shop;
  const say = (cents: number): string => sayMoney(cents, currency, decimalSign);
  const { layouts, boardFeetBought, boardFeetUsed, cut } = group;
  const proof = proofOfGroup(group);
  const sticks = plans.reduce((all, one) => all + one.sticks.length, 0);
  const area =
    boardFeetBought === undefined || boardFeetUsed === undefined
      ? []
      : [
          `${sayVolume(boardFeetBought, shop)} ${VOLUME[unit].mark} bought or from the rack, ${sayVolume(boardFeetUsed, shop)} used.`,
        ];
  const isMade = plans.some(({ profile }) => profile.make !== 'buy');
  return [
    `Lumber ${sayCost(proof, say)}, least possible ${say(proof.boundCents)}: ${sayProof(proof, say, decimalSign)}.`,
    `${count(sticks, 'stick')} in ${count(layouts, 'lay-out')}.`,
    ...(cut === undefined
      ? []
      : [`${sayCutSticks(cut.sticks, sticks)} already, at their cost in it.`]),
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
