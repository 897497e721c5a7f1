/** What the keyboard does on the page: the one list of it, which the page shows and README repeats. */
import { ask } from '../shell/ask.ts';
import { make } from '../shell/element.ts';

export const KEYS: readonly (readonly [keys: string, what: string])[] = [
  ['F6, Shift+F6', 'to the bar, the sheet, the pane; and back'],
  ['Arrows, Tab, Enter', 'from cell to cell; with Shift, Tab and Enter go back'],
  ['Ctrl+arrow', 'to the end of the filled cells'],
  ['Shift+arrows', 'chooses several cells'],
  ['F2', 'changes what stands in the cell; Escape leaves it as it was'],
  ['Alt+Down', 'opens the list of a cell that has one'],
  ['Ctrl+Z, Ctrl+Y', 'undo, redo'],
  ['Ctrl+C, Ctrl+X, Ctrl+V', 'copy, cut, paste'],
  ['Ctrl+B', 'bold'],
  ['Ctrl+F', 'finds words in the sheets'],
];

export async function showKeys(): Promise<void> {
  const list = make(
    'dl',
    { className: 'key-list' },
    ...KEYS.flatMap(([keys, what]) => [make('dt', {}, keys), make('dd', {}, what)]),
  );
  await ask({
    title: 'Keyboard',
    says: [list, 'On a Mac the Command key stands for Ctrl.'],
    choices: [{ name: 'close', label: 'Close', first: true }],
  });
}
