/** What work costs, and what comes on cost to make the price. */
import { money, named, percent, type SettingDefinition } from './setting.ts';

/** A cent, a whole dollar (or whatever the currency is), five of them. */
export const PRICE_ROUNDINGS = ['cent', 'dollar', '5'] as const;

/** What the price goes by: the sticks that the plan opens, or the offcut allowance. */
export const PRICE_BASES = ['plan', 'allowance'] as const;
export type PriceBasis = (typeof PRICE_BASES)[number];

export const MONEY_SETTINGS = {
  priceBasis: {
    ...named('setting.priceBasis'),
    kind: 'word',
    unit: '',
    usual: 'plan',
    allowed: PRICE_BASES,
    note: 'What the price goes by: the sticks of the plan, or net with the offcut allowance',
  },
  hourlyRate: money('setting.hourlyRate', '0', 'an hour', 'Shop labor'),
  overhead: percent('setting.overhead', '0', 'On lumber and labor', 1000),
  contingency: percent('setting.contingency', '0', 'On cost, for what nobody can see yet', 1000),
  materialMarkup: percent(
    'setting.materialMarkup',
    '0',
    'On lumber less offcut credit, beside the margin',
    1000,
  ),
  laborMarkup: percent('setting.laborMarkup', '0', 'On labor, beside the margin', 1000),
  margin: percent('setting.margin', '0', 'Share of the price', 99),
  minimumCharge: money(
    'setting.minimumCharge',
    '0',
    'a job',
    'No job is priced below it, before delivery and tax',
  ),
  delivery: money('setting.delivery', '0', 'a job', 'Comes on the price as it is, before tax'),
  priceRounding: {
    ...named('setting.priceRounding'),
    kind: 'word',
    unit: '',
    usual: 'cent',
    allowed: PRICE_ROUNDINGS,
    note: 'The price of the job goes up to the next one, before tax',
  },
  tax: percent('setting.tax', '0', 'On the price'),
  taxOn: {
    ...named('setting.taxOn'),
    kind: 'word',
    unit: '',
    usual: 'all',
    allowed: ['all', 'material', 'none'],
    note: 'Of the price: all of it, what the lumber makes of it, or nothing',
  },
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
