/** The rows of one stick on the cutting sheet: the stick, its bar to scale, its pieces. */
import { drawStick } from '../../drawings/stick-bar.ts';
import { STICK_BAR_MM, type BarPiece, type StickView } from '../../drawings/stick-view.ts';
import type { Joint } from '../../planning/joint-places.ts';
import type { CutPiece, CutStick } from '../../planning/job-plan.ts';
import type { Profile } from '../../planning/job.ts';
import { shortRestOf } from '../../planning/short-rests.ts';
import type { Shop } from '../../planning/shop.ts';
import { MM_PER_INCH } from '../../core/units/length-unit.ts';
import { formatMark } from '../../core/units/format-mark.ts';
import { lengthStyles, type LengthStyles } from '../grammar/length-styles.ts';
import { POINTS_PER_INCH } from '../grammar/page-size.ts';
import { countCut } from '../cut-so-far.ts';
import { numberIn, printExact, printStick } from '../words/print-length.ts';
import { sayEnd, sayPartEnds, SPARE_ENDS, type EndWords } from '../words/say-ends.ts';
import { isTickedFormula, TICK } from '../words/tick-marks.ts';
import { cell, sum, type SheetDraft, type SheetRow } from '../grammar/sheet-draft.ts';
import { BAR_WIDTH_MM, PIECES, RIPS, STICKS } from './cutting-columns.ts';
import { sayLie } from './how-it-lies.ts';
import { sayOnBoard, sayPlaces } from './say-stretch.ts';
import type { PagedRows } from '../grammar/paged-rows.ts';
import { sayWhich, type LotLetters } from '../stock-lots.ts';

/** What the rows of every stick go by. */
export interface StickFacts {
  readonly shop: Shop;
  readonly letters: LotLetters;
  /** Of each spliced piece, from left to right. */
  readonly joints: ReadonlyMap<string, readonly Joint[]>;
  readonly styles: LengthStyles;
  /** Each piece's No. on Pieces, by its id. */
  readonly numbers: ReadonlyMap<string, number>;
  /** Cells of Cutting, as other sheets name them, by the id of the piece whose lengths they hold. */
  readonly cutAt: Map<string, string[]>;
  /** As a formula, given a No.: what the length of that piece here is off by, as Pieces has it. */
  readonly offOnPieces: (number: number) => string;
  /** As many bars as are drawn; sticks after them have their rows alone. */
  readonly bars: number;
}

/** What the words of a piece go by. */
export type PieceReading = Pick<StickFacts, 'shop' | 'joints' | 'numbers'>;

/** Air over and under a bar. */
const BAR_POINTS = Math.ceil((STICK_BAR_MM / MM_PER_INCH) * POINTS_PER_INCH + 2);

/**
 * Adds a stick, with its bar while there are bars left; all of it stays on one page.
 *
 * @param longest The longest stick of its group, in inches: they share one scale.
 * @returns The stick's own row, its first; and those of its pieces.
 */
export function addStick(
  draft: SheetDraft,
  pages: PagedRows,
  facts: StickFacts,
  profile: Profile,
  stick: CutStick,
  longest: number,
  again: readonly SheetRow[],
): { readonly row: number; readonly cuts: readonly number[] } {
  const pieces = stick.pieces.map((piece) => wordsOfPiece(piece, stick, profile, facts));
  // Known once they are placed.
  const places: { row: number; cuts: readonly number[] } = { row: 0, cuts: [] };
  const isDrawn = draft.drawn < facts.bars;
  const marks = marksRow(stick, facts.shop);
  const rows = [
    stickRow(stick, facts, () => lengthsCutOf(places)),
    ...(isDrawn ? [{ cells: [], points: BAR_POINTS }] : []),
    ...marks,
    ...pieces.map((piece, index) => pieceRow(piece, index + 1, facts)),
  ];
  const placed = pages.add(rows, again);
  const [row, bar] = placed;
  if (row === undefined) throw new RangeError(`The stick ${stick.id} has no row.`);
  if (isDrawn && bar !== undefined)
    draft.draw(bar, 0, drawStick(viewOf(stick, pieces, facts.shop, longest)), stick.id);
  places.row = row;
  places.cuts = placed.slice(placed.length - pieces.length);
  return places;
}

/** How many lengths of a stick are cut, by its box or by theirs, as a formula. */
function lengthsCutOf({
  row,
  cuts,
}: {
  readonly row: number;
  readonly cuts: readonly number[];
}): string {
  const [first = row, last = first] = [cuts[0], cuts.at(-1)];
  const lengths = PIECES.range('length', first, last);
  const boxes = PIECES.range('cut', first, last);
  return `IF(${isTickedFormula(STICKS.at('tick', row))},COUNT(${lengths}),SUMPRODUCT(${isTickedFormula(boxes)}*(${lengths}<>"")))`;
}

export interface PieceWords {
  readonly cut: CutPiece;
  /** Absent where it is no piece of the job. */
  readonly mark?: string;
  readonly part: string;
  readonly left: EndWords;
  readonly right: EndWords;
  readonly lie: string;
}

export function wordsOfPiece(
  cut: CutPiece,
  stick: CutStick,
  profile: Profile,
  { joints, shop, numbers }: PieceReading,
): PieceWords {
  const { piece, part } = cut;
  if (cut.unneeded !== undefined) {
    const recut = cut.recutTo === undefined ? undefined : numbers.get(cut.recutTo.id);
    const now =
      recut === undefined ? 'nothing asks for it now' : `could be recut to No. ${recut} on Pieces`;
    return { cut, part: now, ...SPARE_ENDS, lie: '' };
  }
  if (piece === undefined) {
    const stays = shortRestOf(stick, shop) !== undefined;
    return { cut, part: stays ? 'coved too' : 'for trial cuts', ...SPARE_ENDS, lie: '' };
  }
  const own = joints.get(cut.id) ?? [];
  const { decimalSign } = shop;
  const ends = {
    left: sayEnd(piece.left, profile, decimalSign),
    right: sayEnd(piece.right, profile, decimalSign),
  };
  const said = part === undefined ? ends : sayPartEnds(ends, part, own, shop);
  const which = part === undefined ? '' : `part ${part} of ${own.length + 1}`;
  return { cut, mark: piece.mark, part: which, ...said, lie: sayLie(profile) };
}

function stickRow(
  stick: CutStick,
  { shop, letters, styles }: StickFacts,
  lengthsCut: () => string,
): SheetRow {
  const { unit } = shop;
  return STICKS.row({
    tick: cell(stick.pieces.every(({ isCut }) => isCut) ? TICK : null, 'tick'),
    id: cell(stick.id, 'stick'),
    lengthText: cell(printStick(stick.length, shop), 'stickRight'),
    length: cell(numberIn(stick.length, unit), styles.stick),
    which: cell(sayWhich(letters, stick), 'stick'),
    rest: cell(sayRest(stick, shop), 'stick'),
    kept: cell(stick.offcutKept ? numberIn(stick.offcut, unit) : null, styles.stick),
    cutSoFar: sum(lengthsCut, countCut(stick), 'stickCut'),
  });
}

/** Of a clear stretch of a board: where its pieces lie on the board; no row for any other. */
function marksRow(stick: CutStick, shop: Shop): SheetRow[] {
  const { stretch } = stick.item;
  if (stretch === undefined) return [];
  const words = `${sayOnBoard(stretch, shop)} ${sayPlaces(stick, stretch, shop)}`;
  return [RIPS.row({ tick: cell(null, 'row'), words: cell(words, 'row') })];
}

export function sayRest({ offcut, offcutKept }: CutStick, { unit, decimalSign }: Shop): string {
  if (offcut.n === 0n) return 'nothing left';
  return `${formatMark(Number(offcut), unit, decimalSign)} left, ${offcutKept ? 'keep' : 'waste'}`;
}

function pieceRow(
  { cut, mark, part, left, right, lie }: PieceWords,
  number: number,
  { shop, numbers, offOnPieces }: StickFacts,
): SheetRow {
  const onPieces = cut.piece === undefined ? undefined : numbers.get(cut.id);
  return PIECES.row({
    cut: cell(cut.isCut === true ? TICK : null, 'tick'),
    number: cell(number, 'rowWhole'),
    piece: cell(nameOf(cut), cut.piece === undefined ? 'rowDone' : 'row'),
    onPieces: cell(onPieces ?? null, 'rowWhole'),
    length: cell(numberIn(cut.length, shop.unit), lengthStyles([cut.length], shop.unit).row),
    part: cell([mark, part].filter(Boolean).join(', '), 'row'),
    leftEnd: cell(left.brief, 'row'),
    leftPoint: cell(brief(left.point), 'row'),
    rightEnd: cell(right.brief, 'row'),
    rightPoint: cell(brief(right.point), 'row'),
    lie: cell(lie, 'row'),
    off: onPieces === undefined ? cell(null, 'row') : sum(() => offOnPieces(onPieces), 0, 'rowOff'),
  });
}

/** One that is cut and left over is told from the one that is cut in its place. */
export function nameOf({ id, unneeded }: CutPiece): string {
  return unneeded === undefined ? id : `${id}, left over`;
}

/** On one line where it can be: `long point at wall`. */
export function brief(point: string): string {
  return point.replaceAll('the ', '');
}

export function viewOf(
  stick: CutStick,
  pieces: readonly PieceWords[],
  shop: Shop,
  longest: number,
): StickView {
  const { unit, decimalSign, endTrim, crosscutKerf } = shop;
  const offcut = Number(stick.offcut);
  const { stretch } = stick.item;
  const board =
    stretch === undefined
      ? undefined
      : {
          from: Number(stretch.from),
          length: Number(stretch.boardLength),
          defects: stretch.defects.map(({ from, to }) => ({ from: Number(from), to: Number(to) })),
          said: sayOnBoard(stretch, shop),
        };
  return {
    ...(board === undefined ? {} : { board }),
    id: stick.id,
    length: Number(stick.length),
    said: printStick(stick.length, shop),
    longest,
    endTrim: Number(endTrim),
    endTrimSaid: printExact(endTrim, shop),
    kerf: Number(crosscutKerf),
    kerfSaid: printExact(crosscutKerf, shop),
    pieces: pieces.map((words): BarPiece => ({
      label: labelOf(words),
      length: Number(words.cut.length),
      said: printExact(words.cut.length, shop),
      left: words.left.shape,
      right: words.right.shape,
    })),
    offcut: { length: offcut, said: formatMark(offcut, unit, decimalSign), kept: stick.offcutKept },
    width: BAR_WIDTH_MM,
  };
}

/** `Hall / north wall`, `Hall / north wall, part 1 of 2`. */
function labelOf({ cut: { piece, unneeded }, part }: PieceWords): string {
  if (unneeded !== undefined) return 'left over';
  if (piece === undefined) return 'set-up spare';
  const place = [piece.room, piece.run].filter((word) => word.trim() !== '').join(' / ');
  const what = piece.kind === 'return' ? 'return' : part;
  return what === '' ? place : `${place}, ${what}`;
}
