/** Invented workbooks for tests of hosts: small ones, and one with everything in it. */
import type {
  PrintDescription,
  SheetDescription,
  WorkbookDescription,
} from '../../src/sheets/grammar/description.ts';

export const PLAIN_PRINT: PrintDescription = {
  paper: 'letter',
  orientation: 'portrait',
  fitWidth: false,
  header: '',
  footer: '',
};

export function workbook(
  sheets: readonly (Partial<SheetDescription> & { readonly name: string })[],
  more: Partial<WorkbookDescription> = {},
): WorkbookDescription {
  const whole = sheets.map((sheet) => ({ columns: [], rows: [], print: PLAIN_PRINT, ...sheet }));
  return { version: 1, title: 'A test', sheets: whole, ...more };
}

/** Text that spreadsheets like to take for something else. */
export const HOSTILE_TEXTS = [
  '=1+1',
  '+44 20 7946 0000',
  '-5',
  '@SUM(A1)',
  "'quoted",
  '#N/A',
  '#DIV/0!',
  'TRUE',
  '00123',
  '1/2',
  '3-4',
  '1e5',
  '2024-05-01',
  '  leading and trailing  ',
  'tab\there',
  'two\nlines\n\nand a blank one',
  '"quotes" & <tags> ]]> &amp;',
  '_x0041_ stays, _x005F_ too, __x000D__',
  'קרניז עץ אלון',
  'كورنيش',
  '👷🏽‍♀️ 🪚 3½″ × 5′',
  'e\u0301 and \u00e9',
  '\u00a0no-break\u00a0',
  '0',
] as const;

/** Every kind of thing that a description can hold, on paper that shows it. */
export function richWorkbook(): WorkbookDescription {
  const rows = Array.from({ length: 60 }, (_, index) => ({
    room: ['Hall', 'Kitchen', 'Parlor'][index % 3]!,
    length: `${7 + (index % 5)}' ${index % 12} 1/2"`,
    inches: (7 + (index % 5)) * 12 + (index % 12) + 0.5,
    quantity: (index % 4) + 1,
  }));
  const first = 4;
  const last = first + rows.length - 1;
  const totalInches = rows.reduce((sum, row) => sum + row.inches * row.quantity, 0);
  const totalQuantity = rows.reduce((sum, row) => sum + row.quantity, 0);
  return workbook(
    [
      {
        name: "Set-ups & the shop's cuts",
        columns: [
          { width: 14 },
          { width: 12 },
          { width: 11 },
          { width: 10 },
          { width: 13 },
          { width: 34, style: 'wrapped' },
          { width: 6 },
        ],
        rows: [
          { cells: [{ value: 'Cutting for Maple & Main', style: 'title' }], height: 24 },
          { cells: [{ value: 'Lengths are to the long point', style: 'subtitle' }] },
          {
            cells: ['Room', 'Length', 'Inches', 'Quantity', 'Inches in all', 'Note', 'Done'].map(
              (value) => ({ value, style: 'heading' as const }),
            ),
          },
          ...rows.map(({ room, length, inches, quantity }, index) => ({
            cells: [
              { value: room },
              { value: length, style: 'length' as const },
              { value: inches, style: 'inches' as const },
              { value: quantity, style: 'whole' as const },
              {
                value: inches * quantity,
                formula: `C${first + index}*D${first + index}`,
                style: 'decimal' as const,
              },
              index % 10 === 0
                ? {
                    value:
                      '=cope the left end, then check it against the corner before the next one',
                    style: 'note' as const,
                  }
                : null,
              { value: false, style: 'tick' as const },
            ],
          })),
          {
            cells: [
              { value: 'Total', style: 'totalLabel' },
              { value: null, style: 'totalLabel' },
              { value: null, style: 'totalLabel' },
              {
                value: totalQuantity,
                formula: `SUM(D${first}:D${last})`,
                style: 'totalWhole',
              },
              {
                value: totalInches,
                formula: `SUMPRODUCT(C${first}:C${last},D${first}:D${last})`,
                style: 'total',
              },
            ],
          },
          {
            cells: [
              {
                value: 'Check the fence with a square before the first pass.',
                style: 'caution',
              },
            ],
          },
        ],
        merges: ['A1:F1', `A${last + 2}:F${last + 2}`],
        tables: [{ name: 'Cuts', range: `A3:G${last}` }],
        validations: [
          {
            range: `A${first}:A${last}`,
            allow: { kind: 'list from', formula: 'RoomList' },
            strict: false,
            title: 'Room',
            message: 'This room is not in the list.',
          },
          {
            range: `D${first}:D${last}`,
            allow: { kind: 'whole', least: 1, most: 999 },
            strict: true,
            title: 'Quantity',
            message: 'A whole number from 1 to 999.',
          },
        ],
        highlights: [
          { range: `A${first}:G${last}`, formula: `$D${first}>3`, style: 'caution' },
          { range: `A${first}:G${last}`, formula: `$A${first}="Hall"`, style: 'label' },
        ],
        freeze: { rows: 3, columns: 1 },
        print: {
          paper: 'letter',
          orientation: 'landscape',
          titleRows: [1, 3],
          breaksAfter: [33],
          fitWidth: true,
          header: 'Maple & Main',
          footer: '12 Oak St & Co',
        },
      },
      {
        name: 'Lists',
        columns: [{ width: 16, style: 'inputText' }, { width: 18 }],
        rows: [
          { cells: [{ value: 'Rooms', style: 'heading' }] },
          ...['Hall', 'Kitchen', 'Parlor'].map((value) => ({ cells: [{ value }] })),
          { cells: [] },
          {
            cells: [
              null,
              {
                value: totalInches / 12,
                formula: `'Set-ups & the shop''s cuts'!E${last + 1}/12`,
                style: 'decimal',
              },
            ],
          },
          {
            cells: [
              null,
              { value: 'long', formula: `IF(SUM(Cuts[Quantity])>100,"long","short")` },
              { value: true, formula: '1<2' },
              { value: '', formula: 'IF(1>2,"x","")' },
            ],
          },
        ],
        print: { ...PLAIN_PRINT, paper: 'a4', header: 'Lists', footer: '' },
      },
      { name: 'Empty', columns: [], rows: [], print: PLAIN_PRINT },
    ],
    {
      title: 'Maple & Main: <cuts>',
      names: [{ name: 'RoomList', sheet: 'Lists', range: 'A2:A4' }],
    },
  );
}
