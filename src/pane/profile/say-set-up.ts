/** The numbers of a set-up in words: each angle says from what it is measured. */
import { CLAMP_LIP_INCHES, feedFor, type Rail, type RailLayout } from '../../core/cove/rails.ts';
import { toDegrees } from '../../core/units/angle.ts';
import type { SetUp } from '../../planning/plan-setup.ts';
import type { Shop } from '../../planning/shop.ts';
import { formatDegrees, formatMark } from '../../core/units/format-mark.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { printBoth, printDecimal } from '../../sheets/words/print-length.ts';
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
  return {
    saw: saySaw(setUp, shop),
    rails: setUp.rails === undefined ? sayUnmarked(setUp, shop) : sayRails(setUp.rails, shop),
    passes: setUp.passHeights.map((height) => printBoth(height, shop)),
    blank: sayBlank(setUp, shop),
  };
}

function saySaw({ setting, blade, scale, passHeights }: SetUp, shop: Shop): NumberRow[] {
  const { tiltSide, decimalSign } = shop;
  const say = (degrees: number): string => formatDegrees(degrees, decimalSign);
  const approach = toDegrees(setting.approach);
  const tilt = toDegrees(setting.tilt);
  const upright = tilt === 0;
  const { rounded, cut } = scale;
  const byScale = toDegrees(rounded.approach);
  return [
    {
      label: 'Approach, from the blade line',
      value: say(approach),
      note: 'between the line of the blade and the rails',
    },
    {
      label: 'Approach, from the front edge',
      value: say(90 - approach),
      note: "the same rails, measured from the table's front edge",
    },
    {
      label: 'Tilt, from upright',
      value: say(tilt),
      note: upright ? 'the blade stands upright' : `the blade's top to the ${tiltSide}`,
    },
    {
      label: 'Height of the blade',
      value: printBoth(setting.height, shop),
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
      value: printBoth(blade.diameter, shop),
      note: `diameter, and a kerf of ${printBoth(blade.kerf, shop)}: measure both`,
    },
    {
      label: "Set by the saw's scales",
      value: `${say(byScale)} and ${say(toDegrees(rounded.tilt))}`,
      note: `from the blade line (${say(90 - byScale)} from the front edge) and from upright; then it cuts ${printDecimal(cut.width, shop)} wide, ${printDecimal(cut.offCenter, shop)} off center`,
    },
  ];
}

function sayRails(layout: RailLayout, reading: LengthReading): NumberRow[] {
  return [
    ...sayRail('Near rail', layout.near, reading),
    ...sayRail('Far rail', layout.far, reading),
    {
      label: 'Between the faces of the rails',
      value: mark(layout.spacing, reading),
      note: 'the width of the blank, just free to slide',
    },
    {
      label: 'Length of each rail, at least',
      value: mark(layout.railLength, reading),
      note: `past both edges of the table, with ${mark(CLAMP_LIP_INCHES, reading)} for a clamp at each end`,
    },
  ];
}

function sayRail(name: string, rail: Rail, reading: LengthReading): NumberRow[] {
  const sides = (['left', 'right'] as const).flatMap((side) => {
    const along = rail[side];
    return along === undefined
      ? []
      : [{ label: `${name}, on the ${side} edge`, value: sayAlong(along, reading) }];
  });
  return [
    { label: `${name}, on the front edge`, value: sayMark(rail.front, reading) },
    { label: `${name}, on the back edge`, value: sayMark(rail.back, reading) },
    ...(rail.front.onTable && rail.back.onTable ? [] : sides),
  ];
}

function sayUnmarked({ flats, cut }: SetUp, reading: LengthReading): NumberRow[] {
  return [
    {
      label: 'Between the faces of the rails',
      value: mark(flats.near + cut.width + flats.far, reading),
      note: 'the width of the blank, just free to slide. For marks on the table, give table front and table back in Shop',
    },
  ];
}

function sayBlank(
  { flats, web, arcLength, leastRadius }: SetUp,
  reading: LengthReading,
): NumberRow[] {
  return [
    { label: 'Flat by the near rail', value: mark(flats.near, reading) },
    { label: 'Flat by the far rail', value: mark(flats.far, reading) },
    { label: 'Web', value: printBoth(web, reading), note: 'stock left above the cove' },
    {
      label: 'Along the curve',
      value: mark(arcLength, reading),
      note: 'from edge to edge: what is scraped and sanded',
    },
    {
      label: 'Sanding dowel, at most',
      value: `${sayLeastRadius(leastRadius, reading.unit)} radius`,
      note: 'a dowel, or a curved scraper, no rounder reaches all of the cove',
    },
  ];
}

function mark(inches: number, { unit, decimalSign }: LengthReading): string {
  return formatMark(inches, unit, decimalSign);
}
