/** Numbers under formats, the text that a spreadsheet saves of them as CSV, and what both mean. */

/** Where the cell stands: a column of a table, or a setting of Shop. */
export type Place =
  | 'Length'
  | 'Price'
  | 'Quantity'
  | 'Spring'
  | 'Allowance'
  | 'Room'
  | 'Buy'
  | { setting: string; unit?: string };

const MM = (millimetres: number): number => Number((millimetres / 25.4).toFixed(9));

/** Held in the cell under the format, and as a spreadsheet writes that cell into CSV. */
export const SHOWN_CELLS: readonly (readonly [
  Place,
  held: number,
  format: string,
  csv: string,
  meaning: number | string | null,
  ...codes: string[],
])[] = [
  // Percents
  [{ setting: 'margin %' }, 0.15, '0%', '15%', 15],
  [{ setting: 'margin %' }, 0.155, '0.0 %', '15.5 %', 15.5],
  [{ setting: 'margin %' }, 15, '0.00', '15.00', 15],
  [{ setting: 'tax %' }, 0.0725, '0.00%', '7.25%', 7.25],
  ['Allowance', 0.12, '0%', '12%', 12],
  ['Length', 0.041, '0.00%', '4.10%', 'refused', 'number.percent'],
  ['Price', 0.041, '0.00%', '4.10%', 'refused', 'number.percent'],
  ['Quantity', 3, '0%', '300%', 'refused', 'number.percent'],
  ['Spring', 0.38, '0%', '38%', 'refused', 'number.percent'],
  [{ setting: 'kerf' }, 0.125, '0.0%', '12.5%', 'refused', 'number.percent'],
  [{ setting: 'feed' }, 0.06, '0%', '6%', 'refused', 'number.percent'],
  // Units of length
  ['Length', 90, '0.00" mm"', '90.00 mm', MM(90)],
  ['Length', 8, '0.00" ft"', '8.00 ft', 96],
  ['Length', 8, "0'", "8'", 96],
  ['Length', 96.5, '0.0\\"', '96.5"', 96.5],
  ['Length', 2.4, '0.0" m"', '2.4 m', MM(2400)],
  ['Length', 240, '0" cm"', '240 cm', MM(2400)],
  ['Length', 4, '0" kg"', '4 kg', 'refused', 'number.other-unit'],
  ['Length', 4, '"$"0.00', '$4.00', 'refused', 'number.other-unit'],
  ['Length', 46_085, '0" in"', '46085 in', 46_085],
  ['Price', 4, '0.00" mm"', '4.00 mm', 'refused', 'number.other-unit'],
  ['Quantity', 4, '0" in"', '4 in', 'refused', 'number.other-unit'],
  ['Quantity', 4, '0" pcs"', '4 pcs', 4],
  ['Spring', 38, '0.0°', '38.0°', 38],
  [{ setting: 'kerf' }, 3.2, '0.0" mm"', '3.2 mm', MM(3.2)],
  [{ setting: 'kerf', unit: 'in' }, 3.2, '0.0" mm"', '3.2 mm', MM(3.2)],
  [{ setting: 'set-up minutes' }, 40, '0" min"', '40 min', 40],
  [{ setting: 'set-up minutes' }, 40, '0" mm"', '40 mm', 'refused', 'number.other-unit'],
  // Money
  ['Price', 4.1, '"$"#,##0.00', '$4.10', 4.1],
  ['Price', 4.1, '[$$-409]#,##0.00', '$4.10', 4.1],
  ['Price', 4.1, '[$USD] #,##0.00', 'USD 4.10', 4.1],
  ['Price', 4.1, '#,##0.00\\ [$€-407]', '4.10 €', 'refused', 'number.other-currency'],
  ['Price', 1234.5, '"$"#,##0.00', '$1,234.50', 1234.5],
  ['Price', -4.1, '"$"#,##0.00_);("$"#,##0.00)', '($4.10)', 'refused', 'number.too-small'],
  [{ setting: 'hourly rate' }, 60, '[$€-407] 0', '€ 60', 'refused', 'number.other-currency'],
  [{ setting: 'hourly rate' }, 60, '"$"0', '$60', 60],
  [{ setting: 'margin %' }, 15, '"$"0', '$15', 'refused', 'number.other-unit'],
  // Numbers that show in groups, and names that are numbers
  ['Length', 1234.5, '#,##0.0', '1,234.5', 1234.5],
  ['Room', 7, '000', '007', '007'],
  ['Room', 101, '"Room "0', 'Room 101', 'Room 101'],
  ['Room', 101, '0', '101', '101'],
  ['Buy', 5, '0', '5', 5],
  // Days
  ['Length', 46_085, 'd-mmm', '4-Mar', 'refused', 'table.date-cell|length.date'],
];
