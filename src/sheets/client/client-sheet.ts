/**
 * The client's copy: what is included, room by room, and its price, with no figure of the shop's own.
 * It is a sheet of the shop's workbook and a workbook by itself. Alike to the letter, but that the
 * sheet says above its price when the shop's other sheets have come to another one.
 */
import type { JobPlan } from '../../planning/job-plan.ts';
import { TITLE_ROWS, type TitleBlock } from '../../planning/title-block.ts';
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
import { GRID, LINES, NAMED, PRICE, SIGNED } from './client-columns.ts';
import { cell, sum, SheetDraft } from '../grammar/sheet-draft.ts';
import { LONG_UNIT } from '../words/print-length.ts';
import { stampSheet, tellOfClient, type Stamp } from '../stamp.ts';
import { fileTitle } from '../words/say-title.ts';
import { JUDGMENT_CAUTION } from '../words/standing-cautions.ts';
import { cutSticksFormula, sayCutSticks } from '../words/tick-marks.ts';
import { addDrawings, type DrawingGrid } from './client-drawings.ts';
import { addLines } from './client-lines.ts';
import { addOptions } from './client-options.ts';
import { addPrice, repeatPrice } from './client-price.ts';
import { clientRooms } from './client-rooms.ts';
import { ACCEPTED, BEHIND, COPY_SHEET, MOST_QUANTITY, sayCovered, sayJob } from './client-words.ts';

/** A half holds 88 mm at least; programs differ by a millimetre or two in the widths of columns. */
const DRAWINGS: DrawingGrid = {
  halves: [
    [0, 1],
    [2, 6],
  ],
  widthMm: 85,
};
const TITLE = 'Moldings and their price';
/** What of Job stands over a client's copy, in this order; the shop stands over all. */
const ON_CLIENT = ['job', 'number', 'revision', 'client', 'address', 'preparedBy'] as const;

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
 * The client's copy as a workbook by itself: one sheet, plain formulas, nothing hidden, no names. It is
 * protected but for quantities, the date and the line to sign; there is no password.
 *
 * @param plan A plan that was made; see checkJobPlan.
 * @param stamp Of which it tells its day and a number alone; absent, the day is left open.
 */
export function describeClientCopy(plan: JobPlan, stamp?: Stamp): WorkbookDescription {
  const sheet = describeSheet(plan, COPY_SHEET, new Anchors(COPY_SHEET), stamp, {
    addJob: (draft, job) => draft.spread(`${job}${sayCutOfJob(plan)}`, 'wrapped'),
    addLineAbovePrice: (draft) => draft.blank(),
  });
  const { titleBlock } = plan.job;
  return {
    version: DESCRIPTION_VERSION,
    title: fileTitle(TITLE, titleBlock),
    ...tellOfClient(titleBlock, stamp),
    sheets: [{ ...sheet, isProtected: true }],
  };
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
      amount: sum(`IF(${agrees},"",${acrossSheets.at('priceOnOffice')})`, '', 'money'),
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
  addTitleBlock(draft, plan.job.titleBlock);
  edition.addJob(draft, sayJob(plan, priced.length));
  edition.addLineAbovePrice(draft);
  addPrice(draft, plan, priced, anchors, stamp);
  blocks.push(draft.next);
  addTerms(draft, plan);
  addSigning(draft);
  const lines = addLines(draft, plan, rooms, anchors);
  anchors.place('lines', { first: lines.span[0], last: lines.span[1] });
  const optionsFrom = draft.next;
  const ofOptions = addOptions(draft, plan, anchors);
  repeatPrice(draft, plan, anchors);
  blocks.push(
    ...lines.blocks,
    ...(plan.options.length === 0 ? [] : [optionsFrom]),
    ...addDrawings(draft, plan, DRAWINGS),
  );
  layPages(draft, blocks, roomForRows(paper, GRID));
  const ofLines =
    priced.length === 0 ? [] : [wholeQuantities(LINES.range('quantity', ...lines.span))];
  const validations = [...ofLines, ...ofOptions];
  return {
    ...stampSheet(
      draft.finish({ paper, orientation: 'portrait', footer: TITLE }),
      plan.job,
      undefined,
    ),
    ...(validations.length === 0 ? {} : { validations }),
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

/** Whose copy of what it is: as much as Job says. */
function addTitleBlock(draft: SheetDraft, title: TitleBlock): void {
  if (title.shop !== '') draft.spread(title.shop, 'label');
  draft.spread(TITLE, 'title');
  const named = ON_CLIENT.filter((key) => title[key] !== '');
  for (const key of named) {
    const { name } = TITLE_ROWS[key];
    const label = `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
    draft.put(NAMED.row({ label: cell(label, 'label'), text: cell(title[key], 'wrapped') }));
  }
  if (named.length > 0) draft.blank();
}

/** What is taken is signed; how high a signature is. */
const SIGNATURE_POINTS = 30;

function addSigning(draft: SheetDraft): void {
  draft.spread(ACCEPTED, 'label');
  const row = draft.put(
    SIGNED.row({
      label: cell('Name and signature'),
      name: cell(null, 'signed'),
      dateLabel: cell('Date', 'length'),
      date: cell(null, 'signed'),
    }),
  );
  draft.setHeight(row, SIGNATURE_POINTS);
  draft.blank();
}

function addTerms(draft: SheetDraft, plan: JobPlan): void {
  draft.spread('What the price covers', 'section');
  for (const line of sayCovered(plan)) draft.spread(line, 'wrapped');
  draft.spread(JUDGMENT_CAUTION, 'note');
  const { terms } = plan.job.titleBlock;
  if (terms !== '') {
    draft.blank();
    draft.spread('Terms', 'section');
    draft.spread(terms, 'wrapped');
  }
  draft.blank();
}
