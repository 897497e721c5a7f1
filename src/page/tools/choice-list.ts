/** The words that the chosen cell is filled with, as a list under it. */
import type { Grid } from '../../hosts/grid/grid.ts';
import { chosenInSight } from '../../hosts/grid/grid-deeds.ts';
import { putText } from '../../hosts/grid/put-text.ts';
import { byId, make } from '../shell/element.ts';
import { focusSheet } from '../shell/layout.ts';

let open: HTMLElement | undefined;

/** Opens it at the cell, or under the tools where the cell is out of sight; Escape closes it, Enter takes the word. */
export function openChoices(grid: Grid, choices: readonly string[]): void {
  closeChoices();
  const cell = chosenInSight(grid);
  if (cell === undefined || choices.length === 0) return;
  const options = choices.map((word, at) => {
    const option = make('li', { id: `choice-${at}` }, word);
    option.setAttribute('role', 'option');
    return option;
  });
  const list = make('ul', { id: 'choices', tabIndex: -1 }, ...options);
  list.setAttribute('role', 'listbox');
  list.setAttribute('aria-label', 'Choose for this cell');
  let at = Math.max(0, choices.indexOf(cell.text));
  const mark = (): void => {
    options.forEach((option, index) => option.setAttribute('aria-selected', String(index === at)));
    list.setAttribute('aria-activedescendant', `choice-${at}`);
    options[at]?.scrollIntoView({ block: 'nearest' });
  };
  const take = (word: string): void => {
    closeChoices();
    focusSheet();
    void putText(grid, word);
  };
  const moves: Readonly<Record<string, () => number>> = {
    ArrowDown: () => Math.min(at + 1, choices.length - 1),
    ArrowUp: () => Math.max(at - 1, 0),
    Home: () => 0,
    End: () => choices.length - 1,
  };
  list.addEventListener('keydown', (event) => {
    event.stopPropagation();
    const { key } = event;
    const move = moves[key]?.() ?? nextWith(choices, at, key);
    if (move !== undefined) {
      event.preventDefault();
      at = move;
      mark();
    } else if (key === 'Enter' || key === ' ') {
      event.preventDefault();
      take(choices[at] ?? '');
    } else if (key === 'Escape' || key === 'Tab') {
      event.preventDefault();
      closeChoices();
      focusSheet();
    }
  });
  list.addEventListener('click', ({ target }) => {
    const word = choices[options.findIndex((option) => option === target)];
    if (word !== undefined) take(word);
  });
  list.addEventListener('focusout', closeChoices);
  open = list;
  byId('sheet').append(list);
  placeAt(list, cell.rect);
  mark();
  list.focus();
}

function closeChoices(): void {
  const list = open;
  open = undefined;
  list?.remove();
}

/** The next word that begins with a letter typed. */
function nextWith(choices: readonly string[], at: number, key: string): number | undefined {
  if (key.length !== 1 || key === ' ') return undefined;
  const letter = key.toLowerCase();
  const after = [...choices.keys()].map((index) => (at + 1 + index) % choices.length);
  return after.find((index) => choices[index]?.toLowerCase().startsWith(letter) === true);
}

function placeAt(list: HTMLElement, cell: DOMRect): void {
  const sheet = byId('sheet').getBoundingClientRect();
  const canvases = [...document.querySelectorAll<HTMLCanvasElement>('#grid-place canvas')];
  const [largest] = canvases.sort((one, other) => other.height - one.height);
  const cells = largest?.getBoundingClientRect() ?? sheet;
  const isInSight = cell.top >= 0 && cell.top < cells.height && cell.left < cells.width;
  const [x, y] = isInSight ? [cells.left + cell.left, cells.top + cell.bottom] : [0, cells.top];
  const { width, height } = list.getBoundingClientRect();
  const left = Math.min(Math.max(x - sheet.left, 0), sheet.width - width);
  const above = cells.top + cell.top - sheet.top - height;
  const below = y - sheet.top;
  const top = below + height > sheet.height && above > 0 ? above : below;
  list.style.left = `${Math.max(0, left)}px`;
  list.style.top = `${Math.min(top, Math.max(0, sheet.height - height))}px`;
}
