/** What the sheet Yard says. */
import type { LengthUnit } from '../../core/units/length-unit.ts';

export const WHAT_FOR =
  'What to buy for this plan, for the yard; what is on the rack is not in it. Prices are those of Stock.';
export const LONGEST =
  'Where the yard has no such length, take none shorter than the longest cut from one and the end trim: then put what comes into Stock and plan again.';
export const BY_YIELD =
  'Where a grade has a yield, more is ordered than the plan counts on: boards of the plan over the yield of Stock, rounded up to whole boards. The price of the job bears the yield exactly, the order whole boards.';
export const COMES =
  'Type what each board measures as it comes off the truck, before anything is trimmed.';
export const TALLIES: Readonly<Record<LengthUnit, string>> = {
  in: 'Surface measure is width times whole feet, over 12, to the nearest whole foot, exact halves up and down in turns; board feet are that times the thickness as sold, at least 1 in. The plain rule counts inches and fractions of a foot.',
  mm: 'm³ are thickness as sold times width times length.',
};
export const SECTIONS = {
  buy: 'To buy',
  came: 'What came: boards',
  invoice: 'Against the invoice',
} as const;

export const INVOICE_LINES = {
  tally: 'Tally of what came',
  dried: 'Shrunk since it was measured, %',
  straight: 'Straight-line ripped, % added',
  due: 'To be billed',
  billed: 'Billed',
  over: 'Billed too much',
  price: 'Price of one on the invoice',
  money: 'That is, in money',
} as const;

const BY_UNIT: Readonly<Record<LengthUnit, { readonly tally: string; readonly price: string }>> = {
  in: { tally: 'by surface measure', price: 'of a board foot' },
  mm: { tally: 'in m³', price: 'of a m³' },
};

export const invoiceSays = (
  unit: LengthUnit,
): Readonly<Record<keyof typeof INVOICE_LINES, string>> => ({
  dried:
    '0 where the invoice counts the boards as they are (net); else what the yard says wood loses in the kiln',
  straight: '0 where none is charged; as the yard asks for a straight edge',
  due: 'tally / (1 - shrunk) × (1 + added)',
  billed: 'as the invoice says',
  over: 'above 0 is too much, below 0 too little; a percent or so is how two people measure',
  ...BY_UNIT[unit],
  money: '',
});
