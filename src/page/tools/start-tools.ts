/** The tools over the sheet: what each button does, and what they show of the chosen cell. */
import { INCHES_AND_POINT, type LengthReading } from '../../core/units/length.ts';
import type { ChosenCell } from '../../hosts/grid/chosen-cell.ts';
import { finishTyping } from '../../hosts/grid/finish-typing.ts';
import type { Grid } from '../../hosts/grid/grid.ts';
import { doInGrid, formatChosen, watchUndo } from '../../hosts/grid/grid-deeds.ts';
import { byId, make } from '../shell/element.ts';
import { focusSheet } from '../shell/layout.ts';
import { openChoices } from './choice-list.ts';
import { openFindBar, startFindBar } from './find-bar.ts';
import { ITS_OWN, NUMBER_FORMATS } from './number-formats.ts';

const TOOLS = ['undo', 'redo', 'bold', 'sort', 'filter', 'find', 'choose'] as const;
type Tool = (typeof TOOLS)[number];

export interface StartedTools {
  readonly show: (cell: ChosenCell) => void;
  readonly showFiltered: (isFiltered: boolean) => void;
}

/**
 * @param readsLengths How the shop reads a bare number, once that is known.
 * @param failed What came over the network too late or not at all is said.
 */
export function startTools(
  grid: Grid,
  readsLengths: () => LengthReading | undefined,
  failed: (error: unknown) => void,
): StartedTools {
  let chosen: ChosenCell | undefined;
  const choose = (): void => openChoices(grid, chosen?.choices ?? []);
  const execute = (deed: 'undo' | 'redo' | 'bold'): void => void doInGrid(grid, deed).catch(failed);
  const deeds: Readonly<Record<Tool, () => void>> = {
    undo: () => execute('undo'),
    redo: () => execute('redo'),
    bold: () => execute('bold'),
    sort: () => void sort(grid, readsLengths()).catch(failed),
    filter: () => void filter(grid).catch(failed),
    find: openFindBar,
    choose,
  };
  for (const name of TOOLS) {
    const button = toolButton(name);
    button.disabled = name === 'undo' || name === 'redo';
    button.addEventListener('click', ({ detail }) => {
      deeds[name]();
      // After a click the keyboard is in the sheet again; whoever pressed a key stays where they are.
      if (detail > 0 && (name === 'undo' || name === 'redo' || name === 'bold')) focusSheet();
    });
  }
  watchUndo(grid, ({ undo, redo }) => {
    toolButton('undo').disabled = !undo;
    toolButton('redo').disabled = !redo;
  });
  const formats = startFormats(grid);
  startFindBar(grid);
  listenForKeys(choose);
  return {
    showFiltered: (is) => toolButton('filter').setAttribute('aria-pressed', String(is)),
    show: (cell) => {
      chosen = cell;
      toolButton('bold').setAttribute('aria-pressed', String(cell.isBold));
      toolButton('choose').hidden = cell.choices.length === 0;
      formats(cell.format);
    },
  };
}

async function sort(grid: Grid, reading: LengthReading | undefined): Promise<void> {
  await finishTyping(grid);
  const { askToSort } = await import('./ask-to-sort.ts');
  await askToSort(grid, reading ?? INCHES_AND_POINT);
  const { filterAnew } = await import('../../hosts/grid/rows/filter-rows.ts');
  filterAnew(grid, grid.book().getActiveSheet().getSheetId());
  focusSheet();
}

async function filter(grid: Grid): Promise<void> {
  await finishTyping(grid);
  const { askToFilter } = await import('./ask-to-filter.ts');
  await askToFilter(grid);
  focusSheet();
}

/** @returns Shows the format of the chosen cell. */
function startFormats(grid: Grid): (pattern: string) => void {
  const select = byId('number-format') as HTMLSelectElement;
  const own = make('option', { value: ITS_OWN, hidden: true }, ITS_OWN);
  select.append(
    ...NUMBER_FORMATS.map(({ name, pattern }) => make('option', { value: pattern }, name)),
    own,
  );
  select.disabled = false;
  select.addEventListener('change', () => formatChosen(grid, select.value));
  return (pattern) => {
    const isOurs = NUMBER_FORMATS.some((one) => one.pattern === pattern);
    select.value = isOurs ? pattern : pattern === 'General' ? '' : ITS_OWN;
  };
}

/** Ctrl+F finds, Alt+Down opens the list: wherever the keyboard is in the sheet. */
function listenForKeys(choose: () => void): void {
  window.addEventListener(
    'keydown',
    (event) => {
      const { key, ctrlKey, metaKey, altKey, shiftKey, target } = event;
      const isInSheet = target instanceof Node && byId('sheet').contains(target);
      if (!isInSheet || shiftKey || document.querySelector('dialog[open]') !== null) return;
      const finds = key.toLowerCase() === 'f' && (ctrlKey || metaKey) && !altKey;
      const chooses = key === 'ArrowDown' && altKey && !ctrlKey && !metaKey;
      if (!finds && !chooses) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      if (finds) openFindBar();
      else choose();
    },
    true,
  );
}

function toolButton(name: Tool): HTMLButtonElement {
  const button = document.querySelector<HTMLButtonElement>(`#sheet [data-tool="${name}"]`);
  if (button === null) throw new RangeError(`The page has no tool ${name}.`);
  return button;
}
