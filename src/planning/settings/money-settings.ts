/** What work costs, and what comes on cost to make the price. */
import { named, number, percent, type SettingDefinition } from './setting.ts';

export const MONEY_SETTINGS = {
  hourlyRate: number('setting.hourlyRate', '0', 'an hour', 'Shop labor'),
  overhead: percent('setting.overhead', '0', 'On lumber and labor', 1000),
  margin: percent('setting.margin', '0', 'Share of the price', 99),
  tax: percent('setting.tax', '0', 'On the price'),
  // A price commonly holds for a month. Common practice [C].
  priceHoldsDays: {
    ...named('setting.priceHoldsDays'),
    kind: 'number',
    unit: 'days',
    usual: '30',
    least: 1,
    most: 3650,
    whole: true,
    note: "From the date on the client's copy",
  },
} as const satisfies Readonly<Record<string, SettingDefinition>>;
