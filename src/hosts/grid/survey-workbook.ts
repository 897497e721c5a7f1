/** What the grid's workbook holds that could be of use: places for tables, and sheets. */
import { FormulaDataModel } from '@univerjs/engine-formula';
import { cellName } from '../../core/cells/cell-range.ts';
import { formulaParts, nameKey } from '../formulas/formula-parts.ts';
import type { SurveyedSheet, WorkbookSurvey } from '../host.ts';
import { gridSheets, type GridSheet } from './grid-sheets.ts';
import { placesOf } from './places.ts';
import type { Grid } from './grid.ts';

/** Cells named of those that point into a sheet of ours. */
const MOST_NAMED = 10;

export function surveyWorkbook(grid: Grid): WorkbookSurvey {
  return {
    name: grid.book().getName(),
    places: placesOf(grid).map(({ place }) => place),
    sheets: surveySheets(grid),
  };
}

function surveySheets(grid: Grid): SurveyedSheet[] {
  const sheets = gridSheets(grid);
  const ours = sheets.filter((sheet) => sheet.ours);
  const pointing = new Map(ours.map(({ name }) => [nameKey(name), [] as string[]]));
  if (ours.length > 0) {
    for (const sheet of sheets.filter((one) => !one.ours)) notePointing(grid, sheet, pointing);
  }
  return sheets.map(({ name, ours: isOurs }) => ({
    name,
    ours: isOurs,
    pointedAtBy: isOurs ? (pointing.get(nameKey(name)) ?? []) : [],
  }));
}

/** Adds the sheet's cells whose formulas name one of ours to that one's list. */
function notePointing(grid: Grid, from: GridSheet, pointing: ReadonlyMap<string, string[]>): void {
  const formulas = grid.services.get(FormulaDataModel);
  const book = grid.book().getId();
  from.worksheet.getCellMatrix().forValue((row, column, cell) => {
    if ((cell?.f ?? cell?.si ?? '') === '') return;
    // Of cells filled from another the formula stands in that one alone.
    const formula = cell?.f ?? formulas.getFormulaStringByCell(row, column, from.id, book) ?? '';
    if (!formula.includes('!')) return;
    const named = formulaParts(formula)
      .filter(({ kind }) => kind === 'sheet')
      .map(({ name }) => nameKey(name));
    for (const name of new Set(named)) {
      const cells = pointing.get(name);
      if (cells !== undefined && cells.length < MOST_NAMED) {
        cells.push(`${from.name}!${cellName(row, column)}`);
      }
    }
  });
}
