/** The fake's sheets as the hosts' shared suite looks at them. */
import type {
  CellView,
  DrawingView,
  HighlightView,
  PrintView,
  SheetView,
  ValidationView,
} from '../workbook-view.ts';
import { letters, writeBox } from './address.ts';
import type { Env } from './members.ts';
import { distance, STANDARD_HEIGHT, STANDARD_WIDTH, valueOf } from './range-members.ts';
import {
  newLook,
  type FakeCell,
  type FakeShape,
  type FakeSheet,
  type FakeValidation,
} from './workbook-model.ts';

/** Rows and columns among which a picture's corner is looked for. */
const MOST_CORNERS = 500;
/** Pixels of the standard font's widest digit and of the padding, and points of a pixel. */
const [DIGIT, PADDING, POINT] = [7, 5, 0.75];

export function sheetView(sheet: FakeSheet, env: Env): SheetView {
  const cells: Record<string, CellView> = {};
  const plain = JSON.stringify(newLook());
  for (const [row, column, cell] of sheet.all()) {
    const holds = cell.value !== null || cell.formula !== null;
    if (!holds && JSON.stringify(cell.look) === plain) continue;
    cells[`${letters(column)}${row + 1}`] = cellView(cell, sheet, row, column, env);
  }
  const widths = Array.from({ length: Math.max(-1, ...sheet.widths.keys()) + 1 }, (_, at) => {
    const pixels = (sheet.widths.get(at) ?? 0) / POINT;
    return Math.round(((pixels - PADDING) / DIGIT) * 100) / 100;
  });
  return {
    name: sheet.name,
    cells,
    merges: sheet.merges.map(writeBox),
    tables: sheet.tables.map(({ name, box }) => ({
      name,
      range: writeBox(box),
      headings: Array.from({ length: box.right - box.left + 1 }, (_, at) =>
        String(sheet.at(box.top, box.left + at)?.value),
      ),
    })),
    validations: sheet.validations.map(validationView),
    highlights: sheet.highlights.map(({ box, formula, bold, color, fill }): HighlightView => ({
      range: writeBox(box),
      formula: formula?.text ?? '',
      bold,
      color,
      fill,
    })),
    freeze: sheet.freeze,
    widths,
    heights: Object.fromEntries([...sheet.heights].map(([row, points]) => [row + 1, points])),
    print: printView(sheet),
    drawings: sheet.shapes.map((shape) => drawingView(shape, sheet)),
  };
}

function cellView(
  cell: FakeCell,
  sheet: FakeSheet,
  row: number,
  column: number,
  env: Env,
): CellView {
  const { formula, look, isError } = cell;
  const value = valueOf(cell, { sheet, row, column }, env);
  const blank = value === '' && formula === null;
  const kinds = { string: 'text', number: 'number', boolean: 'boolean' } as const;
  const kind = kinds[typeof value as keyof typeof kinds];
  return {
    kind: blank ? 'blank' : isError ? 'error' : kind,
    value: blank ? null : value,
    formula: formula?.text ?? null,
    look: {
      format: look.format,
      bold: look.bold,
      italic: look.italic,
      size: look.size,
      color: look.color,
      fill: look.fill,
      align: look.align === 'General' ? null : look.align.toLowerCase(),
      wrap: look.wrap,
      border: Object.fromEntries(
        Object.entries(look.border).map(([side, drawn]) => [
          side,
          drawn === 'hairline' ? 'hair' : drawn,
        ]),
      ),
    },
  };
}

function validationView({ box, rule, source, alert }: FakeValidation): ValidationView {
  if (alert?.showAlert !== true || rule === null) throw new Error('it would never be said');
  const said = {
    range: writeBox(box),
    strict: alert.style === 'Stop',
    title: alert.title,
    message: alert.message,
  };
  const { wholeNumber, list } = rule;
  if (wholeNumber !== undefined) {
    if (wholeNumber.operator !== 'Between') throw new Error('not between');
    const allowed = [wholeNumber.formula1, wholeNumber.formula2].map((one) => JSON.stringify(one));
    return { ...said, kind: 'whole', allowed };
  }
  if (source !== null) return { ...said, kind: 'list from', allowed: [source.text] };
  return { ...said, kind: 'list', allowed: (list?.source as string).split(',') };
}

/** The cell at whose corner a picture begins; a picture between corners is none of ours. */
function drawingView(shape: FakeShape, { widths, heights }: FakeSheet): DrawingView {
  const indexOf = (
    points: number,
    sizes: ReadonlyMap<number, number>,
    standard: number,
  ): number => {
    for (let at = 0; at < MOST_CORNERS; at++) {
      if (Math.abs(distance(sizes, at, standard) - points) < 1e-6) return at;
    }
    throw new Error('a picture that is not at a corner');
  };
  const column = indexOf(shape.left, widths, STANDARD_WIDTH);
  const row = indexOf(shape.top, heights, STANDARD_HEIGHT);
  return {
    at: `${letters(column)}${row + 1}`,
    widthMm: (shape.width / 72) * 25.4,
    heightMm: (shape.height / 72) * 25.4,
    title: shape.altTextTitle,
    alt: shape.altTextDescription,
    isPng: shape.image.startsWith('iVBORw0KGgo'),
  };
}

function printView({ name, page }: FakeSheet): PrintView {
  const { values, titleRows, printArea, header, breaks } = page;
  const zoom = values['zoom'] as Excel.PageLayoutZoomOptions | undefined;
  return {
    paper: String(values['paperSize']).toLowerCase(),
    orientation: String(values['orientation']).toLowerCase(),
    fitWidth: zoom?.horizontalFitToPages === 1 && zoom.verticalFitToPages === undefined,
    titleRows: titleRows === null ? null : `'${name.replaceAll("'", "''")}'!${titleRows}`,
    printedColumns: printArea === null ? null : `$${printArea.replace(':', ':$')}`,
    // Excel's break stands above a row, the suite's after one.
    breaksAfter: breaks.toSorted((one, other) => one - other),
    headerMiddle: header['centerHeader'] ?? '',
    footerLeft: header['leftFooter'] ?? '',
    footerRight: header['rightFooter'] ?? '',
  };
}
