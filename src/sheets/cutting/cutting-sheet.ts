/** The cutting sheet: what is pulled and ripped, then every stick with its pieces in the order they are cut. */
import type { CutStick, JobPlan } from '../../planning/job-plan.ts';
import { Anchors } from '../grammar/anchors.ts';
import type { SheetDescription } from '../grammar/description.ts';
import { lengthStyles } from '../grammar/length-styles.ts';
import { roomForRows } from '../grammar/page-size.ts';
import { SHEET_NAMES, type PlanAnchors } from '../plan-anchors.ts';
import { SheetDraft } from '../grammar/sheet-draft.ts';
import { JUDGMENT_CAUTION } from '../words/standing-cautions.ts';
import { ALL, GRID, PIECES } from './cutting-columns.ts';
import { addGroup, type CuttingDraft } from './cutting-group.ts';
import { BARS, CROSSCUT_CAUTION, sayHow, sayMostBars } from './cutting-words.ts';
import { addSummary } from './cutting-summary.ts';
import { addOffcuts } from './offcut-list.ts';
import { PagedRows, spreadRow } from '../grammar/paged-rows.ts';
import { addPickList } from './pick-list.ts';
import { lettersOf, listLots } from './stock-lots.ts';

/**
 * As many pictures as a workbook still opens and prints with in reasonable time. Measured: LibreOffice
 * takes 7 ms of work to open one and 30 to print it, and more than half a megabyte of memory; 5,000
 * took it 3.5 GB, and it had not printed them after 15 minutes.
 */
const MOST_BARS = 2_000;

export function draftCutting(
  plan: JobPlan,
  acrossSheets: PlanAnchors,
): { readonly finish: () => SheetDescription } {
  const { shop } = plan.job;
  const sticks = plan.profiles.flatMap((one) => one.sticks);
  const draft = new SheetDraft(SHEET_NAMES.cutting, GRID, true);
  const pages = new PagedRows(draft, GRID, roomForRows(shop.paper, GRID, 'landscape'));
  pages.add([spreadRow('Cutting', 'title', ALL), spreadRow(sayHow(shop), 'note', ALL)]);
  const heads = pages.addRepeated(PIECES.headings(shop));
  pages.add([
    spreadRow(CROSSCUT_CAUTION, 'caution', ALL),
    spreadRow(JUDGMENT_CAUTION, 'caution', ALL),
    spreadRow(`${BARS}${sayMostBars(sticks.length, MOST_BARS)}`, 'note', ALL),
    { cells: [] },
  ]);
  const lots = listLots(plan);
  addPickList(pages, lots, shop);
  const lengths = sticks.flatMap(({ length, offcut, pieces }) => [
    length,
    offcut,
    ...pieces.map((piece) => piece.length),
  ]);
  const cutting: CuttingDraft = {
    draft,
    pages,
    plan,
    acrossSheets,
    onThisSheet: new Anchors(SHEET_NAMES.cutting),
    facts: {
      shop,
      letters: lettersOf(lots),
      parts: countParts(sticks),
      styles: lengthStyles(lengths, shop.unit),
      bars: MOST_BARS,
    },
  };
  for (const group of plan.groups) addGroup(cutting, group);
  addOffcuts(cutting);
  addSummary(cutting);
  return {
    finish: () =>
      draft.finish(
        {
          paper: shop.paper,
          orientation: 'landscape',
          titleRows: [heads, heads],
          footer: 'Cutting',
        },
        { rows: heads, columns: 0 },
      ),
  };
}

/** Into how many parts each spliced piece is cut. */
function countParts(sticks: readonly CutStick[]): ReadonlyMap<string, number> {
  const parts = new Map<string, number>();
  for (const { pieces } of sticks) {
    for (const { id, part } of pieces) {
      if (part !== undefined) parts.set(id, (parts.get(id) ?? 0) + 1);
    }
  }
  return parts;
}
