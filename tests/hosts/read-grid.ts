/** Reads what the grid saves back for tests, by the grid's published data format. */
import type {
  ICellData,
  IRange,
  IStyleData,
  IWorkbookData,
  IWorksheetData,
  Nullable,
} from '@univerjs/core';
import type { SheetDescription } from '../../src/sheets/grammar/description.ts';
import { STYLES, type CellStyle } from '../../src/sheets/grammar/styles.ts';
import { columnLetters } from '../../src/core/cells/cell-range.ts';
import type {
  CellView,
  DrawingView,
  HighlightView,
  LookView,
  PrintView,
  SheetView,
  TableView,
  ValidationView,
  WorkbookView,
} from './workbook-view.ts';

/** How the grid numbers kinds of cells, sides to align to, wrapping and lines. */
const KINDS: Readonly<Record<number, CellView['kind']>> = { 1: 'text', 2: 'number', 3: 'boolean' };
const ALIGNS: Readonly<Record<number, string>> = { 1: 'left', 2: 'center', 3: 'right' };
const WRAPS = 3;
const LINES: Readonly<Record<number, string>> = { 1: 'thin', 2: 'hair' };
const SIDES = { t: 'top', r: 'right', b: 'bottom', l: 'left' } as const;
/** Pixels of the standard font's widest digit and of the padding; points and millimetres of a pixel. */
const [DIGIT, PADDING, POINTS, MM] = [7, 5, 0.75, 25.4 / 96];

/** What is kept with a sheet that the grid itself knows nothing of. */
type Kept = Pick<SheetDescription, 'print' | 'tables' | 'validations' | 'highlights'>;

interface Picture {
  readonly title: string;
  readonly description: string;
  readonly source: string;
  readonly transform: { readonly width: number; readonly height: number };
  readonly sheetTransform: {
    readonly from: Readonly<Record<'row' | 'column' | 'rowOffset' | 'columnOffset', number>>;
  };
}

interface SavedName {
  readonly name: string;
  readonly formulaOrRefString: string;
}

/** @param only Names of the sheets that are looked at. */
export function readGrid(book: IWorkbookData, only: readonly string[]): WorkbookView {
  const names = resource<SavedName>(book, 'SHEET_DEFINED_NAME_PLUGIN');
  const pictures = resource<{ data: Record<string, Picture>; order: string[] }>(
    book,
    'SHEET_DRAWING_PLUGIN',
  );
  return {
    title: book.name,
    sheets: book.sheetOrder
      .map((id) => book.sheets[id]!)
      .filter(({ name = '' }) => only.includes(name))
      .map((sheet) => {
        const { data = {}, order = [] } = pictures[sheet.id ?? ''] ?? {};
        return { ...sheetView(book, sheet), drawings: order.map((id) => drawingView(data[id]!)) };
      }),
    names: Object.fromEntries(
      Object.values(names).map(({ name, formulaOrRefString }) => [name, formulaOrRefString]),
    ),
    properties:
      (book.custom as { coveledger?: Pick<WorkbookView, 'properties'> } | undefined)?.coveledger
        ?.properties ?? {},
  };
}

/** Ids of sheets that have pictures. */
export function sheetsWithPictures(book: IWorkbookData): string[] {
  const pictures = resource<{ order: string[] }>(book, 'SHEET_DRAWING_PLUGIN');
  return Object.entries(pictures).flatMap(([id, { order }]) => (order.length > 0 ? [id] : []));
}

function resource<T>({ resources = [] }: IWorkbookData, name: string): Record<string, T> {
  const { data = '' } = resources.find((one) => one.name === name) ?? {};
  return data === '' ? {} : (JSON.parse(data) as Record<string, T>);
}

function sheetView(
  book: IWorkbookData,
  sheet: Partial<IWorksheetData>,
): Omit<SheetView, 'drawings'> {
  const { name = '', mergeData = [], freeze, columnData = {}, rowData = {} } = sheet;
  const kept = (sheet.custom as { coveledger: Kept } | undefined)?.coveledger;
  if (kept === undefined) throw new Error(`nothing is kept with "${name}"`);
  const cells = cellViews(book, sheet);
  const split = { rows: freeze?.ySplit ?? 0, columns: freeze?.xSplit ?? 0 };
  return {
    name,
    cells,
    merges: mergeData.map(rangeText),
    tables: (kept.tables ?? []).map((one) => tableView(one, cells)),
    validations: (kept.validations ?? []).map(validationView),
    highlights: (kept.highlights ?? []).map(highlightView),
    freeze: split.rows + split.columns === 0 ? null : split,
    widths: Object.values(columnData).map(
      ({ w = 0 }) => Math.round(((w - PADDING) / DIGIT) * 100) / 100,
    ),
    heights: Object.fromEntries(
      Object.entries(rowData).map(([row, { h = 0 }]) => [Number(row) + 1, h * POINTS]),
    ),
    print: printView(name, kept.print),
  };
}

function cellViews(
  { styles }: IWorkbookData,
  { cellData = {} }: Partial<IWorksheetData>,
): Record<string, CellView> {
  const views: Record<string, CellView> = {};
  for (const [row, ofRow] of Object.entries(cellData)) {
    for (const [column, cell] of Object.entries(ofRow as Record<number, ICellData>)) {
      const blank = (cell.v ?? null) === null && (cell.f ?? null) === null;
      if (blank && (cell.s ?? 'plain') === 'plain') continue;
      const style = typeof cell.s === 'string' ? styles[cell.s] : cell.s;
      views[`${columnLetters(Number(column))}${Number(row) + 1}`] = cellView(cell, style ?? {});
    }
  }
  return views;
}

function cellView({ v, t, f, p }: ICellData, style: IStyleData): CellView {
  if ((p ?? null) !== null) throw new Error('rich text');
  const value = v ?? null;
  const kind = value === null ? 'blank' : (KINDS[t ?? 0] ?? 'error');
  return {
    kind,
    value: kind === 'boolean' ? value === 1 : value,
    formula: typeof f === 'string' ? f.replace(/^=/u, '') : null,
    look: lookView(style),
  };
}

function lookView({ n, bl, it, fs, cl, bg, ht, tb, bd }: IStyleData): LookView {
  const color = (rgb: Nullable<string>): string | null => rgb?.replace('#', '') ?? null;
  const border = Object.entries(SIDES).flatMap(([key, side]) => {
    const line = bd?.[key as keyof typeof SIDES];
    return line === null || line === undefined ? [] : [[side, LINES[line.s] ?? 'other']];
  });
  return {
    format: n?.pattern ?? 'General',
    bold: Number(bl) === 1,
    italic: Number(it) === 1,
    size: fs ?? 0,
    color: color(cl?.rgb),
    fill: color(bg?.rgb),
    align: ALIGNS[ht ?? 0] ?? null,
    wrap: Number(tb) === WRAPS,
    border: Object.fromEntries(border) as Record<string, string>,
  };
}

function rangeText({ startRow, startColumn, endRow, endColumn }: IRange): string {
  return `${columnLetters(startColumn)}${startRow + 1}:${columnLetters(endColumn)}${endRow + 1}`;
}

function tableView(
  { name, range }: { readonly name: string; readonly range: string },
  cells: SheetView['cells'],
): TableView {
  const [, left = '', top = '', right = ''] = /^([A-Z]+)(\d+):([A-Z]+)/u.exec(range) ?? [];
  const letters = Array.from({ length: 26 }, (_, at) => columnLetters(at));
  const within = letters.slice(letters.indexOf(left), letters.indexOf(right) + 1);
  return { name, range, headings: within.map((one) => String(cells[`${one}${top}`]?.value)) };
}

function validationView({
  allow,
  ...rest
}: NonNullable<Kept['validations']>[number]): ValidationView {
  if (allow.kind === 'list') return { ...rest, kind: allow.kind, allowed: allow.values };
  if (allow.kind === 'list from') return { ...rest, kind: allow.kind, allowed: [allow.formula] };
  return { ...rest, kind: allow.kind, allowed: [allow.least, allow.most].map(String) };
}

function highlightView({
  range,
  formula,
  style,
}: NonNullable<Kept['highlights']>[number]): HighlightView {
  const look: CellStyle = STYLES[style];
  const { bold = false, color = null, fill = null } = look;
  return { range, formula, bold, color, fill };
}

function printView(sheet: string, print: Kept['print']): PrintView {
  const { paper, orientation, fitWidth, titleRows, breaksAfter = [], header, footer } = print;
  const { printedColumns } = print;
  const hasFooter = print.start === undefined;
  const [first, last] = titleRows ?? [];
  const typed = (text: string): string => text.replaceAll('&', '&&');
  return {
    paper,
    orientation,
    fitWidth,
    titleRows:
      first === undefined ? null : `'${sheet.replaceAll("'", "''")}'!$${first}:$${last ?? first}`,
    printedColumns:
      printedColumns === undefined ? null : `$A:$${columnLetters(printedColumns - 1)}`,
    breaksAfter: breaksAfter.toSorted((one, other) => one - other),
    headerMiddle: typed(header),
    footerLeft: hasFooter ? typed(footer) : '',
    // No setting of a sheet's: whoever prints says it.
    footerRight: hasFooter ? 'Page &P of &N' : '',
  };
}

function drawingView({
  title,
  description,
  source,
  transform,
  sheetTransform,
}: Picture): DrawingView {
  const { row, column, rowOffset, columnOffset } = sheetTransform.from;
  if (rowOffset !== 0 || columnOffset !== 0) throw new Error('not at a corner');
  return {
    at: `${columnLetters(column)}${row + 1}`,
    widthMm: transform.width * MM,
    heightMm: transform.height * MM,
    title,
    alt: description,
    isPng: source.startsWith('data:image/png;base64,iVBORw0KGgo'),
  };
}
