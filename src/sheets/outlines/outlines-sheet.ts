/** The outlines: a page for each cove, its board's end at full size to be traced on the wood. */
import type { Drawing } from '../../drawings/drawing.ts';
import { drawFullSize } from '../../drawings/full-size.ts';
import { isCovePlan, type JobPlan } from '../../planning/job-plan.ts';
import type { PrintDescription, SheetDescription } from '../grammar/description.ts';
import { columnPoints, columnWithin, POINTS_PER_MM, roomOnPage } from '../grammar/page-size.ts';
import { SHEET_NAMES } from '../plan-anchors.ts';
import { cell, SheetDraft } from '../grammar/sheet-draft.ts';
import { outlineWords, TOO_HIGH, type CoveOutline } from './outline-words.ts';

/** Programs differ in column widths. A column this much narrower than the page never spills onto a second one. */
const SHARE_OF_PAGE = 0.97;
/** Programs round each row to pixels of their own: what the rows may gain on the way down. */
const ROUNDING_POINTS = 6;
/** Below the highest that Excel takes (row-height.ts). */
const HIGHEST_ROW = 400;

type Orientation = PrintDescription['orientation'];

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
  const coves = plan.profiles
    .filter(isCovePlan)
    .map(({ profile, setUp }): CoveOutline => ({ profile, setUp, reading: shop }));
  if (coves.length === 0) return undefined;
  const [upright, across] = (['portrait', 'landscape'] as const).map((orientation) =>
    layOut(plan, coves, orientation),
  ) as [LayOut, LayOut];
  const isBetter =
    across.tooHigh < upright.tooHigh ||
    (across.tooHigh === upright.tooHigh && across.pages < upright.pages);
  const { draft, orientation } = isBetter ? across : upright;
  return draft.finish({ paper: shop.paper, orientation, footer: 'Outlines', fitWidth: false });
}

function layOut({ job }: JobPlan, coves: readonly CoveOutline[], orientation: Orientation): LayOut {
  const room = roomOnPage(job.shop.paper, orientation);
  const width = columnWithin(room.width * SHARE_OF_PAGE);
  const draft = new SheetDraft(SHEET_NAMES.outlines, [{ width }], true);
  let [pages, tooHigh] = [0, 0];
  for (const cove of coves) {
    const drawings = drawCove(cove, job.shop.tiltSide, columnPoints(width) / POINTS_PER_MM);
    const start = draft.next;
    const left = (): number => room.height - pointsFrom(draft, start) - ROUNDING_POINTS;
    addWords(draft, cove, 1, drawings.length);
    // A page that holds the first part holds all: they are alike but for their numbers.
    if (drawings.some(({ height }) => height * POINTS_PER_MM > left())) {
      draft.add(cell(TOO_HIGH, 'wrapped'));
      pages += 1;
      tooHigh += 1;
      continue;
    }
    drawings.forEach((drawing, index) => {
      if (index > 0) addWords(draft, cove, index + 1, drawings.length);
      place(draft, drawing, nameOf(cove, index, drawings.length));
      pages += 1;
    });
  }
  return { draft, orientation, pages, tooHigh };
}

function drawCove(
  { setUp: { blade, setting, blank }, reading: { unit, decimalSign } }: CoveOutline,
  tiltSide: JobPlan['job']['shop']['tiltSide'],
  widest: number,
): Drawing[] {
  return drawFullSize({ blade, setting, blank, tiltSide, unit, decimalSign, widest });
}

function addWords(draft: SheetDraft, cove: CoveOutline, part: number, parts: number): void {
  draft.breakPage();
  for (const one of outlineWords(cove, part, parts)) draft.add(one);
}

/** At the left of as many blank rows as are as high as it. */
function place(draft: SheetDraft, drawing: Drawing, name: string): void {
  draft.draw(draft.next, 0, drawing, name);
  const points = drawing.height * POINTS_PER_MM;
  const rows = Math.ceil(points / HIGHEST_ROW);
  for (let row = 0; row < rows; row++) draft.setHeight(draft.add(), Math.ceil(points / rows) + 1);
}

function nameOf({ profile }: CoveOutline, index: number, parts: number): string {
  return `${profile.name} outline${parts > 1 ? ` part ${index + 1}` : ''}`;
}

function pointsFrom(draft: SheetDraft, first: number): number {
  let points = 0;
  for (let row = first; row < draft.next; row++) points += draft.pointsOf(row);
  return points;
}
