/** Cells as another program puts them on the clipboard. */

export interface CopiedCell {
  /** As it was shown there. */
  readonly text: string;
  /** The number behind what was shown, where the other program tells it. */
  readonly number?: number;
  /** Its number format, where that is told. */
  readonly format?: string;
  /** The other program held it as text. */
  readonly isText?: boolean;
  /** May be taken for a formula: what was copied as cells shows a formula's answer, or is text. */
  readonly mayBeFormula?: boolean;
}

export interface CopiedCells {
  /** Row by row; a null cell, or one past the row's end, is blank. */
  readonly rows: readonly (readonly (CopiedCell | null)[])[];
  /** Joined cells, from 0 within what was copied, both ends included. */
  readonly merges: readonly {
    readonly top: number;
    readonly left: number;
    readonly bottom: number;
    readonly right: number;
  }[];
}

/** How many there are, the blank ones between them too. */
export function copiedSize({ rows }: CopiedCells): { rows: number; columns: number } {
  return {
    rows: rows.length,
    columns: rows.reduce((widest, row) => Math.max(widest, row.length), 0),
  };
}
