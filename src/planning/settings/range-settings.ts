/** Between what it is likely that nobody knows yet. A blank one is known; see price-unknowns.ts. */
import { named, type SettingDefinition } from './setting.ts';

type RangeKey =
  | 'setting.wholeJobLow'
  | 'setting.wholeJobHigh'
  | 'setting.lumberPriceLow'
  | 'setting.lumberPriceHigh'
  | 'setting.wasteLow'
  | 'setting.wasteHigh';

/** Nothing is had for nothing, and nothing costs more than ten times as much. Common practice [C]. */
const share = (key: RangeKey, note: string) =>
  ({ ...named(key), kind: 'percent', unit: '%', note, least: -90, most: 900 }) as const;

const rate = (key: 'setting.hourlyRateLow' | 'setting.hourlyRateHigh', note: string) =>
  ({
    ...named(key),
    kind: 'number',
    unit: 'an hour',
    note,
    least: 0,
    most: 1e6,
    money: true,
  }) as const;

export const RANGE_SETTINGS = {
  wholeJobLow: share(
    'setting.wholeJobLow',
    'How many fewer hours where all goes well: -10 is a tenth fewer. For the range of the price on Office; blank is known',
  ),
  wholeJobHigh: share('setting.wholeJobHigh', 'How many more hours where all goes badly'),
  hourlyRateLow: rate('setting.hourlyRateLow', 'The least that is likely; for the range alone'),
  hourlyRateHigh: rate('setting.hourlyRateHigh', 'The most that is likely'),
  lumberPriceLow: share(
    'setting.lumberPriceLow',
    'How much less than in Stock lumber may cost: -5 is a twentieth less',
  ),
  lumberPriceHigh: share('setting.lumberPriceHigh', 'How much more it may cost'),
  wasteLow: share(
    'setting.wasteLow',
    'How much less lumber than the price counts on may do: blank, or -5 for a twentieth less',
  ),
  wasteHigh: share('setting.wasteHigh', 'How much more it may take: knots, checks, slips'),
} as const satisfies Readonly<Record<string, SettingDefinition>>;
