/** One described sheet as the .xlsx writer takes it. */
import type { Cell, WriteSheet } from 'hucre/xlsx';

import { soundRange } from '../../core/cells/cell-range.ts';
import type {
  CellDescription,
  HighlightDescription,
  PrintDescription,
  SheetDescription,
  ValidationDescription,
} from '../../sheets/grammar/description.ts';
import { columnPixels, DIGIT_PIXELS, MARGIN_INCHES } from '../../sheets/grammar/page-size.ts';
import { rowHeights } from '../../sheets/grammar/row-height.ts';
import type { StyleName } from '../../sheets/grammar/styles.ts';
import { cellStyle, highlightStyle } from './xlsx-style.ts';

type XlsxCell = Partial<Cell>;
type XlsxTable = NonNullable<WriteSheet['tables']>[number];
type XlsxValidation = NonNullable<WriteSheet['dataValidations']>[number];

/** What the writer would turn into an error's cell (its own list): it is written as rich text. */
const LOOKS_LIKE_ERROR =
  /^#(VALUE!|REF!|N\/A|NAME\?|NULL!|DIV\/0!|NUM!|GETTING_DATA|SPILL!|CALC!)$/;

/** The sheet, from a description that has been cleaned and checked. */
export function xlsxSheet(sheet: SheetDescription): WriteSheet {
  const { merges = [], tables = [], validations = [], highlights = [], freeze } = sheet;
  return {
    name: sheet.name,
    columns: sheet.columns.map(({ width }) => ({ width: storedWidth(width) })),
    rows: sheet.rows.map(() => []),
    cells: cells(sheet),
    rowDefs: rowHeights(sheet),
    merges: merges.map(soundRange).map(({ top, left, bottom, right }) => ({
      startRow: top,
      startCol: left,
      endRow: bottom,
      endCol: right,
    })),
    tables: tables.map(({ name, range }) => table(sheet, name, range)),
    dataValidations: validations.map(xlsxValidation),
    conditionalRules: xlsxHighlights(highlights),
    ...(freeze === undefined || freeze.rows + freeze.columns === 0 ? {} : { freezePane: freeze }),
    ...xlsxPage(sheet.print),
  };
}

export function xlsxHighlights(
  highlights: readonly HighlightDescription[],
): NonNullable<WriteSheet['conditionalRules']> {
  return highlights.map(({ range, formula, style }, index) => ({
    type: 'expression',
    priority: index + 1,
    formula,
    range,
    style: highlightStyle(style),
  }));
}

/** ECMA-376 part 1, 18.3.1.13: a column's stored width holds the padding too. */
function storedWidth(characters: number): number {
  return Math.trunc((columnPixels(characters) / DIGIT_PIXELS) * 256) / 256;
}

function cells(sheet: SheetDescription): Map<string, XlsxCell> {
  const made = new Map<string, XlsxCell>();
  const covered = coveredStyles(sheet);
  sheet.rows.forEach((row, r) => {
    const count = Math.max(row.cells.length, sheet.columns.length);
    for (let c = 0; c < count; c++) {
      const key = `${r},${c}`;
      const cell = row.cells[c] ?? null;
      if (cell !== null && !covered.has(key)) made.set(key, xlsxCell(cell));
      else {
        const style = covered.get(key) ?? sheet.columns[c]?.style;
        if (style !== undefined) made.set(key, { value: null, style: cellStyle(style) });
      }
    }
  });
  return made;
}

/** Styles of the cells that a merge hides: its first cell's, or its border would have gaps. */
function coveredStyles(sheet: SheetDescription): Map<string, StyleName> {
  const styles = new Map<string, StyleName>();
  for (const { top, left, bottom, right } of (sheet.merges ?? []).map(soundRange)) {
    const style = sheet.rows[top]?.cells[left]?.style ?? 'plain';
    for (let r = top; r <= Math.min(bottom, sheet.rows.length - 1); r++) {
      const count = Math.max(sheet.rows[r]?.cells.length ?? 0, sheet.columns.length);
      for (let c = left; c <= Math.min(right, count - 1); c++) {
        if (r !== top || c !== left) styles.set(`${r},${c}`, style);
      }
    }
  }
  return styles;
}

function xlsxCell({ value, formula, style = 'plain' }: CellDescription): XlsxCell {
  const styled = { style: cellStyle(style) };
  const held = typeof value === 'string' ? escapeText(value) : value;
  if (formula !== undefined) return { ...styled, formula, formulaResult: held };
  if (typeof held !== 'string') return { ...styled, value: held };
  if (held === '') return { ...styled, value: null };
  if (looksLikeError(held)) return { ...styled, value: held, richText: [{ text: held }] };
  return { ...styled, value: held };
}

/** Text that the writer would take for an error. */
export function looksLikeError(text: string): boolean {
  return LOOKS_LIKE_ERROR.test(text);
}

/** ECMA-376 part 1, 22.9.2.19: _x0041_ stands for a character, so a typed one is escaped. */
export function escapeText(text: string): string {
  return text.replace(/_(?=x[0-9A-Fa-f]{4}_)/g, '_x005F_');
}

function table(sheet: SheetDescription, name: string, range: string): XlsxTable {
  const { top, left, right } = soundRange(range);
  const headings = sheet.rows[top]?.cells.slice(left, right + 1) ?? [];
  return {
    name,
    range,
    columns: headings.map((cell) => ({ name: escapeText(String(cell?.value)) })),
    style: 'TableStyleLight1',
  };
}

export function xlsxValidation(one: ValidationDescription): XlsxValidation {
  return {
    range: one.range,
    ...allowed(one.allow),
    allowBlank: true,
    showErrorMessage: true,
    errorStyle: one.strict ? 'stop' : 'warning',
    errorTitle: escapeText(one.title),
    errorMessage: escapeText(one.message),
  };
}

function allowed(
  allow: ValidationDescription['allow'],
): Pick<XlsxValidation, 'type' | 'values' | 'operator' | 'formula1' | 'formula2'> {
  switch (allow.kind) {
    case 'list':
      return { type: 'list', values: [...allow.values] };
    case 'list from':
      return { type: 'list', formula1: allow.formula };
    case 'whole':
      return {
        type: 'whole',
        operator: 'between',
        formula1: String(allow.least),
        formula2: String(allow.most),
      };
  }
}

export function xlsxPage(
  print: PrintDescription,
): Pick<WriteSheet, 'pageSetup' | 'headerFooter' | 'rowBreaks'> {
  return {
    pageSetup: {
      paperSize: print.paper,
      orientation: print.orientation,
      margins: { ...MARGIN_INCHES },
      ...(print.fitWidth ? { fitToPage: true, fitToWidth: 1, fitToHeight: 0 } : {}),
    },
    headerFooter: {
      ...(print.header === '' ? {} : { oddHeader: `&C${headerText(print.header)}` }),
      oddFooter: `&L${headerText(print.footer)}&RPage &P of &N`,
    },
    rowBreaks: (print.breaksAfter ?? []).map((row) => row - 1),
  };
}

/** In headers & begins a code, so a typed one is doubled. */
function headerText(text: string): string {
  return escapeText(text).replaceAll('&', '&&');
}
