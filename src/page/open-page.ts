/** Opens the grid with what was kept or with the demo, then starts the pane beside it. */
import { sayError } from '../core/faults/say-error.ts';
import { watchChosenCell } from '../hosts/grid/chosen-cell.ts';
import { finishTyping } from '../hosts/grid/finish-typing.ts';
import { openGridHost } from '../hosts/grid/open-grid-host.ts';
import { repairPaste } from '../hosts/grid/paste/repair-paste.ts';
import type { Grid } from '../hosts/grid/grid.ts';
import { startGrid } from '../hosts/grid/start-grid.ts';
import { whenCalculated } from '../hosts/grid/when-calculated.ts';
import type { WorkbookHost } from '../hosts/host.ts';
import type { SheetsBehind, StartedPane } from '../pane/start-pane.tsx';
import { paintInBrowser } from '../browser/paint-in-browser.ts';
import { gridFunctions } from './grid-functions.ts';
import { makeDesk, type Desk } from './job/desk.ts';
import { download } from './job/download.ts';
import { demoWorkbook } from './job/make-workbook.ts';
import { openFile } from './job/open-file.ts';
import { begin, startOver } from './job/start-over.ts';
import { readLastVisit, type Keeping } from './keep/start-keeping.ts';
import { askToPrint } from './print/ask-to-print.ts';
import { nameBook, readyBar } from './shell/bar.ts';
import { chooseFile, takeDroppedFiles } from './shell/choose-file.ts';
import { byId } from './shell/element.ts';
import { showPane, showSheet } from './shell/layout.ts';
import { dropNotice, showNotice } from './shell/notices.ts';
import { swipeSheet } from './shell/swipe-sheet.ts';

/** @throws Error where the grid or the demo doesn't come over the network */
export async function openPage(): Promise<void> {
  const lastVisit = await readLastVisit();
  const first = lastVisit.data ?? (await demoWorkbook());
  const grid = startGrid('grid-place', first, gridFunctions());
  performance.mark('grid shown');
  followDark(grid);
  const calculated = whenCalculated(grid);
  repairPaste(grid, (faults) =>
    showNotice('paste', { kind: 'problem', says: faults.map(({ message }) => message) }),
  );
  byId('grid-first').hidden = true;
  const started: { pane?: StartedPane; keeping?: Keeping | undefined } = {};
  const desk = makeDesk(grid, lastVisit.touched, {
    onChange: () => started.keeping?.changed(),
    onPut: (name) => {
      nameBook(name);
      started.pane?.standBeside(beside());
    },
  });
  const beside = (): WorkbookHost => besideGrid(grid, () => started.keeping?.changed());
  nameBook(desk.name());
  const findBehind = async (): Promise<SheetsBehind | undefined> => started.pane?.findBehind();
  const save = (): Promise<void> => tried('download', () => download(desk, findBehind));
  started.keeping = lastVisit.keep(desk.take, () => void save());
  if (lastVisit.data === undefined) started.keeping?.changed();
  window.addEventListener('beforeunload', (event) => {
    if (started.pane?.isPlanning() === true) event.preventDefault();
    if (desk.touched() && started.keeping?.isBehind() !== false) event.preventDefault();
  });
  readyDoors(desk, save, findBehind);
  leaveSheet(grid);
  watchChosenCell(grid, (text) => {
    byId('cell-says').textContent = text;
  });
  swipeSheet(byId('grid-place'));
  // Whoever drives the page by script gets at the grid.
  Object.assign(globalThis, { grid });
  // The sheet answers before the pane takes any of the machine's time.
  await calculated;
  performance.mark('functions answer');
  const { startPagePane } = await import('./start-page-pane.ts');
  performance.mark('pane loaded');
  started.pane = startPagePane(byId('pane'), beside());
  started.pane.watchBehind((behind) => sayBehind(behind, () => started.pane?.showPlan()));
}

function readyDoors(
  desk: Desk,
  save: () => Promise<void>,
  findBehind: () => Promise<SheetsBehind | undefined>,
): void {
  const take = (file: File): void => void openFile(desk, file, save);
  takeDroppedFiles(take);
  readyBar({
    open: () => chooseFile(take),
    download: () => void save(),
    print: () => void tried('print', () => askToPrint(desk.grid, findBehind)),
    'start over': () => void tried('start over', () => startOver(desk, save)),
    demo: () => void tried('start over', () => begin(desk, 'demo', save)),
    blank: () => void tried('start over', () => begin(desk, 'blank', save)),
    metric: () => void tried('start over', () => begin(desk, 'metric', save)),
  });
}

/** Above sheet and pane, so that it is in view whichever of them is, and on a narrow screen too. */
function sayBehind(behind: SheetsBehind | undefined, showPlan: () => void): void {
  if (behind === undefined) {
    dropNotice('behind');
    return;
  }
  showNotice('behind', {
    kind: 'caution',
    says: [behind.says],
    choices: [{ name: 'plan', label: 'Go to Plan' }],
    onChoose: () => {
      showPane();
      showPlan();
    },
  });
}

/** What is half typed in a cell belongs to the sheet once the person goes elsewhere. */
function leaveSheet(grid: Grid): void {
  document.addEventListener('focusin', ({ target }) => {
    const isElsewhere = ['bar', 'pane'].some((id) => byId(id).contains(target as Node));
    if (isElsewhere) void finishTyping(grid);
  });
}

/** The sheet is dark where the page around it is; what is printed and kept isn't. */
function followDark({ api }: Grid): void {
  const dark = window.matchMedia('(prefers-color-scheme: dark)');
  if (dark.matches) api.toggleDarkMode(true);
  dark.addEventListener('change', ({ matches }) => api.toggleDarkMode(matches));
}

/** What goes wrong is said; the workbook stays as it is. */
async function tried(id: string, deed: () => Promise<unknown>): Promise<void> {
  try {
    await deed();
    dropNotice(id);
  } catch (error) {
    const what = sayError(error);
    const says = [`It could not be done (${what}). The workbook is as it was. Try again.`];
    showNotice(id, { kind: 'problem', says });
  }
}

/**
 * What the pane shows of a sheet comes into view where one of the two is shown at a time; what it
 * notes with the workbook is kept with it.
 */
function besideGrid(grid: Grid, onNote: () => void): WorkbookHost {
  const host = openGridHost(grid, { paint: paintInBrowser });
  return {
    ...host,
    show: async (where, withKeyboard = false) => {
      const shown = await host.show(where);
      if (shown.ok) showSheet(withKeyboard);
      return shown;
    },
    remember: async (notes) => {
      const noted = await host.remember(notes);
      onNote();
      return noted;
    },
    keepText: async (key, text) => {
      const kept = await host.keepText(key, text);
      onNote();
      return kept;
    },
  };
}
