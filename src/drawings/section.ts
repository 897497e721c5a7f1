/**
 * The section of a cove in its blank, to scale. Drawn first as the board rides on the saw: face
 * down, seen along the feed from the front, on a left-tilt saw, whose far rail is then at the left
 * (left of the feed is +u: cove.ts). A right-tilt saw is its mirror image; face up is the same board
 * rolled over, a half turn.
 */
import { area, compose, line, LINE } from './compose.ts';
import type { Drawing, Point, Shape } from './drawing.ts';
import { textAbout } from './lettering.ts';
import { saySection, titleSection } from './section-alt.ts';
import { highestNumber, sectionMeasures } from './section-measures.ts';
import { HINT, MARGIN, planSection, type SectionPlan, type SectionView } from './section-plan.ts';

/** On paper, in millimetres: the rails beside the board, not to scale; the table under it. */
const RAIL = { width: 3.2, gap: 0.5 } as const;

/**
 * Draws the section of a cove, with the blank's width and thickness, the cove's width and depth, its
 * flats, its web and how far its deepest line lies off center.
 *
 * @param view Blade, setting and blank in inches, angles in radians; the drawing's width in
 *   millimetres.
 * @returns Shapes in millimetres, with a text alternative that says every number.
 * @throws RangeError for numbers that no cove has (a bug of the caller's).
 */
export function drawSection(view: SectionView): Drawing {
  const plan = planSection(view);
  const shapes = [
    ...drawWood(plan),
    ...drawSaw(plan),
    ...drawSides(plan),
    ...sectionMeasures(plan),
  ];
  const faceUp = view.view === 'face up';
  // Rolled over, what was at the left is at the right.
  const sides = (view.tiltSide === 'right') !== faceUp;
  const what = { title: titleSection(plan), alt: saySection(plan), width: plan.width };
  return compose(what, shapes, { sides, topAndBottom: faceUp });
}

/** The blank with the cove cut away, in one outline; a cove that doesn't fit is drawn over it. */
function drawWood({ cut, outline, blank, flats, fits, at }: SectionPlan): Shape[] {
  const cove = outline.map(({ u, depth }) => at(u, depth));
  const top = blank?.thickness ?? cut.depth * (1 + HINT.web);
  const [near, far] = [cut.near - flats.near, cut.far + flats.far];
  const edge = { tone: 'ink', width: LINE.strong } as const;
  const around = [at(far, 0), at(far, top), at(near, top), at(near, 0)];
  if (blank === undefined) {
    const face = [at(near, 0), ...cove, at(far, 0)];
    return [
      area([...around, ...cove], 'wood'),
      line(around, 'faint', LINE.thin, [0.8, 0.8]),
      line(face, 'ink', LINE.strong),
    ];
  }
  if (fits) return [area([...around, ...cove], 'wood', edge)];
  return [area(around, 'wood', edge), area(cove, 'removed', edge)];
}

/** The table under the board, and the rails that it slides between. */
function drawSaw({ view, cut, blank, flats, width, scale, at }: SectionPlan): Shape[] {
  if (view.view === 'face up') return [];
  const [, face] = at(0, 0);
  const table = line(
    [
      [MARGIN, face + 0.5],
      [width - MARGIN, face + 0.5],
    ],
    'metal',
    1,
  );
  if (blank === undefined) return [table];
  const high = Math.min(12, Math.max(4, blank.thickness * scale * 0.7));
  const rails = ([-1, 1] as const).map((way) => {
    const [edge] = way < 0 ? at(cut.far + flats.far, 0) : at(cut.near - flats.near, 0);
    const inner = edge + way * RAIL.gap;
    const outer = inner + way * RAIL.width;
    const corners: Point[] = [
      [inner, face],
      [outer, face],
      [outer, face - high],
      [inner, face - high],
    ];
    return area(corners, 'rail', { tone: 'ink', width: LINE.usual });
  });
  return [table, ...rails];
}

/** Names of the two sides over the board's ends. */
function drawSides(plan: SectionPlan): Shape[] {
  const { view, cut, blank, size, width, at } = plan;
  const top = Math.max(blank?.thickness ?? 0, cut.depth * (1 + HINT.web));
  const y = Math.min(at(0, top)[1], highestNumber(plan)) - size * 1.1;
  const tilted = view.setting.tilt > 0;
  if (view.words === 'client') {
    const look = { anchor: 'start', tone: 'ink' } as const;
    return tilted ? [textAbout([MARGIN, y], 'deep side', size, look)] : [];
  }
  const [near, far, deep] =
    view.view === 'face up'
      ? ['near side', 'far side', ' (deep)']
      : ['near rail', 'far rail', ' (deep side)'];
  return [
    textAbout([MARGIN, y], `${far}${tilted ? deep : ''}`, size, { anchor: 'start', tone: 'ink' }),
    textAbout([width - MARGIN, y], near, size, { anchor: 'end', tone: 'ink' }),
  ];
}
