/** The numbers of a set-up in words, as the pane lists them: each angle says from what it is measured. */
import type { Rail, RailLayout } from '../../core/cove/rails.ts';
import type { LengthReading } from '../../core/units/length.ts';
import type { CoveProfile } from '../../planning/job.ts';
import type { SetUp } from '../../planning/plan-setup.ts';
import type { Shop } from '../../planning/shop.ts';
import { printBoth } from '../../sheets/words/print-length.ts';
import { slopeFacts, type SlopeFacts } from '../../sheets/words/slope-facts.ts';
import { markLabel, sayAlong, sayMark, type RailName } from '../../sheets/words/say-marks.ts';
import {
  BY_SCALES,
  NO_TABLE,
  sayScaledCove,
  sayScales,
  setUpFacts,
  type Fact,
  type SetUpFacts,
} from '../../sheets/words/set-up-facts.ts';

export interface SetUpWords {
  readonly saw: readonly Fact[];
  readonly rails: readonly Fact[];
  /** Heights of the highest tooth above the table, in the order of the passes. */
  readonly passes: readonly string[];
  readonly blank: readonly Fact[];
}

export function saySetUp(setUp: SetUp, shop: Shop): SetUpWords {
  const facts = setUpFacts(setUp, shop);
  const { approach, approachFromFront, tilt, height, passes, diameter, kerf } = facts;
  // The cautions above are folded away: this one stands by its number.
  const feed = { ...facts.feed, note: `front to back only; ${facts.feed.note}` };
  const { deepestLine, bladeMiddle, nearFlat, farFlat, web, arcLength, leastRadius } = facts;
  return {
    saw: [
      ...[approach, approachFromFront, tilt, height, feed, passes, diameter, kerf],
      {
        label: BY_SCALES,
        value: sayScales(setUp, shop),
        note: `then it cuts ${sayScaledCove(setUp, shop)}`,
      },
    ],
    rails: sayRails(setUp.rails, facts, shop),
    passes: setUp.passHeights.map((inches) => printBoth(inches, shop)),
    blank: [deepestLine, bladeMiddle, nearFlat, farFlat, web, arcLength, leastRadius],
  };
}

function sayRails(
  layout: RailLayout | undefined,
  { spacing, railLength }: SetUpFacts,
  reading: LengthReading,
): Fact[] {
  if (layout === undefined || railLength === undefined) {
    return [{ ...spacing, note: `${spacing.note}. ${NO_TABLE}` }];
  }
  return [
    ...sayRail('near', layout.near, reading),
    ...sayRail('far', layout.far, reading),
    spacing,
    railLength,
  ];
}

function sayRail(name: RailName, rail: Rail, reading: LengthReading): Fact[] {
  const sides = (['left', 'right'] as const).flatMap((side): Fact[] => {
    const along = rail[side];
    if (along === undefined) return [];
    return [{ label: markLabel(name, side), value: sayAlong(along, reading) }];
  });
  return [
    { label: markLabel(name, 'front'), value: sayMark(rail.front, reading) },
    { label: markLabel(name, 'back'), value: sayMark(rail.back, reading) },
    ...(rail.front.onTable && rail.back.onTable ? [] : sides),
  ];
}

export interface SlopeWords extends Pick<SlopeFacts, 'title' | 'raked' | 'rakedTitle'> {
  readonly turns: readonly Fact[];
  readonly notes: string;
}

/** How a cove is cut that goes up a slope, and how high its raked profiles are; undefined where it stays level. */
export function saySlope(profile: CoveProfile, reading: LengthReading): SlopeWords | undefined {
  const facts = slopeFacts(profile, reading);
  if (facts === undefined) return undefined;
  const { title, raked, rakedTitle, notes } = facts;
  const turns = facts.turns.map(({ label, miter, bevel }): Fact => {
    const value = `miter ${miter}, bevel ${bevel}`;
    return { label, value, note: 'miter from square, bevel from upright' };
  });
  return { title, turns, notes: notes.join(' '), raked, rakedTitle };
}
