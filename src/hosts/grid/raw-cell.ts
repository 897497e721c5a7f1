/** What a cell of the grid holds to the last bit, also where another cell's answer spills into it. */
import type { ICellData, Nullable, Univer } from '@univerjs/core';
import { FormulaDataModel } from '@univerjs/engine-formula';
import type { FUniver } from '@univerjs/core/facade';

type Book = ReturnType<FUniver['createWorkbook']>;

/** Rows and columns from 0. Undefined for a blank that was never touched. */
export type ReadCell = (
  book: Book,
  sheetId: string,
  row: number,
  column: number,
) => ICellData | undefined;

/** The facade rounds numbers to what is shown, and knows nothing of spilled cells. */
export function cellReader(univer: Univer): ReadCell {
  const formulas = univer.__getInjector().get(FormulaDataModel);
  return (book, sheetId, row, column) => {
    const own = book
      .getWorkbook()
      .getSheetBySheetId(sheetId)
      ?.getCellMatrix()
      .getValue(row, column);
    if (isHeld(own)) return own;
    const spilled = formulas.getArrayFormulaCellData()[book.getId()]?.[sheetId]?.[row]?.[column];
    return spilled ?? own ?? undefined;
  };
}

function isHeld(cell: Nullable<ICellData>): cell is ICellData {
  return cell !== null && cell !== undefined && (cell.v ?? cell.f ?? cell.p ?? null) !== null;
}
