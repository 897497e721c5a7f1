/** A stick of the plan in words, and as what its bar is drawn from. */
import type { BarPiece, StickView } from '../../drawings/stick-view.ts';
import { formatMark } from '../../core/units/format-mark.ts';
import type { Joint } from '../../planning/joint-places.ts';
import type { CutPiece, CutStick } from '../../planning/job-plan.ts';
import type { Profile } from '../../planning/job.ts';
import { shortRestOf } from '../../planning/short-rests.ts';
import type { Shop } from '../../planning/shop.ts';
import { printExact, printStick } from '../words/print-length.ts';
import { sayEnd, sayPartEnds, SPARE_ENDS, type EndWords } from '../words/say-ends.ts';
import { sayLie } from './how-it-lies.ts';
import { sayOnBoard } from './say-stretch.ts';

/** Width of a bar that has room for names: as wide as a page lying on its side, at four fifths. */
const WIDE_BAR_MM = 303;

/** What the words of a piece go by. */
export interface PieceReading {
  readonly shop: Shop;
  /** Of each spliced piece, from left to right. */
  readonly joints: ReadonlyMap<string, readonly Joint[]>;
  /** Each piece's No. on Pieces, by its id. */
  readonly numbers: ReadonlyMap<string, number>;
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

export function sayRest({ offcut, offcutKept }: CutStick, { unit, decimalSign }: Shop): string {
  if (offcut.n === 0n) return 'nothing left';
  return `${formatMark(Number(offcut), unit, decimalSign)} left, ${offcutKept ? 'keep' : 'waste'}`;
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
    width: WIDE_BAR_MM,
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
