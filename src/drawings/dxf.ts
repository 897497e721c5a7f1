/**
 * Outlines as DXF, for template makers: ASCII, release 12 (AC1009), which every reader takes.
 * Group codes by Autodesk's published "DXF Reference": 0 an entity or a section, 8 its layer, 10 to
 * 30 a point, 66 vertices follow, 70 flags (1 a closed polyline), 999 a comment. Checked by a reader
 * of another make in tests/drawings/to-dxf.test.ts.
 */
import type { LengthUnit } from '../core/units/length-unit.ts';
import type { Point } from './drawing.ts';

export interface DxfLine {
  readonly layer: string;
  /** Inches. */
  readonly points: readonly Point[];
  readonly closed?: boolean;
}

export interface DxfDescription {
  /** Comments at the top of the file. */
  readonly notes: readonly string[];
  /** Of the file; what is given is in inches. */
  readonly unit: LengthUnit;
  /** The upper right corner; the lower left one is at 0. */
  readonly extent: Point;
  /** Layers with their colors by AutoCAD's color index: 7 black or white, 1 red, 5 blue, 3 green. */
  readonly layers: Readonly<Record<string, number>>;
  readonly lines: readonly DxfLine[];
}

/** $INSUNITS: 1 is inches, 4 millimetres; $MEASUREMENT: 0 and 1. Readers of release 12 pass over both. */
const UNITS = {
  in: { insunits: 1, measurement: 0, perInch: 1, name: 'inches', decimals: 6 },
  mm: { insunits: 4, measurement: 1, perInch: 25.4, name: 'millimetres', decimals: 5 },
} as const;

/** No longer than a group of release 12 takes: 255. A word alone that is longer is broken. */
const LINE_OF_TEXT = /.{1,255}(?= |$)|.{255}/gu;

type Group = readonly [code: number, value: string | number];

export function writeDxf({ notes, unit, extent, layers, lines }: DxfDescription): string {
  const groups = [
    ...notes.flatMap(plainLines).map((text): Group => [999, text.trim()]),
    ...header(extent, unit),
    ...tables(layers),
    ...begin('ENTITIES'),
    ...lines.flatMap((line) => polyline(line, unit)),
    END,
    [0, 'EOF'] as const,
  ];
  return groups.map(([code, value]) => `${String(code).padStart(3)}\r\n${value}\r\n`).join('');
}

/** What a file's comments call its unit. */
export function nameOfUnit(unit: LengthUnit): string {
  return UNITS[unit].name;
}

function header(extent: Point, unit: LengthUnit): Group[] {
  const { insunits, measurement } = UNITS[unit];
  return [
    ...begin('HEADER'),
    [9, '$ACADVER'],
    [1, 'AC1009'],
    [9, '$INSUNITS'],
    [70, insunits],
    [9, '$MEASUREMENT'],
    [70, measurement],
    [9, '$EXTMIN'],
    ...pointGroups([0, 0], unit),
    [9, '$EXTMAX'],
    ...pointGroups(extent, unit),
    END,
  ];
}

function tables(colors: DxfDescription['layers']): Group[] {
  const layers = Object.entries(colors);
  return [
    ...begin('TABLES'),
    [0, 'TABLE'],
    [2, 'LTYPE'],
    [70, 1],
    [0, 'LTYPE'],
    [2, 'CONTINUOUS'],
    [70, 0],
    [3, 'Solid line'],
    [72, 65],
    [73, 0],
    [40, '0.0'],
    [0, 'ENDTAB'],
    [0, 'TABLE'],
    [2, 'LAYER'],
    [70, layers.length],
    ...layers.flatMap(([name, color]): Group[] => [
      [0, 'LAYER'],
      [2, name],
      [70, 0],
      [62, color],
      [6, 'CONTINUOUS'],
    ]),
    [0, 'ENDTAB'],
    END,
  ];
}

function polyline({ layer, points, closed = false }: DxfLine, unit: LengthUnit) {
  return [
    [0, 'POLYLINE'],
    [8, layer],
    [66, 1],
    ...pointGroups([0, 0], unit),
    [70, closed ? 1 : 0],
    ...points.flatMap((point): Group[] => [[0, 'VERTEX'], [8, layer], ...pointGroups(point, unit)]),
    [0, 'SEQEND'],
    [8, layer],
  ] satisfies Group[];
}

function begin(section: string): Group[] {
  return [
    [0, 'SECTION'],
    [2, section],
  ];
}

const END: Group = [0, 'ENDSEC'];

function pointGroups([x, y]: Point, unit: LengthUnit): Group[] {
  const { perInch, decimals } = UNITS[unit];
  const say = (inches: number): string => {
    const text = (inches * perInch).toFixed(decimals);
    return Number(text) === 0 ? (0).toFixed(decimals) : text;
  };
  return [
    [10, say(x)],
    [20, say(y)],
    [30, say(0)],
  ];
}

/** Lines of plain ASCII, broken between words where they are long. */
function plainLines(text: string): string[] {
  const plain = text.replace(/\s+/gu, ' ').replace(/[^ -~]/gu, '?');
  return plain.match(LINE_OF_TEXT) ?? [];
}
