/* eslint max-lines: off -- the one list of every fault and caution: it is read as a list. */
/**
 * Every fault and caution with its wording, the only place where a message is written. What a fault is
 * about has its words in argument-words.ts.
 * Each names the argument, what was given, what is allowed, and a way on.
 */
import { NOTHING } from './quantity.ts';

export interface Facts {
  readonly argument: string;
  readonly given: string;
  readonly limit: string;
  readonly detail: (name: string) => string;
  /** An example in the decimal sign of who reads it. */
  readonly decimal: (digits: string) => string;
}
export type Wording = (facts: Facts) => string;

/** Ways on for a rail that the table doesn't hold. */
function sayRailWays({ detail }: Facts): string {
  const [widest, nearFlat] = [detail('widest'), detail('nearFlat')];
  const place = nearFlat === '' ? '' : ` with a near flat of ${nearFlat}`;
  const narrower = widest === '' ? '' : `A blank up to ${widest} wide${place} would do, or `;
  return narrower === ''
    ? 'Extend the table to that side.'
    : `${narrower}an extension of the table to that side.`;
}

/** Where a number of degrees is what such an angle comes to in radians. */
function sayRadians({ given, detail }: Facts): string {
  const radians = detail('radians');
  return radians === '' ? '' : `It looks like radians: ${given} of them are ${radians}. `;
}

/** Near names as `may`, where there are any. */
function didYouMean({ detail }: Facts): string {
  const may = detail('may');
  return may === '' ? '' : `Did you mean ${may}? `;
}

/** What a made run has otherwise than the row that stands in its place. */
function otherwiseMade({ detail }: Facts): string {
  const words = {
    length: 'length',
    left: 'left end',
    leftCorner: 'left corner',
    right: 'right end',
    rightCorner: 'right corner',
    quantity: 'quantity',
  };
  const said = Object.entries(words).flatMap(([key, name]) =>
    detail(key) === '' ? [] : [`${name} ${detail(key)}`],
  );
  return said.length === 0 ? '' : ` (which has ${said.join(', ')})`;
}

/** By what a room misses, and what is allowed. */
function sayMiss({ given, detail }: Facts): string {
  const [turned, gapAllowed] = [detail('turned'), detail('gapAllowed')];
  const angle = `its corners turn ${turned} in all, ${detail('angleMiss')} off 360° (up to ${detail('angleAllowed')} is allowed)`;
  const gap = `going round it ends ${given} from where it began (up to ${gapAllowed} is allowed)`;
  return [...(turned === '' ? [] : [angle]), ...(gapAllowed === '' ? [] : [gap])].join(', and ');
}

/** One measure that would close a room, by the number of its details; empty where there is none. */
function saySuspect({ detail }: Facts, number: number): string {
  const of = (name: string): string => detail(`${name} ${number}`);
  const [length, corner, turn] = [of('length'), of('corner'), of('turn')];
  if (length === '' && corner === '') return '';
  const measure = length === '' ? `the corner at the right of wall ${corner}` : `wall ${length}`;
  const rest = turn === '' ? `${of('change')} ${of('way')}` : `${turn}, not ${of('notTurn')}`;
  return `${measure} would have to be ${of('wouldBe')}, ${rest}`;
}

/** Those that can't be told apart, then the best of the other kind, where it would do too. */
function saySuspects(f: Facts): string {
  const said = [1, 2, 3, 4].map((number) => saySuspect(f, number)).filter((one) => one !== '');
  const others = f.detail('others');
  const may = `${said.join('; or ')}${others === '' ? '' : `; or ${others} something like it`}`;
  if (f.detail('none') !== '') {
    const nearest = said.length === 0 ? '' : ` It comes nearest where ${may}.`;
    return `No single length or corner closes it, so more than one is wrong.${nearest}`;
  }
  const first =
    said.length === 1 ? 'Most likely' : "One of these, which its sizes can't tell apart:";
  const other = saySuspect(f, 0);
  return `${first} ${may}.${other === '' ? '' : ` Less likely, ${other}.`}`;
}

const wordings = <Codes extends Record<string, Wording>>(codes: Codes): Codes => codes;

export const WORDING = wordings({
  // Reading text and numbers
  'length.missing': (f) => `${f.argument} is empty. Give a length, such as 3 1/2 or 90 mm.`,
  'length.unreadable': (f) =>
    `${f.argument}: ${f.given} is not a length that can be read. Write it like 3 1/2, 7' 4 3/8" or 90 mm.`,
  'length.zero-denominator': (f) =>
    `${f.argument}: ${f.given} divides by zero. Write the fraction with a denominator from 1.`,
  'length.too-long': (f) => `${f.argument}: ${f.given} is longer than ${f.limit}. Check the unit.`,
  'length.date': (f) =>
    `${f.argument}: ${f.given} is a date; it may have been ${f.detail('fraction')} before a spreadsheet changed it. Format the cell as text and type the length again, with a 0 before a bare fraction (0 3/4).`,
  'length.date-number': (f) =>
    `${f.argument}: ${f.given} is what a spreadsheet stores for the date ${f.detail('date')}, which it may have made of ${f.detail('fraction')}. Format the cell as text and type the length again, with a 0 before a bare fraction (0 3/4). Where the number is meant, write its unit with it.`,
  'length.asked-about': (f) =>
    `${f.argument} is ${f.given}, more than any shop or house has (${f.limit}). Check the unit: bare numbers are read in the shop's. Where it is meant, write the unit with the number.`,
  'length.asked-short': (f) =>
    `${f.argument} is ${f.given}, which is hardly meant: bare numbers are read in the shop's unit. Where ${f.detail('meant')} is meant, write that; else write the unit with the number.`,
  'length.all-short': (f) =>
    `${f.argument} has no length above ${f.given}: bare numbers are inches. Where they are feet, head the column Length (ft), or write the unit with each.`,
  'length.beyond-shop': (f) =>
    `${f.argument} is ${f.given}; no shop's is more than ${f.limit}. Check the unit: bare numbers are inches.`,
  'length.not-positive': (f) => `${f.argument} is ${f.given}; it must be more than 0.`,
  'length.negative': (f) => `${f.argument} is ${f.given}; it must be 0 or more.`,
  'length.inches-over-foot': (f) =>
    `${f.argument}: ${f.given} has 12 inches or more over its feet. Write the feet full, or all of it in inches.`,
  'number.too-many-characters': (f) =>
    `${f.argument}: the text is ${f.given} characters long; at most ${f.limit} are read as a number or a length. Write the number alone.`,
  'number.two-readings': (f) =>
    `${f.argument}: ${f.given} may be ${f.detail('one')} or ${f.detail('other')}. Write it without a sign between thousands.`,
  'number.other-sign': (f) =>
    `${f.argument}: ${f.given} has its decimals behind “${f.detail('sign')}”, and the decimal sign is “${f.detail('own')}” here. Write it with that one; ${f.detail('option') === '' ? 'where the whole job uses the other, say so in Shop (decimal sign)' : `where all numbers use the other, add ${f.detail('option')}`}.`,
  'number.percent': (f) =>
    `${f.argument}: ${f.given} is a percent, which this is not. Write it without the %; where the cell's number format shows the %, choose another.`,
  'number.other-unit': (f) =>
    `${f.argument}: ${f.given} says “${f.detail('said')}”, which can't stand here. Write it without; where the cell's number format shows it, choose another.`,
  'number.other-currency': (f) =>
    `${f.argument}: ${f.given} is in ${f.detail('said')}, and the shop counts in ${f.detail('currency')}. Give it in that, or write ${f.detail('said')} under currency on Shop.`,
  'number.below-one-percent': (f) =>
    `${f.argument} is ${f.given}, less than one percent. Where ${f.detail('whole')} % is meant, write ${f.detail('whole')}.`,
  'number.unreadable': (f) =>
    f.given === NOTHING
      ? `${f.argument} is empty. Give a number, such as ${f.decimal('3.5')} or 12.`
      : `${f.argument}: ${f.given} is not a number. Write it like ${f.decimal('3.5')} or 12.`,
  'number.not-positive': (f) => `${f.argument} is ${f.given}; it must be more than 0.`,
  'number.negative': (f) => `${f.argument} is ${f.given}; it must be 0 or more.`,
  'number.too-large': (f) => `${f.argument} is ${f.given}; at most ${f.limit} is allowed.`,
  'number.too-small': (f) => `${f.argument} is ${f.given}; at least ${f.limit} is needed.`,
  'number.not-whole': (f) => `${f.argument} is ${f.given}; it must be a whole number.`,
  'word.unknown': (f) =>
    `${f.argument}: ${f.given} is not known here. ${f.detail('may') === '' ? '' : `Did you mean ${f.detail('may')}? `}Allowed: ${f.detail('allowed')}.`,
  'angle.out-of-range': (f) => {
    const above = f.detail('above');
    const least = above === '' ? `from ${f.detail('least')}` : `more than ${above} and at most`;
    return `${f.argument} is ${f.given}; measured from ${f.detail('from')}, it must be ${least}${above === '' ? ' to' : ''} ${f.limit}.`;
  },
  'angle.corner-tiny': (f) =>
    `${f.argument} is ${f.given}; no two walls meet at less than ${f.limit}. ${sayRadians(f)}Write the angle between the walls in degrees; a square corner is 90.`,
  'angle.spring-tiny': (f) =>
    `${f.argument} is ${f.given}; the back of a crown leans at least ${f.limit} from its wall. ${sayRadians(f)}Write the angle between its back and the wall in degrees; 38 and 45 are usual.`,
  'angle.corner-sharp': (f) =>
    `${f.argument} is ${f.given}, which is taken as the angle between the two walls. Where it is the saw's miter from a square cut, write the corner instead: ${f.detail('meant')}.`,
  'address.unreadable': (f) =>
    `${f.argument}: ${f.given} is no address at which a phone finds the page. Write the one at which it is hosted, up to its last /, such as https://example.org/coves/; or leave it empty for no codes on Set-ups. An address of this machine alone (localhost) opens on no other.`,
  'text.missing': (f) => `${f.argument} is empty and is needed here.`,
  'text.ditto': (f) =>
    `${f.argument}: ${f.given} says that it is as above, which isn't read so. Write it out in each row.`,
  'text.too-long': (f) =>
    `${f.argument}: the text is ${f.given} characters long; at most ${f.limit} are allowed.`,

  // Coves: can it be made?
  'cove.size-missing': (f) => `${f.argument} is ${f.given}; a cove needs a size of more than 0.`,
  'cove.kerf-too-thick': (f) =>
    `${f.argument} is ${f.given}; the kerf of a blade must be from 0 to ${f.limit} for this diameter.`,
  'cove.off-center-negative': (f) =>
    `${f.argument} is ${f.given}; give its size without a sign. Which side is deep follows from the feed: the deep side lies toward the far rail.`,
  'cove.off-center-beyond-half': (f) =>
    `${f.argument} is ${f.given}, beyond half the cove's width (${f.limit}). Give one that leaves the deepest line under the cove's own face.`,
  'cove.too-wide': (f) => {
    const depth = f.detail('depthThatWould');
    const blade = f.detail('bladeThatWould');
    const width = f.detail('widthThatWould');
    const ways = [
      ...(depth === '' ? [] : [`a depth of ${depth}`]),
      ...(blade === '' ? [] : [`a blade of ${blade}`]),
    ];
    const others = ways.length === 0 ? '' : `, or take ${ways.join(' or ')}`;
    const way = `Lessen the width${width === '' ? '' : ` to ${width}`}${others}.`;
    return `${f.argument} is ${f.given}; this blade cuts ${f.limit} at most at that depth by an approach up to ${f.detail('steepest')} from the blade line, beyond which the board meets the blade's side. ${way}`;
  },
  'cove.no-wider-than-kerf': (f) =>
    `${f.argument} is ${f.given}; a blade lying flat along the feed already cuts ${f.limit}. Use a thinner blade or a wider cove.`,
  'cove.too-deep-for-blade': (f) =>
    `${f.argument} is ${f.given}; the blade must stay below its own middle, so less than ${f.limit} can be cut. Use a larger blade or a shallower cove.`,
  'cove.no-tilt-enough': (f) =>
    `${f.argument} is ${f.given}; at this width and depth no tilt up to ${f.detail('tiltStop')} brings the deepest line further off than ${f.limit}.`,
  'cove.corner-alone': (f) =>
    `${f.argument} is ${f.given}; past a tilt of ${f.detail('tiltStop')} a corner of the blade alone would cut this depth, and up to there the deepest line comes no further off than ${f.limit}. Take a thinner blade or a deeper cove.`,
  'cove.tilt-beyond-stop': (f) =>
    `Tilt comes to ${f.given}, past the saw's stop at ${f.limit}. The largest off-center that the stop allows at this width and depth is ${f.detail('offCenterAtStop')}.`,
  'cove.blade-cannot-rise': (f) =>
    `The blade must rise ${f.given} along its slope; at this tilt the saw gives ${f.limit}. ${f.detail('depthThatWould') === '' ? 'A shallower cove or less tilt would do.' : `A depth of ${f.detail('depthThatWould')} would do.`}`,
  'cove.blade-cannot-rise-unstated-saw': (f) =>
    `The blade must rise ${f.given} along its slope. How high the saw brings it isn't given, so ${f.limit} is assumed: half the blade's diameter less ${f.detail('allowance')} for flange and arbor. Measure your saw and say it in Shop (greatest height upright), or make the cove shallower.`,
  'cove.height-below-corner': (f) =>
    `${f.argument} is ${f.given}; tilted so far, the blade shows no more than a corner of its edge above the table up to ${f.limit}. Raise the blade or tilt it less.`,
  'cove.web-too-thin': (f) =>
    `Stock left above the cove is ${f.given}; at least ${f.limit} is needed. Stock of ${f.detail('thicknessThatWould')} would do.`,
  'cove.flat-too-narrow': (f) =>
    `${f.argument} is ${f.given}; at least ${f.limit} must ride on the table. A blank ${f.detail('widthThatWould')} wide would do.`,
  'cove.undercut-eats-flat': (f) =>
    `${f.argument} is ${f.given}, but the wall on the deep side leans ${f.detail('beyondFace')} over it, so only ${f.detail('left')} of wood is left; at least ${f.limit} is needed. A blank ${f.detail('widthThatWould')} wide would do.`,
  'cove.undercut-meets-rail': (f) =>
    `${f.argument} is ${f.given}, but the wall on the deep side leans ${f.detail('beyondFace')} over it: the blade would come out of the blank's edge and meet the far rail. A blank ${f.detail('widthThatWould')} wide would do.`,
  'cove.undercut': (f) =>
    `The wall on the deep side leans ${f.given} past upright, so the cove is wider inside (${f.limit}) than at its face. It needs a far flat of at least ${f.detail('farFlat')}: the undercut, and ${f.detail('leastFlat')} that stays. Sanding into it is awkward.`,
  'cove.steep-approach': (f) =>
    `The approach is ${f.given} from the blade line, steeper than ${f.limit}: the cut loads the blade sideways. Take lighter passes.`,
  'cove.thin-kerf': (f) =>
    `The kerf is ${f.given}, thinner than a full-kerf blade (${f.limit}): a thin blade bends under a side load. Prefer a full-kerf blade.`,
  'cove.step-too-high': (f) =>
    `${f.argument} is ${f.given}; a pass may take ${f.limit} at most. Choose a smaller step.`,
  'cove.step-high': (f) =>
    `${f.argument} is ${f.given}, more than the usual ${f.limit} a pass. Lighter passes are safer and smoother.`,
  'cove.too-many-passes': (f) =>
    `The depth asks for ${f.given} passes at this step; at most ${f.limit} are planned. Use a larger step.`,
  'rails.miss-table': (f) =>
    `${f.argument}: between rails ${f.given} apart, the ${f.detail('rail')} rail would miss the saw's table, so there is nothing to clamp it to. ${sayRailWays(f)}`,
  'rails.corner-alone': (f) =>
    `${f.argument}: between rails ${f.given} apart, the ${f.detail('rail')} rail would lie on ${f.limit} of the saw's table, not on both sides of the blade: a clamp at one end alone lets it turn. ${sayRailWays(f)}`,
  'rails.off-table': (f) =>
    `${f.argument} would lie ${f.given} from the blade, but this table ends ${f.limit} from it. Mark the table's side edge instead.`,
  'rails.off-usual-table': (f) =>
    `${f.argument} would lie ${f.given} from the blade, where the widest tables end (${f.limit}). Give the table's width in Shop (table width), and the marks for its side edges are worked out.`,

  // Matching a trace
  'match.too-few-points': (f) =>
    `${f.argument}: ${f.given} different points were read; at least ${f.limit} are needed, spread over the whole cove. Trace more of them.`,
  'match.too-many-points': (f) =>
    `${f.argument}: ${f.given} were given; at most ${f.limit} are taken. Leave out some: a hundred over the cove tell as much.`,
  'match.face-too-short': (f) =>
    `${f.argument}: the two points that give the face line lie ${f.given} apart; at least ${f.limit} is needed to tell its direction. Give a point of the flat on each side of the cove.`,
  'match.no-depth': (f) =>
    `${f.argument}: they lie ${f.given} off the face line at most; a cove needs ${f.limit}. The face line runs through the first and last point, where no other is given.`,
  'match.both-sides': (f) =>
    `${f.argument}: they lie on both sides of the face line, ${f.detail('deep')} on one and ${f.given} on the other, so it isn't known which is the wood. Give two points of the flats as the face line.`,
  'match.crosses': (f) =>
    `${f.argument}: the way along the points crosses itself there. Give them in order along the profile, once each.`,
  'match.too-little': (f) =>
    `${f.argument}: they cover ${f.given} of the cove that they fit; at least ${f.limit} is needed to tell the rest of it. Trace it from edge to edge.`,
  'match.deep-side': (f) =>
    `${f.argument}: the deep side of the cove lies toward those that are ${f.given === '“right”' ? 'further across' : 'less far across'}. It goes toward the far rail.`,
  'match.misses': (f) =>
    `The setting misses the trace by ${f.given} at point ${f.detail('point')}, more than ${f.limit}: it leaves ${f.detail('leaves')} there.`,
  'match.two-settings': (f) => {
    const other =
      f.detail('isMirrored') === ''
        ? `then approach ${f.detail('otherApproach')}, tilt ${f.detail('otherTilt')}, height ${f.detail('otherHeight')}`
        : 'then the same with the board turned end for end';
    return `Two settings on one blank would miss it by ${f.given} at most: approach ${f.detail('approach')} from the blade line, tilt ${f.detail('tilt')} from upright, height ${f.detail('height')}; ${other}, its cove ${f.detail('between')} further across.`;
  },
  'match.upright': (f) =>
    `The trace doesn't tell the tilt from upright: it may be up to ${f.given}. Upright is taken, which comes as near.`,
  'match.interval': (f) =>
    `${f.argument}: from ${f.given} to ${f.limit} by this trace (true of 95 in 100 such traces).`,
  'match.not-told-waves': (f) =>
    `${f.argument}: how sure the angles are can't be told. The misses lie in waves along the trace: the hand wandered, or the molding isn't one cove of this blade.`,
  'match.not-told-paint': (f) =>
    `${f.argument}: how sure the angles are can't be told of a painted molding, since how thick the paint lies isn't known.`,
  'match.not-told-limit': (f) =>
    `${f.argument}: how sure the angles are can't be told, since the best setting stands at a limit of the saw.`,
  'match.not-told-points': (f) =>
    `${f.argument}: how sure the angles are can't be told by these. More of them, spread from edge to edge, tell more.`,
  'match.doubles': (f) => `${f.argument}: ${f.given} repeat the one before and were left out.`,
  'match.reordered': (f) =>
    `${f.argument} were given out of order; they were taken in order across the face.`,
  'match.two-columns': (f) =>
    `${f.argument} is a range of ${f.given} ${f.given === '1' ? 'column' : 'columns'}; it takes ${f.limit}: how far across each point lies, and how far into the wood from there.`,
  'match.point-half': (f) =>
    `${f.argument} has one of its two numbers alone. Give how far across it lies and how far from there.`,

  // A trial cut, measured
  'trial.no-set-up': (f) =>
    `${f.argument}: there is no set-up that cuts it, so there is nothing to compare the trial with. Size a cove that can be made first.`,
  'trial.not-this-blade': (f) =>
    `${f.argument}: no approach and tilt of this blade cut a cove of these three sizes. Measure again, at the face, across the feed; or say the blade that cut it.`,
  'trial.another-cove': (f) =>
    `${f.argument}: this is another cove than the one aimed at: its approach would be ${f.given} off, its tilt ${f.detail('tilt')} and its height ${f.detail('height')}, more than scales and marks are read wrong by. Check which set-up was on the saw.`,

  'trial.sizes': (f) =>
    `${f.argument}: ${f.given} isn't two or three sizes. Write width, depth and off-center with x between them, such as 3 5/8 x 7/8 x 3/8.`,
  'trial.right': (f) =>
    `The trial is right to ${f.given}, which is what it was measured to: nothing need be moved.`,
  'trial.sure': (f) =>
    `Measured to ${f.limit}, the moves are sure to about ${f.given} of approach, ${f.detail('tilt')} of tilt and ${f.detail('height')} of height.`,
  'trial.likely': (f) =>
    `One thing alone explains it: the ${f.detail('cause')} was ${f.given} ${f.detail('more')} than was thought. No size is off by more than ${f.limit} then.`,
  'trial.several': (f) =>
    `${f.argument}: no single thing explains it, so more than one of approach, tilt, height and blade was other than thought. Move all three, and make another trial.`,
  'trial.other-side': (f) =>
    `The blade leaned ${f.given} to the other side: its stop for upright is off. Square it to the table first.`,

  // Crown
  'crown.spring-out-of-range': (f) =>
    `${f.argument} is ${f.given}; a spring angle lies between 0° and 90° from the wall.`,
  'crown.corner-out-of-range': (f) =>
    `${f.argument} is ${f.given}; a wall corner lies between 0° and 180° (360° less it, for the other side).`,
  'crown.pitch-out-of-range': (f) =>
    `${f.argument} is ${f.given}; the pitch of a ceiling lies between 0° and 90° from level.`,
  'crown.slope-out-of-range': (f) =>
    `${f.argument} is ${f.given}; a molding that falls or rises along a wall does so by less than 90° from level.`,
  'crown.slope-unreadable': (f) =>
    `${f.argument}: ${f.given} is no slope that can be read. Write degrees from level, such as ${f.decimal('18.4')}, or the rise in 12, such as 4/12 or 4 in 12.`,
  'crown.slope-nearly-level': (f) =>
    `${f.argument} is ${f.given} from level, which nobody would see: a rise such as 4/12, worked out as a number, comes to so little. Write 4 in 12, or its degrees, ${f.decimal('18.4')}; leave ${f.argument} blank where the ceiling is level.`,
  'crown.slope-too-steep': (f) =>
    `${f.argument} is ${f.given} from level; it lies between 0° and ${f.limit}, without a sign: its cuts and profiles are told for both ways, up and down.`,

  'crown.bevel-too-near': (f) => {
    const nearFlat = f.detail('nearFlat');
    const place = nearFlat === '' ? '' : ` with a near flat of ${nearFlat}`;
    const left = f.given.startsWith('-')
      ? `The bevels of the crown's back would cut ${f.given.slice(1)} into the cove`
      : `The bevels of the crown's back would leave ${f.given} of wood to the cove`;
    return `${left}; at least ${f.limit} (least flat) is needed. A blank ${f.detail('widthThatWould')} wide${place} would do.`;
  },
  'crown.bevel-one-way': (f) => {
    const other = f.detail('onWall') === 'near' ? 'far' : 'near';
    const left = f.given.startsWith('-')
      ? `would cut ${f.given.slice(1)} into the cove`
      : `would leave ${f.given} of wood to the cove, less than ${f.limit}`;
    return `The ${f.detail('onWall')} edge of this crown goes on the wall: with the ${other} edge there the bevels of its back ${left}.`;
  },
  'crown.size-without-spring': (f) =>
    `${f.argument} is ${f.given}, but the profile has no spring angle. Fill in Spring, or leave ${f.argument} blank.`,
  'crown.size-beyond-face': (f) =>
    `${f.argument} is ${f.given}${f.detail('other') === '' ? '' : ` and ${f.detail('otherName')} ${f.detail('other')}`}: that takes a face ${f.detail('asked')} wide, and the molding is ${f.limit} wide. Correct Drop, Projection or Blank width.`,

  // The bid
  'bid.range-unsound': (f) =>
    `${f.argument}: ${f.given} is no rate or waste. Give numbers from 0 for low, likely and high.`,
  'bid.range-out-of-order': (f) =>
    `${f.argument}: likely is ${f.given}, but low is ${f.detail('low')} and high is ${f.detail('high')}. Likely lies between the two, or is one of them.`,

  'job.range-low-above': (f) =>
    `${f.argument} is ${f.given}, above what is likely: ${f.limit}. Low is the least that is likely${f.detail('isPercent') === '' ? '' : ': write -10 for 10 % less'}. Correct it, or leave it blank where it is known.`,
  'job.range-high-below': (f) =>
    `${f.argument} is ${f.given}, below what is likely: ${f.limit}. High is the most that is likely${f.detail('isPercent') === '' ? '' : ': write 10 for 10 % more'}. Correct it, or leave it blank where it is known.`,
  'job.range-without-rate': (f) =>
    `${f.argument} is ${f.given}, but hourly rate is 0 or blank, so nothing is likely that lies between. Fill in hourly rate, or leave low and high blank.`,

  // Rooms
  'room.no-walls': (f) => `${f.argument} has no walls. List them in order to the right.`,
  'room.too-many-walls': (f) =>
    `${f.argument} has ${f.given} walls; at most ${f.limit} are read in one room. Give each room a name of its own.`,
  'room.too-few-walls': (f) =>
    `${f.argument} has ${f.given === '1' ? 'one wall' : `${f.given} walls`}; walls that go all round are ${f.limit} at least. List those that lack, or write end under Turn of the last, where it doesn't come back to the first.`,
  'room.corner-out-of-range': (f) =>
    `${f.argument} is ${f.given}; a gauge between two walls reads more than 0° and less than 180°. Where it lies round an outside corner, write what it reads there, and outside under Turn.`,
  'room.end-before-last': (f) =>
    `${f.argument}: the walls end here, and more of the room follow. Write inside or outside under Turn, or give what follows the name of another room.`,
  'room.tape-too-long': (f) =>
    `${f.argument} is ${f.given}; between marks ${f.detail('markOut')} out from the corner it is less than ${f.limit}. Measure straight from mark to mark.`,
  'room.turned-about': (f) =>
    `${f.argument}: its corners turn ${f.given} in all, once round to the left. Walls are listed in order to the right, as one faces them from inside: a corner that sticks into the room is outside, any other inside. Change inside and outside under Turn throughout.`,
  'room.not-closed': (f) => `${f.argument} doesn't close: ${sayMiss(f)}. ${saySuspects(f)}`,
  'room.closes-badly': (f) =>
    `${f.argument} closes within what is allowed, but by more than an honest tape and gauge leave: ${sayMiss(f)}. ${saySuspects(f)}`,
  'room.walls-cross': (f) =>
    `${f.argument} would run through ${f.detail('other')}. Check both, the corners between them, and inside and outside under Turn.`,
  'room.opening-wider-than-wall': (f) =>
    `${f.argument} is ${f.given} wide, and wall ${f.detail('wall')} is ${f.limit} long. Check Width, Wall and the wall's Length.`,
  'room.openings-overlap': (f) =>
    `${f.argument} begins ${f.given} along wall ${f.detail('wall')}, inside ${f.detail('other')}, which reaches from ${f.detail('otherFrom')} to ${f.limit}. Check Position and Width of both.`,
  'room.openings-fill-wall': (f) =>
    `${f.argument}: the openings on wall ${f.detail('wall')} are ${f.given} wide in all, and it is ${f.limit} long. Check their Width and Wall.`,
  'room.corner-twice': (f) =>
    `${f.argument} is ${f.given}, and Corner stands beside it${f.detail('corner') === '' ? '' : ` (${f.detail('corner')})`}. Keep the one that was measured better, and leave the other blank.`,
  'room.corner-unused': (f) =>
    `${f.argument} is not used, since Turn says ${f.given}: no wall follows. Leave it blank; or write inside or outside under Turn where one does.`,
  'room.wall-twice': (f) =>
    `${f.argument}: another wall of the room is named ${f.given} too. Give each wall of a room a name of its own.`,
  'room.gap': (f) =>
    `${f.argument}: going round it ends ${f.given} from where it began (up to ${f.detail('allowed')} is allowed)${f.detail('missed') === '' ? '' : `, and its corners turn ${f.detail('missed')} more or less than 360°`}. Lengths and corners are taken as they are typed.`,
  'room.without-trim': (f) =>
    `${f.argument}: no row of Trim runs along its walls, so no runs are made there. Add one where it is to have trim.`,
  'room.not-listed': (f) =>
    `${f.argument}: Walls has no room ${f.given}. ${f.detail('known') === '' ? 'List its walls there.' : `It has: ${f.detail('known')}. Write one of these, or all; or list its walls.`}`,
  'room.wall-not-listed': (f) =>
    f.detail('room') === ''
      ? `${f.argument}: no room of Walls has a wall ${f.given}. ${didYouMean(f)}They have: ${f.detail('known')}.`
      : `${f.argument}: ${f.detail('room')} has no wall ${f.given} in Walls. ${didYouMean(f)}It has: ${f.detail('known')}.`,
  'room.trim-on-no-wall': (f) =>
    `${f.argument}: ${f.given} leaves no wall of the room, so nothing would be made. Name the walls that it runs along, or take the row out.`,
  'room.starts-without-trim': (f) =>
    `${f.argument}: wall ${f.given} has none of this trim (Walls: ${f.detail('walls')}). Name one that has, or leave it blank for the wall across from the door.`,
  'room.trim-twice': (f) =>
    `${f.argument}: ${f.given} runs along wall ${f.detail('wall')} in ${f.detail('room')} by a row above already (${f.detail('at')}). Take one of the two rows out, or leave walls out under Walls: except ${f.detail('wall')}.`,
  'room.own-row-first': (f) =>
    `${f.argument}: its own row says what runs there of ${f.given} (${f.detail('at')}), so the row for all is not used in it.${f.detail('bare') === '' ? '' : ` Along ${f.detail('bare')} there is none.`}`,
  'room.trim-above-ceiling': (f) =>
    `${f.argument} is ${f.limit} high, and trim is to run along it ${f.given} from the floor. Check Height here and in Walls.`,
  'room.above-ceiling': (f) =>
    `${f.argument} reaches ${f.given} from the floor, and wall ${f.detail('wall')} is ${f.limit} high. Check ${f.detail('cells')}, and the wall's Height.`,
  'room.casing-laps-ceiling': (f) =>
    `${f.argument}: with its casing it reaches ${f.given} into ${f.detail('profile')} at the ceiling, which is cut by nothing. Notch one of the two, or check Height, Sill and the wall's Height.`,
  'room.opening-on-no-wall': (f) =>
    `${f.argument}: Wall is blank, so nothing is cut away for this ${f.given}, though the room's walls are listed. Name its wall.`,
  'room.run-taken-over': (f) =>
    f.detail('made') === ''
      ? `${f.argument}: this row stands in place of the run of ${f.given} that Walls and Trim make on that wall${otherwiseMade(f)}. Take it out to have that one again.`
      : `${f.argument}: Walls and Trim make ${f.detail('made')} of ${f.given} on that wall, and Runs has ${f.detail('rows')} in their place. Check that this is meant; without these rows that is planned which is made.`,
  'room.runs-taken-over': (f) =>
    `${f.argument}: Runs has ${f.given} of its runs, the same as Walls and Trim make. Another length or corner in Walls no longer changes these; take a row out to have its run made again.`,
  'room.runs-beside': (f) =>
    `${f.argument}: Runs has ${f.detail('profile')} there (${f.given}) beside what Walls and Trim make of it, and both are planned. Where the row stands for a wall, give it that wall's name under Run.`,
  'room.runs-lack-heading': (f) =>
    `Runs has no column ${f.argument}, which the run ${f.detail('run')} of ${f.detail('profile')} in ${f.detail('room')} needs (${f.given}). Add the heading, and take the run over again; nothing was written.`,
  'room.run-reads-otherwise': (f) =>
    `${f.argument}: its run of ${f.given} would not be read in Runs as it is made; nothing was written. Give its wall a plainer name, or type the run there.`,
  'room.nothing-made': (f) =>
    `${f.argument} has no rows, so nothing runs along the walls of ${f.given}. Add rows that say what does.`,

  // Lumber
  'lumber.class-unknown': (f) =>
    `${f.argument}: ${f.given} is no thickness class. Allowed: ${f.detail('allowed')}.`,
  'lumber.nominal-unknown': (f) =>
    `${f.argument}: ${f.given} is no nominal size of dry softwood. Allowed: ${f.detail('allowed')}.`,
  'lumber.species-unknown': (f) =>
    `${f.argument}: ${f.given} is not in the table of densities, so its weight is left out. Known: ${f.detail('allowed')}.`,
  'lumber.board-too-narrow': (f) =>
    `${f.argument} is ${f.given} wide; a blank needs ${f.limit}. Use a wider board.`,

  // Tables of a job
  'table.missing': (f) =>
    f.detail('file') === ''
      ? `There is no ${f.argument} table in ${f.given}. Add it, on a sheet of its own; coveledger new FILE.xlsx makes one.`
      : `There is no ${f.detail('file')} in ${f.given}, for the table ${f.argument}. Add it; coveledger new FOLDER --csv makes one.`,
  'table.no-sheet': (f) =>
    `There is no sheet ${f.argument} in ${f.given}. ${f.detail('sheets') === '' ? 'Name one that it has.' : `It has: ${f.detail('sheets')}.`}`,
  'table.first-sheet': (f) =>
    `Of ${f.given} the sheet ${f.argument} was read, its first. Where the list is on another, name that behind the file, ${f.detail('name')}. It has: ${f.detail('sheets')}.`,
  'table.twice': (f) => `${f.argument} stands twice in ${f.given}. Keep one of them.`,
  'table.heading-missing': (f) => `${f.given} has no column headed ${f.argument}. Add it.`,
  'table.heading-twice': (f) => `Two columns are headed ${f.given}. Keep one of them.`,
  'table.heading-two': (f) =>
    `${f.argument}: the columns headed ${f.given} and “${f.detail('other')}” both say it. Empty one of them; or, where it is for yourself alone, head it “${f.detail('notUsed')}”.`,
  'table.heading-near': (f) =>
    `${f.argument} has no column headed ${f.given}. Did you mean ${f.detail('may')}? Head it so; or, where it is for yourself alone, “${f.detail('notUsed')}”.`,
  'table.column-unused': (f) =>
    `${f.argument} ${f.given} is filled and stands for nothing here, though it may mean ${f.detail('may')}. Head it, or choose it, as what it stands for; or, where it is for yourself alone, head it “${f.detail('notUsed')}”.`,
  'table.heading-merged': (f) =>
    `${f.argument} has rows but no heading of its own. Where headings are merged, take the merge apart and give each column its heading; a column that is for yourself alone may be headed “not used”.`,
  'table.merged-down': (f) =>
    f.detail('heading') === 'yes'
      ? `The heading of ${f.argument} is merged with cells of its rows (${f.detail('range')}), so what stands in them can't be told. Take the merge apart.`
      : `${f.argument}: ${f.given} stands once for ${f.limit} rows (${f.detail('range')} are merged), and whether it is meant for each of them or for all together can't be told. Take the merge apart and fill in each row.`,
  'table.merged-across': (f) =>
    `${f.argument}: ${f.given} stands once for several columns (${f.detail('range')} are merged), and one value can't be meant for all of them. Take the merge apart and fill in each.`,
  'table.merged-taken': (f) =>
    f.given === '1'
      ? `${f.argument} is merged over ${f.detail('rows')} rows (${f.detail('range')}); what stands there is read for each of them. Where it isn't meant so, take the merge apart.`
      : `${f.argument} is merged over several rows in ${f.given} places; what stands there is read for each row. Where it isn't meant so, take the merge apart.`,
  'table.heading-none': (f) =>
    `${f.argument} has no heading; what stands in it is left as it is and ignored.`,
  'table.heading-unit': (f) =>
    `${f.argument}: bare numbers under ${f.given} are read as ${f.detail('unit')}, as the heading says. Where that is wrong, change the heading, or write the unit with each length.`,
  'table.heading-unknown': (f) =>
    f.detail('others') === ''
      ? `The column headed ${f.given} is not one that is used here; it is left as it is and ignored.`
      : `The columns headed ${f.given}${f.detail('others')} are not ones that are used here; they are left as they are and ignored.`,
  'table.choice-unread': (f) =>
    `What is kept with the workbook of your columns for ${f.argument} (its document property ${f.given}) can't be read, and is ignored. Where the table of ${f.argument} is not found by itself, choose it and its columns again under Job, on the page or in the pane.`,
  'table.choice-gone': (f) =>
    f.detail('table') === ''
      ? `${f.argument}: the sheet ${f.given}, which was chosen for it, is not there any more, or has no rows. Give a sheet that name again, or choose another under Job, on the page or in the pane.`
      : `${f.argument}: the table “${f.detail('table')}” on the sheet ${f.given}, which was chosen for it, is not there any more, or has no rows. Give a table that name again, or choose another under Job, on the page or in the pane.`,
  'table.column-gone': (f) =>
    `${f.argument}: ${f.detail('table')} has no column headed ${f.given} any more, which was chosen for it. Give the column that heading again, or choose anew under Job, on the page or in the pane.`,
  'table.empty': (f) =>
    f.detail('headings') === ''
      ? `${f.argument} has no rows. Fill in at least one.`
      : `${f.argument} has nothing in it. Its first row is its headings (${f.detail('headings')}), with a row below for each thing in the list.`,
  'table.too-many-rows': (f) =>
    `${f.argument} has ${f.detail('orMore')}${f.given} rows; at most ${f.limit} are read.`,
  'table.error-cell': (f) =>
    `${f.argument}: the cell holds the error ${f.given}. Mend its formula.`,
  'table.date-cell': (f) =>
    `${f.argument}: the spreadsheet has turned this cell into a date (${f.given})${f.detail('fraction') === '' ? '' : `; it may have been ${f.detail('fraction')}`}. Format the cell as text and type it again; a bare fraction with a 0 before it (0 3/4).`,
  'table.hidden-rows': (f) =>
    f.given === '1'
      ? `A row of ${f.argument} is hidden or filtered out; it is planned too. Delete it where it isn't meant.`
      : `${f.given} rows of ${f.argument} are hidden or filtered out; they are planned too. Delete those that aren't meant.`,
  'table.hidden-columns': (f) =>
    f.given === '1'
      ? `A column of ${f.argument} is hidden (${f.detail('columns')}); it is read too. Clear it where it isn't meant.`
      : `${f.given} columns of ${f.argument} are hidden (${f.detail('columns')}); they are read too. Clear those that aren't meant.`,
  'table.rows-below': (f) =>
    f.given === '1'
      ? `A row stands right under the table “${f.detail('table')}” and isn't part of it; it is read with ${f.argument} all the same. Stretch the table over it; or, where it isn't meant, leave a blank row above it.`
      : `${f.given} rows stand right under the table “${f.detail('table')}” and aren't part of it; they are read with ${f.argument} all the same. Stretch the table over them; or, where they aren't meant, leave a blank row above them.`,
  'table.total-row': (f) =>
    `${f.argument}: ${f.given} looks like the total of the rows above, and it would be planned as one of them. Delete the row, or leave a blank where a row needs a name; where it is meant, write it another way.`,
  'table.total-ignored': (f) =>
    `${f.argument}: ${f.given} is taken for the total of the rows above; that row is not read.`,
  'table.rows-again': (f) =>
    `${f.given} rows of ${f.argument} are the same as those from ${f.detail('at')} on, and count once more. Delete them where they were pasted twice.`,
  'table.total-length': (f) =>
    `${f.argument} is ${f.given}, as long as the ${f.limit} rows above it together, and is planned beside them. Delete the row where it is their total.`,
  'host.manual-calculation': (f) =>
    `${f.argument} calculates only when it is asked to${f.detail('isPending') === 'yes' ? ', and something was changed since' : ''}: values of formulas may be old. Press F9 there before you plan.`,
  'host.still-calculating': (f) =>
    `${f.argument} was still calculating when it was read: values of formulas may be old. Read it again.`,
  'table.veiled-number': (f) =>
    `${f.argument}: the cell holds ${f.given}, and its number format shows ${f.detail('seen') === '' ? 'nothing' : `“${f.detail('seen')}”`}. Choose a format that shows the number itself.`,
  'table.uncalculated': (f) =>
    `${f.argument}: the cell's formula has no calculated value. Open the workbook in a spreadsheet, let it calculate, save, and try again.`,
  'job.profile-unknown': (f) =>
    `There is no profile ${f.given} in Profiles. Add it there, or correct the name.`,
  'job.profile-twice': (f) => `The profile ${f.given} stands twice in Profiles. Keep one of them.`,
  'job.setting-near': (f) =>
    `There is no setting ${f.given}. Did you mean ${f.detail('may')}? Write it so; or, where the row is for yourself alone, “${f.detail('notUsed')}”.`,
  'job.setting-unknown': (f) =>
    `The setting ${f.given} is not one that is used here; it is ignored.`,
  'job.usual-values': (f) =>
    `${f.argument} leaves ${f.given} settings open; the usual values stand in: ${f.detail('list')}. Fill in your own.`,
  'job.usual-values-counted': (f) =>
    `${f.argument} leaves ${f.given} settings open; the usual values stand in. Fill in your own: --verbose lists them.`,
  'job.heights-assumed': (f) =>
    `${f.argument} doesn't say how high the blade rises (greatest height upright): ${f.given} above the table is assumed, half the blade's diameter less ${f.detail('allowance')} for flange and arbor. Measure your saw and fill it in.`,
  'job.height-at-45-assumed': (f) =>
    `${f.argument} doesn't say how high the blade rises tilted to 45° (greatest height at 45): as much along its slope as upright (${f.given}) is assumed. Saws give less. Measure yours and fill it in.`,
  'job.no-hourly-rate': (f) =>
    `${f.argument}: no hourly rate is given (${f.given}), so labor is not in the price. Fill it in.`,
  'job.setting-unread': (f) =>
    `The setting ${f.given} is not one that is used here, and by its name it would change a price. Take a setting that there is for it; or, where the row is for yourself alone, write “${f.detail('notUsed')}”.`,
  'job.title-near': (f) =>
    `Job has no row ${f.given}. Did you mean ${f.detail('may')}? Write it so; or, where the row is for yourself alone, “${f.detail('notUsed')}”.`,
  'job.title-unknown': (f) =>
    `Job’s row ${f.given} is not one that the sheets print; it is ignored.`,
  'job.title-twice': (f) => `Job says ${f.given} twice. Keep one of them.`,
  'job.setting-of-shop': (f) =>
    `${f.given} is a setting of Shop and is not read on Job. Move the row to Shop.`,
  'job.setting-twice': (f) => `The setting ${f.given} stands twice in Shop. Keep one of them.`,
  'job.reveal-unused': (f) =>
    `${f.argument}: ${f.given} is not used, since the run is measured as ${f.detail('measuredAs')}; only a run measured as opening has a reveal to add. Leave it blank, or measure the run as opening.`,
  'job.cove-sizes-unused': (f) =>
    `${f.given} is bought (Make), so ${f.detail('sizes')} ${f.detail('count') === '1' ? 'is' : 'are'} not used. Where it is made here, write cove or crown cove under Make; else leave ${f.detail('count') === '1' ? 'it' : 'them'} blank.`,
  'job.corner-unused': (f) =>
    `${f.argument}: ${f.given} is not used, since ${f.detail('end')} is ${f.detail('kind')}, which is cut alike at any corner. Leave it blank; or write what the end is, such as inside miter.`,
  'job.corner-without-end': (f) =>
    `${f.argument} is ${f.given}, and ${f.detail('end')} is blank, which is a square end: whether it is mitered there isn't told. Write square, inside miter, outside miter or cope under ${f.detail('end')}; or leave ${f.argument} blank.`,
  'job.sill-unused': (f) =>
    `${f.argument}: ${f.given} is not used, since a ${f.detail('kind')} reaches the floor. Leave it blank, or make its Kind window.`,
  'job.horn-unused': (f) =>
    `${f.argument}: ${f.given} is not used, since only a stool has horns. Leave it blank, or name a profile under Stool.`,
  'job.cell-needs-another': (f) =>
    `${f.argument}: ${f.given} says nothing without ${f.detail('needed')}. Fill in ${f.detail('needed')}, or leave ${f.argument} blank.`,
  'job.height-elsewhere': (f) =>
    `${f.argument} is ${f.given}, and Where says ${f.detail('at')}: only a rail has a height of its own. Leave Height blank, or write height under Where.`,
  'job.height-needs-where': (f) =>
    `${f.argument} is ${f.given}, and such a molding usually stands at the ${f.detail('at')}. Write height under Where if it is a rail with its lower edge that far from the floor; else leave Height blank.`,
  'job.wall-unknown': (f) =>
    `${f.argument}: no run named ${f.given} in that room, so nothing is cut away for this opening. Give the name that the runs of that wall have under Run.`,
  'job.wall-without-base': (f) =>
    `${f.argument}: of the runs named ${f.given} in that room none is on the floor (${f.detail('profiles')}), so no base is cut away for this opening. Give the wall's base the same name under Run, or say floor under Where on Profiles.`,
  'job.other-room-unknown': (f) =>
    `${f.argument}: no run stands in a room ${f.given}; this side of the opening is listed there all the same, and nothing is cut away. Check Other room.`,
  'job.other-wall-open': (f) =>
    `${f.argument}: Other wall is blank, so nothing is cut away in ${f.given} for this opening. Name its wall there under Other wall, as its runs do under Run.`,
  'job.cuts-unknown': (f) =>
    `${f.argument}: how high ${f.detail('profile')} is isn't given, so this opening, and any other, cuts nothing out of it. Fill in ${f.detail('needed')}.`,
  'job.window-cuts-unknown': (f) =>
    `${f.argument}: ${f.detail('needed')} is not given, so whether this window cuts ${f.detail('profile')} away isn't known, and nothing is cut. Fill in ${f.detail('needed')}.`,
  'job.window-laps-floor': (f) =>
    `${f.argument}: with what is under it this window reaches ${f.given} into ${f.detail('profile')} on that wall, which no window cuts. Check Sill; where it reaches the floor, make its Kind cased opening.`,
  'job.opening-laps-rail': (f) =>
    `${f.argument}: with what is under it this opening reaches ${f.given} into ${f.detail('profile')} on that wall, though not down to its lower edge, so nothing is cut away. Notch the rail at the wall, or change Sill or the rail's Height.`,
  'job.taken-for-casing': (f) =>
    `${f.argument}: ${f.given} is taken to be round openings, since Openings names it, so nothing is cut out of the run ${f.detail('run')} of it. Where it is on the floor, write floor under Where on Profiles; else write opening.`,
  'job.taken-for-ceiling': (f) =>
    `${f.argument}: ${f.given} is taken to be at the ceiling, as coves usually are, so nothing is cut out of the run ${f.detail('run')} of it. Write height under Where on Profiles, and its Height, for a rail; floor for a base; ceiling where it is at the ceiling.`,
  'job.several-on-floor': (f) =>
    `${f.argument}: it is cut out of ${f.given} moldings that all count as on the floor (${f.detail('profiles')}). Where on Profiles is blank for ${f.detail('unsaid')}: write height there, and its Height, for a rail; write floor where several do stand on the floor.`,
  'job.opening-in-several': (f) =>
    `${f.argument}: it is cut out of ${f.given} runs of ${f.detail('profile')} with that wall's name, out of each. Give each stretch of wall a name of its own.`,
  'job.opening-outside-wall': (f) =>
    `${f.argument}: the opening reaches ${f.given} along a wall of ${f.limit}. Check Position, Width and the wall's Length.`,
  'job.opening-in-each': (f) =>
    `${f.argument} is asked for ${f.given} times, and the openings on its wall are cut out of each. List walls that differ as runs of their own.`,
  'job.opening-needs-wall-length': (f) =>
    `${f.argument} is measured as ${f.given}; to cut an opening out of it, give its length along the wall, since Position counts from the wall's corner.`,
  'job.openings-overlap': (f) =>
    `${f.argument}: this opening, casing included, begins at ${f.given}, inside the one before it, which ends at ${f.limit}. Check Position.`,
  'job.opening-by-total': (f) =>
    `${f.argument}: ${f.detail('needed')} of the ${f.detail('opening')} on its wall isn't known, so ${f.given} is taken off this run of ${f.detail('profile')} as a whole; in truth it is in pieces. Fill in ${f.detail('needed')}, and give each opening a row of its own.`,
  'job.match-of-two-profiles': (f) =>
    `${f.argument}: the matched group ${f.given} has pieces of another profile too (${f.detail('other')}). Pieces that come from one stick are of one profile.`,
  'job.base-all-cut-away': (f) =>
    `${f.argument}: the openings leave nothing of this run of ${f.detail('profile')} (${f.given} of ${f.limit}).`,
  'job.casing-needs-width': (f) =>
    `${f.argument}: how wide ${f.given} is isn't given, so what the opening takes out of the wall isn't known. Fill in ${f.detail('needed')} on Profiles.`,
  'job.projection-unknown': (f) =>
    `${f.argument}: profile ${f.given} needs ${f.detail('needed')} for its miters. Fill it in on Profiles.`,
  'job.make-missing': (f) =>
    `${f.argument} has the sizes of a cove and no Make. Write cove or crown cove where it is cut here, buy where it is bought.`,
  'job.cove-needs': (f) => `${f.argument}: a cove cut here needs ${f.given} filled in.`,
  'job.no-stock': (f) =>
    `No stock that serves is listed for ${f.given}. Add a row to Stock whose For is the profile${f.detail('needed') === '' ? '' : `, or ${f.detail('needed')}`}.`,
  'job.stock-unused': (f) =>
    `${f.argument}: ${f.given} names neither a profile nor a species of this job; the row is not used.`,
  'job.spare-below-least': (f) =>
    `${f.argument} is ${f.given}, shorter than the shop's least blank; ${f.limit} is planned, since a trial cut is a cove too.`,
  'job.spare-leaves-short': (f) =>
    `${f.argument}: with its set-up spare crosscut off, the rest of that stick is ${f.given}, shorter than the shop's least blank of ${f.limit}. Leave the spare on, make trial cuts in other scrap, and cut the cove on the whole stick.`,
  'job.part-below-least': (f) =>
    `${f.argument}: ${f.detail('pieces')} of its spliced pieces can't be cut into the fewest parts with each at least ${f.limit}; the shortest part is ${f.given}. List longer stock, or set a smaller least part on Shop.`,
  'job.joint-off-stud': (f) =>
    `${f.argument}: with the fewest parts that Stock allows, none of them too short, its joints can't lie on studs ${f.given} apart (${f.detail('at')} from the wall's left corner). Back the joint with a block, list another length of stock, or set a smaller least part on Shop.`,
  'job.spare-takes-stick': (f) =>
    `${f.argument}: the ${f.given} trial-cut spare takes a stick of its own (${f.detail('cost')} of lumber). Trial cuts in scrap from the bin and set-up spare 0 on Shop would save it.`,
  'job.trim-spoils-fit': (f) =>
    `${f.argument}: ${f.detail('pieces')} ${f.detail('fits')} a stick of ${f.limit}, but not the ${f.given} that its end trims leave; longer sticks or splices serve instead.${f.detail('saving')} Where the sticks' ends are good, end trim ${f.detail('trim')} on Shop would do.`,
  'job.board-too-narrow': (f) =>
    `${f.argument}: boards of ${f.given} are too narrow for a blank of ${f.limit} and are not used for ${f.detail('profile')}.`,
  'job.board-for-bought': (f) =>
    `${f.argument}: a board is listed for ${f.given}, which is bought ready made; the row is not used. Make its Kind stick, or the profile's Make cove.`,
  'job.board-too-thin': (f) =>
    `${f.argument}: boards of ${f.given} rough are too thin for a blank of ${f.limit} and are not used for ${f.detail('profile')}.`,
  'job.stock-two-prices': (f) =>
    `${f.argument} stands in Stock at ${f.given} here and at ${f.detail('other')} further up, as many as needed of both: the dearer one is never bought. Say under Buy how many there are of each, or keep one of them.`,
  'job.board-price': (f) =>
    `${f.argument} is blank, so ${f.given} is taken as the price of the whole board. Where it is of a board foot, write board foot; else write piece.`,
  'job.grade-no-yield': (f) =>
    `${f.argument} is blank for boards of grade ${f.given}: all of a board is taken as clear. ${f.detail('printed')} Type under ${f.argument} what you count on (100 where boards come clear).`,
  'job.yield-no-share': (f) =>
    `${f.argument}: ${f.given} is no share of a board. Type the percent of a board's face that can be used, from 1 to 100 (80 for 80 %), or leave it blank where boards come clear.`,
  'job.yield-is-grade': (f) =>
    `${f.argument}: ${f.given} is a grade. Write it under Grade, and here the percent of a board's face that can be used${f.detail('printed')}; or leave it blank.`,
  'job.yield-of-stick': (f) =>
    `${f.argument}: ${f.given} is given for sticks, which are bought clear. Leave it blank, or make the row's Kind board. What is lost in cutting a stick is the offcut allowance; a bad part of one that is here goes under Defects.`,
  'job.yield-on-rack': (f) =>
    `${f.argument}: ${f.given} is given for boards of which ${f.detail('have')} are on the rack, where their faults can be seen. Give those a row of their own without it (Buy: no; what can't be used under Defects), and leave Have blank here.`,
  'job.defects-unreadable': (f) =>
    `${f.argument}: ${f.given} says no part of a board. Type from and to, measured along it from its marked end, and a semicolon between two of them: 30-34; 70-72 1/2.`,
  'job.defect-reversed': (f) =>
    `${f.argument}: ${f.given} doesn't end farther from the marked end than it begins. Type the smaller number first, such as 30-34.`,
  'job.defect-outside': (f) =>
    `${f.argument}: ${f.given} isn't all on a board of ${f.limit}. Measure from its marked end, 0, to its other end.`,
  'job.defects-overlap': (f) =>
    `${f.argument}: ${f.given} and ${f.detail('other')} share a part of the board. Make one of the two.`,
  'job.defects-leave-none': (f) =>
    `${f.argument}: ${f.given} leaves no clear stretch of ${f.limit} or more, which is what this shop keeps. Take the row out, or set Keep offcuts over to less.`,
  'job.defects-of-many': (f) =>
    `${f.argument}: ${f.given} stands for a row of which ${f.detail('have')} are on the rack. Every board has defects of its own: give each a row with 1 under Have.`,
  'job.defects-of-bought': (f) =>
    `${f.argument}: ${f.given} stands for boards that may be bought, which nobody has seen. Write no under Buy; boards to buy have a row of their own, with Grade and Yield %.`,
  'job.board-needs-width': (f) => `${f.argument}: a board needs a Width. Fill it in.`,
  'job.rips-limited': (f) =>
    `${f.argument}: boards of ${f.given} can be ripped into ${f.detail('blanks')} widths of blank in more than ${f.limit} ways; mostly those of one or two widths are weighed. Give profiles the same Blank width where you can.`,
  'job.blank-below-least': (f) =>
    `${f.argument}: ${f.given} long is shorter than the shop's least blank of ${f.limit}; it is not used for a cove. Coves are cut on long blanks and crosscut afterwards.`,
  'job.allowance-takes-all': (f) =>
    `${f.argument}: of ${f.given} % of what is bought nothing would be left to use. Give less than 100, or make allowance of on Shop net.`,
  // Work
  'job.work-twice': (f) =>
    `${f.argument}: ${f.given} stands twice for the same moldings, and would be counted once. Keep one of the rows, or say For what each is.`,
  'job.work-for-unknown': (f) =>
    `${f.argument}: ${f.given} is no profile of Profiles and no Make. ${didYouMean(f)}Name a profile, write cove, crown cove or buy, or leave it blank for all.`,
  'job.work-for-of-job': (f) =>
    `${f.argument}: work per ${f.detail('per')} is of the whole job, so it can't be for ${f.given}. Leave For blank, or count it by something that a molding has.`,
  'job.work-needs-minutes': (f) =>
    `${f.argument}: how long ${f.given} takes isn't given, and it is none of the usual kinds of work. Fill in Minutes or Money; or write no under Ours.`,
  'job.work-factor-money': (f) =>
    `${f.argument}: ${f.given} stands with a factor, which is no work by itself. Leave it blank.`,
  'job.work-differs': (f) =>
    `${f.argument}: ${f.given} here, and ${f.limit} by Shop's ${f.detail('setting')}. They are the same thing: leave one of the two blank, or make them agree.`,
  'job.work-low-above': (f) =>
    `${f.argument}: ${f.given} is more than ${f.limit} under Minutes. Low is the least that is likely: write what is at most as much, or leave it blank.`,
  'job.work-high-below': (f) =>
    `${f.argument}: ${f.given} is less than ${f.limit} under Minutes. High is the most that is likely: write what is at least as much, or leave it blank.`,
  'job.work-range-of-nothing': (f) =>
    `${f.argument}: ${f.given} is not in the price, so nothing lies between Low and High. Fill in Minutes or write yes under Ours; or leave Low and High blank.`,
  'job.work-needs-width': (f) =>
    `${f.argument} of ${f.given} is needed: ${f.detail('work')} is counted by the square foot of its face. Fill it in, or say in Work For what else it is.`,
  // Hours
  'job.hours-unreadable': (f) =>
    `${f.argument}: ${f.given} is not a time. Write hours such as ${f.decimal('1.5')} or 1:30, or minutes with their unit: 90 min.`,
  'job.hours-as-time': (f) =>
    `${f.argument}: the cell holds a time of day, not how many hours. Write ${f.decimal('1.5')} for an hour and a half, or give the cell the format of text and write 1:30.`,
  'job.hours-per-day': (f) =>
    `${f.argument}: ${f.given} h on ${f.detail('day')} are more than ${f.limit}. Where they are those of several people, it is well; else correct them.`,
  'job.hours-work-unknown': (f) =>
    `${f.argument}: ${f.given} is no kind of work. ${didYouMean(f)}Name a row of Work or one of the usual kinds, or write all for the whole job’s hours.`,
  'job.hours-of-factor': (f) =>
    `${f.argument}: ${f.given} is a factor, which takes no hours by itself. Write these hours under the work that it is for, such as install.`,
  'job.hours-profile-of-job': (f) =>
    `${f.argument}: ${f.detail('work')} is counted for the whole job, so its hours can't be for ${f.given}. Leave Profile blank.`,
  'job.hours-overlap': (f) =>
    `${f.argument}: the hours of ${f.given} here may hold those of ${f.detail('other')} (${f.detail('row')}), or stand beside them: nobody can tell. Write the hours of each kind of work in one way: all profiles together, or each by itself; and those of all work only where no kind has its own.`,
  'job.hours-twice': (f) =>
    `${f.argument}: ${f.given} h stand a second time for the same work${f.detail('day') === '' ? '' : ` on ${f.detail('day')}`}, and both are counted. Where one row was written twice, take it out.`,
  'job.hours-without-job': (f) =>
    `${f.argument} has hours, and the job has no runs that they could be of. Put Hours beside the Runs, or the Walls and Trim, of the job that took them.`,
  'job.hours-of-nothing': (f) =>
    `${f.argument}: ${f.given} h are for ${f.detail('work')}, and by its plan this job has none of it, so no rate is learned from them. Correct the work or the profile, or the job.`,
  'job.hours-odd': (f) =>
    `${f.argument}: ${f.given} h for ${f.detail('work')} are far off the ${f.detail('hours')} h that the rates give, even as learned. See whether they are of this job, of that work alone, and in hours.`,
  'job.hours-of-done': (f) =>
    `${f.argument}: ${f.given} pieces that are Done count in no plan, so hours that went into them make rates look longer. Take yes out under Done before rates are learned.`,
  'rates.no-hours': (f) =>
    `${f.argument}: no job has hours to learn from. Write them down on the sheet Hours (hours.csv): Work and Hours, as you like Date, Profile and Note.`,
  'rates.on-shop': (f) =>
    `${f.argument}: ${f.given} is a setting of this Shop, so it is no row here. To take it over, write ${f.detail('value')} there.`,
  'rates.reads-otherwise': (f) =>
    `${f.argument}: ${f.given} would not be read from a CSV file as it stands here. Type its row into Work by hand.`,
  'rates.lack-heading': (f) =>
    `${f.argument}: Work has no column of that heading, and a row for ${f.detail('work')} needs ${f.given} there. Add it to Work, or type the row by hand.`,
  'call.job-twice': (f) =>
    `${f.argument}: ${f.given} is given twice, and its hours would count twice. Name each job once.`,
  'job.option-room-unknown': (f) =>
    `${f.argument}: nothing that is still to be made is in a room ${f.given}. ${didYouMean(f)}Rooms are: ${f.detail('known')}. Name one of them, or leave it blank for all.`,
  'job.option-species-unknown': (f) =>
    `${f.argument}: no profile is of ${f.given}. ${didYouMean(f)}Name a species of Profiles, or leave it blank for all.`,
  'job.option-picks-none': (f) =>
    `${f.argument} ${f.given}: nothing that is still to be made is ${f.detail('picked')}. Name what it is about under Room, Profile and Species, or take the row out.`,
  'job.option-instead-same': (f) =>
    `${f.argument}: ${f.given} is what these runs are made of anyway. Name another profile; or leave it blank, where the runs are an addition.`,
  'job.option-instead-several': (f) =>
    `${f.argument}: ${f.given} would stand in place of ${f.detail('profiles')}. Name under Profile which one it is for, and give each a row of its own.`,
  'job.option-mixes': (f) =>
    `${f.argument} ${f.given}: two of its rows pick ${f.detail('profile')} in ${f.detail('room')}, and say different things of it. Leave each molding of a room to one row.`,
  'job.option-two-additions': (f) =>
    `${f.argument} ${f.given}: ${f.detail('profile')} in ${f.detail('room')} is an addition of ${f.detail('other')} too, and would be paid for twice. Leave it to one of them.`,
  'job.option-of-addition': (f) =>
    `${f.argument} ${f.given}: ${f.detail('profile')} in ${f.detail('room')} is an addition (${f.detail('other')}) that isn't taken up, so nothing can stand in its place. Take ${f.detail('other')} up, or list both as additions with a run of each profile.`,
  'job.option-two-taken': (f) =>
    `${f.argument} ${f.given}: ${f.detail('profile')} in ${f.detail('room')} is made otherwise by ${f.detail('other')} already, which is taken up. Take up one of them alone.`,
  'job.option-taken-differs': (f) =>
    `${f.argument}: of the rows of ${f.given} one says yes and another no. An option is taken up as a whole: say the same in each, or name two options.`,
  'job.options-too-many': (f) =>
    `${f.argument}: there are ${f.given} options, each of them a plan of its own; at most ${f.limit} can be priced at once. Take out those that nobody asks about any more.`,
  'job.options-all': (f) =>
    `${f.argument}: all that is to be made is an addition, so nothing is left that the price could be of. Write yes under Taken for the option that is likeliest, or take its rows out.`,
  'job.option-at-fault': (f) =>
    `${f.argument} ${f.given}: with it taken up the job can't be made as asked: ${f.detail('says')} Correct that, or what the option asks for.`,
  'job.option-cut': (f) =>
    `${f.argument} ${f.given}: ${f.detail('profile')} is cut already, and all of it would be left over. It is not priced any more: say what it costs by hand, or take its rows out.`,
  'job.option-caution': (f) =>
    `${f.detail('says')} That is said of the job with ${f.argument} ${f.given} taken up.`,
  'job.price-per-needs': (f) =>
    `${f.argument}: a price per ${f.given} needs ${f.detail('needed')} to be worked out. Fill it in.`,
  // What is cut already
  'job.cut-profile-gone': (f) =>
    `${f.argument} is ticked as cut, and Profiles has no ${f.given} any more. Put the profile back, or take the tick off, and its cost with it.`,
  'job.cut-for-nobody': (f) =>
    `${f.argument}: of the sticks that are ticked as cut ${f.given} are of it, and no run asks for it any more, so no room bears the ${f.detail('cost')} that they come to. Keep a run of it; or take their ticks off, plan again, and charge what they cost by hand.`,
  'job.cut-profile-changed': (f) =>
    `${f.argument} is ticked as cut from other sizes or another wood than Profiles gives ${f.given} now. Put the old ones back, give the new molding a name of its own, or take the tick off, and the cost with it.`,
  'job.cut-stock-gone': (f) =>
    `${f.argument} is ticked as cut, and Stock has no ${f.given} for ${f.detail('of')} any more as it was cut from. Put the row back (Buy no, if there is none left), or take the tick off, and the cost with it.`,
  'job.cut-stock-unfit': (f) =>
    `${f.argument} is ticked as cut from a row of ${f.given} that does not serve ${f.detail('profile')} any more. Mend the row, or take the tick off, and the cost with it.`,
  'job.cut-piece-gone': (f) =>
    `${f.argument} is cut already (${f.given}, from ${f.detail('stick')}), and ${f.detail('why')}: it is left over. Its stick stays in the cost.`,
  'job.cut-piece-changed': (f) =>
    `${f.argument} is cut already (${f.given}, from ${f.detail('stick')}) and is ${f.limit} now: what is cut is ${f.detail('what')} and left over; another is planned. Its stick stays in the cost.`,
  'job.cut-could-recut': (f) =>
    `What is left over of ${f.detail('stick')} (${f.argument}, ${f.given}) is long enough to be recut to ${f.detail('recut')}, ${f.limit}. The plan and its cost don't count on it: if you recut it, leave the planned cut out and tick that one as cut.`,
  'job.cut-serves-other': (f) =>
    `What is cut already as ${f.given} (from ${f.argument}) is just what ${f.detail('serves')} needs, and serves it. Mark it anew.`,
  'job.cut-match-broken': (f) =>
    `Some of the matched group ${f.given} are cut already; ${f.argument} and the others that aren't (${f.detail('others')} in all) come from another stick. Match the grain by eye.`,
  'job.cut-have-changed': (f) =>
    `${f.argument}: Have is ${f.given} and was ${f.detail('before')} when its sticks were planned of which ${f.detail('cut')} are cut. These count as taken from Have. If Have is what there is now, add ${f.detail('cut')} to it, or they are taken off twice and too much is bought.`,
  'job.weight-unknown': (f) => `${f.given} is not in the table of densities; weights leave it out.`,
  'job.quantity-too-large': (f) =>
    `The job comes to ${f.given} pieces; at most ${f.limit} are planned together. Check Quantity, or plan it in parts: a job for each floor or house.`,

  // A plan that was kept
  'plan.kept-other-version': (f) =>
    `The plan that is kept here was made by another version of this program (${f.given}; this is ${f.limit}), so it is not used. Plan the job anew.`,
  'plan.ticks-lost': (f) =>
    `${f.argument} was written from another plan than the one that is kept with this workbook, so its ticks can't be read and nothing is taken as cut. Have on Stock must be what there is now. Write the sheets anew.`,
  'plan.other-currency': (f) =>
    `${f.argument} is priced in ${f.given}, the plan before in ${f.detail('before')}: what they come to can't be compared. Give both the same currency on Shop.`,
  'plan.kept-used': (f) =>
    `The plan is the one that ${f.argument} carries, at the price it was made with: nothing was planned anew.`,
  'plan.kept-damaged': (f) =>
    `The ${f.argument} that is kept here is damaged, so it is not used. Plan the job anew.`,

  // What a plan is compared with
  'compare.no-plan': (f) =>
    `${f.argument} carries no plan and is no client's copy: there is nothing to compare with. Give a workbook as it was written or saved after planning, or a client's copy.`,

  // A client's copy that came back
  'copy.other-plan': (f) =>
    `${f.argument} is not of this plan: the copy's number is ${f.given}, the plan's ${f.limit}. Give the workbook that the copy was made from.`,
  'copy.no-number': (f) =>
    `${f.argument} looks like a client's copy, but its number is gone, from the sheet and from the file: which plan it is of can't be told. Type the number back behind “Number”, as the copy that was handed over has it.`,
  'copy.two': (f) =>
    `${f.argument} and ${f.given} are clients' copies both. Give the shop's workbook that the copy was made from, and the copy.`,
  'copy.headings-gone': (f) =>
    `${f.argument}: no row on ${f.given} has all of the headings Length each, Quantity, As quoted, Together, Price each and Price, so its lines can't be found. Write the headings as the copy that was handed over has them.`,
  'copy.planned-anew': (f) =>
    `${f.argument} carries no plan of the copy's number, so its inputs were planned anew. Where prices differ from the copy's below, it may be the plan that differs, and not the client: the workbook that the copy was made from tells.`,
  'copy.quantity-blank': (f) =>
    `${f.argument} is blank; ${f.detail('quoted')} was quoted. Type that, or 0 to leave the line out.`,
  'copy.quantity-text': (f) =>
    `${f.argument} is ${f.given}, which is no number to the copy's prices; ${f.detail('quoted')} was quoted. Type a whole number alone.`,
  'copy.quantity-formula': (f) =>
    `${f.argument} holds a formula (${f.given}); ${f.detail('quoted')} was quoted. Type the number itself.`,
  'copy.cell-changed': (f) =>
    `Typed over: “${f.argument}” now says ${f.given}, and was handed over with ${f.limit}. What was handed over stands; ask the client what is meant.`,
  'copy.figure-otherwise': (f) =>
    `“${f.argument}” shows ${f.given}, and comes to ${f.limit} by the prices as quoted. It was typed over or not worked out anew; the copy's own figure is not used.`,
  'copy.not-worked-out': (f) =>
    `The figures of this ${f.argument} were not worked out anew after a quantity was changed: they show what was quoted. The total here is worked out from the prices as quoted.`,
  'copy.row-gone': (f) =>
    `A row was taken out: ${f.given}. It holds as it was handed over; ask the client what is meant.`,
  'copy.line-gone': (f) =>
    `The line ${f.argument} was taken out. It is counted with ${f.given}, as quoted: where it is to be left out, its quantity is 0. Ask the client.`,
  'copy.line-added': (f) =>
    `A line was put in: ${f.given}. It was not quoted and is not in the price here: add it to the job, and plan.`,
  'copy.row-added': (f) => `A row was put in: ${f.given}.`,
  'copy.note': (f) => `Typed beside “${f.argument}”: ${f.given}.`,

  // Cutting
  'cutting.unserved': (f) =>
    `${f.argument} (${f.given}) could not be placed: ${f.detail('why')}. Add stock, allow a splice, or shorten it.`,
  'cutting.no-sticks': (f) => `There are no sticks to cut ${f.argument} from. List at least one.`,
  'cutting.stick-shorter-than-trim': (f) =>
    `${f.argument} of ${f.given} is used up by its end trims (${f.limit}). Use a longer stick or less trim.`,
  'cutting.id-twice': (f) => `${f.argument} ${f.given} stands twice. Give each its own.`,
  'cutting.price-missing': (f) => `${f.argument} has no price. Give one, 0 or more.`,
  'cutting.some-units': (f) =>
    `${f.argument} is empty here, and other rows have one. Give it in every row, or in none to have inches.`,
  'cutting.some-prices': (f) =>
    `${f.argument} is empty here, and other sticks have one. Give every stick a price (0 where it costs nothing), or none to have the least length.`,
  'cutting.some-materials': (f) =>
    `${f.argument} is empty here, and other rows have one. Give it in every row.`,
  'cutting.materials-untold': (f) =>
    `${f.argument} is ${f.given} here and ${f.detail('first')} further up, and the ${f.detail('other')} don't say which they are of, so one would be cut from the other's. Give the list of ${f.detail('other')} a column ${f.argument} too, or plan one at a time.`,
  'cutting.material-without-sticks': (f) =>
    `${f.argument}: no stick is of ${f.given}. There are sticks of ${f.detail('known')}. Write one of these, or add sticks of it.`,
  'cutting.lists-swapped': (f) =>
    `The pieces come first (here ${f.given}), then the sticks (here “${f.detail('second')}”), which have the prices. The two may be the wrong way round.`,
  'cutting.currency-differs': (f) =>
    `${f.argument} is in ${f.given} here and in ${f.limit} further up. Prices are added up, so give all of them in one currency.`,
  'cutting.kerf-differs': (f) =>
    `${f.argument} is ${f.given} here and ${f.limit} further up. A plan has one kerf: correct it, or plan the sticks apart.`,
  'cutting.kerf-twice': (f) =>
    `${f.argument} is ${f.given} here, and --kerf says ${f.limit}. Give it in one place.`,
  'cutting.kerf-without-unit': (f) =>
    `${f.argument}: ${f.given} has no unit, and this row counts in ${f.detail('unit')}, which no kerf does. Write its unit with it: 1/8 in, 3 mm.`,
  'cutting.too-many-pieces': (f) =>
    `${f.given} pieces are asked for; at most ${f.limit} are planned at once.`,
  'cutting.unit-too-fine': (f) =>
    `${f.argument}: these lengths share no unit ${/^\d/u.test(f.given) ? `coarser than 1/${f.given} in` : 'that is any use'}; 1/${f.limit} in is the finest that is planned in. Round the lengths.`,
  'cutting.splice-too-short': (f) =>
    `${f.argument}: a splice needs ${f.given} of overlap; the longest stick gives ${f.limit}. Use longer stock.`,
  'cutting.kerf-longer-than-piece': (f) =>
    `${f.argument} is ${f.limit} long and the kerf is ${f.given}: the cut takes more than the piece. Check the length, or use a thinner blade.`,
  'cutting.profile-unknown': (f) =>
    `${f.argument}: the profile ${f.given} is not one of those listed. List it, or correct the name.`,
  'cutting.match-of-two-profiles': (f) =>
    `${f.argument} has pieces of ${f.given} and of “${f.detail('other')}”. Pieces that come from one stick are of one profile; give each profile a group of its own.`,
  'cutting.rip-empty': (f) =>
    `${f.argument} gives ${f.given} strips. List the blanks that it rips into, or leave it out.`,
  'cutting.blank-unknown': (f) =>
    `${f.argument}: no profile is made from the blank ${f.given}. Leave it out, or correct the name.`,
  'cutting.blank-twice': (f) =>
    `${f.argument}: the blank ${f.given} stands twice. Count its strips together.`,
  'cutting.length-too-fine': (f) =>
    `${f.argument}: ${f.given} is written finer than 1/${f.limit} in, the finest that is planned in. Round it.`,
  'cutting.price-too-fine': (f) =>
    `${f.argument} is ${f.given}; prices are counted in whole cents. Round it to two decimals.`,
  'cutting.piece-too-long': (f) =>
    `${f.argument} is ${f.given}; a stick gives ${f.limit} at most once its end trims are off. Use longer sticks or shorten the piece.`,
  'cutting.left-over': (f) =>
    `${f.argument}: ${f.given} of ${f.limit} pieces of ${f.detail('length')} left over: ${f.detail('why')}. List longer or more sticks, or shorten the pieces.`,

  // Worksheet functions
  'function.fraction-unquoted': (f) =>
    `${f.argument} with a fraction goes in quotes: write it like "3 1/2". Without them the sheet reads ${f.given} in its own way.`,
  'function.shape': (f) =>
    `${f.argument} is ${f.detail('rows')} × ${f.detail('columns')} cells beside ranges of ${f.detail('wantedRows')} × ${f.detail('wantedColumns')}. Give ranges of one size, or single cells.`,
  'function.one-column': (f) =>
    `${f.argument} is ${f.detail('rows')} × ${f.detail('columns')} cells; this function takes one column there, or a single cell.`,
  'function.one-cell': (f) =>
    `${f.argument} is ${f.detail('rows')} × ${f.detail('columns')} cells; this function takes a single cell there.`,
  'function.too-many-cells': (f) =>
    `${f.argument} come to ${f.given} answers; at most ${f.limit} are given at once. Choose smaller ranges.`,
  'function.more-faults': (f) => `${f.given} more cells of ${f.argument} are at fault too.`,
  'function.bug': (f) =>
    `${f.argument} failed by a fault of its own, not of your cells (${f.given}). Please report it with the formula.`,

  // Files
  'file.missing': (f) => `${f.given} is not there. Check the name and the folder.`,
  'file.is-folder': (f) => `${f.given} is a folder, not a file. Name ${f.detail('wanted')}.`,
  'file.other-workbook': (f) =>
    `${f.given} is a workbook of another kind. Open it in its own program, save it as .xlsx, and try again.`,
  'file.not-folder-or-workbook': (f) =>
    `${f.given} is neither an .xlsx workbook nor a folder of CSV files. Name one of these; coveledger new makes either, to fill in. A list by itself goes to cut or setups.`,
  'file.unreadable': (f) => `${f.given} cannot be read: ${f.detail('why')}.`,
  'file.too-large': (f) => `${f.argument} is ${f.given} MB; at most ${f.limit} MB are read.`,
  'file.not-workbook': (f) =>
    `${f.given} is no .xlsx workbook that can be opened${f.detail('why')}. Save it as .xlsx from a spreadsheet and try again.`,
  'file.torn': (f) =>
    `${f.given} is damaged: a sheet of it stops before its end, or isn't as it was written. Nothing was read. Get the file once more, or open it in a spreadsheet, see what is missing, and save it anew.`,
  'file.lost-text': (f) =>
    `${f.given} is damaged: ${f.detail('cell')} of a sheet names a text that the file doesn't have. Nothing was read. Get the file once more, or open it in a spreadsheet, see what is missing, and save it anew.`,
  'file.opendocument': (f) =>
    `${f.given} is an OpenDocument file (.ods). Open it in its spreadsheet and save it as .xlsx (File, Save As; the type is called Excel 2007-365 or Excel Workbook).`,
  'file.too-many-cells': (f) =>
    `${f.given} has more than ${f.limit} ${f.detail('what')} in its sheets, empty ones with formats counted; no more are read. Delete the sheets and the empty rows that the job doesn't need.`,
  'file.too-many-lines': (f) =>
    `${f.given} has more than ${f.limit} lines; no more are read. Delete the blank ones, and save it anew.`,
  'file.protected': (f) =>
    `${f.given} is protected by a password. Save it without one and try again.`,
  'file.old-workbook': (f) =>
    `${f.given} is a workbook of the old .xls kind. Open it in a spreadsheet and save it as .xlsx (File, Save As; the type is called Excel Workbook or Excel 2007-365).`,
  'file.not-text': (f) =>
    `${f.given} is not a text file, whatever its name says. Save the sheet as CSV and try again.`,
  'file.not-csv': (f) => `${f.given} cannot be read as CSV: ${f.detail('why')}.`,
  'file.exists': (f) =>
    `${f.given} exists already. Give --force to replace it, or choose another name.`,
  'file.not-written': (f) => `${f.given} was not written: ${f.detail('why')}.`,
  'file.not-put-back': (f) =>
    `${f.given} is the new one, though another file of this call was not written, and what it held before can't be put back: ${f.detail('why')}.`,
  'file.ending': (f) => `${f.argument}: ${f.given} must end in ${f.limit}.`,
  'file.same': (f) =>
    `${f.argument} names the same file as ${f.detail('other')}, ${f.given}. Give each a file of its own.`,
  'file.same-letters': (f) =>
    `${f.argument}: ${f.given} differs from ${f.detail('other')} in small and capital letters alone, which many disks take for one name. Choose another name.`,
  'file.is-input': (f) =>
    `${f.argument}: ${f.given} is the input itself, which is never written over. Choose another name.`,

  // The workbook that the pane stands beside
  'host.sheet-not-ours': (f) =>
    `There is a sheet ${f.given} already that was not made here, so it is left alone. Rename it and try again.`,
  'host.sheet-exists': (f) =>
    `There is a sheet ${f.given} already. Say that it may be replaced, or rename it.`,
  'host.sheet-protected': (f) =>
    `The sheet ${f.given} is protected. Take the protection off (Review, Unprotect Sheet) and try again.`,
  'host.workbook-protected': (f) =>
    `The structure of ${f.given} is protected, so no sheet can be added. Take the protection off (Review, Protect Workbook) and try again.`,
  'host.editing-cell': (f) =>
    `${f.argument}: a cell is being typed in. Press Enter or Esc in the workbook, then try again.`,
  'host.too-old': (f) =>
    `This ${f.argument} is too old: ${f.limit} is needed, and it knows ${f.given}. Update Excel, use Excel on the web, or open the saved workbook here as a file.`,
  'host.refused': (f) =>
    `${f.argument}: the workbook's program refused it (${f.given}). Nothing of yours was changed. Try again; if it stays so, save, close and open the workbook.`,
  'host.gone': (f) => `${f.argument}: ${f.given} is not there any more. Look again.`,
  'host.cell-not-blank': (f) =>
    `The cell ${f.given} holds something already, so nothing was put there. Select a blank cell.`,
  'host.no-room': (f) => {
    const rows = f.given === '1' ? "one more row doesn't" : `${f.given} more rows don't`;
    return `${f.argument}: ${rows} fit below its rows, since ${f.detail('cell')} holds something. Insert blank rows above that cell and try again.`;
  },
  'host.cannot': (f) =>
    `${f.argument} can't be done on an opened file. Open the workbook in its own program for that.`,

  // What is opened into, typed and pasted into the grid on the page
  'grid.spill-blocked': (f) =>
    `${f.argument}: its answers need ${f.detail('until')}, and ${f.detail('cell')} holds something. Empty that cell, or put the formula where there is room.`,
  'grid.too-large': (f) =>
    `${f.argument} comes to ${f.given} MB of cells; at most ${f.limit} MB are opened here. Keep the job's tables in a workbook of their own and open that one.`,
  'grid.too-many-rows': (f) =>
    `${f.argument} has more than ${f.limit} rows, more than this page works with. Split it, or keep the job's tables in a workbook of their own.`,
  'grid.no-sheet': (f) => `${f.given} has no sheet with cells. Open another workbook.`,
  'grid.macros': (f) => `${f.given} has macros. They were left out and never run.`,
  'grid.other-workbooks': (f) =>
    f.detail('count') === '1'
      ? `${f.given} takes the value of a cell (${f.detail('first')}) from another workbook. The value last read stands here; it is not brought up to date any more.`
      : `${f.given} takes values of ${f.detail('count')} cells from other workbooks (${f.detail('first')} is one). The values last read stand here; they are not brought up to date any more.`,
  'grid.table-columns': (f) =>
    `${f.given}: ${f.detail('count') === '1' ? `the formula in ${f.detail('first')} names` : `formulas in ${f.detail('count')} cells (${f.detail('first')} is one) name`} columns of tables; here the cells of these columns are named. A row inserted among them is in it, one added below them isn't: insert rows above the last one.`,
  'grid.unknown-functions': (f) =>
    `Not known here: ${f.given}. Formulas with them (${f.detail('first')} is one) keep the value that they came with until they are worked out anew, then they show #NAME?.`,
  'grid.left-out': (f) => `Not shown here, and left out of what is saved: ${f.given}.`,
  'grid.dates-1904': (f) =>
    `${f.given} counts its dates from 1904. They show the same days here; formulas that reckon with their numbers are 1462 days off.`,
  'grid.paste-too-many': (f) =>
    `${f.given} cells were copied; at most ${f.limit} are pasted at once. Nothing was changed. Paste them in parts, or open the file itself.`,
  'grid.paste-merged': (f) =>
    `The copied cells would cover a part of the joined cells ${f.given}. Nothing was changed. Choose another place, or take those cells apart first.`,
  'grid.sort-merged': (f) =>
    `${f.argument}: joined cells (${f.given} is the first) can't be sorted. Take them apart, then sort again. Nothing was changed.`,
  'grid.sort-spilled': (f) =>
    `${f.argument}: the formula in ${f.given} fills several of these rows, which can't be sorted one by one. Nothing was changed. Filter instead, or give each row a formula of its own.`,

  // The pane
  'pane.file-unreadable': (f) =>
    `${f.argument} could not be read (${f.given}). A folder can't be opened here; close the file in other programs, then choose it again.`,
  'pane.not-loaded': (f) =>
    `${f.argument} could not be loaded (${f.given}). Check the connection to the network, then try again.`,

  // The code on a set-up's page
  'saw-code.none': (f) =>
    `This address holds no ${f.argument}. Scan the code on a page of Set-ups, or copy the whole of its address.`,
  'saw-code.damaged': (f) =>
    `The ${f.argument} in this address was cut short or changed, so none of its numbers are shown. Scan it again from paper, or read the printed page.`,
  'saw-code.older': (f) =>
    `The ${f.argument} in this address was printed by an older version of the program, which this page reads no more. Read the printed page, or write and print Set-ups again.`,
  'saw-code.newer': (f) =>
    `The ${f.argument} in this address was printed by a newer version of the program than this page is. Load this page anew with a network, or read the printed page.`,
  'saw-code.other-numbers': (f) =>
    `This page works out other numbers for ${f.given} than its ${f.argument} holds: one of the two versions is older, so none are shown. Read the printed page, and write Set-ups again before it is used.`,

  // The page with the spreadsheet
  'page.not-built': (f) => `The page isn't built: ${f.given} has none. Run npm run build first.`,
  'page.storage-full': (f) =>
    `Your ${f.argument} can't be kept in this browser: its room is used up. Download the workbook before you close this page, or make room and change something.`,
  'page.not-kept': (f) =>
    `Your work can't be kept in this browser (${f.given}). Download the workbook before you close this page.`,
  'page.kept-newer': (f) =>
    `The ${f.argument} kept from your last visit comes from a newer version of this page and can't be opened by this one. It is left as it is: load the newer page, save it as it is, or start over.`,
  'page.kept-damaged': (f) =>
    `The ${f.argument} kept from your last visit is damaged and can't be opened. It is left as it is: save it as it is for whoever looks after this page, or start over.`,
  'page.open-elsewhere': (f) =>
    `This ${f.argument} is open in another tab, which keeps its work. What is changed here is not kept: go on in the other tab, or download the workbook here.`,
  'page.no-port': (f) =>
    `${f.argument}: neither ${f.given} nor any of the next ones is free. Choose another, such as 8080.`,

  // Calls
  'day.unreadable': (f) =>
    `${f.argument}: ${f.given} is no day of the calendar. Write year, month and day, such as 2026-11-30.`,
  'output.not-written': (f) =>
    `The ${f.argument} can't be written: ${f.detail('why')}. Send it elsewhere, or make room.`,
  'call.unknown-command': (f) =>
    `${f.given} is no command. ${didYouMean(f)}Commands: ${f.detail('allowed')}.`,
  'call.unknown-code': (f) =>
    `${f.given} is no code of a fault or a caution. ${didYouMean(f)}--json tells each with its code, and help.html lists them all.`,
  'call.unknown-option': (f) =>
    `${f.given} is no option of ${f.argument}. ${didYouMean(f)}See coveledger ${f.argument} --help.`,
  'call.argument-missing': (f) =>
    `coveledger ${f.argument} needs ${f.detail('name')}. See coveledger ${f.argument} --help.`,
  'call.input-twice': (f) =>
    `${f.given} stands twice: the standard input is read once. Name a file for one of them. See coveledger ${f.argument} --help.`,
  'call.input-no-job': (f) =>
    `${f.argument}: the standard input holds ${f.detail('holds')}, and no workbook. A job has several tables: hand in an .xlsx workbook, or name a folder with runs.csv, profiles.csv and stock.csv. A list by itself goes to cut or setups.`,
  'call.argument-extra': (f) =>
    `${f.given} is one argument too many for coveledger ${f.argument}. See coveledger ${f.argument} --help.`,
  'call.option-twice': (f) => `${f.given} is given twice. See coveledger ${f.argument} --help.`,
  'call.options-exclude': (f) =>
    `${f.argument} and ${f.detail('other')} can't both be given. Leave one out.`,
  'call.option-alone': (f) =>
    `${f.argument} goes with ${f.detail('other')} alone. Give both, or leave it out.`,
  'call.option-needs-value': (f) =>
    `${f.given} needs a value after it (${f.detail('value')}). See coveledger ${f.argument} --help.`,
  'call.option-takes-no-value': (f) =>
    `${f.given} takes no value; ${f.detail('value')} was given. Leave it out.`,
});
