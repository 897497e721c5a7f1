/** Which sheet is to be printed, and its printing by the browser. */
import type { Grid } from '../../hosts/grid/grid.ts';
import { readCustomData } from '../../hosts/grid/sheet-metadata.ts';
import type { SheetsBehind } from '../../pane/start-pane.tsx';
import { ask } from '../shell/ask.ts';
import { make } from '../shell/element.ts';
import { printedFromGrid } from './printed-from-grid.ts';
import { showForPrinting } from './print-view.ts';

/** What a shop prints first. */
const FIRST = 'Set-ups';

/**
 * Asks which, the one in sight or the set-ups chosen to begin with, then prints it. Sheets that
 * are behind their inputs are said to be, and each of their pages bears it.
 */
export async function askToPrint(
  grid: Grid,
  findBehind: () => Promise<SheetsBehind | undefined>,
): Promise<void> {
  const book = grid.book();
  const sheets = book.getSheets().filter((sheet) => !sheet.isSheetHidden());
  const isOurs = (sheet: (typeof sheets)[number]): boolean =>
    readCustomData(sheet.getSheet().getCustomMetadata())?.owner === 'tool';
  const active = book.getActiveSheet().getSheetName();
  const setUps = sheets.find((sheet) => isOurs(sheet) && sheet.getSheetName() === FIRST);
  const isWritten = sheets.some((sheet) => isOurs(sheet) && sheet.getSheetName() === active);
  const begun = isWritten ? active : (setUps?.getSheetName() ?? active);
  const choice = make('select');
  const options = sheets.map((sheet) => {
    const name = sheet.getSheetName();
    return make('option', { value: name, selected: name === begun }, name);
  });
  choice.append(...options);
  const field = make('label', { className: 'field' }, 'Sheet ', choice);
  const hint =
    'In the browser’s own dialog leave the scale at 100 % (“Default”), or what is drawn at full size is not: check the scale bar on it with a ruler.';
  const missing =
    setUps === undefined ? ['The set-ups are printed once they are planned and written.'] : [];
  const behind = setUps === undefined && !isWritten ? undefined : await findBehind();
  const warning = behind === undefined ? [] : [make('p', { className: 'warning' }, behind.says)];
  const answer = await ask({
    title: 'Print a sheet',
    says: [...warning, ...missing, field, hint],
    choices: [
      { name: 'print', label: behind === undefined ? 'Print' : 'Print all the same', first: true },
      { name: 'cancel', label: 'Cancel' },
    ],
  });
  const sheet = book.getSheetByName(choice.value);
  if (answer !== 'print' || sheet === null) return;
  const printed = printedFromGrid(grid, sheet);
  const header = behind !== undefined && isOurs(sheet) ? behind.mark : printed.print.header;
  await showForPrinting({ ...printed, print: { ...printed.print, header } });
  window.print();
}
