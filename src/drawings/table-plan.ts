/**
 * Everything on the saw's table, in inches, and how it comes to paper. Planned for a board that is
 * fed left to right; right to left is its mirror image.
 */
import type { Blade, Setting } from '../core/cove/cove.ts';
import { computeCut, slopeHeight, type CutCove } from '../core/cove/cut.ts';
import {
  CLAMP_LIP_INCHES,
  layOutRails,
  USUAL_HALF_TABLE_INCHES,
  type RailLayout,
  type TableSize,
  type TiltSide,
} from '../core/cove/rails.ts';
import type { LengthReading } from '../core/units/length.ts';
import type { Point } from './drawing.ts';
import { LEAST_WIDTH_MM, letterSize, soundWidth } from './lettering.ts';

export interface TableView extends LengthReading {
  readonly blade: Blade;
  readonly setting: Setting;
  /** What rides on the table beside the cove; absent where no blank is known. Inches. */
  readonly flats?: { readonly near: number; readonly far: number };
  /** Absent where the shop doesn't give it: a usual one is drawn, dashed and without marks. */
  readonly table?: TableSize;
  readonly tiltSide: TiltSide;
  /** Of the drawing, in millimetres; 65, the least, where absent: 246 CSS pixels. */
  readonly width?: number;
}

/** In inches: x from the middle of the blade toward the back, y to the right when fed so. */
export type TablePoint = readonly [x: number, y: number];

export interface TablePlan {
  readonly view: TableView;
  readonly cut: CutCove;
  readonly table: TableSize;
  readonly layout: RailLayout;
  /** On the side edges, where rails leave the table there and its width is known. */
  readonly sideMarks: readonly SideMark[];
  /** +1 when fed left to right, -1 when mirrored: signs of `layout`'s marks. */
  readonly hand: 1 | -1;
  /** Whether table and blank are known, so that the marks hold. */
  readonly hasMarks: boolean;
  /** Half the table's width where it is known and its sides are drawn. */
  readonly sides: number | undefined;
  readonly bands: { readonly near: Band; readonly far: Band; readonly board: Band };
  /** Where the blade leaves the table, before and behind its middle. */
  readonly halfChord: number;
  readonly size: number;
  readonly width: number;
  /** Paper at each side for marks on the side edges. */
  readonly columns: number;
  /** Millimetres to the inch. */
  readonly scale: number;
  /** Half of what is shown of the table, in inches. */
  readonly halfShown: number;
  readonly at: (point: TablePoint) => Point;
}

/** Four corners, the two at the front first. */
export type Band = readonly [TablePoint, TablePoint, TablePoint, TablePoint];

/** A 27 in deep table with wings. Common practice [C]. */
const USUAL_TABLE: TableSize = { front: 14, back: 13, width: 40 };
/** Flats drawn where no blank is known. */
const USUAL_FLAT_INCHES = 1 / 2;
/** Of a rail, as it is drawn: a straight board on edge or flat. Common practice [C]. */
export const RAIL_WIDTH_INCHES = 1.5;
const LEAST_HALF_INCHES = 12;
const TALLEST_SHARE = 1.1;
/** Marks on a side edge: first line, next line, and room past the last, as shares of the letters. */
export const SIDE_COLUMN = { first: 0.8, next: 1.8, past: 1.4 } as const;
const MARGIN = 1;

/** @throws RangeError for numbers that no saw has (a bug of the caller's). */
export function planTable(view: TableView): TablePlan {
  const { blade, setting, tiltSide } = view;
  const width = soundWidth(view.width ?? LEAST_WIDTH_MM);
  const size = letterSize(width);
  const cut = computeCut(blade, setting);
  const table = view.table ?? USUAL_TABLE;
  const flats = view.flats ?? { near: USUAL_FLAT_INCHES, far: USUAL_FLAT_INCHES };
  const numbers = [cut.width, cut.depth, table.front + table.back, table.width ?? 1];
  const sound = numbers.every((number) => number > 0 && Number.isFinite(number));
  if (!sound || !Number.isFinite(flats.near + flats.far)) {
    throw new RangeError(`No table can be drawn from the sizes ${numbers.join(', ')}.`);
  }
  const layout = layOutRails(setting.approach, cut, flats, table, tiltSide);
  const nearFace = cut.near - flats.near;
  const farFace = cut.far + flats.far;
  const band = (from: number, to: number): Band => bandOf(from, to, setting.approach, table);
  const near = band(nearFace, nearFace - RAIL_WIDTH_INCHES);
  const far = band(farFace, farFace + RAIL_WIDTH_INCHES);
  // What lies between the rails' faces: where the board slides.
  const board: Band = [near[0], far[0], far[3], near[3]];
  const bands = { near, far, board };
  const corners = [...near, ...far];
  const ends = [...corners.map(([, y]) => Math.abs(y)), table.slotToBlade ?? 0];
  const reach = Math.max(LEAST_HALF_INCHES, ...ends) + 1;
  const half = table.width === undefined ? undefined : table.width / 2;
  // Far wings that nothing reaches are left out, so that the rest is larger.
  const sides = half === undefined || half > reach * 1.4 ? undefined : half;
  const least = Math.max(reach, (sides ?? 0) + 0.5);
  const sideMarks = sideMarksOf(layout, table);
  const columns = sideColumns(sideMarks, size);
  const high = table.front + table.back + 2 * CLAMP_LIP_INCHES;
  const room = width - 2 * (MARGIN + columns);
  const scale = Math.min(room / (2 * least), (width * TALLEST_SHARE) / high);
  return {
    view,
    cut,
    table,
    layout,
    sideMarks,
    hand: layout.feed === 'left to right' ? 1 : -1,
    hasMarks: view.table !== undefined && view.flats !== undefined,
    sides,
    bands,
    halfChord: reachAt(blade, setting, 0),
    size,
    width,
    columns,
    scale,
    halfShown: room / (2 * scale),
    at: ([x, y]) => [width / 2 + y * scale, -x * scale],
  };
}

/** Each mark on a side edge has a column of its own, its number upright beside its line. */
function sideColumns(marks: readonly SideMark[], size: number): number {
  if (marks.length === 0) return 0;
  const count = Math.max(
    ...(['left', 'right'] as const).map((side) => marks.filter((one) => one.side === side).length),
  );
  const { first, next, past } = SIDE_COLUMN;
  return size * (first + next * (count - 1) + past);
}

/** Between two lines along the feed, from edge to edge of the table and a clamp's lip beyond. */
function bandOf(from: number, to: number, approach: number, table: TableSize): Band {
  const [cosine, sine] = [Math.cos(approach), Math.sin(approach)];
  const at = (u: number, v: number): TablePoint => [u * sine + v * cosine, v * sine - u * cosine];
  const half = table.width === undefined ? USUAL_HALF_TABLE_INCHES : table.width / 2;
  const front = Math.max((-table.front - from * sine) / cosine, (from * cosine - half) / sine);
  const back = Math.min((table.back - from * sine) / cosine, (from * cosine + half) / sine);
  const [start, end] = [front - CLAMP_LIP_INCHES, back + CLAMP_LIP_INCHES];
  return [at(from, start), at(to, start), at(to, end), at(from, end)];
}

/** Half the blade's length at a level over the table, in its middle plane. */
export function reachAt(blade: Blade, setting: Setting, level: number): number {
  const radius = blade.diameter / 2;
  const p = radius - slopeHeight(blade, setting) + level / Math.cos(setting.tilt);
  return Math.sqrt(Math.max(0, (radius - p) * (radius + p)));
}

export interface SideMark {
  readonly rail: 'near' | 'far';
  /** As the operator sees it. */
  readonly side: 'left' | 'right';
  /** From level with the middle of the blade toward the back, in inches. */
  readonly along: number;
}

/** Marks on the side edges, of rails that leave the table there; none where its width isn't known. */
function sideMarksOf(layout: RailLayout, table: TableSize): SideMark[] {
  if (table.width === undefined) return [];
  return (['near', 'far'] as const).flatMap((rail) => {
    const { front, back, left, right } = layout[rail];
    if (front.onTable && back.onTable) return [];
    return (['left', 'right'] as const).flatMap((side) => {
      const along = { left, right }[side];
      return along === undefined ? [] : [{ rail, side, along }];
    });
  });
}
