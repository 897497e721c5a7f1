/** A drawing of each molding with its sizes, two side by side, each pair on one page. */
import { toRadians } from '../../core/units/angle.ts';
import { drawCrownOnWall } from '../../drawings/crown-on-wall.ts';
import type { Drawing } from '../../drawings/drawing.ts';
import { drawPlainSection } from '../../drawings/plain-section.ts';
import { drawSection } from '../../drawings/section.ts';
import { lowerEdges } from '../../planning/lower-edges.ts';
import type { JobPlan, ProfilePlan } from '../../planning/job-plan.ts';
import type { Shop } from '../../planning/shop.ts';
import { POINTS_PER_MM } from '../grammar/page-size.ts';
import { cell, type DraftCell, type SheetDraft } from '../grammar/sheet-draft.ts';

/** Programs round each row to pixels of their own. */
const ROUNDING_POINTS = 6;
const SIDE_BY_SIDE = 2;

/** The two halves of the sheet, as first and last columns from 0, and what one holds. */
export interface DrawingGrid {
  readonly halves: readonly (readonly [first: number, last: number])[];
  readonly widthMm: number;
}

/** Adds the moldings that are in the price; gives the row at which each pair begins. */
export function addDrawings(draft: SheetDraft, plan: JobPlan, grid: DrawingGrid): number[] {
  const { shop } = plan.job;
  const named = new Set(plan.rooms.map(({ profile }) => profile));
  const shown = plan.profiles.filter(({ profile }) => named.has(profile.name));
  const starts: number[] = [];
  for (let at = 0; at < shown.length; at += SIDE_BY_SIDE) {
    starts.push(draft.next);
    if (at === 0) draft.spread('The moldings, seen from their ends', 'section');
    addPair(draft, shown.slice(at, at + SIDE_BY_SIDE), shop, grid);
  }
  return starts;
}

function addPair(
  draft: SheetDraft,
  pair: readonly ProfilePlan[],
  shop: Shop,
  { halves, widthMm }: DrawingGrid,
): void {
  const drawings = pair.map((one) => drawMolding(one, shop, widthMm));
  const addTexts = (texts: readonly DraftCell[]): void => {
    const cells: DraftCell[] = [];
    texts.forEach((text, at) => (cells[halves[at]?.[0] ?? 0] = text));
    const row = draft.add(...Array.from(cells, (one) => one ?? null));
    for (const [first, last] of halves.slice(0, texts.length)) draft.merge(row, first, last);
  };
  addTexts(pair.map(({ profile }) => cell(profile.name, 'longTitle')));
  addTexts(
    pair.map(({ profile }, at) => {
      const unknown = drawings[at] === undefined ? ['no sizes are given: shape as bought'] : [];
      const words = [...(profile.species === '' ? [] : [profile.species]), ...unknown];
      return cell(words.join('; '), 'wrapped');
    }),
  );
  const row = draft.add();
  const heights = drawings.map((drawing) => drawing?.height ?? 0);
  draft.setHeight(row, Math.max(...heights) * POINTS_PER_MM + ROUNDING_POINTS);
  drawings.forEach((drawing, at) => {
    const [column = 0] = halves[at] ?? [];
    const name = `${pair[at]?.profile.name ?? ''} molding`;
    if (drawing !== undefined) draft.draw(row, column, drawing, name);
  });
  draft.blank();
}

/**
 * A crown at its spring, where how far it reaches follows from its face; another cove with its sizes; what is bought as a plain section, or undefined where its sizes
 * aren't known.
 */
function drawMolding(
  { profile, setUp }: ProfilePlan,
  { tiltSide, unit, decimalSign, leastFlat }: Shop,
  width: number,
): Drawing | undefined {
  if (setUp === undefined) {
    const { blankWidth, blankThickness } = profile;
    if (blankWidth === undefined || blankThickness === undefined) return undefined;
    const size = { width: Number(blankWidth), thickness: Number(blankThickness) };
    return drawPlainSection({ size, unit, decimalSign, width });
  }
  const lowers = lowerEdges(setUp, Number(leastFlat));
  const { spring, drop, projection } = profile;
  const isPlain = drop === undefined && projection === undefined && lowers.length > 0;
  if (spring !== undefined && isPlain) {
    const { blade, setting, blank } = setUp;
    const stands = { lower: lowers[0] ?? 'near', mayTurn: lowers.length > 1 };
    return drawCrownOnWall({
      blade,
      setting,
      blank,
      ...stands,
      spring: toRadians(spring),
      unit,
      decimalSign,
      width,
    });
  }
  return drawSection({
    blade: setUp.blade,
    setting: setUp.setting,
    blank: setUp.blank,
    tiltSide,
    unit,
    decimalSign,
    view: 'face up',
    words: 'client',
    width,
  });
}
