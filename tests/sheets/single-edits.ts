/** Cells of the shop's workbook typed over, one edit at a time, and what each sheet must then say of it. */
import type {
  CellDescription,
  CellValue,
  RowDescription,
  SheetDescription,
  WorkbookDescription,
} from '../../src/sheets/grammar/description.ts';
import { cellName } from '../../src/core/cells/cell-range.ts';
import { PICKS as PICKED } from '../../src/sheets/cutting/cutting-columns.ts';
import { BOARDS_CAME, typeBoards } from './boards-that-came.ts';
import { boxOf, cutAlike, cutRow, type Place } from './cut-places.ts';
import { cutPieces, cutSticks, layOutsOf } from './cut-rows.ts';
import { PIECES_AT, rowWith, sheetOf } from './sheet-jobs.ts';

export type Typed = readonly (readonly [place: Place, value: CellValue | null])[];

export interface Edit {
  readonly typed: (workbook: WorkbookDescription) => Typed;
  /** What the line on top names first; absent where all sheets still agree. */
  readonly first?: string;
  /** Whether Client says that it is behind. */
  readonly behind?: true;
  /** Cells that must show a difference: as they are named, with what they show. */
  readonly off?: (workbook: WorkbookDescription) => Readonly<Record<string, CellValue>>;
}

const SAME_PIECES =
  'Pieces to cut: listed on Pieces, and those of them that Cutting cuts to the same length';
const COUNTED = 'Pieces to cut: by room on Production, and listed on Pieces';
const PLANNED =
  'Lengths that sticks and lumber are planned for, and on Pieces now (each times its No.)';
const STICKS = 'Profiles: all, and those whose sticks on Cutting are as long as planned';
const CREDIT = 'Offcuts kept (in): as credited, and on Cutting';
const LUMBER = 'Lengths of lumber to pull and buy: on Production, and on Cutting';
const PICKS =
  'Rows of lumber to pull or buy: all, and those with the same count on Production and on Cutting';

/** Columns of Production, from 0: how many are bought, and the box of a step of the work. */
const TO_BUY = 9;
const DONE = 10;

const numberOf = (cell: CellDescription | null | undefined): number => Number(cell?.value);

/** Of the list of pieces: row from 0, and its length. */
function pieceRow(workbook: WorkbookDescription, no: number): { row: number; length: number } {
  const pieces = sheetOf(workbook, 'Pieces');
  const row = rowWith(pieces, 'No.') + no;
  return { row, length: numberOf(pieces.rows[row]?.cells[PIECES_AT.length]) };
}

/** The first number under a heading of Production. */
function lumberRow(workbook: WorkbookDescription): number {
  const sheet = sheetOf(workbook, 'Production');
  return rowWith(sheet, 'Lumber: what to pull from the rack, and what to buy') + 2;
}

/** A rate of the shop on Office; its value stands two columns beside. */
function rateRow(workbook: WorkbookDescription, label: string, column = 4): number {
  return rowWith(sheetOf(workbook, 'Office'), label, column);
}

/** The first row of lumber's costs on Office. */
function costRow(workbook: WorkbookDescription): number {
  return rowWith(sheetOf(workbook, 'Office'), 'Lumber: what it costs as planned') + 2;
}

/** The first line of the client's first room. */
function clientLine(workbook: WorkbookDescription): number {
  const { rows } = sheetOf(workbook, 'Client');
  return rows.findIndex(({ cells }) => cells[2]?.style === 'inputWhole');
}

const onBoth = (workbook: WorkbookDescription, no: number, by: number): Typed => {
  const [piece, cut] = [pieceRow(workbook, no), cutRow(workbook, no)];
  return [
    [['Pieces', piece.row, PIECES_AT.length], piece.length + by],
    [cut.at, cut.length + by],
  ];
};

/** What stands in a box that is not ticked. */
const UNTICKED: readonly CellValue[] = ['no', 'N', ' ', '-', '—', '0', 0, false, 'False'];

export const EDITS: Readonly<Record<string, Edit>> = {
  'nothing at all': { typed: () => [] },
  [BOARDS_CAME]: { typed: typeBoards },
  'a length on Pieces': {
    typed: (book) => [
      [['Pieces', pieceRow(book, 1).row, PIECES_AT.length], pieceRow(book, 1).length + 13.375],
    ],
    first: SAME_PIECES,
    behind: true,
    off: (book) => ({
      [`Pieces!N${pieceRow(book, 1).row + 1}`]: -13.375,
      [cutRow(book, 1).off]: -13.375,
    }),
  },
  'a length on Pieces, as text': {
    typed: (book) => [[['Pieces', pieceRow(book, 2).row, PIECES_AT.length], 'about 40 in']],
    first: COUNTED,
    behind: true,
  },
  'a length on Pieces taken out': {
    typed: (book) => [[['Pieces', pieceRow(book, 2).row, PIECES_AT.length], null]],
    first: COUNTED,
    behind: true,
  },
  'the line of a piece on Pieces': {
    typed: (book) => [[['Pieces', pieceRow(book, 1).row, PIECES_AT.line], null]],
    first: COUNTED,
    behind: true,
  },
  'a piece on Cutting, by a sixteenth': {
    typed: (book) => [[cutRow(book, 3).at, cutRow(book, 3).length - 1 / 16]],
    first: SAME_PIECES,
    off: (book) => ({
      [`Pieces!N${pieceRow(book, 3).row + 1}`]: -0.063,
      [cutRow(book, 3).off]: -0.063,
    }),
  },
  'a length on Cutting, of sticks that are cut alike': {
    typed: (book) => {
      const { length, lengthAt } = cutAlike(book);
      return [[['Cutting', lengthAt[0] - 1, lengthAt[1]], length + 0.25]];
    },
    first: SAME_PIECES,
    // Every one of them is cut to it.
    off: (book) => {
      const { lengthAt } = cutAlike(book);
      const all = cutPieces(sheetOf(book, 'Cutting'));
      const marks = all.filter((one) => one.lengthAt === lengthAt).map(({ mark }) => mark);
      const { rows } = sheetOf(book, 'Pieces');
      return Object.fromEntries(
        marks.map((mark) => {
          const row = rows.findIndex(({ cells }) => cells[PIECES_AT.mark]?.value === mark);
          return [`Pieces!${cellName(row, PIECES_AT.off)}`, 0.25];
        }),
      );
    },
  },
  'two pieces on Cutting, one shorter by what the other is longer': {
    typed: (book) => [
      [cutRow(book, 1).at, cutRow(book, 1).length - 2],
      [cutRow(book, 2).at, cutRow(book, 2).length + 2],
    ],
    first: SAME_PIECES,
    off: (book) => ({
      [`Pieces!N${pieceRow(book, 1).row + 1}`]: -2,
      [cutRow(book, 2).off]: 2,
    }),
  },
  'a piece on Pieces and on Cutting alike': {
    typed: (book) => onBoth(book, 1, 5),
    first: PLANNED,
    behind: true,
  },
  'two pieces on both sheets, the sum kept': {
    typed: (book) => [...onBoth(book, 1, 5), ...onBoth(book, 2, -5)],
    first: PLANNED,
  },
  'the length of a stick': {
    typed: (book) => {
      const [stick] = cutSticks(sheetOf(book, 'Cutting'));
      const { row, half, length } = stick!.layOut;
      return [[['Cutting', row - 1, half.table.start('stickLength')], length - 12]];
    },
    first: STICKS,
    behind: true,
  },
  'a kept offcut': {
    typed: (book) => {
      const { row, half, kept } = layOutsOf(sheetOf(book, 'Cutting')).find(
        (one) => one.kept !== null,
      )!;
      return [[['Cutting', row - 1, half.table.start('kept')], kept! + 6]];
    },
    first: CREDIT,
  },
  'how much lumber is bought, on Production': {
    typed: (book) => {
      const row = lumberRow(book);
      const { cells } = sheetOf(book, 'Production').rows[row]!;
      return [[['Production', row, TO_BUY], numberOf(cells[TO_BUY]) + 1]];
    },
    first: LUMBER,
    behind: true,
  },
  'how much lumber is bought, on Cutting': {
    typed: (book) => {
      const sheet = sheetOf(book, 'Cutting');
      const row = rowWith(sheet, 'Pull from the rack, and buy') + 2;
      return [
        [
          ['Cutting', row, PICKED.start('count')],
          numberOf(sheet.rows[row]?.cells[PICKED.start('count')]) + 1,
        ],
      ];
    },
    first: LUMBER,
  },
  'two counts on Cutting, one less by what the other is more': {
    typed: (book) => {
      const sheet = sheetOf(book, 'Cutting');
      const row = rowWith(sheet, 'Pull from the rack, and buy') + 2;
      const count = (at: number): number => numberOf(sheet.rows[at]?.cells[PICKED.start('count')]);
      return [
        [['Cutting', row, PICKED.start('count')], count(row) + 1],
        [['Cutting', row + 1, PICKED.start('count')], count(row + 1) - 1],
      ];
    },
    first: PICKS,
  },
  'the price of lumber': {
    typed: (book) => [[['Office', costRow(book), 7], 99]],
    first: 'Price: here, and on Client',
    behind: true,
  },
  'the hourly rate': {
    typed: (book) => [[['Office', rateRow(book, 'Hourly rate ($)'), 6], 80]],
    first: 'Price: here, and on Client',
    behind: true,
  },
  'the tax': {
    typed: (book) => [[['Office', rateRow(book, 'Tax, %', 7), 9], 9]],
    first: 'Price with tax: here, and on Client',
    behind: true,
  },
  'a quantity on Client': {
    typed: (book) => {
      const row = clientLine(book);
      return [[['Client', row, 2], numberOf(sheetOf(book, 'Client').rows[row]?.cells[2]) + 2]];
    },
    first: 'Pieces: on Production, and on Client',
    behind: true,
  },
  'a price each on Client': {
    typed: (book) => [[['Client', clientLine(book), 5], 1]],
    first: 'Price: here, and on Client',
    behind: true,
  },
  'ticks of what is done': {
    typed: (book) => [
      [['Pieces', pieceRow(book, 1).row, PIECES_AT.done], 'x'],
      [['Pieces', pieceRow(book, 4).row, PIECES_AT.done], 'x'],
      // A stick as a whole, and one piece of another.
      [boxOf(cutSticks(sheetOf(book, 'Cutting')).at(-1)!.pieces[0]!), 'x'],
      [boxOf(cutSticks(sheetOf(book, 'Cutting'))[0]!), 'x'],
      ...UNTICKED.flatMap((value, at): Typed => {
        const stick = cutSticks(sheetOf(book, 'Cutting'))[at + 1]!;
        return [
          [boxOf(stick), value],
          [boxOf(stick.pieces[0]!), value],
        ];
      }),
      [['Pieces', pieceRow(book, 5).row, PIECES_AT.done], 'No'],
      [['Pieces', pieceRow(book, 6).row, PIECES_AT.done], false],
      [['Production', rowWith(sheetOf(book, 'Production'), 'Order of work') + 4, DONE], 'x'],
      [['Production', rowWith(sheetOf(book, 'Production'), 'Order of work') + 5, DONE], '–'],
    ],
  },
};

/** The workbook with cells typed over, all other formulas and cached values left alone. */
export function typeInto(workbook: WorkbookDescription, typed: Typed): WorkbookDescription {
  const sheets = workbook.sheets.map((sheet): SheetDescription => {
    const own = typed.filter(([[name]]) => name === sheet.name);
    if (own.length === 0) return sheet;
    const rows = sheet.rows.map((row, at): RowDescription => {
      const here = new Map(own.flatMap(([[, r, c], value]) => (r === at ? [[c, value]] : [])));
      if (here.size === 0) return row;
      return {
        ...row,
        cells: row.cells.map((cell, column) => {
          const value = here.get(column);
          if (value === undefined) return cell;
          return { ...(cell?.style === undefined ? {} : { style: cell.style }), value };
        }),
      };
    });
    return { ...sheet, rows };
  });
  return { ...workbook, sheets };
}

/** The list of pieces sorted by what stands in a column, as spreadsheets sort: formulas go along, their row with them. */
export function sortPieces(workbook: WorkbookDescription, column: number): WorkbookDescription {
  const sheets = workbook.sheets.map((sheet): SheetDescription => {
    if (sheet.name !== 'Pieces') return sheet;
    const first = rowWith(sheet, 'No.') + 1;
    const moved = sheet.rows
      .slice(first)
      .map((row, at) => ({ row, from: first + at + 1 }))
      .sort((one, other) =>
        String(other.row.cells[column]?.value).localeCompare(String(one.row.cells[column]?.value)),
      )
      .map(({ row, from }, at) => ({
        ...row,
        cells: row.cells.map((cell) =>
          cell?.formula === undefined
            ? cell
            : { ...cell, formula: cell.formula.replace(`-G${from},`, `-G${first + at + 1},`) },
        ),
      }));
    return { ...sheet, rows: [...sheet.rows.slice(0, first), ...moved] };
  });
  return { ...workbook, sheets };
}
