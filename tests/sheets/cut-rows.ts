/** The cutting sheet read back: its sticks with their pieces, its offcuts, its pages. */
import type { RowDescription, SheetDescription } from '../../src/sheets/grammar/description.ts';
import { BOTH, HALVES, OFFCUTS, type Half } from '../../src/sheets/cutting/cutting-columns.ts';
import { rowWith } from './sheet-jobs.ts';

/** A length that is cut from a stick, as the sheet has it: the numbers of its lay-out, the mark of its own. */
export interface CutRow {
  /** From 1; columns from 0: of the mark, and of its box. */
  readonly row: number;
  readonly column: number;
  readonly box: number;
  readonly number: number;
  readonly mark: string;
  readonly length: number;
  /** Where the length stands for all sticks that are cut like it: row from 1, column from 0. */
  readonly lengthAt: readonly [row: number, column: number];
  readonly left: string;
  readonly right: string;
  /** Column of what its length is off by, from 0. */
  readonly off: number;
}

export interface CutStickRows {
  readonly row: number;
  /** Of its box, from 0. */
  readonly box: number;
  readonly id: string;
  /** `I1/2`: the stick or board, and the blank of it. */
  readonly which: string;
  readonly layOut: PrintedLayOut;
  readonly pieces: readonly CutRow[];
}

/** The block of a lay-out: where it begins, and what stands there once. */
export interface PrintedLayOut {
  readonly row: number;
  /** Columns from 0, of the half that it begins in. */
  readonly half: Half;
  readonly text: string;
  readonly sticks: number;
  readonly length: number;
  readonly kept: number | null;
}

const PROFILE = HALVES.start('profile');

const known = new WeakMap<SheetDescription, CutStickRows[]>();

/** From the left to the right of a band of rows, band below band. */
export function cutSticks(sheet: SheetDescription): CutStickRows[] {
  const sticks = known.get(sheet) ?? readSticks(sheet);
  known.set(sheet, sticks);
  return sticks;
}

function readSticks(sheet: SheetDescription): CutStickRows[] {
  const found: (CutStickRows & { readonly pieces: CutRow[] })[] = [];
  let last:
    (PrintedLayOut & { lengths: Omit<CutRow, 'row' | 'column' | 'box' | 'mark'>[] }) | undefined;
  let open: {
    readonly half: Half;
    readonly layOut: NonNullable<typeof last>;
    readonly begins: boolean;
    readonly sticks: { readonly stick: (typeof found)[number]; readonly column: number }[];
  }[] = [];
  sheet.rows.forEach((row, index) => {
    const text = textOf(row);
    const value = (column: number): unknown => row.cells[column]?.value ?? null;
    if (isHead(row)) {
      open = BOTH.flatMap((half) => {
        const { table } = half;
        const said = text(table.start('number'));
        if (said === '') return [];
        const begins = said.startsWith('Cut ');
        if (begins) {
          const kept = value(table.start('kept'));
          last = {
            row: index + 1,
            half,
            text: said,
            sticks: Number(text(table.start('sticks'))),
            length: Number(text(table.start('stickLength'))),
            kept: kept === null ? null : Number(kept),
            lengths: [],
          };
        }
        const layOut = last!;
        const sticks = half.pairs.flatMap(([box, name]) => {
          const named = /^(#\d+) (.*)$/u.exec(text(table.start(name)));
          if (named === null) return [];
          const id = `${text(PROFILE)} ${named[1]!}`;
          const own = { row: index + 1, box: table.start(box), id, which: named[2]!, layOut };
          const stick = { ...own, pieces: [] as CutRow[] };
          found.push(stick);
          return [{ stick, column: table.start(name) }];
        });
        return [{ half, layOut, begins, sticks }];
      });
      return;
    }
    for (const { half, layOut, begins, sticks } of open) {
      const { table } = half;
      const number = value(table.start('number'));
      // Other lists have numbers there too, further down.
      if (typeof number !== 'number' || row.cells[table.start('number')]?.style !== 'rowWhole')
        continue;
      if (begins) {
        layOut.lengths.push({
          number,
          length: Number(text(table.start('length'))),
          lengthAt: [index + 1, table.start('length')],
          left: text(table.start('left')),
          right: text(table.start('right')),
          off: table.start('off'),
        });
      }
      for (const { stick, column } of sticks) {
        stick.pieces.push({
          ...layOut.lengths[number - 1]!,
          row: index + 1,
          column,
          box: column - 1,
          mark: text(column),
          off: table.start('off'),
        });
      }
    }
  });
  return found;
}

export function cutPieces(sheet: SheetDescription): CutRow[] {
  return cutSticks(sheet).flatMap(({ pieces }) => pieces);
}

/** Each lay-out once, in the order of the sheet. */
export function layOutsOf(sheet: SheetDescription): PrintedLayOut[] {
  return [...new Set(cutSticks(sheet).map(({ layOut }) => layOut))];
}

function isHead({ cells }: RowDescription): boolean {
  return cells[PROFILE]?.style === 'quietLabel' && cells[0]?.style === 'stick';
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
    const at = (name: Parameters<typeof OFFCUTS.start>[0]): string => text(OFFCUTS.start(name));
    if (row.cells[OFFCUTS.start('label')]?.style !== 'rowStrong') return [];
    return [
      {
        label: at('label'),
        length: Number(at('length')),
        formula: row.cells[OFFCUTS.start('length')]?.formula,
        wide: at('wide'),
        thick: at('thick'),
        of: at('of'),
        what: at('what'),
        from: at('from'),
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
