/**
 * The page of one cove, roomy or, where it would be more than one page so, close; what even a close
 * page can't hold goes on overleaf, and the page says so.
 */
import type { SetUpJob, SetUpPlan } from '../../planning/job-plan.ts';
import { FILLED_SHARE, roomForRows } from '../grammar/page-size.ts';
import type { SheetDraft } from '../grammar/sheet-draft.ts';
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
  CODED_SECTION_WIDTHS_MM,
  newSetUpDraft,
  PASSES_ACROSS,
  SECTION_WIDTHS_MM,
  SET_UP_COLUMNS,
  TABLE_WIDTH_MM,
  type Spacing,
} from './set-up-columns.ts';
import { drawSetUpCode } from './set-up-code.ts';
import { drawSetUp } from './set-up-drawings.ts';
import { addAtTheSaw, addBelow, addCorners, type Drawn, type NotesPlace } from './set-up-page.ts';

/** How a page is laid out. */
interface Way {
  /** Of the board's end, in millimetres. */
  readonly width: number;
  /** Standing cautions: a line each, or close in one paragraph. */
  readonly cautions: Spacing;
  /** What is looked up: below all, or at the left beside the passes. */
  readonly notes: NotesPlace;
  /** Whether the corners of a crown are on the page of its cove, or on their own. */
  readonly hasCorners: boolean;
}

/** The easiest to read first. */
function waysOf(widths: readonly number[]): readonly Way[] {
  return [true, false].flatMap((hasCorners) =>
    (['roomy', 'close'] as const).flatMap((cautions) =>
      (['below', 'beside'] as const).flatMap((notes) =>
        widths.map((width) => ({ width, cautions, notes, hasCorners })),
      ),
    ),
  );
}

/** Adds the page of a cove; or its pages, for more passes and cautions than one page holds. */
export function addSetUpPages(draft: SheetDraft, plan: SetUpJob, planned: SetUpPlan): void {
  const { shop } = plan.job;
  const room = roomForRows(shop.paper, SET_UP_COLUMNS) * FILLED_SHARE;
  const code = drawSetUpCode(planned, shop);
  const widths = code === undefined ? SECTION_WIDTHS_MM : CODED_SECTION_WIDTHS_MM;
  const drawn = new Map(
    widths.map((width): [number, Drawn] => {
      const [section, table] = drawSetUp(planned.setUp, shop, width, TABLE_WIDTH_MM);
      return [width, { section, table, ...(code === undefined ? {} : { code }) }];
    }),
  );
  const drawnAt = (width: number): Drawn => {
    const found = drawn.get(width);
    if (found === undefined) throw new RangeError(`No section is ${width} mm wide.`);
    return found;
  };
  const addPage = (to: SheetDraft, { width, cautions, notes, hasCorners }: Way): void => {
    addAtTheSaw(to, plan, planned, drawnAt(width), notes);
    if (hasCorners) addCorners(to, plan, planned);
    addBelow(to, plan, planned, notes, cautions);
    // The manual's word stands at the top of the page, before any number.
    addStanding(to, plan, [MANUAL_CAUTION], cautions);
  };
  const { spring, slope } = planned.profile;
  const isCornered = spring !== undefined || slope !== undefined;
  const way = waysOf(widths)
    .filter(({ hasCorners }) => hasCorners || isCornered)
    .find((one) => {
      const trial = newSetUpDraft();
      addPage(trial, one);
      return pointsOf(trial) <= room;
    });
  draft.breakPage();
  if (way === undefined) {
    addOnMorePages(draft, plan, planned, drawnAt(widths.at(-1) ?? 0), room);
    return;
  }
  addPage(draft, way);
  if (!way.hasCorners) addCornersPage(draft, plan, planned);
}

/** The corners of a crown that don't fit on the page of its cove: they are cut at another saw anyhow. */
function addCornersPage(draft: SheetDraft, plan: SetUpJob, planned: SetUpPlan): void {
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
  { job }: SetUpJob,
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
function addOnMorePages(
  draft: SheetDraft,
  plan: SetUpJob,
  planned: SetUpPlan,
  drawn: Drawn,
  room: number,
): void {
  const { shop } = plan.job;
  const heights = planned.setUp.passHeights;
  const addFirst = (to: SheetDraft, end: number): void => {
    const passes = { from: 0, to: end };
    addAtTheSaw(to, plan, planned, drawn, 'below', { passes, note: OVERLEAF });
  };
  const addHead = (to: SheetDraft): void => {
    to.spread(`${planned.profile.name}, overleaf`, nameStyle(planned.profile.name));
    to.spread(MANUAL_CAUTION, 'caution');
  };
  const addMore = (to: SheetDraft, from: number, end: number): void => {
    addHead(to);
    addParts(to, [], passList(heights, shop, { from, to: end }));
  };
  /** The most passes with which a page has room for all, by halving. */
  const passesOn = (add: (to: SheetDraft, end: number) => void): number => {
    let [least, most] = [1, Math.ceil(heights.length / PASSES_ACROSS)];
    while (least < most) {
      const rows = Math.ceil((least + most) / 2);
      const page = newSetUpDraft();
      add(page, rows * PASSES_ACROSS);
      if (pointsOf(page) > room) most = rows - 1;
      else least = rows;
    }
    return least * PASSES_ACROSS;
  };
  const first = passesOn(addFirst);
  const each = passesOn((to, end) => {
    addMore(to, 0, end);
  });
  addFirst(draft, first);
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
