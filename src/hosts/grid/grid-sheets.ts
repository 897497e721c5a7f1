/** The sheets of the grid's workbook, and whose they are. */
import type { Worksheet } from '@univerjs/core';
import { readCustomData, type SheetMetadata } from './sheet-metadata.ts';
import type { Grid } from './grid.ts';

export interface GridSheet {
  readonly id: string;
  readonly name: string;
  readonly kept: SheetMetadata | undefined;
  /** Made here, under the name that it still bears: a copy of it is the person's. */
  readonly ours: boolean;
  readonly worksheet: Worksheet;
}

export function gridSheets(grid: Grid): GridSheet[] {
  return grid.book().getWorkbook().getSheets().map(gridSheet);
}

export function gridSheet(worksheet: Worksheet): GridSheet {
  const name = worksheet.getName();
  const kept = readCustomData(worksheet.getCustomMetadata());
  const ours = kept?.owner === 'tool' && kept.name === name;
  return { id: worksheet.getSheetId(), name, kept, ours, worksheet };
}
