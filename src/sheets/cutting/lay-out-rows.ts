/**
 * The lay-outs of a profile on the cutting sheet: how many sticks are cut like each, its bar to scale, each piece's
 * length and ends once, and the marks of each stick. Two of few sticks share a band of rows.
 */
import { drawStick } from '../../drawings/stick-bar.ts';
import { LOW_BAR_MM } from '../../drawings/stick-view.ts';
import { MM_PER_INCH } from '../../core/units/length-unit.ts';
import type { Profile } from '../../planning/job.ts';
import { spreadRow, type PagedRows } from '../grammar/paged-rows.ts';
import { POINTS_PER_INCH } from '../grammar/page-size.ts';
import type { DraftCell, SheetDraft, SheetRow } from '../grammar/sheet-draft.ts';
import { onSheet } from '../plan-anchors.ts';
import { ALL, BAR_WIDTH_MM, BOTH, STICKS_A_HALF, type Half } from './cutting-columns.ts';
import { viewOf } from './cutting-stick.ts';
import { halfBand, type HalfBand, type LayOutFacts, type Places } from './half-band.ts';
import type { LayOut } from './lay-outs.ts';

/** Room over and under a bar. */
const BAR_POINTS = Math.ceil((LOW_BAR_MM / MM_PER_INCH) * POINTS_PER_INCH + 1);
/** Between one band and the next. */
const AIR_POINTS = 3;
const STICKS_A_BAND = BOTH.length * STICKS_A_HALF;

/** Rows that stay on one page. */
interface Band {
  readonly halves: readonly HalfBand[];
  readonly places: Places;
  readonly notes: readonly string[];
}

/**
 * Adds the sticks of a profile; each band stays on one page. Where the next doesn't fit any more, a later
 * one that does comes first, so that pages are full.
 *
 * @param longest The longest stick of its group, in inches: they share one scale.
 */
export function addLayOuts(
  draft: SheetDraft,
  pages: PagedRows,
  facts: LayOutFacts,
  profile: Profile,
  layOuts: readonly LayOut[],
  longest: number,
  again: readonly SheetRow[],
): void {
  const left = bandsOf(layOuts, profile, facts);
  for (;;) {
    const fitting = left.findIndex(([first]) => {
      return first !== undefined && pages.hasRoomFor(rowsOf(first, isDrawn(first, draft, facts)));
    });
    const [next] = left.splice(Math.max(0, fitting), 1);
    if (next === undefined) return;
    for (const band of next) addBand(draft, pages, facts, longest, again, band);
  }
}

/** Two lay-outs of few sticks beside each other; one of more, or with notes, by itself on as many bands as it takes. */
function bandsOf(
  layOuts: readonly LayOut[],
  profile: Profile,
  facts: LayOutFacts,
): (readonly Band[])[] {
  const isAlone = ({ sticks, notes }: LayOut): boolean =>
    sticks.length > STICKS_A_HALF || notes.length > 0;
  const alone = layOuts.filter(isAlone).map((one) => bandsOfOne(one, profile, facts));
  const few = layOuts.filter((one) => !isAlone(one));
  const pairs = few.flatMap((_, at): (readonly Band[])[] => {
    if (at % BOTH.length > 0) return [];
    const places: Places = { head: 0, pieces: [] };
    const halves = BOTH.flatMap((half, side) => {
      const own = few[at + side];
      return own === undefined ? [] : [halfBand(half, own, profile, 0, facts, places)];
    });
    return [[{ halves, places, notes: [] }]];
  });
  return [...alone, ...pairs];
}

/** Its sticks side by side over both halves. */
function bandsOfOne(one: LayOut, profile: Profile, facts: LayOutFacts): readonly Band[] {
  const { sticks, notes } = one;
  const count = Math.ceil(sticks.length / STICKS_A_BAND);
  return Array.from({ length: count }, (_, band) => {
    const places: Places = { head: 0, pieces: [] };
    const halves = BOTH.flatMap((half, side) => {
      const from = band * STICKS_A_BAND + side * STICKS_A_HALF;
      return from < sticks.length ? [halfBand(half, one, profile, from, facts, places)] : [];
    });
    return { halves, places, notes: band === count - 1 ? notes : [] };
  });
}

function isDrawn({ halves }: Band, draft: SheetDraft, { bars }: LayOutFacts): boolean {
  return draft.drawn < bars && halves.some(({ begins }) => begins !== undefined);
}

function rowsOf({ halves, notes }: Band, drawn: boolean): readonly SheetRow[] {
  const most = halves.reduce((all, { pieces }) => Math.max(all, pieces.length), 0);
  return [
    headRow(halves),
    ...(drawn ? [{ cells: [], points: BAR_POINTS }] : []),
    ...Array.from({ length: most }, (_, at) => ({
      cells: together(halves.map(({ half, pieces }) => half.table.loose(pieces[at] ?? {}))),
    })),
    ...notes.map((words) => spreadRow(words, 'wrapped', ALL)),
    { cells: [], points: AIR_POINTS },
  ];
}

function addBand(
  draft: SheetDraft,
  pages: PagedRows,
  facts: LayOutFacts,
  longest: number,
  again: readonly SheetRow[],
  band: Band,
): void {
  const { halves, places, notes } = band;
  const drawn = isDrawn(band, draft, facts);
  const placed = pages.add(rowsOf(band, drawn), again);
  const [head, bar] = placed;
  if (head === undefined || bar === undefined) throw new RangeError('A lay-out has no row.');
  places.head = head;
  places.pieces = placed.slice(drawn ? 2 : 1, placed.length - notes.length - 1);
  for (const { half, begins } of halves) {
    if (begins === undefined) continue;
    const { first, pieces } = begins;
    if (drawn && draft.drawn < facts.bars) {
      const words = pieces.map((one) => one.words);
      const view = viewOf(first, words, facts.shop, longest);
      const low = { ...view, isLow: true as const, width: BAR_WIDTH_MM };
      draft.draw(bar, half.first, drawStick(low), first.id);
    }
    placeCells(begins, half, places, facts);
  }
}

function headRow(halves: readonly HalfBand[]): SheetRow {
  return {
    cells: together(halves.map(({ half, head }) => half.table.loose(head))),
    joins: halves.map(
      ({ half: { table } }) => [table.start('number'), table.end('right')] as const,
    ),
  };
}

/** Rows of both halves as one. */
function together(rows: readonly SheetRow[]): readonly DraftCell[] {
  const [one = { cells: [] }, other = { cells: [] }] = rows;
  const wide = Math.max(one.cells.length, other.cells.length);
  return Array.from({ length: wide }, (_, at) => one.cells[at] ?? other.cells[at] ?? null);
}

/** Where its lengths and its offcut stand, for all of its sticks. */
function placeCells(
  { sticks, first }: LayOut,
  { table }: Half,
  { head, pieces }: Places,
  { cutAt, onThisSheet }: LayOutFacts,
): void {
  for (const stick of sticks) {
    if (first.offcutKept) onThisSheet.place('kept', table.at('kept', head), stick);
    stick.pieces.forEach(({ id, piece }, at) => {
      const row = pieces[at];
      if (piece === undefined || row === undefined) return;
      const cells = cutAt.get(id) ?? [];
      cutAt.set(id, cells);
      cells.push(onSheet('cutting', table.fixed('length', row)));
    });
  }
}
