/**
 * The page of one cove, roomy or, where it would be more than one page so, close; what even a close
 * page can't hold goes on overleaf, and the page says so.
 */
import type { CovePlan, JobPlan } from '../../planning/job-plan.ts';
import { FILLED_SHARE, roomForRows } from '../grammar/page-size.ts';
import { SHEET_NAMES } from '../plan-anchors.ts';
import { SheetDraft } from '../grammar/sheet-draft.ts';
import { nameStyle } from '../grammar/name-style.ts';
import { printExact } from '../words/print-length.ts';
import {
  CROSSCUT_CAUTION,
  JUDGMENT_CAUTION,
  MANUAL_CAUTION,
  standingCautions,
} from '../words/standing-cautions.ts';
import { passList } from './pass-list.ts';
import {
  addParts,
  PASSES_ACROSS,
  SECTION_WIDTHS_MM,
  SET_UP_COLUMNS,
  TABLE_WIDTHS_MM,
  type Spacing,
} from './set-up-columns.ts';
import { placeDrawings, type DrawnWidths } from './set-up-drawings.ts';
import { addAtTheSaw, addBelow, addCorners, type NotesPlace } from './set-up-page.ts';

/** Programs differ by a little in how high a row is. */
const ROUNDING_POINTS = 8;

/** How a page is laid out. */
interface Way {
  readonly widths: DrawnWidths;
  /** Standing cautions: a line each, or close in one paragraph. */
  readonly cautions: Spacing;
  /** What is looked up: below all, or at the left beside a high table. */
  readonly notes: NotesPlace;
  /** Whether the corners of a crown are on the page of its cove, or on their own. */
  readonly hasCorners: boolean;
}

/** The easiest to read first. */
const WAYS: readonly Way[] = [true, false].flatMap((hasCorners) =>
  (['roomy', 'close'] as const).flatMap((cautions) =>
    (['below', 'beside'] as const).flatMap((notes) =>
      TABLE_WIDTHS_MM.flatMap((table) =>
        SECTION_WIDTHS_MM.map((section) => ({
          widths: { section, table },
          cautions,
          notes,
          hasCorners,
        })),
      ),
    ),
  ),
);
const NARROWEST: DrawnWidths = { section: SECTION_WIDTHS_MM[2], table: TABLE_WIDTHS_MM[1] };

export function newSetUpDraft(): SheetDraft {
  return new SheetDraft(SHEET_NAMES.setUps, SET_UP_COLUMNS, true);
}

/** Adds the page of a cove; or its pages, for more passes and cautions than one page holds. */
export function addSetUpPages(draft: SheetDraft, plan: JobPlan, planned: CovePlan): void {
  const room = roomForRows(plan.job.shop.paper, SET_UP_COLUMNS) * FILLED_SHARE;
  const addPage = (to: SheetDraft, { widths, cautions, notes, hasCorners }: Way): void => {
    const rows = addAtTheSaw(to, plan, planned, notes);
    placeDrawings(to, rows, planned, plan.job.shop, widths);
    if (hasCorners) addCorners(to, plan, planned);
    addBelow(to, plan, planned, notes, cautions);
    // The manual's word stands at the top of the page, before any number.
    addStanding(to, plan, [MANUAL_CAUTION], cautions);
  };
  const { spring, slope } = planned.profile;
  const isCornered = spring !== undefined || slope !== undefined;
  const way = WAYS.filter(({ hasCorners }) => hasCorners || isCornered).find((one) => {
    const trial = newSetUpDraft();
    addPage(trial, one);
    return pointsOf(trial) <= room;
  });
  if (way === undefined) {
    addOnMorePages(draft, plan, planned, room);
    return;
  }
  draft.breakPage();
  addPage(draft, way);
  if (!way.hasCorners) addCornersPage(draft, plan, planned);
}

/** The corners of a crown that don't fit on the page of its cove: they are cut at another saw anyhow. */
function addCornersPage(draft: SheetDraft, plan: JobPlan, planned: CovePlan): void {
  const title = `${planned.profile.name}, its corners`;
  draft.breakPage();
  draft.spread(title, nameStyle(title));
  draft.spread(CROSSCUT_CAUTION, 'caution');
  draft.spread(JUDGMENT_CAUTION, 'caution');
  addCorners(draft, plan, planned);
}

/** The standing cautions but those said already: a line each, or close in one paragraph. */
export function addStanding(
  draft: SheetDraft,
  { job }: JobPlan,
  said: readonly string[],
  spacing: Spacing,
): void {
  const { shop } = job;
  const lines = standingCautions(printExact(shop.leastBlankLength, shop))
    .filter((line) => !said.includes(line))
    .map((line, index) => `${index + 1}. ${line}`);
  if (spacing === 'close') {
    draft.spread(`${EVERY_TIME}: ${lines.join(' ')}`, 'finePrint');
    return;
  }
  draft.spread(EVERY_TIME, 'section');
  for (const line of lines) draft.spread(line, 'finePrint');
}

const EVERY_TIME = 'Every time';

const OVERLEAF =
  'This set-up takes more than one page: what is not here stands overleaf. Keep all of it at the saw.';

/** The first page down to as many passes as it holds; then the others; then the rest. */
function addOnMorePages(draft: SheetDraft, plan: JobPlan, planned: CovePlan, room: number): void {
  const { shop } = plan.job;
  const heights = planned.setUp.passHeights;
  const addFirst = (to: SheetDraft, widths: DrawnWidths, end: number): void => {
    const rows = addAtTheSaw(to, plan, planned, 'below', {
      passes: { from: 0, to: end },
      note: OVERLEAF,
    });
    placeDrawings(to, rows, planned, shop, widths);
  };
  const addHead = (to: SheetDraft): void => {
    to.spread(`${planned.profile.name}, overleaf`, nameStyle(planned.profile.name));
    to.spread(MANUAL_CAUTION, 'caution');
  };
  const addMore = (to: SheetDraft, from: number, end: number): void => {
    addHead(to);
    addParts(to, [], passList(heights, shop, { from, to: end }));
  };
  /** As many passes as a page has room for that shows at least two. */
  const passesOn = (add: (to: SheetDraft, end: number) => void, least: number): number => {
    let most = least;
    for (let end = least; end - PASSES_ACROSS < heights.length; end += PASSES_ACROSS) {
      const page = newSetUpDraft();
      add(page, end);
      if (pointsOf(page) > room - ROUNDING_POINTS) break;
      most = end;
    }
    return most;
  };
  const widths = WAYS.map((one) => one.widths).find((one) => {
    const page = newSetUpDraft();
    addFirst(page, one, PASSES_ACROSS);
    return pointsOf(page) <= room - ROUNDING_POINTS;
  });
  const drawn = widths ?? NARROWEST;
  const first = passesOn((to, end) => {
    addFirst(to, drawn, end);
  }, PASSES_ACROSS);
  const each = passesOn((to, end) => {
    addMore(to, 0, end);
  }, PASSES_ACROSS);
  draft.breakPage();
  addFirst(draft, drawn, first);
  for (let from = first; from < heights.length; from += each) {
    draft.breakPage();
    addMore(draft, from, from + each);
  }
  draft.breakPage();
  addHead(draft);
  addCorners(draft, plan, planned);
  addBelow(draft, plan, planned, 'below');
  addStanding(draft, plan, [MANUAL_CAUTION], 'roomy');
}

function pointsOf(draft: SheetDraft): number {
  let points = 0;
  for (let row = 1; row < draft.next; row++) points += draft.pointsOf(row);
  return points;
}
