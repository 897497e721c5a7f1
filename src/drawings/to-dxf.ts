/**
 * The board's end as DXF, for template makers: ASCII, release 12 (AC1009), which every reader takes.
 * Group codes by Autodesk's published "DXF Reference": 0 an entity or a section, 8 its layer, 10 to
 * 30 a point, 66 vertices follow, 70 flags (1 a closed polyline), 999 a comment. Checked by a reader
 * of another make in tests/drawings/to-dxf.test.ts.
 */
import type { LengthUnit } from '../core/units/length-unit.ts';
import { CHORD_ERROR_INCHES, planBoardEnd, type BoardEnd, type BoardEndView } from './board-end.ts';
import type { Point } from './drawing.ts';

export interface DxfView extends BoardEndView {
  readonly unit: LengthUnit;
  /** Comments at the top of the file: a name, the cautions. */
  readonly notes?: readonly string[];
}

/** $INSUNITS: 1 is inches, 4 millimetres; $MEASUREMENT: 0 and 1. Readers of release 12 pass over both. */
const UNITS = {
  in: { insunits: 1, measurement: 0, perInch: 1, name: 'inches', decimals: 6 },
  mm: { insunits: 4, measurement: 1, perInch: 25.4, name: 'millimetres', decimals: 5 },
} as const;

/** By AutoCAD's color index: 7 black or white, 1 red, 5 blue, 3 green. */
const LAYERS = { BOARD: 7, COVE: 1, DEEPEST: 5, MIDDLE: 3 } as const;
type Layer = keyof typeof LAYERS;

/** No longer than a group of release 12 takes: 255. A word alone that is longer is broken. */
const LINE_OF_TEXT = /.{1,255}(?= |$)|.{255}/gu;

type Group = readonly [code: number, value: string | number];

/**
 * Writes the end of the blank as DXF: on BOARD all round with the cove cut out, on COVE the curve
 * alone from edge to edge, on DEEPEST and MIDDLE an upright at the deepest line and at the middle of
 * the cove. It lies as the section does: face down, seen from the front of the saw along the feed.
 *
 * @param view Blade, setting and blank in inches, angles in radians; the file is in `unit`.
 * @returns ASCII text; the curve within 0.0005 in of the true one.
 * @throws RangeError for a cove that doesn't fit in the blank (a bug of the caller's).
 */
export function outlineToDxf(view: DxfView): string {
  const end = planBoardEnd(view);
  const groups = [
    ...comments(end, view),
    ...header(end, view.unit),
    ...tables(),
    ...entities(end, view.unit),
    [0, 'EOF'] as const,
  ];
  return groups.map(([code, value]) => `${String(code).padStart(3)}\r\n${value}\r\n`).join('');
}

function comments({ farSide }: BoardEnd, { unit, notes = [] }: DxfView): Group[] {
  const { name } = UNITS[unit];
  const lines = [
    ...notes,
    `Units: ${name}. The curve is true to ${CHORD_ERROR_INCHES} in.`,
    `Face down, seen from the front of the saw along the feed: far rail at the ${farSide}. X from the left side, Y up from the face.`,
    'BOARD is all round with the cove cut out; COVE repeats its curve alone: follow one of the two.',
  ];
  return lines.flatMap(plainLines).map((text): Group => [999, text.trim()]);
}

function header({ width, thickness }: BoardEnd, unit: LengthUnit): Group[] {
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
    ...pointGroups([width, thickness], unit),
    END,
  ];
}

function tables(): Group[] {
  const layers = Object.entries(LAYERS);
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

function entities(
  { board, cove, deepest, middle, thickness }: BoardEnd,
  unit: LengthUnit,
): Group[] {
  const upright = ([x]: Point): Point[] => [
    [x, 0],
    [x, thickness],
  ];
  return [
    ...begin('ENTITIES'),
    ...polyline('BOARD', board, true, unit),
    ...polyline('COVE', cove, false, unit),
    ...polyline('DEEPEST', upright(deepest), false, unit),
    ...polyline('MIDDLE', upright(middle), false, unit),
    END,
  ];
}

function polyline(layer: Layer, points: readonly Point[], closed: boolean, unit: LengthUnit) {
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
