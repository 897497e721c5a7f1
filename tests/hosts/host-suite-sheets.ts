/** The part of the hosts' suite about sheets: tables, validations, panes, pages and the whole. */
import { expect, test } from '@jest/globals';

import type { WrittenAndRead } from './host-suite.ts';
import { PLAIN_PRINT, workbook } from './sample-workbook.ts';

export function testSheets({ write, through, onlySheet, differs }: WrittenAndRead): void {
  const kept = differs.kept === undefined ? '' : `, but ${differs.kept}`;

  test('keeps what the workbook says of itself as custom properties, long texts in parts', async () => {
    const long = 'one line & <another> “quoted” 3½″ 🪚; '.repeat(30);
    const properties = { 'Planned on': '2026-05-04', Inputs: long, Empty: '' };
    const view = await through(workbook([{ name: 'One' }], { properties }));
    const parts = Object.entries(view.properties).filter(([key]) => key.startsWith('Inputs'));
    expect(view.properties).toMatchObject({ 'Planned on': '2026-05-04', Empty: '' });
    expect(parts.map(([key]) => key).slice(0, 2)).toEqual(['Inputs', 'Inputs (2)']);
    expect(parts.map(([, text]) => text).join('')).toBe(long);
    for (const [, text] of parts) expect(String(text).length).toBeLessThanOrEqual(255);
  });

  test(`writes tables with their headings, several to a sheet${kept}`, async () => {
    const heading = (value: string) => ({ value, style: 'heading' as const });
    const view = await onlySheet(
      workbook([
        {
          name: 'Tables',
          rows: [
            { cells: [heading('Room'), heading('Length & "more" _x0041_'), null, heading('=A')] },
            { cells: [{ value: 'Hall' }, { value: 96 }, null, { value: 1 }] },
            { cells: [] },
          ],
          tables: [
            { name: 'Runs', range: 'A1:B3' },
            { name: 'Other_1', range: 'D1:D2' },
          ],
        },
      ]),
    );
    expect(view.tables).toEqual([
      { name: 'Runs', range: 'A1:B3', headings: ['Room', 'Length & "more" _x0041_'] },
      { name: 'Other_1', range: 'D1:D2', headings: ['=A'] },
    ]);
    expect(view.cells['B1']).toMatchObject({ kind: 'text', value: 'Length & "more" _x0041_' });
  });

  test(`writes validations, strict and lenient${kept}`, async () => {
    const said = { title: 'End', message: 'Choose <one> & go on.' };
    const view = await through(
      workbook([
        {
          name: 'Checks',
          validations: [
            {
              range: 'A2:A9',
              allow: { kind: 'list', values: ['inside miter', 'cope'] },
              strict: true,
              ...said,
            },
            {
              range: 'B2',
              allow: { kind: 'list from', formula: "'Set-ups'!$A$2:$A$9" },
              strict: false,
              ...said,
            },
            {
              range: 'C2:C9',
              allow: { kind: 'whole', least: -1, most: 99 },
              strict: true,
              ...said,
            },
          ],
        },
        { name: 'Set-ups' },
      ]),
    );
    expect(view.sheets[0]?.validations).toEqual([
      { range: 'A2:A9', kind: 'list', allowed: ['inside miter', 'cope'], strict: true, ...said },
      {
        range: 'B2',
        kind: 'list from',
        allowed: ["'Set-ups'!$A$2:$A$9"],
        strict: false,
        ...said,
      },
      { range: 'C2:C9', kind: 'whole', allowed: ['-1', '99'], strict: true, ...said },
    ]);
  });

  test(`writes highlights in their order${kept}`, async () => {
    const { highlights } = await onlySheet(
      workbook([
        {
          name: 'Marks',
          highlights: [
            { range: 'A1:B9', formula: '$B1>"x"', style: 'caution' },
            { range: 'A1:B9', formula: '$B1=1', style: 'heading' },
          ],
        },
      ]),
    );
    expect(highlights).toEqual([
      { range: 'A1:B9', formula: '$B1>"x"', bold: false, color: '1F2A30', fill: 'F3D9B1' },
      { range: 'A1:B9', formula: '$B1=1', bold: true, color: 'FFFFFF', fill: '2F4B57' },
    ]);
  });

  test('writes names, also of sheets whose own names need quotes', async () => {
    const name = "Joe's Set-ups";
    const view = await through(
      workbook([{ name }, { name: '2nd' }], {
        title: 'Names & <more>',
        names: [
          { name: 'Species', sheet: name, range: 'A2:B9' },
          { name: 'Rate_1', sheet: '2nd', range: 'C3' },
        ],
      }),
    );
    if (differs.title === undefined) expect(view.title).toBe('Names & <more>');
    expect(view.sheets.map((sheet) => sheet.name)).toEqual([name, '2nd']);
    expect(view.names).toEqual({
      Species: "'Joe''s Set-ups'!$A$2:$B$9",
      Rate_1: "'2nd'!$C$3",
    });
  });

  test('keeps rows and columns in sight, and widths and heights as told', async () => {
    const sheets = [
      {
        name: 'Both',
        columns: [{ width: 12 }, { width: 8.5 }],
        rows: [{ cells: [{ value: 1 }], height: 30 }, { cells: [] }, { cells: [], height: 18.5 }],
        freeze: { rows: 3, columns: 1 },
      },
      { name: 'Rows', freeze: { rows: 1, columns: 0 } },
      { name: 'Columns', freeze: { rows: 0, columns: 2 } },
      { name: 'Neither', freeze: { rows: 0, columns: 0 } },
    ];
    const view = await through(workbook(sheets));
    expect(view.sheets.map((sheet) => sheet.freeze)).toEqual([
      { rows: 3, columns: 1 },
      { rows: 1, columns: 0 },
      { rows: 0, columns: 2 },
      null,
    ]);
    expect(view.sheets[0]?.widths).toEqual([12, 8.5]);
    expect(view.sheets[0]?.heights).toEqual({ 1: 30, 3: 18.5 });
  });

  test(`sets up the page of every sheet${kept}`, async () => {
    const view = await through(
      workbook([
        {
          name: 'Set-ups',
          print: {
            paper: 'a4',
            orientation: 'landscape',
            titleRows: [1, 3],
            breaksAfter: [40, 12],
            fitWidth: true,
            printedColumns: 28,
            header: 'Maple & Main "№ 5"',
            footer: '&P 12 Oak',
          },
        },
        { name: 'Plain', print: PLAIN_PRINT },
        // What lies in places of the paper leaves no room at its foot.
        { name: 'Placed', print: { ...PLAIN_PRINT, start: { left: 0.25, top: 0.375 } } },
      ]),
    );
    expect(view.sheets.map((sheet) => sheet.print)).toEqual([
      {
        paper: 'a4',
        orientation: 'landscape',
        titleRows: "'Set-ups'!$1:$3",
        printedColumns: '$A:$AB',
        breaksAfter: [12, 40],
        fitWidth: true,
        headerMiddle: 'Maple && Main "№ 5"',
        footerLeft: '&&P 12 Oak',
        footerRight: 'Page &P of &N',
      },
      {
        paper: 'letter',
        orientation: 'portrait',
        titleRows: null,
        printedColumns: null,
        breaksAfter: [],
        fitWidth: false,
        headerMiddle: '',
        footerLeft: '',
        footerRight: 'Page &P of &N',
      },
      {
        paper: 'letter',
        orientation: 'portrait',
        titleRows: null,
        printedColumns: null,
        breaksAfter: [],
        fitWidth: false,
        headerMiddle: '',
        footerLeft: '',
        footerRight: '',
      },
    ]);
  });

  test('writes a sheet with nothing on it', async () => {
    const view = await onlySheet(workbook([{ name: 'Empty' }]));
    expect([view.cells, view.tables, view.merges]).toEqual([{}, [], []]);
  });

  test('writes a long sheet whole', async () => {
    const rows = Array.from({ length: 5_000 }, (_, row) => ({
      cells: Array.from({ length: 8 }, (__, column) => ({
        value: column % 2 === 0 ? `piece ${row} ${column}` : row * 8 + column,
      })),
    }));
    const { cells } = await onlySheet(workbook([{ name: 'Long', rows }]));
    expect(Object.keys(cells)).toHaveLength(40_000);
    expect(cells['G5000']?.value).toBe('piece 4999 6');
    expect(cells['H5000']?.value).toBe(39_999);
  });

  test('refuses a description that no workbook can hold, and says all that is wrong', async () => {
    const bad = workbook([
      { name: 'A/B', rows: [{ cells: [{ value: NaN }, { value: 1, formula: '=A1' }] }] },
      { name: 'a/b', merges: ['A1:B1', 'B1:C1'] },
    ]);
    await expect(write(bad)).rejects.toThrow(
      /^(?=.*"A\/B" can not be)(?=.*Two sheets)(?=.*A1 holds NaN)(?=.*B1 has a formula)(?=.*overlaps)/,
    );
    await expect(write(bad)).rejects.toThrow(RangeError);
  });
}
