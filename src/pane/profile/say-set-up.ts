/** The numbers of a set-up in words: each angle says from what it is measured. */
import type { LengthUnit } from '../../core/faults/quantity.ts';
import { CLAMP_LIP_INCHES, feedFor, type Rail, type RailLayout } from '../../core/cove/rails.ts';
import { toDegrees } from '../../core/units/angle.ts';
import type { SetUp } from '../../planning/plan-setup.ts';
import type { Shop } from '../../planning/shop.ts';
import { formatDegrees, formatMark } from '../../core/units/format-mark.ts';
import { printBoth, printDecimal } from '../../sheets/print-length.ts';
import { sayAlong, sayMark } from '../../sheets/set-ups/rail-marks.ts';
import { sayLeastRadius } from '../../sheets/set-ups/set-up-page.ts';

export interface NumberRow {
  readonly label: string;
  readonly value: string;
  readonly note?: string;
}

export interface SetUpWords {
  readonly saw: readonly NumberRow[];
  readonly rails: readonly NumberRow[];
  /** Heights of the highest tooth above the table, in the order of the passes. */
  readonly passes: readonly string[];
  readonly blank: readonly NumberRow[];
}

export function saySetUp(setUp: SetUp, shop: Shop): SetUpWords {
  const { unit } = shop;
  return {
    saw: saySaw(setUp, shop),
    rails: setUp.rails === undefined ? sayUnmarked(setUp, unit) : sayRails(setUp.rails, unit),
    passes: setUp.passHeights.map((height) => printBoth(height, unit)),
    blank: sayBlank(setUp, unit),
  };
}

function saySaw({ setting, blade, scale, passHeights }: SetUp, shop: Shop): NumberRow[] {
  const { unit, tiltSide } = shop;
  const approach = toDegrees(setting.approach);
  const tilt = toDegrees(setting.tilt);
  const upright = tilt === 0;
  const { rounded, cut } = scale;
  const byScale = toDegrees(rounded.approach);
  return [
    {
      label: 'Approach, from the blade line',
      value: formatDegrees(approach),
      note: 'between the line of the blade and the rails',
    },
    {
      label: 'Approach, from the front edge',
      value: formatDegrees(90 - approach),
      note: "the same rails, measured from the table's front edge",
    },
    {
      label: 'Tilt, from upright',
      value: formatDegrees(tilt),
      note: upright ? 'the blade stands upright' : `the blade's top to the ${tiltSide}`,
    },
    {
      label: 'Height of the blade',
      value: printBoth(setting.height, unit),
      note: 'highest tooth above the table, at the last pass',
    },
    {
      label: 'Feed',
      value: feedFor(tiltSide),
      note: `front to back only${upright ? '' : '; the deep side lies toward the far rail'}`,
    },
    { label: 'Passes', value: String(passHeights.length) },
    {
      label: 'Blade',
      value: printBoth(blade.diameter, unit),
      note: `diameter, and a kerf of ${printBoth(blade.kerf, unit)}: measure both`,
    },
    {
      label: "Set by the saw's scales",
      value: `${formatDegrees(byScale)} and ${formatDegrees(toDegrees(rounded.tilt))}`,
      note: `from the blade line (${formatDegrees(90 - byScale)} from the front edge) and from upright; then it cuts ${printDecimal(cut.width, unit)} wide, ${printDecimal(cut.offCenter, unit)} off center`,
    },
  ];
}

function sayRails(layout: RailLayout, unit: LengthUnit): NumberRow[] {
  return [
    ...sayRail('Near rail', layout.near, unit),
    ...sayRail('Far rail', layout.far, unit),
    {
      label: 'Between the faces of the rails',
      value: formatMark(layout.spacing, unit),
      note: 'the width of the blank, just free to slide',
    },
    {
      label: 'Length of each rail, at least',
      value: formatMark(layout.railLength, unit),
      note: `past both edges of the table, with ${formatMark(CLAMP_LIP_INCHES, unit)} for a clamp at each end`,
    },
  ];
}

function sayRail(name: string, rail: Rail, unit: LengthUnit): NumberRow[] {
  const sides = (['left', 'right'] as const).flatMap((side) => {
    const along = rail[side];
    return along === undefined
      ? []
      : [{ label: `${name}, on the ${side} edge`, value: sayAlong(along, unit) }];
  });
  return [
    { label: `${name}, on the front edge`, value: sayMark(rail.front, unit) },
    { label: `${name}, on the back edge`, value: sayMark(rail.back, unit) },
    ...(rail.front.onTable && rail.back.onTable ? [] : sides),
  ];
}

function sayUnmarked({ flats, cut }: SetUp, unit: LengthUnit): NumberRow[] {
  return [
    {
      label: 'Between the faces of the rails',
      value: formatMark(flats.near + cut.width + flats.far, unit),
      note: 'the width of the blank, just free to slide. For marks on the table, give table front and table back in Shop',
    },
  ];
}

function sayBlank({ flats, web, arcLength, leastRadius }: SetUp, unit: LengthUnit): NumberRow[] {
  return [
    { label: 'Flat by the near rail', value: formatMark(flats.near, unit) },
    { label: 'Flat by the far rail', value: formatMark(flats.far, unit) },
    { label: 'Web', value: printBoth(web, unit), note: 'stock left above the cove' },
    {
      label: 'Along the curve',
      value: formatMark(arcLength, unit),
      note: 'from edge to edge: what is scraped and sanded',
    },
    {
      label: 'Sanding dowel, at most',
      value: `${sayLeastRadius(leastRadius, unit)} radius`,
      note: 'a dowel, or a curved scraper, no rounder reaches all of the cove',
    },
  ];
}
