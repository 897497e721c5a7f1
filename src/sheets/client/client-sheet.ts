/**
 * The client's copy: what is included, room by room, and its price, with no figure of the shop's own.
 * It is a sheet of the shop's workbook and a workbook by itself. Alike to the letter, but that the
 * sheet says above its price when the shop's other sheets have come to another one.
 */
import type { JobPlan } from '../../planning/job-plan.ts';
import {
  DESCRIPTION_VERSION,
  type SheetDescription,
  type ValidationDescription,
  type WorkbookDescription,
} from '../grammar/description.ts';
import { layPages } from '../grammar/lay-pages.ts';
import { roomForRows } from '../grammar/page-size.ts';
import { Anchors } from '../grammar/anchors.ts';
import { onSheet, SHEET_NAMES, type PlanAnchors } from '../plan-anchors.ts';
import type { ClientAnchors } from './client-anchors.ts';
import { AGREES } from '../agreement.ts';
import { GRID, LINES, PRICE } from './client-columns.ts';
import { cell, sum, SheetDraft } from '../grammar/sheet-draft.ts';
import { LONG_UNIT } from '../words/print-length.ts';
import { tellOfClient, type Stamp } from '../stamp.ts';
import { JUDGMENT_CAUTION } from '../words/standing-cautions.ts';
import { cutSticksFormula, sayCutSticks } from '../words/tick-marks.ts';
import { addDrawings, type DrawingGrid } from './client-drawings.ts';
import { addLines } from './client-lines.ts';
import { addPrice, repeatPrice } from './client-price.ts';
import { clientRooms } from './client-rooms.ts';
import { BEHIND, sayCovered, sayJob } from './client-words.ts';

/** A half holds 89 mm; programs differ by a millimetre or two in the widths of columns. */
const DRAWINGS: DrawingGrid = {
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

/** What the shop's sheet and the client's copy do in ways of their own. */
interface Edition {
  /** @param job the job in a sentence */
  readonly addJob: (draft: SheetDraft, job: string) => void;
  readonly addLineAbovePrice: (draft: SheetDraft) => void;
}

/** The sheet Client of the shop's workbook, whose price without tax other sheets take over. */
export function describeClient(
  plan: JobPlan,
  acrossSheets: PlanAnchors,
  stamp?: Stamp,
): SheetDescription {
  const anchors: ClientAnchors = new Anchors(SHEET_NAMES.client);
  const sheet = describeSheet(plan, SHEET_NAMES.client, anchors, stamp, {
    addJob: (draft, job) => addLiveJob(draft, job, plan, acrossSheets),
    addLineAbovePrice: (draft) => addBehind(draft, acrossSheets),
  });
  const place = (
    name: 'priceOnClient' | 'toPayOnClient' | 'piecesOnClient',
    of: 'price of all' | 'to pay' | 'pieces of all',
  ): void => acrossSheets.place(name, onSheet('client', anchors.at(of)));
  place('priceOnClient', 'price of all');
  place('toPayOnClient', 'to pay');
  place('piecesOnClient', 'pieces of all');
  const { first, last } = anchors.at('lines');
  const { holds } = LONG_UNIT[plan.job.shop.unit];
  const lengths = onSheet('client', LINES.range('together', first, last));
  // Each room's own sum stands among its lines: all of it is there twice.
  acrossSheets.place('lengthOnClient', last < first ? '0' : `SUM(${lengths})/2*${holds}`);
  return sheet;
}

/**
 * The client's copy as a workbook by itself: one sheet, plain formulas, nothing hidden, no names.
 *
 * @param plan A plan that was made; see checkJobPlan.
 * @param stamp Of which it tells its day and a number alone; absent, the day is left open.
 */
export function describeClientCopy(plan: JobPlan, stamp?: Stamp): WorkbookDescription {
  const sheet = describeSheet(plan, COPY_SHEET, new Anchors(COPY_SHEET), stamp, {
    addJob: (draft, job) => draft.spread(`${job}${sayCutOfJob(plan)}`, 'wrapped'),
    addLineAbovePrice: (draft) => draft.blank(),
  });
  return { version: DESCRIPTION_VERSION, title: TITLE, ...tellOfClient(stamp), sheets: [sheet] };
}

/** The job in a sentence, and how much of it is cut as the shop ticks it off; nothing while nothing is. */
function addLiveJob(
  draft: SheetDraft,
  job: string,
  plan: JobPlan,
  acrossSheets: PlanAnchors,
): void {
  const cut = acrossSheets.at('sticksCutOnCutting');
  const live = cutSticksFormula(cut, acrossSheets.at('allSticksOnCutting'));
  const formula = `"${job}"&IF(${cut}>0," "&${live}&".","")`;
  const said = sum(formula, `${job}${sayCutOfJob(plan)}`, 'wrapped');
  draft.put({ cells: [said], joins: [[0, GRID.length - 1]] });
}

function sayCutOfJob({ totals: { sticksCut, sticks } }: JobPlan): string {
  return sticksCut === 0 ? '' : ` ${sayCutSticks(sticksCut, sticks)}.`;
}

/** Takes the place of a blank row: nothing is to be seen there while the sheets agree. */
function addBehind(draft: SheetDraft, acrossSheets: PlanAnchors): void {
  const { range, count } = acrossSheets.at('clientVerdicts');
  const agrees = `COUNTIF(${range},"${AGREES}")=${count}`;
  const row = draft.put(
    PRICE.row({
      name: sum(`IF(${agrees},"","${BEHIND}")`, '', 'fact'),
      pieces: cell(null),
      amount: sum(`IF(${agrees},"",${acrossSheets.at('priceOnProduction')})`, '', 'money'),
    }),
  );
  const name = PRICE.fixed('name', row);
  draft.highlight(PRICE.area(row, row), `${name}<>""`, 'caution');
}

function describeSheet(
  plan: JobPlan,
  name: string,
  anchors: ClientAnchors,
  stamp: Stamp | undefined,
  edition: Edition,
): SheetDescription {
  const { paper } = plan.job.shop;
  const rooms = clientRooms(plan);
  const priced = rooms.filter(({ lines }) => lines.length > 0);
  const draft = new SheetDraft(name, GRID, true);
  const blocks = [draft.next];
  draft.spread(TITLE, 'title');
  edition.addJob(draft, sayJob(plan, priced.length));
  edition.addLineAbovePrice(draft);
  addPrice(draft, plan, priced, anchors, stamp);
  blocks.push(draft.next);
  addTerms(draft, plan);
  const lines = addLines(draft, plan, rooms, anchors);
  anchors.place('lines', { first: lines.span[0], last: lines.span[1] });
  repeatPrice(draft, plan, anchors);
  blocks.push(...lines.blocks, ...addDrawings(draft, plan, DRAWINGS));
  layPages(draft, blocks, roomForRows(paper, GRID));
  return {
    ...draft.finish({ paper, orientation: 'portrait', footer: TITLE }),
    ...(priced.length === 0
      ? {}
      : { validations: [wholeQuantities(LINES.range('quantity', ...lines.span))] }),
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
