/** What the fake knows of ranges and the cells in them. */
import { letters, overlap, writeBox, type Box } from './address.ts';
import { areaOf, cellsOf, columnsOf, denyWriting, only, rowsOf, type Area } from './areas.ts';
import type { ClassMembers, Env, ValueMember } from './members.ts';
import { invalid, MisuseError, OfficeError } from './office-error.ts';
import { validationOf } from './rule-members.ts';
import { typeIntoCell } from './type-into-cell.ts';
import type { FakeCell, FakeSheet } from './workbook-model.ts';

/** Of a fresh sheet, in points. */
export const STANDARD_WIDTH = 48;
export const STANDARD_HEIGHT = 15;

export function valueOf(
  cell: FakeCell | undefined,
  at: { sheet: FakeSheet; row: number; column: number },
  { workbook }: Env,
): string | number | boolean {
  if (cell === undefined) return '';
  if (cell.formula === null || cell.told) return cell.value ?? '';
  return workbook.calculate(at.sheet.name, `${letters(at.column)}${at.row + 1}`);
}

type CellReader = (cell: FakeCell | undefined, row: number, column: number) => unknown;

function grid(area: Area, read: CellReader): unknown[][] {
  const box = only(area);
  return Array.from({ length: rowsOf(box) }, (_, r) =>
    Array.from({ length: columnsOf(box) }, (__, c) =>
      read(area.sheet.at(box.top + r, box.left + c), box.top + r, box.left + c),
    ),
  );
}

function setGrid(area: Area, values: unknown, set: (cell: FakeCell, value: unknown) => void): void {
  denyWriting(area);
  const box = only(area);
  const fits =
    Array.isArray(values) &&
    values.length === rowsOf(box) &&
    values.every((row) => Array.isArray(row) && row.length === columnsOf(box));
  if (!fits) throw invalid(`an array of another size than ${writeBox(box)}`);
  (values as unknown[][]).forEach((row, r) =>
    row.forEach((value, c) => set(area.sheet.make(box.top + r, box.left + c), value)),
  );
}

function typeGrid(area: Area, values: unknown, { workbook, changed }: Env): void {
  setGrid(area, values, (cell, value) => typeIntoCell(cell, value, workbook));
  changed(area.sheet.id);
}

function typeName(cell: FakeCell | undefined, value: unknown): string {
  if (cell?.isError === true) return 'Error';
  if (value === '') return (cell?.formula ?? null) === null ? 'Empty' : 'String';
  return { string: 'String', number: 'Double', boolean: 'Boolean' }[typeof value as 'string'];
}

const index = (read: (box: Box) => number): ValueMember => ({
  since: 1,
  get: (area: Area) => read(only(area)),
});

/** Points from the sheet's corner to a row or column. */
export function distance(sizes: ReadonlyMap<number, number>, to: number, standard: number): number {
  let sum = 0;
  for (let at = 0; at < to; at++) sum += sizes.get(at) ?? standard;
  return sum;
}

const RANGE: ClassMembers = {
  values: {
    address: {
      since: 1,
      get: (area: Area) => `'${area.sheet.name}'!${writeBox(only(area))}`,
    },
    columnCount: index(columnsOf),
    columnIndex: index((box) => box.left),
    rowCount: index(rowsOf),
    rowIndex: index((box) => box.top),
    left: {
      since: 10,
      get: (area: Area) => distance(area.sheet.widths, only(area).left, STANDARD_WIDTH),
    },
    top: {
      since: 10,
      get: (area: Area) => distance(area.sheet.heights, only(area).top, STANDARD_HEIGHT),
    },
    formulas: {
      since: 1,
      get: (area: Area) =>
        grid(area, (cell) => {
          const formula = cell?.formula ?? null;
          return formula === null ? (cell?.value ?? '') : `=${formula.text}`;
        }),
      set: typeGrid,
    },
    numberFormat: {
      since: 1,
      get: (area: Area) => grid(area, (cell) => cell?.look.format ?? 'General'),
      set: (area: Area, formats: unknown) =>
        setGrid(area, formats, (cell, format) => {
          if (format === null) return;
          if (typeof format !== 'string') throw new MisuseError('a number format is text');
          cell.look.format = format;
        }),
    },
    values: {
      since: 1,
      get: ({ sheet, boxes, deleted }: Area, env) =>
        grid({ sheet, boxes, deleted }, (cell, row, column) =>
          valueOf(cell, { sheet, row, column }, env),
        ),
      set: typeGrid,
    },
    valueTypes: {
      since: 1,
      get: ({ sheet, boxes, deleted }: Area, env) =>
        grid({ sheet, boxes, deleted }, (cell, row, column) =>
          typeName(cell, valueOf(cell, { sheet, row, column }, env)),
        ),
    },
  },
  parts: {
    conditionalFormats: { since: 6, gives: 'ConditionalFormatCollection' },
    dataValidation: { since: 8, gives: 'DataValidation', of: validationOf },
    format: { since: 1, gives: 'RangeFormat' },
    worksheet: { since: 1, gives: 'Worksheet', of: ({ sheet }: Area) => sheet },
  },
  methods: {
    getMergedAreasOrNullObject: {
      since: 13,
      gives: 'RangeAreas',
      run: (area: Area) => {
        const boxes = area.sheet.merges.filter((merge) => overlap(merge, only(area)));
        // "If the merged areas count in this range is more than 512, then this method will fail."
        if (boxes.length > 512) throw new OfficeError('GeneralException', 'more than 512 merges');
        return boxes.length === 0 ? null : { sheet: area.sheet, boxes, deleted: false };
      },
    },
    getSpecialCellsOrNullObject: {
      since: 9,
      gives: 'RangeAreas',
      run: (area: Area, [type]: string[]) => {
        if (type !== 'Visible') throw new MisuseError(`special cells of the type ${type}`);
        return visibleCells(area);
      },
    },
    merge: { since: 2, run: mergeCells },
    select: {
      since: 1,
      run: (area: Area, _, { workbook }) => {
        workbook.active = area.sheet;
        workbook.activeCell = { row: only(area).top, column: only(area).left };
      },
    },
  },
};

/** In stretches, as Excel gives them; null where none is in sight. */
function visibleCells(area: Area): Area | null {
  const { top, left, bottom, right } = only(area);
  const { sheet } = area;
  const columns = stretchesOf(left, right, sheet.hiddenColumns);
  const boxes = stretchesOf(top, bottom, sheet.hiddenRows).flatMap(([from, to]) =>
    columns.map(([first, last]): Box => ({ top: from, left: first, bottom: to, right: last })),
  );
  return boxes.length === 0 ? null : { sheet, boxes, deleted: false };
}

function stretchesOf(
  from: number,
  to: number,
  hidden: ReadonlySet<number>,
): readonly (readonly [number, number])[] {
  const found: [number, number][] = [];
  for (let at = from; at <= to; at++) {
    if (hidden.has(at)) continue;
    const last = found.at(-1);
    if (last?.[1] === at - 1) last[1] = at;
    else found.push([at, at]);
  }
  return found;
}

function mergeCells(area: Area, [across]: boolean[]): void {
  denyWriting(area);
  const box = only(area);
  const inTheWay = [...area.sheet.merges, ...area.sheet.tables.map((table) => table.box)];
  if (across === true || inTheWay.some((one) => overlap(one, box))) {
    throw new OfficeError('InvalidOperation', 'a merge over a merge or table');
  }
  for (const [cell, , row, column] of cellsOf(area)) {
    const first = row === box.top && column === box.left;
    if (!first && (cell.value !== null || cell.formula !== null))
      throw invalid('a merge hides text');
  }
  area.sheet.merges.push(box);
}

export const RANGE_CLASSES = {
  Range: RANGE,
  RangeAreas: {
    parts: {
      areas: { since: 9, gives: 'RangeCollection' },
      format: { since: 9, gives: 'RangeFormat' },
    },
  },
  RangeCollection: {
    items: {
      gives: 'Range',
      of: ({ sheet, boxes }: Area) => boxes.map((box) => areaOf(sheet, box)),
    },
  },
} as const satisfies Readonly<Record<string, ClassMembers>>;
