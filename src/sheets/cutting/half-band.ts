/** What stands in one half of the page of a lay-out: its numbers once, and a box and marks for each of some sticks. */
import { formatMark } from '../../core/units/format-mark.ts';
import type { CutStick } from '../../planning/job-plan.ts';
import type { Profile } from '../../planning/job.ts';
import { countCut } from '../cut-so-far.ts';
import type { SomeCells } from '../grammar/columns.ts';
import { lengthStyles } from '../grammar/length-styles.ts';
import { cell, sum, type DraftCell } from '../grammar/sheet-draft.ts';
import { nameUnit, type LotLetters } from '../stock-lots.ts';
import { numberIn, printStick } from '../words/print-length.ts';
import { isTickedFormula, TICK } from '../words/tick-marks.ts';
import type { CuttingAnchors } from './cutting-anchors.ts';
import { STICKS_A_HALF, type Half } from './cutting-columns.ts';
import type { PieceReading } from './cutting-stick.ts';
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

export type Cells = SomeCells<Parameters<Half['table']['start']>[0]>;

/** Rows of a band, from 1, known once they are placed. */
export interface Places {
  head: number;
  pieces: readonly number[];
}

export interface HalfBand {
  readonly half: Half;
  readonly head: Cells;
  readonly pieces: readonly Cells[];
  /** Its bar is drawn here, and its numbers stand here. */
  readonly begins?: LayOut;
}

/** @param from the place among the lay-out's sticks of the first that stands here */
export function halfBand(
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

/** `Cut 6 like this: stick 8', 5 3/8" waste`. */
function sayLayOut({ sticks, first }: LayOut, { shop }: LayOutFacts): string {
  const what = first.strips === 1 && first.item.kind === 'stick' ? 'stick' : 'blank';
  const { offcut, offcutKept } = first;
  const long = formatMark(Number(offcut), shop.unit, shop.decimalSign);
  const rest = offcut.n === 0n ? 'nothing left' : `${long} ${offcutKept ? 'to keep' : 'waste'}`;
  const many = sticks.length === 1 ? 'Cut one' : `Cut ${sticks.length} like this`;
  return `${many}: ${what} ${printStick(first.length, shop)}, ${rest}`;
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
