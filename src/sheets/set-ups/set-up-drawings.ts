/** The two drawings of a set-up's page, side by side, and the rows that make room for them. */
import type { Drawing } from '../../drawings/drawing.ts';
import { drawSection } from '../../drawings/section.ts';
import { drawTable } from '../../drawings/table.ts';
import type { CovePlan } from '../../planning/job-plan.ts';
import type { SetUp } from '../../planning/plan-setup.ts';
import type { Shop } from '../../planning/shop.ts';
import { tableSizeOf } from '../../planning/table-size.ts';
import { POINTS_PER_MM } from '../grammar/page-size.ts';
import type { SheetDraft } from '../grammar/sheet-draft.ts';
import { DRAWING_COLUMNS } from './set-up-columns.ts';

/** Programs round each row to pixels of their own: what the rows may lose on the way down. */
const ROUNDING_POINTS = 3;

/** Rows of a set-up's page, from 1, in which its drawings stand. */
export interface SetUpRows {
  readonly top: number;
  /** Kept blank for the board's end. */
  readonly section: number;
  /** Kept blank below the rows beside the table, it makes up what they lack in height. */
  readonly spacer: number;
}

/** Widths of the two drawings, in millimetres. */
export interface DrawnWidths {
  readonly section: number;
  readonly table: number;
}

/** The board's end on its own row at the left, the table from the top of the page at the right. */
export function placeDrawings(
  draft: SheetDraft,
  { top, section, spacer }: SetUpRows,
  { profile, setUp }: CovePlan,
  shop: Shop,
  widths: DrawnWidths,
): void {
  const [end, table] = [
    drawSetUp(setUp, shop, widths.section)[0],
    drawSetUp(setUp, shop, widths.table)[1],
  ];
  draft.setHeight(section, end.height * POINTS_PER_MM + ROUNDING_POINTS);
  const beside = pointsOf(draft, top, spacer);
  const lacking = table.height * POINTS_PER_MM - beside;
  draft.setHeight(spacer, Math.max(lacking, 0) + ROUNDING_POINTS);
  const [left, right] = DRAWING_COLUMNS;
  draft.draw(section, left, end, `${profile.name} section`);
  draft.draw(top, right, table, `${profile.name} table`);
}

/** The section on the saw, then the table from above. */
export function drawSetUp(
  { blade, setting, blank, flats }: SetUp,
  shop: Shop,
  width: number,
): [section: Drawing, table: Drawing] {
  const { tiltSide, unit, decimalSign } = shop;
  const table = tableSizeOf(shop);
  const drawn = { blade, setting, tiltSide, unit, decimalSign, width };
  const onTable = drawTable({ ...drawn, flats, ...(table === undefined ? {} : { table }) });
  return [drawSection({ ...drawn, blank }), onTable];
}

/** Of the rows from the first to before the other. */
function pointsOf(draft: SheetDraft, first: number, before: number): number {
  let points = 0;
  for (let row = first; row < before; row++) points += draft.pointsOf(row);
  return points;
}
