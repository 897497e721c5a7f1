/**
 * The client's copy: what is included, room by room, and its price, with no figure of the shop's own.
 * It is a sheet of the shop's workbook and a workbook by itself, alike to the letter.
 */
import type { JobPlan } from '../../planning/job-plan.ts';
import { quoteSheet } from '../../core/cells/cell-range.ts';
import {
  DESCRIPTION_VERSION,
  type SheetDescription,
  type ValidationDescription,
  type WorkbookDescription,
} from '../grammar/description.ts';
import { layPages } from '../grammar/lay-pages.ts';
import { roomForRows } from '../grammar/page-size.ts';
import { newPlanCells, SHEET_NAMES, type PlanCells } from '../plan-cells.ts';
import { SheetDraft } from '../grammar/sheet-draft.ts';
import { JUDGMENT_CAUTION } from '../words/standing-cautions.ts';
import { addDrawings, type DrawingGrid } from './client-drawings.ts';
import { addLines } from './client-lines.ts';
import { addPrice, repeatPrice } from './client-price.ts';
import { clientRooms } from './client-rooms.ts';
import { sayCovered, sayJob } from './client-words.ts';

/** As wide as the page of A4 upright; the halves end after B and after F. */
const COLUMNS = [33, 14, 10, 12, 12, 13].map((width) => ({ width }));
/** A half holds 89 mm; programs differ by a millimetre or two in the widths of columns. */
const GRID: DrawingGrid = {
  halves: [
    [0, 1],
    [2, 5],
  ],
  widthMm: 85,
};
const TITLE = 'Moldings and their price';
const COPY_SHEET = 'Moldings';
/** Of one line; past it the program asks back. */
const MOST_QUANTITY = 9999;

/** The sheet Client of the shop's workbook; tells `cells` where its price without tax stands. */
export function describeClient(plan: JobPlan, cells: PlanCells): SheetDescription {
  return describeSheet(plan, SHEET_NAMES.client, cells);
}

/**
 * The client's copy as a workbook by itself: one sheet, plain formulas, nothing hidden, no names.
 *
 * @param plan A plan that was made; see checkJobPlan.
 */
export function describeClientCopy(plan: JobPlan): WorkbookDescription {
  const sheet = describeSheet(plan, COPY_SHEET, newPlanCells());
  return { version: DESCRIPTION_VERSION, title: TITLE, sheets: [sheet] };
}

function describeSheet(plan: JobPlan, name: string, cells: PlanCells): SheetDescription {
  const { paper } = plan.job.shop;
  const rooms = clientRooms(plan);
  const priced = rooms.filter(({ lines }) => lines.length > 0);
  const draft = new SheetDraft(name, COLUMNS, true);
  const blocks = [draft.next];
  draft.spread(TITLE, 'title');
  draft.spread(sayJob(plan, priced.length), 'wrapped');
  draft.blank();
  let sumRows: readonly number[] = [];
  const price = addPrice(draft, plan, priced, (at) => sumRows[at] ?? 0);
  cells.priceOnClient = `${quoteSheet(name)}!F${price.total}`;
  blocks.push(draft.next);
  addTerms(draft, plan);
  const lines = addLines(draft, plan, rooms);
  ({ sumRows } = lines);
  repeatPrice(draft, plan, price);
  blocks.push(...lines.blocks, ...addDrawings(draft, plan, GRID));
  layPages(draft, blocks, roomForRows(paper, COLUMNS));
  const [first, last] = lines.span;
  return {
    ...draft.finish({ paper, orientation: 'portrait', footer: TITLE }),
    ...(priced.length === 0 ? {} : { validations: [wholeQuantities(`C${first}:C${last}`)] }),
  };
}

function wholeQuantities(range: string): ValidationDescription {
  return {
    range,
    allow: { kind: 'whole', least: 0, most: MOST_QUANTITY },
    strict: false,
    title: 'Quantity',
    message: `Quantities are whole numbers, 0 to ${MOST_QUANTITY}; 0 leaves the line out of the price.`,
  };
}

function addTerms(draft: SheetDraft, plan: JobPlan): void {
  draft.spread('What the price covers', 'section');
  for (const line of sayCovered(plan)) draft.spread(line, 'wrapped');
  draft.spread(JUDGMENT_CAUTION, 'note');
  draft.blank();
}
