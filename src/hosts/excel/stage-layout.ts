/** A staged sheet's columns, rows, merges, panes, lists to choose from, highlights and page. */
import type {
  PrintDescription,
  SheetDescription,
  ValidationDescription,
} from '../../sheets/grammar/description.ts';
import { columnLetters } from '../../core/cells/cell-range.ts';
import { columnPoints, marginsOf, POINTS_PER_INCH } from '../../sheets/grammar/page-size.ts';
import { rowHeights } from '../../sheets/grammar/row-height.ts';
import { LINE_COLOR, STYLES, type CellStyle } from '../../sheets/grammar/styles.ts';
import { rectanglesOf } from './cell-grid.ts';
import type { Requests } from './requests.ts';

export async function stageLayout(
  sheet: Excel.Worksheet,
  description: SheetDescription,
  requests: Requests,
): Promise<void> {
  const { columns, merges = [], freeze } = description;
  await requests.need(2 * columns.length + 2 * merges.length + 2);
  columns.forEach(({ width }, index) => {
    sheet.getRangeByIndexes(0, index, 1, 1).format.columnWidth = columnPoints(width);
  });
  const heights = rowHeights(description);
  const byRow = description.rows.map((_, row) => [heights.get(row)?.height ?? null]);
  for (const [points, ranges] of rectanglesOf(byRow)) {
    await requests.need(2 * ranges.length);
    for (const { top, bottom } of ranges) {
      sheet.getRange(`${top + 1}:${bottom + 1}`).format.rowHeight = points;
    }
  }
  for (const merge of merges) sheet.getRange(merge).merge(false);
  if (freeze !== undefined) stageFreeze(sheet.freezePanes, freeze, sheet);
}

function stageFreeze(
  panes: Excel.WorksheetFreezePanes,
  { rows, columns }: { readonly rows: number; readonly columns: number },
  sheet: Excel.Worksheet,
): void {
  if (rows > 0 && columns > 0) panes.freezeAt(sheet.getRangeByIndexes(0, 0, rows, columns));
  else if (rows > 0) panes.freezeRows(rows);
  else if (columns > 0) panes.freezeColumns(columns);
}

/**
 * Lists to choose from and highlights, once all that their formulas name is there.
 *
 * @param formulaOf A formula under the names that hold while it is written.
 */
export async function stageRules(
  sheet: Excel.Worksheet,
  { validations = [], highlights = [] }: SheetDescription,
  requests: Requests,
  formulaOf: (formula: string) => string,
): Promise<void> {
  for (const one of validations) {
    await requests.need(5, one.title.length + one.message.length + 400);
    const validation = sheet.getRange(one.range).dataValidation;
    validation.ignoreBlanks = true;
    validation.rule = ruleOf(one.allow, formulaOf);
    validation.errorAlert = {
      showAlert: true,
      style: one.strict ? 'Stop' : 'Warning',
      title: one.title,
      message: one.message,
    };
  }
  // Excel puts each new one before the others.
  for (const { range, formula, style: name } of [...highlights].reverse()) {
    await requests.need(16, formula.length);
    const { custom } = sheet.getRange(range).conditionalFormats.add('Custom');
    custom.rule.formula = `=${formulaOf(formula)}`;
    highlight(custom.format, STYLES[name]);
  }
}

function ruleOf(
  allow: ValidationDescription['allow'],
  formulaOf: (formula: string) => string,
): Excel.DataValidationRule {
  switch (allow.kind) {
    case 'list':
      return { list: { inCellDropDown: true, source: allow.values.join(',') } };
    case 'list from':
      return { list: { inCellDropDown: true, source: `=${formulaOf(allow.formula)}` } };
    case 'whole':
      return {
        wholeNumber: { operator: 'Between', formula1: allow.least, formula2: allow.most },
      };
  }
}

function highlight(format: Excel.ConditionalRangeFormat, style: CellStyle): void {
  if (style.bold !== undefined) format.font.bold = style.bold;
  if (style.italic !== undefined) format.font.italic = style.italic;
  if (style.color !== undefined) format.font.color = `#${style.color}`;
  if (style.fill !== undefined) format.fill.color = `#${style.fill}`;
  if (style.border === undefined) return;
  const { top, bottom, left, right } = format.borders;
  for (const line of style.border === 'top' ? [top] : [top, bottom, left, right]) {
    line.style = 'Continuous';
    line.color = `#${LINE_COLOR}`;
  }
}

/** Paper, margins, titles, breaks, header and footer, as the file has them. */
export async function stagePage(
  sheet: Excel.Worksheet,
  print: PrintDescription,
  requests: Requests,
): Promise<void> {
  const breaks = print.breaksAfter ?? [];
  await requests.need(16 + breaks.length, print.header.length + print.footer.length);
  const layout = sheet.pageLayout;
  layout.paperSize = print.paper === 'a4' ? 'A4' : 'Letter';
  layout.orientation = print.orientation === 'landscape' ? 'Landscape' : 'Portrait';
  const margins = marginsOf(print);
  layout.leftMargin = margins.left * POINTS_PER_INCH;
  layout.rightMargin = margins.right * POINTS_PER_INCH;
  layout.topMargin = margins.top * POINTS_PER_INCH;
  layout.bottomMargin = margins.bottom * POINTS_PER_INCH;
  layout.headerMargin = margins.header * POINTS_PER_INCH;
  layout.footerMargin = margins.footer * POINTS_PER_INCH;
  layout.zoom = print.fitWidth ? { horizontalFitToPages: 1 } : { scale: 100 };
  if (print.titleRows !== undefined) {
    layout.setPrintTitleRows(`$${print.titleRows[0]}:$${print.titleRows[1]}`);
  }
  if (print.printedColumns !== undefined) {
    layout.setPrintArea(`A:${columnLetters(print.printedColumns - 1)}`);
  }
  const texts = layout.headersFooters.defaultForAllPages;
  if (print.header !== '') texts.centerHeader = headerText(print.header);
  if (print.start === undefined) {
    texts.leftFooter = headerText(print.footer);
    texts.rightFooter = 'Page &P of &N';
  }
  for (const row of breaks) sheet.horizontalPageBreaks.add(`A${row + 1}`);
}

/** In headers & begins a code, so a typed one is doubled. */
function headerText(text: string): string {
  return text.replaceAll('&', '&&');
}

/** The tables proper, under the names that hold while the sheet is written. */
export async function stageTables(
  sheet: Excel.Worksheet,
  { tables = [] }: SheetDescription,
  requests: Requests,
  nameOf: (table: string) => string,
): Promise<void> {
  for (const { name, range } of tables) {
    await requests.need(5);
    // A range, as a bare address would be one of the sheet in view.
    const table = sheet.tables.add(sheet.getRange(range), true);
    table.name = nameOf(name);
    table.style = 'TableStyleLight1';
  }
}
