import { describe, expect, test } from '@jest/globals';
import { CellValueType, type ICellData, type IWorkbookData } from '@univerjs/core';

import { openIntoGrid, type Opened } from '../../src/hosts/grid/from-file/open-into-grid.ts';
import { readCustomData } from '../../src/hosts/grid/sheet-metadata.ts';
import { gridToFile } from '../../src/hosts/grid/to-file/grid-to-file.ts';
import { makeXlsx, row, type HandMade } from './make-xlsx.ts';
import { readXlsxBack } from './read-xlsx.ts';

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const REL = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

async function open(bytes: Uint8Array, name = 'job.xlsx'): Promise<Opened> {
  const outcome = await openIntoGrid(bytes, name);
  if (!outcome.ok) throw new Error(outcome.faults.map((one) => one.message).join('\n'));
  return outcome.value;
}

async function made(sheetData: string, more: Partial<HandMade> = {}): Promise<Opened> {
  return open(makeXlsx({ sheets: [['Sheet', sheetData]], ...more }));
}

/** A cell of the first sheet, by row and column from 1. */
function at({ data }: Opened, r: number, c: number): ICellData | undefined {
  return data.sheets['sheet-1']?.cellData?.[r - 1]?.[c - 1];
}

function formatOf(data: IWorkbookData, cell: ICellData | undefined): string | undefined {
  return typeof cell?.s === 'string' ? data.styles[cell.s]?.n?.pattern : undefined;
}

const cell = (where: string, inside: string, more = ''): string =>
  `<c r="${where}" ${more}>${inside}</c>`;
const rowOf = (number: number, ...cells: string[]): string =>
  `<row r="${number}">${cells.join('')}</row>`;

describe('A workbook opened into the grid', () => {
  test('has its values as they are: texts with zeros, numbers, booleans, errors, rich text', async () => {
    const opened = await made(
      rowOf(
        1,
        cell('A1', '<v>0</v>', 't="s"'),
        cell('B1', '<v>0.1</v>'),
        cell('C1', '<v>1</v>', 't="b"'),
        cell('D1', '<v>#N/A</v>', 't="e"'),
        cell('E1', '<v>1</v>', 't="s"'),
        cell('F1', '<is><t>#N/A</t></is>', 't="inlineStr"'),
        cell('G1', '<is><t>=1+1</t></is>', 't="inlineStr"'),
      ),
      {
        sharedStrings:
          '<si><t>007</t></si><si><r><t>3 </t></r><r><rPr><b/></rPr><t>1/2</t></r></si>',
      },
    );
    const text = { t: CellValueType.STRING };
    expect([1, 2, 3, 4, 5, 6, 7].map((column) => at(opened, 1, column))).toEqual([
      { v: '007', ...text },
      { v: 0.1, t: CellValueType.NUMBER },
      { v: 1, t: CellValueType.BOOLEAN },
      { v: '#N/A' },
      { v: '3 1/2', ...text },
      { v: '#N/A', ...text },
      { v: '=1+1', ...text },
    ]);
    const cells = readXlsxBack(await gridToFile(opened.data)).sheets[0]!.cells;
    expect(Object.values(cells).map(({ kind, value, formula }) => [kind, value, formula])).toEqual([
      ['text', '007', null],
      ['number', 0.1, null],
      ['boolean', true, null],
      ['error', '#N/A', null],
      ['text', '3 1/2', null],
      ['text', '#N/A', null],
      ['text', '=1+1', null],
    ]);
  });

  test('has formulas as people write them, ours come alive, and stores them as they were', async () => {
    const opened = await made(
      rowOf(
        1,
        cell('A1', '<f>_xldudf_COVE_TILT(B1,"_xlfn.x")</f><v>#NAME?</v>', 't="e"'),
        cell('B1', '<f>_xlfn.XLOOKUP(1,A2:A3,_xlfn._xlws.SORT(B2:B3))</f><v>5</v>'),
        cell('C1', '<f>_xlfn._xldudf_COVE_INCHTEXT(3.5)</f><v>3 1/2</v>', 't="str"'),
        cell('D1', '<f>SUM(A2:A3*B2:B3)</f><v>4</v>', 'cm="1"').replace(
          '<f>',
          '<f t="array" ref="D1">',
        ),
        cell('E1', '<f>1/0</f><v>#DIV/0!</v>', 't="e"'),
      ),
    );
    expect([1, 2, 3, 4, 5].map((column) => at(opened, 1, column))).toEqual([
      // Worked out at once: what the file holds is another program's not knowing it.
      { f: '=COVE.TILT(B1,"_xlfn.x")' },
      { f: '=XLOOKUP(1,A2:A3,SORT(B2:B3))', v: 5, t: CellValueType.NUMBER },
      { f: '=COVE.INCHTEXT(3.5)' },
      { f: '=SUM(A2:A3*B2:B3)', v: 4, t: CellValueType.NUMBER },
      { f: '=1/0' },
    ]);
    expect(opened.cautions).toEqual([]);
    // As the grid works it out.
    at(opened, 1, 5)!.v = '#DIV/0!';
    const { cells } = readXlsxBack(await gridToFile(opened.data)).sheets[0]!;
    expect(cells['E1']).toMatchObject({ kind: 'error', value: '#DIV/0!' });
    expect(Object.values(cells).map(({ formula }) => formula)).toEqual([
      '_xldudf_COVE_TILT(B1,"_xlfn.x")',
      '_xlfn.XLOOKUP(1,A2:A3,_xlfn._xlws.SORT(B2:B3))',
      '_xldudf_COVE_INCHTEXT(3.5)',
      'SUM(A2:A3*B2:B3)',
      '1/0',
    ]);
  });

  test('has a shared formula in each of its cells, moved along', async () => {
    const opened = await made(
      rowOf(
        1,
        cell(
          'B1',
          `<f t="shared" ref="B1:C2" si="0">$A1+A$1+SUM(A1:A2)&amp;"A1"+'A1'!A1+LOG10(A1)+A:A+1:1</f><v>1</v>`,
        ),
        cell('C1', '<f t="shared" si="0"/><v>2</v>'),
      ) + rowOf(2, cell('B2', '<f t="shared" si="0"/><v>3</v>')),
    );
    expect([at(opened, 1, 3)?.f, at(opened, 2, 2)?.f]).toEqual([
      `=$A1+B$1+SUM(B1:B2)&"A1"+'A1'!B1+LOG10(B1)+B:B+1:1`,
      `=$A2+A$1+SUM(A2:A3)&"A1"+'A1'!A2+LOG10(A2)+A:A+2:2`,
    ]);
  });

  test("has nothing in the cells that an array's answers stand in, so that they can stand there again", async () => {
    const opened = await made(
      rowOf(1, cell('A1', '<f t="array" ref="A1:A2">_xldudf_COVE_SETUP(3,1)</f><v>7</v>')) +
        rowOf(2, cell('A2', '<v>8</v>'), cell('B2', '<v>9</v>')),
    );
    expect([at(opened, 1, 1)?.f, at(opened, 2, 1), at(opened, 2, 2)?.v]).toEqual([
      '=COVE.SETUP(3,1)',
      undefined,
      9,
    ]);
    const range = { startRow: 0, endRow: 1, startColumn: 0, endColumn: 0 };
    const bytes = await gridToFile(opened.data, {
      ranges: { 'sheet-1': { 0: { 0: range } } },
      cells: {
        'sheet-1': {
          0: { 0: { v: 7, t: CellValueType.NUMBER } },
          1: { 0: { v: 8, t: CellValueType.NUMBER } },
        },
      },
    });
    const again = readXlsxBack(bytes).sheets[0]!.cells;
    expect([again['A1']!.formula, again['A2']!.value]).toEqual(['_xldudf_COVE_SETUP(3,1)', 8]);
    expect(at(await open(bytes), 2, 1)).toBeUndefined();
  });

  test('has dates as the days that they show, also where the file counts from 1904', async () => {
    const workbook = (pr: string): Record<string, string> => ({
      'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="${REL}"><workbookPr ${pr}/><sheets><sheet name="Sheet" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    });
    const days = rowOf(
      1,
      cell('A1', '<v>45355</v>', 's="1"'),
      cell('B1', '<v>60.5</v>', 's="1"'),
      cell('C1', '<v>61</v>', 's="1"'),
      cell('D1', '<v>0.75</v>', 's="2"'),
    );
    const usual = await made(days);
    expect([1, 3, 4].map((column) => at(usual, 1, column)?.v)).toEqual([45355, 61, 0.75]);
    expect(formatOf(usual.data, at(usual, 1, 1))).toMatch(/d/u);
    expect(formatOf(usual.data, at(usual, 1, 4))).toBe('h:mm');
    const old = await made(days, { parts: workbook('date1904="1"') });
    // ECMA-376 part 1, 18.17.4.1: the two ways of counting are 1462 days apart.
    expect(at(old, 1, 1)?.v).toBe(45355 + 1462);
    expect(old.cautions.map(({ code }) => code)).toEqual(['grid.dates-1904']);
  });

  test('has cells in the place of tables by name, and keeps the tables', async () => {
    const table = `<table xmlns="${MAIN}" id="1" name="Runs" displayName="Runs" ref="A1:C3"><tableColumns count="3"><tableColumn id="1" name="Room"/><tableColumn id="2" name="Length"/><tableColumn id="3" name="Twice"/></tableColumns></table>`;
    const parts = {
      'xl/tables/table1.xml': table,
      'xl/worksheets/_rels/sheet1.xml.rels': `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${REL}/table" Target="../tables/table1.xml"/></Relationships>`,
    };
    const opened = await made(
      row(1, 'Room', 'Length', 'Twice') +
        rowOf(
          2,
          cell('A2', '<v>1</v>'),
          cell('B2', '<v>2</v>'),
          cell('C2', '<f>Runs[[#This Row],[Length]]*2</f><v>4</v>'),
        ) +
        rowOf(
          3,
          cell('B3', '<v>3</v>'),
          cell(
            'C3',
            '<f>SUM(Runs[Length])+ROWS(Runs)+COLUMNS(Runs[[Room]:[Length]])+SUM(Runs[Nope])</f><v>5</v>',
          ),
        ) +
        rowOf(4, cell('B4', '<v>8</v>')),
      { parts },
    );
    expect([at(opened, 2, 3)?.f, at(opened, 3, 3)?.f]).toEqual([
      '=$B2*2',
      "=SUM('Sheet'!$B$2:$B$3)+ROWS('Sheet'!$A$2:$C$3)+COLUMNS('Sheet'!$A$2:$B$3)+SUM(Runs[Nope])",
    ]);
    expect(opened.cautions).toMatchObject([
      { code: 'grid.table-columns', details: { count: 1, first: 'Sheet!C3' } },
    ]);
    expect(readCustomData(opened.data.sheets['sheet-1']!.custom)?.tables).toEqual([
      { name: 'Runs', range: 'A1:C3' },
    ]);
    // A row typed right below belongs to it, as in other spreadsheets.
    const saved = readXlsxBack(await gridToFile(opened.data)).sheets[0]!.tables;
    expect(saved).toEqual([
      { name: 'Runs', range: 'A1:C4', headings: ['Room', 'Length', 'Twice'] },
    ]);
    // Headings typed over so that no table can have them: the cells stay, the table goes.
    opened.data.sheets['sheet-1']!.cellData![0]![1] = { v: 'Room', t: CellValueType.STRING };
    expect(readXlsxBack(await gridToFile(opened.data)).sheets[0]!.tables).toEqual([]);
  });

  test('says what it leaves out: macros, other workbooks, functions that are not known here', async () => {
    const opened = await open(
      makeXlsx({
        sheets: [
          [
            'Sheet',
            rowOf(
              1,
              cell('A1', "<f>'[1]Price list'!B2*2</f><v>12</v>"),
              cell('B1', '<f>_xldudf_OTHER_THING(A1)+NOSUCH(1)</f><v>3</v>'),
            ),
          ],
        ],
        parts: { 'xl/vbaProject.bin': 'x' },
      }),
      'job.xlsm',
    );
    expect(opened.cautions.map(({ code }) => code)).toEqual([
      'grid.macros',
      'grid.other-workbooks',
      'grid.unknown-functions',
    ]);
    expect(opened.cautions[1]!.message).toContain('Sheet!A1');
    expect(opened.cautions[2]!.message).toContain('NOSUCH, OTHER.THING');
    expect(at(opened, 1, 1)).toEqual({ v: 12, t: CellValueType.NUMBER });
    expect(at(opened, 1, 2)).toEqual({
      f: '=OTHER.THING(A1)+NOSUCH(1)',
      v: 3,
      t: CellValueType.NUMBER,
    });
    const parts = Object.keys(readXlsxBack(await gridToFile(opened.data)));
    expect(parts.join()).not.toContain('vba');
  });

  test('is under an id of its own each time, so that two can be open', async () => {
    const bytes = makeXlsx({ sheets: [['Sheet', row(1, 'a')]] });
    expect((await open(bytes)).data.id).not.toBe((await open(bytes)).data.id);
  });
});
