/** The cutting sheet read back: its sticks with their pieces, its offcuts, its pages. */
import type { RowDescription, SheetDescription } from '../../src/sheets/grammar/description.ts';
import { rowWith } from './sheet-jobs.ts';

const COLUMNS = 12;

export interface CutRow {
  /** From 1. */
  readonly row: number;
  readonly number: number;
  readonly id: string;
  /** Its No. on Pieces; 0 where it is none of theirs. */
  readonly onPieces: number;
  readonly length: number;
  readonly part: string;
  readonly left: string;
  readonly leftPoint: string;
  readonly right: string;
  readonly rightPoint: string;
  readonly lie: string;
}

export interface CutStickRows {
  readonly row: number;
  readonly id: string;
  readonly text: string;
  readonly length: number;
  readonly which: string;
  readonly rest: string;
  readonly kept: number | null;
  readonly pieces: readonly CutRow[];
}

export function cutSticks({ rows }: SheetDescription): CutStickRows[] {
  const sticks: (CutStickRows & { pieces: CutRow[] })[] = [];
  let open: CutRow[] | undefined;
  rows.forEach((row, index) => {
    const text = textOf(row);
    if (isStick(row)) {
      open = [];
      sticks.push({
        row: index + 1,
        id: text(1),
        text: text(3),
        length: Number(text(5)),
        which: text(6),
        rest: text(8),
        kept: (row.cells[10]?.value ?? null) === null ? null : Number(text(10)),
        pieces: open,
      });
    } else if (isPiece(row)) {
      open?.push({
        row: index + 1,
        number: Number(text(1)),
        id: text(2),
        onPieces: Number(text(3)),
        length: Number(text(4)),
        part: text(5),
        left: text(6),
        leftPoint: text(7),
        right: text(8),
        rightPoint: text(9),
        lie: text(10),
      });
    }
  });
  return sticks;
}

export function cutPieces(sheet: SheetDescription): CutRow[] {
  return cutSticks(sheet).flatMap(({ pieces }) => pieces);
}

function isStick({ cells }: RowDescription): boolean {
  return (
    cells[1]?.style === 'stick' && typeof cells[5]?.value === 'number' && cells.length === COLUMNS
  );
}

function isPiece({ cells }: RowDescription): boolean {
  const isNumbered = typeof cells[1]?.value === 'number' && cells.length === COLUMNS;
  return cells[0]?.style === 'tick' && isNumbered && /^row(?:Done)?$/u.test(cells[2]?.style ?? '');
}

export interface OffcutRow {
  readonly label: string;
  readonly length: number;
  readonly formula: string | undefined;
  readonly wide: string;
  readonly thick: string;
  readonly of: string;
  readonly what: string;
  readonly from: string;
  readonly hasBox: boolean;
}

/** The list of what is kept, over as many pages as it takes. */
export function offcutRows(sheet: SheetDescription): OffcutRow[] {
  const from = rowWith(sheet, 'Offcuts to keep');
  const to = rowWith(sheet, 'All profiles');
  return sheet.rows.slice(from, to).flatMap((row): OffcutRow[] => {
    const text = textOf(row);
    if (row.cells[2]?.style !== 'rowStrong') return [];
    return [
      {
        label: text(2),
        length: Number(text(4)),
        formula: row.cells[4]?.formula,
        wide: text(3),
        thick: text(5),
        of: text(6),
        what: text(7),
        from: text(8),
        hasBox: row.cells[0]?.style === 'tick',
      },
    ];
  });
}

/** First and last row of each page, from 1. */
export function pagesOf({ rows, print }: SheetDescription): (readonly [number, number])[] {
  const ends = [...(print.breaksAfter ?? []), rows.length];
  return ends.map((end, index) => [(ends[index - 1] ?? 0) + 1, end]);
}

function textOf({ cells }: RowDescription): (column: number) => string {
  return (column) => String(cells[column]?.value ?? '');
}
