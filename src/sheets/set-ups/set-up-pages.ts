/**
 * The page of one cove, roomy or, where it would be more than one page so, close; what even a close
 * page can't hold goes on overleaf, and the page says so.
 */
import type { SetUpJob, SetUpPlan } from '../../planning/job-plan.ts';
import { roomForRows } from '../grammar/page-size.ts';
import { SHEET_NAMES } from '../plan-anchors.ts';
import { SheetDraft } from '../grammar/sheet-draft.ts';
import { nameStyle } from '../grammar/name-style.ts';
import { printExact } from '../words/print-length.ts';
import { MANUAL_CAUTION, standingCautions } from '../words/standing-cautions.ts';
import { PASSES_ACROSS, passList } from './pass-list.ts';
import { addParts, SET_UP_COLUMNS, type Spacing } from './set-up-columns.ts';
import { placeDrawings } from './set-up-drawings.ts';
import { addAtTheSaw, addBelow } from './set-up-page.ts';

/** Programs differ by a little in how high a row is. */
const ROUNDING_POINTS = 8;

/** How numbers and standing cautions are spaced, the easiest to read first. */
const WAYS = [
  ['roomy', 'roomy'],
  ['close', 'roomy'],
  ['close', 'close'],
] as const;

export function newSetUpDraft(): SheetDraft {
  return new SheetDraft(SHEET_NAMES.setUps, SET_UP_COLUMNS, true);
}

/** Adds the page of a cove; or its pages, for more passes and cautions than one page holds. */
export function addSetUpPages(draft: SheetDraft, plan: SetUpJob, planned: SetUpPlan): void {
  const room = roomForRows(plan.job.shop.paper, SET_UP_COLUMNS);
  const addPage = (to: SheetDraft, spacing: Spacing, cautions: Spacing): void => {
    const rows = addAtTheSaw(to, plan, planned, spacing);
    addBelow(to, plan, planned, spacing);
    // The manual's word stands at the top of the page, before any number.
    addStanding(to, plan, [MANUAL_CAUTION], cautions);
    placeDrawings(to, rows, planned, plan.job.shop);
  };
  for (const [spacing, cautions] of WAYS) {
    const trial = newSetUpDraft();
    addPage(trial, spacing, cautions);
    if (pointsOf(trial) > room) continue;
    draft.breakPage();
    addPage(draft, spacing, cautions);
    return;
  }
  addOnMorePages(draft, plan, planned, room);
}

/** The standing cautions but those said already: a line each, or close in one paragraph. */
export function addStanding(
  draft: SheetDraft,
  { job }: SetUpJob,
  said: readonly string[],
  spacing: Spacing,
): void {
  const { shop } = job;
  const lines = standingCautions(printExact(shop.leastBlankLength, shop))
    .filter((line) => !said.includes(line))
    .map((line, index) => `${index + 1}. ${line}`);
  draft.spread('Every time', 'section');
  for (const line of spacing === 'close' ? [lines.join(' ')] : lines) draft.spread(line, 'wrapped');
}

const OVERLEAF =
  'This set-up takes more than one page: what is not here stands overleaf. Keep all of it at the saw.';

/** The first page down to as many passes as it holds; then the others; then the rest. */
function addOnMorePages(draft: SheetDraft, plan: SetUpJob, planned: SetUpPlan, room: number): void {
  const { shop } = plan.job;
  const heights = planned.setUp.passHeights;
  const addFirst = (to: SheetDraft, end: number) =>
    addAtTheSaw(to, plan, planned, 'close', {
      passes: { from: 0, to: end },
      note: OVERLEAF,
    });
  const addHead = (to: SheetDraft): void => {
    to.spread(`${planned.profile.name}, overleaf`, nameStyle(planned.profile.name));
    to.spread(MANUAL_CAUTION, 'caution');
  };
  const addMore = (to: SheetDraft, from: number, end: number): void => {
    addHead(to);
    addParts(to, passList(heights, shop, 'close', { from, to: end }));
  };
  const [firstPage, morePage] = [newSetUpDraft(), newSetUpDraft()];
  addFirst(firstPage, 1);
  addMore(morePage, 0, 1);
  const onePass = morePage.pointsOf(morePage.next - 1);
  const passesOn = (page: SheetDraft): number => {
    const rows = Math.floor((room - pointsOf(page) - ROUNDING_POINTS) / onePass);
    return Math.max(1, rows) * PASSES_ACROSS.close;
  };
  const [first, each] = [passesOn(firstPage), passesOn(morePage)];
  draft.breakPage();
  const rows = addFirst(draft, first);
  placeDrawings(draft, rows, planned, plan.job.shop);
  for (let from = first; from < heights.length; from += each) {
    draft.breakPage();
    addMore(draft, from, from + each);
  }
  draft.breakPage();
  addHead(draft);
  addBelow(draft, plan, planned, 'roomy');
  addStanding(draft, plan, [MANUAL_CAUTION], 'roomy');
}

function pointsOf(draft: SheetDraft): number {
  let points = 0;
  for (let row = 1; row < draft.next; row++) points += draft.pointsOf(row);
  return points;
}
