/**
 * On a narrow screen a sheet of ours is as small as shows its whole width: a mark is never seen with its left
 * or right cut off. Where there is room again it is as large as before.
 */
import type { Grid } from '../../hosts/grid/grid.ts';
import { gridSheet } from '../../hosts/grid/grid-sheets.ts';
import { zoomForWidth, zoomNow, zoomTo } from '../../hosts/grid/zoom-sheet.ts';
import { NARROW } from './layout.ts';

/** Which sheets were made small here, and how small: a person's own choice isn't taken back. */
const NOTE = 'coveledger.fitted';

/** @param onFitted Whether the sheet in view was made small, whenever that may have changed. */
export function fitSheets(grid: Grid, onFitted: (sheet: string | undefined) => void): void {
  const { api } = grid;
  const narrow = window.matchMedia(NARROW);
  const fit = (): void => {
    const sheet = grid.book().getActiveSheet();
    const id = sheet.getSheetId();
    const { ours: isOurs } = gridSheet(sheet.getSheet());
    const fitted = readNote();
    if (isOurs && narrow.matches) {
      const wanted = zoomForWidth(grid, document.documentElement.clientWidth);
      const zoom = zoomNow(grid);
      if (wanted < zoom || (wanted > zoom && fitted[id] === zoom)) {
        zoomTo(grid, wanted);
        writeNote({ ...fitted, [id]: wanted });
      }
    } else if (fitted[id] !== undefined) {
      if (fitted[id] === zoomNow(grid)) zoomTo(grid, 1);
      writeNote(Object.fromEntries(Object.entries(fitted).filter(([one]) => one !== id)));
    }
    onFitted(isOurs && narrow.matches ? sheet.getSheetName() : undefined);
  };
  api.addEvent(api.Event.ActiveSheetChanged, () => fit());
  window.addEventListener('resize', fit);
  fit();
}

type Fitted = Readonly<Record<string, number>>;

function readNote(): Fitted {
  try {
    return JSON.parse(localStorage.getItem(NOTE) ?? '{}') as Fitted;
  } catch {
    return {};
  }
}

/** Where storage is turned off the sheet stays small until the person makes it larger. */
function writeNote(fitted: Fitted): void {
  try {
    localStorage.setItem(NOTE, JSON.stringify(fitted));
  } catch {
    return;
  }
}
