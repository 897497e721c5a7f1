/** Opens the grid with what was kept, with the demo or blank, then starts the pane beside it. */
import { sayError } from '../core/faults/say-error.ts';
import { watchChosenCell } from '../hosts/grid/chosen-cell.ts';
import { markFaults } from '../hosts/grid/mark-faults.ts';
import { finishTyping } from '../hosts/grid/finish-typing.ts';
import { openGridHost } from '../hosts/grid/open-grid-host.ts';
import { repairPaste } from '../hosts/grid/paste/repair-paste.ts';
import type { Grid } from '../hosts/grid/grid.ts';
import { startGrid } from '../hosts/grid/start-grid.ts';
import { whenCalculated } from '../hosts/grid/when-calculated.ts';
import type { WorkbookHost } from '../hosts/host.ts';
import type { PageDoors } from '../pane/services.ts';
import type { SheetsBehind, StartedPane } from '../pane/start-pane.tsx';
import { SHEET_NAMES } from '../sheets/plan-anchors.ts';
import { paintInBrowser } from '../browser/paint-in-browser.ts';
import { gridFunctions } from './grid-functions.ts';
import { makeDesk, type Desk } from './job/desk.ts';
import { download } from './job/download.ts';
import { blankWorkbook, demoWorkbook } from './job/make-workbook.ts';
import { openFile, openPasted } from './job/open-file.ts';
import { showDemo, startOver } from './job/start-over.ts';
import { readLastVisit, type Keeping } from './keep/start-keeping.ts';
import { askToPrint } from './print/ask-to-print.ts';
import { nameBook, readyBar } from './shell/bar.ts';
import { chooseFile, takeDroppedFiles } from './shell/choose-file.ts';
import { byId } from './shell/element.ts';
import { fitSheets } from './shell/fit-sheet.ts';
import { showPane, showSheet } from './shell/layout.ts';
import { keepPageOffline } from './shell/new-version.ts';
import { dropNotice, showNotice } from './shell/notices.ts';
import { nameParts } from './shell/name-parts.ts';
import { swipeSheet } from './shell/swipe-sheet.ts';
import { showKeys } from './tools/keys.ts';
import { startTools } from './tools/start-tools.ts';

/** Of the corner on a cell that must change: tells itself from paper and from the dark alike. */
const FAULT_COLOR = '#D13438';

/** @throws Error where the grid or the demo doesn't come over the network */
export async function openPage(): Promise<void> {
  const lastVisit = await readLastVisit();
  const wantsDemo = takeDemoAddress();
  const isFirstVisit = lastVisit.data === undefined && !wantsDemo;
  const first = lastVisit.data ?? (wantsDemo ? await demoWorkbook() : blankWorkbook('in'));
  if (isFirstVisit) showPane();
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
  const doors = readyDoors(desk, save, findBehind);
  window.addEventListener('hashchange', () => {
    if (takeDemoAddress()) doors.showDemo();
  });
  // What was kept of a work of one's own stays, until the person gives it up.
  if (wantsDemo && lastVisit.data !== undefined) doors.showDemo();
  leaveSheet(grid);
  const marks = markFaults(grid, FAULT_COLOR);
  const tools = startTools(
    grid,
    () => started.pane?.lengthReading(),
    (error) => sayFailure('tools', error),
  );
  const watch = watchChosenCell(grid, marks.at, (cell) => {
    byId('cell-says').textContent = cell.says;
    byId('cell-heard').textContent = cell.heard;
    tools.show(cell);
  });
  nameParts(byId('grid-place'));
  swipeSheet(byId('grid-place'));
  // Whoever drives the page by script gets at the grid.
  Object.assign(globalThis, { grid });
  // The sheet answers before the pane takes any of the machine's time.
  await calculated;
  performance.mark('functions answer');
  const { startPagePane } = await import('./start-page-pane.ts');
  performance.mark('pane loaded');
  started.pane = startPagePane(byId('pane'), beside(), { ...doors, isFirstVisit });
  started.pane.watchFaults((faults) => {
    marks.set(faults);
    watch.again();
  });
  started.pane.watchBehind((behind) => sayBehind(behind, () => started.pane?.showPlan()));
  fitSheets(grid, (sheet) => sayAtSaw(sheet, () => started.pane?.showAtSaw()));
  const { startFilter } = await import('../hosts/grid/rows/filter-rows.ts');
  await startFilter(grid, tools.showFiltered);
  performance.mark('all loaded');
  // The last of all: what it fetches would hold up what is waited for. An untouched demo needs no keeping.
  keepPageOffline(async () => !desk.touched() || (await started.keeping?.keepNow()) === true);
}

/** The bar's doors, and those that the pane has of the page. */
function readyDoors(
  desk: Desk,
  save: () => Promise<void>,
  findBehind: () => Promise<SheetsBehind | undefined>,
): Omit<PageDoors, 'isFirstVisit'> {
  const take = (file: File): void => void openFile(desk, file, save);
  takeDroppedFiles(take);
  const open = (): void => chooseFile(take);
  const print = (): void => void tried('print', () => askToPrint(desk.grid, findBehind));
  readyBar({
    open,
    new: () => void tried('new', () => startOver(desk, save)),
    download: () => void save(),
    print,
    keys: () => void showKeys(),
  });
  return {
    openFile: open,
    openPasted: (text) => openPasted(desk, text, save),
    showDemo: () => void tried('new', () => showDemo(desk, save)),
    print,
  };
}

/** By this address a link shows the demo. It is put away, so that a reload keeps to the person's work. */
function takeDemoAddress(): boolean {
  const { hash, pathname, search } = window.location;
  if (hash !== '#demo') return false;
  window.history.replaceState(null, '', `${pathname}${search}`);
  return true;
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

/** A sheet of set-ups that is all in view on a phone has small figures: the page for the saw has large ones. */
function sayAtSaw(sheet: string | undefined, showAtSaw: () => void): void {
  if (sheet !== SHEET_NAMES.setUps) {
    dropNotice('at the saw');
    return;
  }
  showNotice('at the saw', {
    kind: 'caution',
    says: [
      'All of this sheet’s width is in view, so its figures are small. At the saw shows each cove with large ones, and its passes to tick off.',
    ],
    choices: [{ name: 'saw', label: 'At the saw', first: true }],
    onChoose: () => {
      showPane();
      showAtSaw();
    },
  });
}

/** What is half typed in a cell belongs to the sheet once the person goes elsewhere. */
function leaveSheet(grid: Grid): void {
  document.addEventListener('focusin', ({ target }) => {
    const isElsewhere = ['bar', 'tools', 'find-bar', 'pane'].some((id) =>
      byId(id).contains(target as Node),
    );
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
    sayFailure(id, error);
  }
}

function sayFailure(id: string, error: unknown): void {
  const what = sayError(error);
  const says = [`It could not be done (${what}). The workbook is as it was. Try again.`];
  showNotice(id, { kind: 'problem', says });
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
