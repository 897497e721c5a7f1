/** What the fake knows of how cells look. */
import { LAST_COLUMN, LAST_ROW } from './address.ts';
import { cellsOf, denyWriting, only, type Area } from './areas.ts';
import type { ClassMembers, ValueMember } from './members.ts';
import { invalid } from './office-error.ts';
import type { FakeLook } from './workbook-model.ts';

/** Sets a look on every cell of an area. */
const look = (since: number, apply: (cell: FakeLook, value: never) => void): ValueMember => ({
  since,
  set: (area: Area, value: never) => {
    denyWriting(area);
    for (const [cell] of cellsOf(area)) apply(cell.look, value);
  },
});

export function readColor(color: string): string {
  if (!/^#[0-9A-F]{6}$/iu.test(color)) throw invalid(`no color "${color}"`);
  return color.slice(1).toUpperCase();
}

export const oneOf =
  (...allowed: string[]) =>
  (value: string): string => {
    if (!allowed.includes(value)) throw invalid(`none of ${allowed.join(', ')}: ${value}`);
    return value;
  };
const horizontal = oneOf('General', 'Left', 'Center', 'Right');
const vertical = oneOf('Top', 'Center', 'Bottom');
const edge = oneOf(
  'EdgeTop',
  'EdgeBottom',
  'EdgeLeft',
  'EdgeRight',
  'InsideHorizontal',
  'InsideVertical',
);
export const lineStyle = oneOf('Continuous', 'None');
const weight = oneOf('Hairline', 'Thin', 'Medium');

const FORMAT: ClassMembers = {
  values: {
    columnWidth: {
      since: 2,
      set: (area: Area, points: number) => {
        denyWriting(area);
        const { left, right } = only(area);
        for (let at = left; at <= Math.min(right, LAST_COLUMN); at++)
          area.sheet.widths.set(at, points);
      },
    },
    rowHeight: {
      since: 2,
      set: (area: Area, points: number) => {
        denyWriting(area);
        if (!(points > 0 && points <= 409)) throw invalid('a row of that height');
        const { top, bottom } = only(area);
        for (let at = top; at <= Math.min(bottom, LAST_ROW); at++)
          area.sheet.heights.set(at, points);
      },
    },
    horizontalAlignment: look(1, (cell, value: string) => {
      cell.align = horizontal(value);
    }),
    verticalAlignment: look(1, (cell, value: string) => {
      cell.vertical = vertical(value);
    }),
    wrapText: look(1, (cell, value: boolean) => {
      cell.wrap = value;
    }),
  },
  parts: {
    borders: { since: 1, gives: 'RangeBorderCollection' },
    fill: { since: 1, gives: 'RangeFill' },
    font: { since: 1, gives: 'RangeFont' },
  },
};

const FONT: ClassMembers = {
  values: {
    bold: look(1, (cell, value: boolean) => {
      cell.bold = value;
    }),
    italic: look(1, (cell, value: boolean) => {
      cell.italic = value;
    }),
    color: look(1, (cell, value: string) => {
      cell.color = readColor(value);
    }),
    name: look(1, (cell, value: string) => {
      cell.font = value;
    }),
    size: look(1, (cell, value: number) => {
      cell.size = value;
    }),
  },
};

export interface Line {
  readonly area: Area;
  readonly edge: string;
  readonly deleted: boolean;
}

const BORDER: ClassMembers = {
  values: {
    color: { since: 1, set: (_: Line, color: string) => void readColor(color) },
    style: {
      since: 1,
      set: (line: Line, value: string) =>
        drawLine(line, lineStyle(value) === 'None' ? null : 'Thin'),
    },
    weight: { since: 1, set: (line: Line, value: string) => drawLine(line, weight(value)) },
  },
};

const BORDERS: ClassMembers = {
  methods: {
    getItem: {
      since: 1,
      gives: 'RangeBorder',
      run: (area: Area, [which = '']: string[]): Line => ({
        area,
        edge: edge(which),
        deleted: false,
      }),
    },
  },
};

/** Excel draws no line inside of a single row or column. */
function drawLine({ area, edge: where }: Line, drawn: string | null): void {
  denyWriting(area);
  for (const [cell, box, row, column] of cellsOf(area)) {
    const sides: Record<string, readonly (readonly [string, boolean])[]> = {
      EdgeTop: [['top', row === box.top]],
      EdgeBottom: [['bottom', row === box.bottom]],
      EdgeLeft: [['left', column === box.left]],
      EdgeRight: [['right', column === box.right]],
      InsideHorizontal: [
        ['top', row > box.top],
        ['bottom', row < box.bottom],
      ],
      InsideVertical: [
        ['left', column > box.left],
        ['right', column < box.right],
      ],
    };
    if (where === 'InsideHorizontal' && box.top === box.bottom) throw invalid('one row alone');
    if (where === 'InsideVertical' && box.left === box.right) throw invalid('one column alone');
    for (const [side, here] of sides[where] ?? []) {
      if (here && drawn !== null) cell.look.border[side] = drawn.toLowerCase();
    }
  }
}

export const FORMAT_CLASSES = {
  RangeFormat: FORMAT,
  RangeFont: FONT,
  RangeFill: {
    values: {
      color: look(1, (cell, value: string) => {
        cell.fill = readColor(value);
      }),
    },
  },
  RangeBorderCollection: BORDERS,
  RangeBorder: BORDER,
} as const satisfies Readonly<Record<string, ClassMembers>>;
