/** The measures of a cove's section. */
import { line, LINE } from './compose.ts';
import {
  extension,
  fitsInLine,
  levelMeasure,
  onPaper,
  SHORTEST_WITH_HEADS,
  TAIL,
  uprightMeasure,
} from './dimension.ts';
import type { Shape } from './drawing.ts';
import { lineHeight, textAbout } from './lettering.ts';
import { columnStart, label, MARGIN, type SectionPlan } from './section-plan.ts';
import { SOLVED_NOISE_INCHES } from './tolerance.ts';

/** Lowest middle of a number over the face, as a share of its size. */
const FROM_FACE = 0.55;
/** Long and short dashes: a line through a middle. */
const CENTER = [1.6, 0.7, 0.3, 0.7];

/** A measure along the face, between two places across the feed. */
interface FaceMeasure {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  /** Where its number goes when there is no room in the line. */
  readonly beside: 'left' | 'right';
}

/** The paper above which no number and no arrow of the section stands. */
export function highestNumber({ cut, blank, size, at }: SectionPlan): number {
  const [, face] = at(0, 0);
  const numbers = face - size * FROM_FACE - 1.5 * lineHeight(size);
  if (blank === undefined) return numbers;
  const top = at(0, blank.thickness)[1];
  const isShort = at(0, cut.depth)[1] - top < SHORTEST_WITH_HEADS;
  return Math.min(numbers, isShort ? top - TAIL : top);
}

export function sectionMeasures(plan: SectionPlan): Shape[] {
  return [...faceMeasures(plan), ...heightMeasures(plan)];
}

/** Rows under the face: off-center, flats and cove, blank. */
function faceMeasures(plan: SectionPlan): Shape[] {
  const { cut, size, width, at } = plan;
  const face = at(0, 0)[1];
  const measures: Shape[] = [];
  const lowest = new Map<number, number>();
  faceRows(plan).forEach((row, index) => {
    const y = face + 2.2 + size * (0.75 + 1.45 * index);
    for (const { name, from, to, beside } of row) {
      const text = label(plan, name, Math.abs(from - to));
      const ends = { from: at(from, 0)[0], to: at(to, 0)[0] };
      const room = { left: MARGIN, right: width - MARGIN };
      measures.push(...levelMeasure({ ...ends, y, text, size, room, beside }));
      for (const u of [from, to]) lowest.set(u, y + 0.8);
    }
  });
  const middle = (cut.near + cut.far) / 2;
  const lines = Array.from(lowest, ([u, y]): Shape => {
    const [x] = at(u, 0);
    if (u === cut.deepestLine)
      return line([at(u, cut.depth), [x, y]], 'measure', LINE.thin, CENTER);
    if (u === middle)
      return line(
        [
          [x, face - 2],
          [x, y],
        ],
        'measure',
        LINE.thin,
        CENTER,
      );
    return extension([x, face + 1.2], [x, y]);
  });
  return [...lines, ...measures];
}

function faceRows(plan: SectionPlan): FaceMeasure[][] {
  const { cut, blank, flats, size, scale } = plan;
  const cove: FaceMeasure = { name: 'cove', from: cut.far, to: cut.near, beside: 'right' };
  const edges: FaceMeasure[] = [];
  const [farEdge, nearEdge] = [cut.far + flats.far, cut.near - flats.near];
  if (blank !== undefined && flats.far > 0) {
    edges.push({ name: 'flat', from: farEdge, to: cut.far, beside: 'left' });
  }
  if (blank !== undefined && flats.near > 0) {
    edges.push({ name: 'flat', from: cut.near, to: nearEdge, beside: 'right' });
  }
  const inOneRow = fitsInLine(cut.width * scale, label(plan, 'cove', cut.width), size);
  const rows = inOneRow ? [[...edges, cove]] : [[cove], edges];
  if (cut.offCenter > SOLVED_NOISE_INCHES) {
    const middle = (cut.near + cut.far) / 2;
    rows.unshift([{ name: 'off center', from: cut.deepestLine, to: middle, beside: 'right' }]);
  }
  if (blank !== undefined) {
    rows.push([{ name: 'blank', from: farEdge, to: nearEdge, beside: 'right' }]);
  }
  return rows.filter((row) => row.length > 0);
}

/** The blank's thickness at one side; depth and web, one over the other, at the other side. */
function heightMeasures(plan: SectionPlan): Shape[] {
  const { cut, blank, flats, size, at } = plan;
  const nearEdge = at(cut.near - Math.max(flats.near, 0), 0)[0];
  const farEdge = at(cut.far + Math.max(flats.far, 0), 0)[0];
  const beside = columnStart(plan);
  const [nearX, farX] = [nearEdge + beside, farEdge - beside];
  const [, face] = at(0, 0);
  const [deepest, deepestY] = at(cut.deepestPoint, cut.depth);
  const shapes: Shape[] = [
    ...uprightMeasure(nearX, deepestY, face),
    extension([deepest, deepestY], [nearX + 0.8, deepestY]),
    extension([nearEdge + 0.6, face], [nearX + 0.8, face]),
  ];
  const labels = [{ text: label(plan, 'deep', cut.depth), y: (deepestY + face) / 2 }];
  if (blank !== undefined) {
    const topY = at(0, blank.thickness)[1];
    const thick = { text: label(plan, 'thick', blank.thickness), y: (topY + face) / 2 };
    shapes.push(
      ...uprightMeasure(farX, topY, face),
      extension([farEdge - 0.6, topY], [farX - 0.8, topY]),
      extension([farEdge - 0.6, face], [farX - 0.8, face]),
      ...numbers(farX - 1, 'end', size, aboveFace([thick], face, size)),
    );
    const web = blank.thickness - cut.depth;
    if (web > 0) {
      shapes.push(
        ...uprightMeasure(nearX, topY, deepestY),
        extension([nearEdge + 0.6, topY], [nearX + 0.8, topY]),
      );
      labels.unshift({ text: label(plan, 'web', web), y: (topY + deepestY) / 2 });
    }
  }
  return [...shapes, ...numbers(nearX + 1, 'start', size, aboveFace(labels, face, size))];
}

interface Label {
  readonly text: string;
  readonly y: number;
}

function numbers(
  x: number,
  anchor: 'start' | 'end',
  size: number,
  labels: readonly Label[],
): Shape[] {
  return labels.flatMap(({ text, y }) =>
    onPaper(textAbout([x, y], text, size, { anchor, tone: 'measure' })),
  );
}

/** Numbers one over the other, moved apart until none touches another or the table. */
function aboveFace(labels: readonly Label[], face: number, size: number): readonly Label[] {
  const least = lineHeight(size);
  const [upper, lower] = labels;
  const lowest = face - size * FROM_FACE;
  if (upper === undefined || lower === undefined) {
    return labels.map((one) => ({ ...one, y: Math.min(one.y, lowest) }));
  }
  const missing = Math.max(0, least - (lower.y - upper.y)) / 2;
  const y = Math.min(lower.y + missing, lowest);
  return [
    { ...upper, y: Math.min(upper.y - missing, y - least) },
    { ...lower, y },
  ];
}
