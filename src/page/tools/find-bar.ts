/** Finds words in the sheets, from one cell that shows them to the next. */
import { cellName } from '../../core/cells/cell-range.ts';
import { findText, type FoundCell } from '../../hosts/grid/find-text.ts';
import type { Grid } from '../../hosts/grid/grid.ts';
import { showCells } from '../../hosts/grid/show-cells.ts';
import { byId } from '../shell/element.ts';
import { focusSheet } from '../shell/layout.ts';

export function openFindBar(): void {
  byId('find-bar').hidden = false;
  const words = wordsField();
  words.focus();
  words.select();
}

export function startFindBar(grid: Grid): void {
  let found: FoundCell[] = [];
  let sought = '';
  let at = -1;
  const says = byId('find-says');
  const go = (step: 1 | -1): void => {
    const words = wordsField().value;
    const isNew = words !== sought;
    sought = words;
    // The cells may have changed since.
    const before = found[at];
    found = findText(grid, words);
    const again = found.findIndex(
      (one) =>
        one.sheetId === before?.sheetId && one.row === before.row && one.column === before.column,
    );
    if (found.length === 0) {
      at = -1;
      says.textContent = words.trim() === '' ? '' : 'Nothing shows that.';
      return;
    }
    const start = isNew || again < 0 ? (step === 1 ? 0 : found.length - 1) : again + step;
    at = (start + found.length) % found.length;
    const cell = found[at];
    if (cell === undefined) return;
    showCells(grid, cell.sheet, {
      top: cell.row,
      left: cell.column,
      bottom: cell.row,
      right: cell.column,
    });
    says.textContent = `${at + 1} of ${found.length}: ${cell.sheet} ${cellName(cell.row, cell.column)}`;
  };
  const bar = byId('find-bar');
  bar.addEventListener('submit', (event) => {
    event.preventDefault();
    go(1);
  });
  byId('find-before').addEventListener('click', () => go(-1));
  const close = (): void => {
    bar.hidden = true;
    says.textContent = '';
    focusSheet();
  };
  byId('find-close').addEventListener('click', close);
  bar.addEventListener('keydown', (event) => {
    if (event.key === 'Escape') close();
    // What is typed here is not for the sheet.
    event.stopPropagation();
  });
}

function wordsField(): HTMLInputElement {
  return byId('find-words') as HTMLInputElement;
}
