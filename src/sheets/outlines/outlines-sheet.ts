/**
 * The outlines: a page for each cove, its board's end at full size to be traced on the wood; and one for each
 * raked profile that goes with it up a slope.
 */
import type { Drawing } from '../../drawings/drawing.ts';
import { drawFullSize } from '../../drawings/full-size.ts';
import { drawRaked } from '../../drawings/raked.ts';
import { isCovePlan, type CovePlan, type JobPlan } from '../../planning/job-plan.ts';
import type {
  CellDescription,
  PrintDescription,
  SheetDescription,
} from '../grammar/description.ts';
import { columnPoints, columnWithin, POINTS_PER_MM, roomOnPage } from '../grammar/page-size.ts';
import { SHEET_NAMES } from '../plan-anchors.ts';
import { cell, SheetDraft } from '../grammar/sheet-draft.ts';
import type { Shop } from '../../planning/shop.ts';
import { outlineWords, TOO_HIGH } from './outline-words.ts';
import { listRaked, RAKED_TOO_HIGH, rakedWords } from './raked-outlines.ts';

/** Programs differ in column widths. A column this much narrower than the page never spills onto a second one. */
const SHARE_OF_PAGE = 0.97;
/** Programs round each row to pixels of their own: what the rows may gain on the way down. */
const ROUNDING_POINTS = 6;
/** Below the highest that Excel takes (row-height.ts). */
const HIGHEST_ROW = 400;

type Orientation = PrintDescription['orientation'];

/** What has a page, or one for each of its parts. */
interface Outline {
  readonly name: string;
  /** One cell a row; `part` counts from 1. */
  readonly words: (part: number, parts: number) => CellDescription[];
  /** In place of a drawing that no page holds. */
  readonly tooHigh: string;
  /** @param widest Of the paper's room, in millimetres. */
  readonly draw: (widest: number) => Drawing[];
}

interface LayOut {
  readonly draft: SheetDraft;
  readonly orientation: Orientation;
  readonly pages: number;
  readonly tooHigh: number;
}

/**
 * Describes the sheet Outlines: printed at 100 %, never fitted to the page, a cove too wide for the
 * paper in parts on pages of their own. Upright unless fewer pages do the other way.
 *
 * @returns undefined where no cove is to be cut
 */
export function describeOutlines(plan: JobPlan): SheetDescription | undefined {
  const { shop } = plan.job;
  const outlines = plan.profiles
    .filter(isCovePlan)
    .flatMap((cove) => [outlineOf(cove, shop), ...rakedOf(cove, shop)]);
  if (outlines.length === 0) return undefined;
  const [upright, across] = (['portrait', 'landscape'] as const).map((orientation) =>
    layOut(plan, outlines, orientation),
  ) as [LayOut, LayOut];
  const isBetter =
    across.tooHigh < upright.tooHigh ||
    (across.tooHigh === upright.tooHigh && across.pages < upright.pages);
  const { draft, orientation } = isBetter ? across : upright;
  return draft.finish({ paper: shop.paper, orientation, footer: 'Outlines', fitWidth: false });
}

function outlineOf({ profile, setUp }: CovePlan, shop: Shop): Outline {
  const { blade, setting, blank } = setUp;
  const { tiltSide, unit, decimalSign } = shop;
  return {
    name: `${profile.name} outline`,
    words: (part, parts) => outlineWords({ profile, setUp, reading: shop }, part, parts),
    tooHigh: TOO_HIGH,
    draw: (widest) => drawFullSize({ blade, setting, blank, tiltSide, unit, decimalSign, widest }),
  };
}

function rakedOf(cove: CovePlan, shop: Shop): Outline[] {
  const { unit, decimalSign } = shop;
  return listRaked(cove, shop).map((raked) => ({
    name: `${cove.profile.name} ${raked.name}`,
    words: (part, parts) => rakedWords(raked, shop, part, parts),
    tooHigh: RAKED_TOO_HIGH,
    draw: (widest) => drawRaked({ ...raked.view, unit, decimalSign, widest }),
  }));
}

function layOut({ job }: JobPlan, outlines: readonly Outline[], orientation: Orientation): LayOut {
  const room = roomOnPage(job.shop.paper, orientation);
  const width = columnWithin(room.width * SHARE_OF_PAGE);
  const draft = new SheetDraft(SHEET_NAMES.outlines, [{ width }], true);
  let [pages, tooHigh] = [0, 0];
  for (const outline of outlines) {
    const drawings = outline.draw(columnPoints(width) / POINTS_PER_MM);
    const start = draft.next;
    const left = (): number => room.height - pointsFrom(draft, start) - ROUNDING_POINTS;
    addWords(draft, outline, 1, drawings.length);
    // A page that holds the first part holds all: they are alike but for their numbers.
    if (drawings.some(({ height }) => height * POINTS_PER_MM > left())) {
      draft.add(cell(outline.tooHigh, 'wrapped'));
      pages += 1;
      tooHigh += 1;
      continue;
    }
    drawings.forEach((drawing, index) => {
      if (index > 0) addWords(draft, outline, index + 1, drawings.length);
      const part = drawings.length > 1 ? ` part ${index + 1}` : '';
      place(draft, drawing, `${outline.name}${part}`);
      pages += 1;
    });
  }
  return { draft, orientation, pages, tooHigh };
}

function addWords(draft: SheetDraft, outline: Outline, part: number, parts: number): void {
  draft.breakPage();
  for (const one of outline.words(part, parts)) draft.add(one);
}

/** At the left of as many blank rows as are as high as it. */
function place(draft: SheetDraft, drawing: Drawing, name: string): void {
  draft.draw(draft.next, 0, drawing, name);
  const points = drawing.height * POINTS_PER_MM;
  const rows = Math.ceil(points / HIGHEST_ROW);
  for (let row = 0; row < rows; row++) draft.setHeight(draft.add(), Math.ceil(points / rows) + 1);
}

function pointsFrom(draft: SheetDraft, first: number): number {
  let points = 0;
  for (let row = first; row < draft.next; row++) points += draft.pointsOf(row);
  return points;
}
