/** The cutting sheet: what is pulled and ripped, then every stick with its pieces in the order they are cut. */
import type { ExactInches } from '../../core/units/length.ts';
import type { CutPiece, CutStick, JobPlan } from '../../planning/job-plan.ts';
import { Anchors } from '../grammar/anchors.ts';
import type { SheetDescription } from '../grammar/description.ts';
import { lengthStyles } from '../grammar/length-styles.ts';
import { roomForRows } from '../grammar/page-size.ts';
import { SHEET_NAMES, type PlanAnchors } from '../plan-anchors.ts';
import { sum, SheetDraft, type SheetRow } from '../grammar/sheet-draft.ts';
import { markVerdict, verdictRow } from '../agreement.ts';
import { pieceNumbers } from '../numbered-pieces.ts';
import { numberIn } from '../words/print-length.ts';
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
  const pieces = plan.profiles.flatMap((one) => one.sticks.flatMap((stick) => stick.pieces));
  const boxes: { rows: readonly [first: number, last: number] } = { rows: [1, 1] };
  const verdict = verdictRow(
    () => acrossSheets.at('verdictOnProduction'),
    [0, PIECES.end('rightEnd')],
    ticked(pieces.length, () => boxes.rows),
  );
  const [, verdictAt = 1] = pages.add([
    spreadRow(SHEET_NAMES.cutting, 'title', ALL),
    verdict,
    spreadRow(sayHow(shop), 'note', ALL),
  ]);
  markVerdict(draft, verdictAt, 0);
  const heads = pages.addRepeated(PIECES.headings(shop));
  pages.add([
    spreadRow(CROSSCUT_CAUTION, 'caution', ALL),
    spreadRow(JUDGMENT_CAUTION, 'caution', ALL),
    spreadRow(`${BARS}${sayMostBars(sticks.length, MOST_BARS)}`, 'note', ALL),
    { cells: [] },
  ]);
  const lots = listLots(plan);
  addPickList(pages, lots, shop, acrossSheets);
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
      numbers: pieceNumbers(plan),
      cutAt: new Map(),
      offOnPieces: (number) => {
        const [numbers, off] = [acrossSheets.at('numbersOnPieces'), acrossSheets.at('offOnPieces')];
        // Its own place first, which is quick; a list that was sorted is searched.
        return `IF(INDEX(${numbers},${number})=${number},INDEX(${off},${number}),SUMIF(${numbers},${number},${off}))`;
      },
      bars: MOST_BARS,
    },
  };
  const first = draft.next;
  for (const group of plan.groups) addGroup(cutting, group);
  const last = Math.max(first, draft.next - 1);
  boxes.rows = [first, last];
  placePieces(cutting, pieces);
  addOffcuts(cutting);
  addSummary(cutting);
  const isOff = PIECES.inColumn('off', heads + 1);
  draft.highlight(
    PIECES.area(heads + 1, draft.next - 1),
    `AND(ISNUMBER(${isOff}),${isOff}<>0)`,
    'caution',
  );
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

/** How many lengths are cut, by their ticks; at the right of the first line. */
function ticked(of: number, rows: () => readonly [first: number, last: number]): SheetRow {
  const formula = (): string => {
    const [ticks, lengths] = [PIECES.range('cut', ...rows()), PIECES.range('length', ...rows())];
    return `COUNTIFS(${ticks},"<>",${lengths},">0")&" of ${of} lengths cut"`;
  };
  const said = sum(formula, `0 of ${of} lengths cut`, 'label');
  return {
    ...PIECES.loose({ rightPoint: said }),
    joins: [[PIECES.start('rightPoint'), PIECES.end('off')]],
  };
}

/** Where each piece has its length, and what its parts have more than it, for Pieces to compare with. */
function placePieces({ plan, acrossSheets, facts }: CuttingDraft, cuts: readonly CutPiece[]): void {
  const lengths = new Map<string, ExactInches>();
  for (const { id, length } of cuts) lengths.set(id, length.add(lengths.get(id) ?? 0));
  for (const { id, done, cutLength } of plan.pieces) {
    if (done) continue;
    const cells = facts.cutAt.get(id) ?? ['0'];
    const more = (lengths.get(id) ?? cutLength).sub(cutLength);
    const overlap = numberIn(more, plan.job.shop.unit);
    acrossSheets.place('pieceOnCutting', { cells: cells.join('+'), overlap }, id);
  }
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
