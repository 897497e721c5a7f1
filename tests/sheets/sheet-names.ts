/** What the sheets of our workbooks are called, in their order: typed here once, apart from the sources. */

/** The tables that a person fills in. */
export const INPUT_TABLES = [
  'Runs',
  'Walls',
  'Trim',
  'Openings',
  'Profiles',
  'Shop',
  'Stock',
  'Work',
  'Options',
  'Job',
  'Hours',
];
export const INPUT_SHEETS = [...INPUT_TABLES, 'How to'];

/** Sheets that only some plans have: outlines of coves, drawings of rooms, an order of lumber. */
export type SomeSheet = 'Outlines' | 'Rooms' | 'Yard';

/** The sheets of a plan without labels. */
export function planSheets(without: readonly SomeSheet[] = []): string[] {
  const all = [
    'Production',
    'Labor',
    'Office',
    'Pieces',
    'Set-ups',
    'Outlines',
    'Cutting',
    'Rooms',
    'Yard',
    'Client',
  ];
  return all.filter((name) => !without.some((one) => one === name));
}
