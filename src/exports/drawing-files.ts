/** Every drawing of a plan's sheets as SVG, true to its size. */
import { PRINT_PALETTE } from '../drawings/palette.ts';
import { toSvg } from '../drawings/to-svg.ts';
import { SHEET_NAMES } from '../sheets/plan-anchors.ts';
import type { WorkbookDescription } from '../sheets/grammar/description.ts';
import type { ExportFile } from './export-file.ts';
import { newFileNames } from './file-names.ts';

/**
 * A folder a sheet, a file a drawing, numbered in the sheet's order. What the office's sheet shows of prices
 * stays there: files go to whoever cuts.
 */
export function drawingFiles({ sheets }: WorkbookDescription): ExportFile[] {
  return sheets.flatMap(({ name, drawings = [] }) => {
    if (name === SHEET_NAMES.office) return [];
    const nameFile = newFileNames();
    const folder = newFileNames()(name).toLowerCase();
    const digits = String(drawings.length).length;
    return drawings.map(({ drawing, name: of = drawing.title }, at) => {
      const number = String(at + 1).padStart(digits, '0');
      return {
        path: `drawings/${folder}/${number}-${nameFile(of)}.svg`,
        text: toSvg(drawing, PRINT_PALETTE),
      };
    });
  });
}
