/** The two drawings of a set-up's page, one above the other, and the row that makes room for them and for its code. */
import type { Drawing } from '../../drawings/drawing.ts';
import { drawSection } from '../../drawings/section.ts';
import { drawTable } from '../../drawings/table.ts';
import type { SetUpPlan } from '../../planning/job-plan.ts';
import type { SetUp } from '../../planning/plan-setup.ts';
import type { SawShop, Shop } from '../../planning/shop.ts';
import { tableSizeOf } from '../../planning/table-size.ts';
import { POINTS_PER_MM, roomForRows } from '../grammar/page-size.ts';
import { DRAWING_COLUMN, DRAWING_WIDTHS_MM, SET_UP_COLUMNS } from './set-up-columns.ts';
import { drawSetUpCode } from './set-up-code.ts';
import type { SheetDraft } from '../grammar/sheet-draft.ts';

/** Programs round each row to pixels of their own: what the rows may lose on the way down. */
const ROUNDING_POINTS = 3;

/** Rows of a set-up's page, from 1; its last so far is the draft's last. */
export interface SetUpRows {
  readonly top: number;
  /** Kept blank below the rows that have drawings beside them, it makes up what they lack in height. */
  readonly spacer: number;
}

interface Arrangement {
  readonly placed: readonly { readonly row: number; readonly drawing: Drawing }[];
  readonly spacerPoints: number;
}

/**
 * Puts the drawings beside the rows from the top to the spacer, as large as leaves the page one page;
 * the largest where no size does.
 */
export function placeDrawings(
  draft: SheetDraft,
  rows: SetUpRows,
  planned: SetUpPlan,
  shop: Shop,
): void {
  const { profile, setUp } = planned;
  const code = drawSetUpCode(planned, shop);
  const words =
    pointsOf(draft, rows.top, rows.spacer) + pointsOf(draft, rows.spacer + 1, draft.next);
  const room = roomForRows(shop.paper, SET_UP_COLUMNS) - words;
  const arranged = (width: number): Arrangement =>
    arrange(draft, rows, drawSetUp(setUp, shop, width), code);
  const [widest, ...narrower] = DRAWING_WIDTHS_MM;
  const largest = arranged(widest);
  let chosen = largest;
  for (const width of narrower) {
    if (chosen.spacerPoints <= room) break;
    chosen = arranged(width);
  }
  if (chosen.spacerPoints > room) chosen = largest;
  chosen.placed.forEach(({ row, drawing }, at) => {
    const what = at === chosen.placed.length - 1 ? 'table' : 'section';
    draft.draw(row, DRAWING_COLUMN, drawing, `${profile.name} ${what}`);
  });
  if (code !== undefined) draft.draw(rows.spacer, 0, code, `${profile.name} code`);
  draft.setHeight(rows.spacer, chosen.spacerPoints);
}

/** The section on the saw, then the table from above. */
export function drawSetUp(
  { blade, setting, blank, flats }: SetUp,
  shop: SawShop,
  width: number,
): Drawing[] {
  const { tiltSide, unit, decimalSign } = shop;
  const table = tableSizeOf(shop);
  const drawn = { blade, setting, tiltSide, unit, decimalSign, width };
  const onTable = drawTable({ ...drawn, flats, ...(table === undefined ? {} : { table }) });
  return [drawSection({ ...drawn, blank }), onTable];
}

/** Each drawing from the first row on that is clear of the one before it. */
function arrange(
  draft: SheetDraft,
  { top, spacer }: SetUpRows,
  drawings: readonly Drawing[],
  code: Drawing | undefined,
): Arrangement {
  let row = top;
  let rowTop = 0;
  let end = 0;
  const placed = drawings.map((drawing) => {
    while (rowTop < end && row < spacer) rowTop += draft.pointsOf(row++);
    end = rowTop + drawing.height * POINTS_PER_MM;
    return { row, drawing };
  });
  const beside = pointsOf(draft, top, spacer);
  const codePoints = (code?.height ?? 0) * POINTS_PER_MM;
  return { placed, spacerPoints: Math.max(end - beside, codePoints) + ROUNDING_POINTS };
}

/** Of the rows from the first to before the other. */
function pointsOf(draft: SheetDraft, first: number, before: number): number {
  let points = 0;
  for (let row = first; row < before; row++) points += draft.pointsOf(row);
  return points;
}
