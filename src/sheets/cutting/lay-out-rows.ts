/**
 * A lay-out on the cutting sheet: how many sticks are cut like it, its bar to scale, each piece's length and ends
 * once, and a box and the pieces' marks for each stick. Two lay-outs of few sticks share a band of rows.
 */
import { drawStick } from '../../drawings/stick-bar.ts';
import { LOW_BAR_MM } from '../../drawings/stick-view.ts';
import { MM_PER_INCH } from '../../core/units/length-unit.ts';
import type { CutStick } from '../../planning/job-plan.ts';
import type { Profile } from '../../planning/job.ts';
import { countCut } from '../cut-so-far.ts';
import type { SomeCells } from '../grammar/columns.ts';
import { lengthStyles } from '../grammar/length-styles.ts';
import { spreadRow, type PagedRows } from '../grammar/paged-rows.ts';
import { POINTS_PER_INCH } from '../grammar/page-size.ts';
import {
  cell,
  sum,
  type DraftCell,
  type SheetDraft,
  type SheetRow,
} from '../grammar/sheet-draft.ts';
import { onSheet } from '../plan-anchors.ts';
import { nameUnit, type LotLetters } from '../stock-lots.ts';
import { numberIn, printStick } from '../words/print-length.ts';
import { isTickedFormula, TICK } from '../words/tick-marks.ts';
import type { CuttingAnchors } from './cutting-anchors.ts';
import { ALL, BAR_WIDTH_MM, BOTH, STICKS_A_HALF, type Half } from './cutting-columns.ts';
import { sayRest, viewOf, type PieceReading } from './cutting-stick.ts';
import { markOf, type LayOut } from './lay-outs.ts';

/** What the rows of every lay-out go by. */
export interface LayOutFacts extends PieceReading {
  readonly letters: LotLetters;
  /** Cells of Cutting, as other sheets name them, by the id of the piece whose lengths they hold. */
  readonly cutAt: Map<string, string[]>;
  /** As a formula, given a No.: what the length of that piece here is off by, as Pieces has it. */
  readonly offOnPieces: (number: number) => string;
  /** As many bars as are drawn; lay-outs after them have their rows alone. */
  readonly bars: number;
  readonly onThisSheet: CuttingAnchors;
}

/** Room over and under a bar. */
const BAR_POINTS = Math.ceil((LOW_BAR_MM / MM_PER_INCH) * POINTS_PER_INCH + 2);
/** Between one band and the next. */
const AIR_POINTS = 4.5;
const STICKS_A_BAND = BOTH.length * STICKS_A_HALF;

type Cells = SomeCells<Parameters<Half['table']['start']>[0]>;

/** Rows of a band, from 1, known once they are placed. */
interface Places {
  head: number;
  pieces: readonly number[];
}

/** What stands in one half of a band. */
interface HalfBand {
  readonly half: Half;
  readonly head: Cells;
  readonly pieces: readonly Cells[];
  /** Its bar is drawn here, and its numbers stand here. */
  readonly begins?: LayOut;
}

/**
 * Adds the sticks of a profile; each band stays on one page.
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
  const add = (bands: readonly HalfBand[], places: Places, notes: readonly string[]): void =>
    addBand(draft, pages, facts, longest, again, bands, places, notes);
  const [left, right] = BOTH;
  const isAlone = (one: LayOut): boolean =>
    one.sticks.length > STICKS_A_HALF || one.notes.length > 0;
  for (let at = 0; at < layOuts.length; at += 1) {
    const places: Places = { head: 0, pieces: [] };
    const [one, other] = layOuts.slice(at, at + 2);
    if (one === undefined) break;
    if (isAlone(one)) {
      addAlone(one, profile, facts, add);
      continue;
    }
    const isPair = other !== undefined && !isAlone(other);
    const both = [
      halfBand(left, one, profile, 0, facts, places),
      ...(isPair ? [halfBand(right, other, profile, 0, facts, places)] : []),
    ];
    if (isPair) at += 1;
    add(both, places, []);
  }
}

/** Its sticks side by side over both halves, on as many bands as they take. */
function addAlone(
  one: LayOut,
  profile: Profile,
  facts: LayOutFacts,
  add: (bands: readonly HalfBand[], places: Places, notes: readonly string[]) => void,
): void {
  for (let from = 0; from < one.sticks.length; from += STICKS_A_BAND) {
    const places: Places = { head: 0, pieces: [] };
    const bands = BOTH.flatMap((half, at) => {
      const first = from + at * STICKS_A_HALF;
      return first < one.sticks.length ? [halfBand(half, one, profile, first, facts, places)] : [];
    });
    add(bands, places, from + STICKS_A_BAND >= one.sticks.length ? one.notes : []);
  }
}

function halfBand(
  half: Half,
  layOut: LayOut,
  profile: Profile,
  from: number,
  facts: LayOutFacts,
  places: Places,
): HalfBand {
  const { sticks, first, pieces } = layOut;
  const { unit } = facts.shop;
  const own = sticks.slice(from, from + STICKS_A_HALF);
  const pairs = half.pairs.flatMap((pair, at) => {
    const stick = own[at];
    return stick === undefined ? [] : [{ pair, stick }];
  });
  const begins = from === 0;
  const ofSticks = Object.fromEntries(
    pairs.flatMap(({ pair: [cut, name, done], stick }): [string, DraftCell][] => [
      [cut, cell(stick.pieces.every(({ isCut }) => isCut) ? TICK : null, 'tick')],
      [name, cell(nameOfStick(stick, profile, facts.letters), 'stick')],
      [done, sum(() => lengthsCutOf(half, [cut, name], places), countCut(stick), 'whole')],
    ]),
  );
  const ofAll: Cells = begins
    ? {
        sticks: cell(sticks.length, 'whole'),
        stickLength: cell(numberIn(first.length, unit), lengthStyles([first.length], unit).plain),
        kept: cell(
          first.offcutKept ? numberIn(first.offcut, unit) : null,
          lengthStyles([first.offcut], unit).plain,
        ),
      }
    : {};
  return {
    half,
    head: {
      number: cell(begins ? sayLayOut(layOut, facts) : sayWhere(layOut, from), 'stick'),
      profile: cell(profile.name, 'quietLabel'),
      ...ofSticks,
      ...ofAll,
    },
    pieces: pieces.map(({ words: { cut }, left, right }, at): Cells => {
      const length = numberIn(cut.length, unit);
      const marks = Object.fromEntries(
        pairs.flatMap(({ pair: [box, name], stick }): [string, DraftCell][] => {
          const piece = stick.pieces[at];
          if (piece === undefined) throw new RangeError(`${stick.id} is laid out otherwise.`);
          return [
            [box, cell(piece.isCut === true ? TICK : null, 'tick')],
            [name, cell(markOf(piece), piece.piece === undefined ? 'rowDone' : 'row')],
          ];
        }),
      );
      const listed = pairs.flatMap(({ stick }) => {
        const piece = stick.pieces[at];
        const number = piece?.piece === undefined ? undefined : facts.numbers.get(piece.id);
        return number === undefined ? [] : [number];
      });
      return {
        number: cell(at + 1, 'rowWhole'),
        length: begins ? cell(length, lengthStyles([cut.length], unit).cut) : cell(null, 'row'),
        left: cell(begins ? left : null, 'row'),
        right: cell(begins ? right : null, 'row'),
        ...marks,
        ...(begins
          ? {
              times: cell(sticks.length, 'whole'),
              open: cell(countOpen(sticks, at), 'whole'),
            }
          : {}),
        off:
          listed.length === 0
            ? null
            : sum(() => listed.map(facts.offOnPieces).join('+'), 0, 'rowOff'),
      };
    }),
    ...(begins ? { begins: layOut } : {}),
  };
}

function addBand(
  draft: SheetDraft,
  pages: PagedRows,
  facts: LayOutFacts,
  longest: number,
  again: readonly SheetRow[],
  bands: readonly HalfBand[],
  places: Places,
  notes: readonly string[],
): void {
  const isDrawn = bands.some(({ begins }) => begins !== undefined) && draft.drawn < facts.bars;
  const most = bands.reduce((all, { pieces }) => Math.max(all, pieces.length), 0);
  const rows = [
    headRow(bands),
    ...(isDrawn ? [{ cells: [], points: BAR_POINTS }] : []),
    ...Array.from({ length: most }, (_, at) => ({
      cells: together(bands.map(({ half, pieces }) => half.table.loose(pieces[at] ?? {}))),
    })),
    ...notes.map((words) => spreadRow(words, 'wrapped', ALL)),
  ];
  const placed = pages.add([...rows, { cells: [], points: AIR_POINTS }], again);
  const [head, bar] = placed;
  if (head === undefined || bar === undefined) throw new RangeError('A lay-out has no row.');
  places.head = head;
  places.pieces = placed.slice(isDrawn ? 2 : 1).slice(0, most);
  for (const { half, begins } of bands) {
    if (begins === undefined) continue;
    const { first, pieces } = begins;
    if (isDrawn && draft.drawn < facts.bars) {
      const words = pieces.map((one) => one.words);
      const view = {
        ...viewOf(first, words, facts.shop, longest),
        isLow: true as const,
        width: BAR_WIDTH_MM,
      };
      draft.draw(bar, half.first, drawStick(view), first.id);
    }
    placeCells(begins, half, places, facts);
  }
}

function headRow(bands: readonly HalfBand[]): SheetRow {
  return {
    cells: together(bands.map(({ half, head }) => half.table.loose(head))),
    joins: bands.map(({ half: { table } }) => [table.start('number'), table.end('right')] as const),
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

/** How many lengths of a stick are cut, by its box or by theirs, as a formula. */
function lengthsCutOf(
  { table }: Half,
  [cut, name]: readonly [Half['pairs'][number][0], Half['pairs'][number][1]],
  { head, pieces }: Places,
): string {
  const [first = head, last = first] = [pieces[0], pieces.at(-1)];
  const marks = table.range(name, first, last);
  const boxes = table.range(cut, first, last);
  return `IF(${isTickedFormula(table.at(cut, head))},COUNTA(${marks}),SUMPRODUCT(${isTickedFormula(boxes)}*(${marks}<>"")))`;
}

/** `Cut 6 like this: stick 8', 5 3/8" left, waste`. */
function sayLayOut({ sticks, first }: LayOut, { shop }: LayOutFacts): string {
  const what = first.strips === 1 && first.item.kind === 'stick' ? 'stick' : 'blank';
  const many = sticks.length === 1 ? 'Cut one' : `Cut ${sticks.length} like this`;
  return `${many}: ${what} ${printStick(first.length, shop)}, ${sayRest(first, shop)}`;
}

/** `sticks 5 to 8 of 22`, where the lengths stand further up. */
function sayWhere({ sticks }: LayOut, from: number): string {
  const to = Math.min(sticks.length, from + STICKS_A_HALF);
  return to === from + 1
    ? `the same: stick ${to} of ${sticks.length}`
    : `the same: sticks ${from + 1} and ${to} of ${sticks.length}`;
}

/** `#12 A3`: its number, and the stick's or board's; `#12 I1/2` is from the second blank of board I1. */
function nameOfStick(
  { id, item, unit, strip, strips }: CutStick,
  { name }: Profile,
  letters: LotLetters,
): string {
  const blank = strips === 1 ? '' : `/${strip}`;
  return `${id.slice(name.length + 1)} ${nameUnit(letters, item, unit)}${blank}`;
}

/** Of how many sticks the piece at a place is still to be cut. */
function countOpen(sticks: readonly CutStick[], at: number): number {
  return sticks.filter(({ pieces }) => pieces[at]?.isCut !== true).length;
}
