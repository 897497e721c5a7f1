/** What may stand in a cell of the grid, by the rules that are kept with its sheet. */
import { parseRange } from '../../core/cells/cell-range.ts';
import type { ValidationDescription } from '../../sheets/grammar/description.ts';
import { sayAllowed } from '../../sheets/input/input-sheet.ts';
import { formulaParts, nameKey } from '../formulas/formula-parts.ts';
import { isError } from './error-reasons.ts';
import type { Grid } from './grid.ts';
import { gridSheet, gridSheets } from './grid-sheets.ts';

/** Names of a list, beyond which none is said. */
const MOST_NAMES = 12;

/** Of the sheet in sight; row and column from 0. */
export function ruleOf(grid: Grid, row: number, column: number): ValidationDescription | undefined {
  const { kept } = gridSheet(grid.book().getActiveSheet().getSheet());
  return kept?.validations.find(({ range }) => {
    const within = parseRange(range.replaceAll('$', ''));
    return (
      within !== null &&
      within.top <= row &&
      row <= within.bottom &&
      within.left <= column &&
      column <= within.right
    );
  });
}

export function sayChoices(grid: Grid, { allow, title }: ValidationDescription): string {
  const choices = allow.kind === 'list from' ? sayNames(grid, allow) : sayAllowed(allow);
  return choices === '' || title === '' ? choices : `${title}: ${choices}`;
}

/** The words that a cell is filled with; none where the rule is no list. */
export function choicesOf(grid: Grid, { allow }: ValidationDescription): readonly string[] {
  switch (allow.kind) {
    case 'list':
      return allow.values;
    case 'list from':
      return namesOf(grid, allow);
    case 'whole':
      return [];
  }
}

type ListFrom = Extract<ValidationDescription['allow'], { readonly kind: 'list from' }>;

function sayNames(grid: Grid, allow: ListFrom): string {
  const names = namesOf(grid, allow);
  const more = names.length - MOST_NAMES;
  if (names.length === 0) return '';
  return more > 0
    ? `One of: ${names.slice(0, MOST_NAMES).join(', ')} and ${more} more.`
    : `One of: ${names.join(', ')}.`;
}

/** What stands in the cells that a list is taken from, each once. */
function namesOf(grid: Grid, { formula }: ListFrom): readonly string[] {
  const [first] = formulaParts(formula.replace(/^=/u, ''));
  const range = parseRange(formula.slice(formula.lastIndexOf('!') + 1).replaceAll('$', ''));
  const sheet = gridSheets(grid).find(
    ({ name }) => first?.kind === 'sheet' && nameKey(name) === nameKey(first.name),
  );
  if (range === null || sheet === undefined) return [];
  const names = new Set<string>();
  for (let row = range.top; row <= range.bottom; row++) {
    const { v } = grid.readCell(grid.book(), sheet.id, row, range.left) ?? {};
    if (v !== undefined && v !== null && v !== '' && !isError(v)) names.add(String(v));
  }
  return [...names];
}
