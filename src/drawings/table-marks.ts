/** Tape marks on the table's edges, each with its distance from the blade line and from the slot. */
import type { RailMark } from '../core/cove/rails.ts';
import { line, LINE } from './compose.ts';
import {
  extension,
  levelMeasure,
  onPaper,
  uprightMeasure,
  type LevelMeasure,
} from './dimension.ts';
import type { Point, Shape } from './drawing.ts';
import { textAbout, textWidth } from './lettering.ts';
import { sayMark } from './say.ts';
import { SIDE_COLUMN, type SideMark, type TablePlan } from './table-plan.ts';

const MARGIN = 1;
const ROW_SHARE = 1.45;
const CENTER = [2, 0.8, 0.4, 0.8];
const TICK = 1.6;

/** Marks of one edge that are measured from the same line. */
interface MarkGroup {
  readonly name: 'blade line' | 'miter slot';
  /** To the right of the blade line, as fed left to right. */
  readonly origin: number;
  readonly marks: readonly { readonly rail: 'near' | 'far'; readonly y: number; inches: number }[];
}

export function markTable(plan: TablePlan): Shape[] {
  if (!plan.hasMarks) return [];
  return [...markEdge(plan, 'front'), ...markEdge(plan, 'back'), ...markSides(plan)];
}

/** Rows beyond the rails' ends, the shorter nearer; under each group the line it is measured from. */
function markEdge(plan: TablePlan, edge: 'front' | 'back'): Shape[] {
  const { view, layout, bands, hand, table, size, width, columns, at } = plan;
  const rails = (['near', 'far'] as const).filter((rail) => layout[rail][edge].onTable);
  if (rails.length === 0) return [];
  const outward = edge === 'front' ? 1 : -1;
  const onEdge = (y: number): Point => at([edge === 'front' ? -table.front : table.back, y]);
  const ends = [...bands.near, ...bands.far].map((corner) => outward * at(corner)[1]);
  const first = outward * (Math.max(...ends) + size * 0.9);
  const rowAt = (index: number): number => first + outward * index * size * ROW_SHARE;
  const room = { left: MARGIN + columns, right: width - MARGIN - columns };
  const lines: Shape[] = [];
  const letters: Shape[] = [];
  let row = 0;
  for (const { name, origin, marks } of groupsOf(plan, rails, edge)) {
    const measures = marks.map(({ rail, y, inches }, index): LevelMeasure => {
      const [from, to] = [onEdge(origin)[0], onEdge(y)[0]];
      const text = `${rail} ${sayMark(inches, view)}`;
      const beside = to < from ? 'left' : 'right';
      return { from, to, y: rowAt(row + index), text, size, room, beside };
    });
    row += marks.length;
    const named: Point = [onEdge(origin)[0], rowAt(row)];
    lines.push(line([onEdge(origin), named], 'measure', LINE.thin, CENTER));
    const look = { anchor: 'middle', tone: 'measure' } as const;
    const half = textWidth(name, size) / 2;
    const x = Math.min(Math.max(named[0], room.left + half), room.right - half);
    letters.push(...measures.flatMap(levelMeasure));
    letters.push(...onPaper(textAbout([x, named[1]], name, size, look)));
    row += 1;
  }
  const last = rowAt(row - 2) + outward * 0.9;
  const ticks = rails.flatMap((rail): Shape[] => {
    const [x, y] = onEdge(hand * layout[rail][edge].fromBlade);
    const from: Point = [x, y - TICK];
    return [extension([x, y], [x, last]), line([from, [x, y + TICK]], 'measure', LINE.strong)];
  });
  return [...slotOnTable(plan), ...lines, ...ticks, ...letters];
}

function groupsOf(
  { layout, hand, table }: TablePlan,
  rails: readonly ('near' | 'far')[],
  edge: 'front' | 'back',
): MarkGroup[] {
  const marksBy = (inchesOf: (mark: RailMark) => number): MarkGroup['marks'] =>
    rails
      .map((rail) => {
        const mark = layout[rail][edge];
        return { rail, y: hand * mark.fromBlade, inches: inchesOf(mark) };
      })
      .sort((one, other) => Math.abs(one.inches) - Math.abs(other.inches));
  const blade = {
    name: 'blade line',
    origin: 0,
    marks: marksBy((mark) => mark.fromBlade),
  } as const;
  if (table.slotToBlade === undefined) return [blade];
  const origin = -hand * table.slotToBlade;
  return [blade, { name: 'miter slot', origin, marks: marksBy((mark) => mark.fromSlot ?? 0) }];
}

/** The slot runs all along the table. */
function slotOnTable({ table, hand, at }: TablePlan): Shape[] {
  if (table.slotToBlade === undefined) return [];
  const y = -hand * table.slotToBlade;
  return [line([at([-table.front, y]), at([table.back, y])], 'measure', LINE.thin, CENTER)];
}

/** Upright measures beside the table, from level with the middle of the blade; numbers turned. */
function markSides(plan: TablePlan): Shape[] {
  const { hand, sides, halfShown, size, view, at } = plan;
  const used = { left: 0, right: 0 };
  const middle = at([0, 0])[1];
  const marks = [...plan.sideMarks];
  // In one order on both kinds of saw, so that one drawing is the other's mirror image.
  if (hand < 0) marks.reverse().sort((one, other) => railOrder(one) - railOrder(other));
  return marks.flatMap(({ rail, side, along }): Shape[] => {
    // Mirrored later, what is at the operator's right stands at the left here.
    const way = (side === 'right' ? 1 : -1) * hand;
    const column = used[side]++;
    const [edge, y] = at([along, way * (sides ?? halfShown)]);
    const [outer] = at([0, way * halfShown]);
    const x = outer + way * size * (SIDE_COLUMN.first + SIDE_COLUMN.next * column);
    const text = `${rail} ${sayMark(along, view)}`;
    const [top, bottom] = [Math.min(y, middle), Math.max(y, middle)];
    const turned = { anchor: 'middle', tone: 'measure', turn: -90 } as const;
    return [
      line(
        [
          [edge - way * TICK, y],
          [edge + way * TICK, y],
        ],
        'measure',
        LINE.strong,
      ),
      extension([edge, y], [x + way * 0.8, y]),
      line(
        [
          [edge - way * 6, middle],
          [x + way * 0.8, middle],
        ],
        'measure',
        LINE.thin,
        CENTER,
      ),
      ...uprightMeasure(x, top, bottom),
      ...onPaper(textAbout([x + way * size * 0.75, (top + bottom) / 2], text, size, turned)),
    ];
  });
}

function railOrder({ rail }: SideMark): number {
  return rail === 'near' ? 0 : 1;
}
