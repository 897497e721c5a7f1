/** The page of one room: its plan, then its pieces in the order in which they go up. */
import { nameKey } from '../../planning/job.ts';
import type { Piece } from '../../planning/piece.ts';
import type { FittedPiece, RoomFittings } from '../../planning/rooms/room-fittings.ts';
import type { Drawing } from '../../drawings/drawing.ts';
import { markVerdict, verdictRow } from '../agreement.ts';
import { lengthStyles } from '../grammar/length-styles.ts';
import { nameStyle } from '../grammar/name-style.ts';
import { POINTS_PER_MM } from '../grammar/page-size.ts';
import { spreadRow } from '../grammar/paged-rows.ts';
import { cell, sum, type SheetRow } from '../grammar/sheet-draft.ts';
import { numberIn, printExact } from '../words/print-length.ts';
import { drawEnd, sayEnd } from '../words/say-ends.ts';
import { CROSSCUT_CAUTION, JUDGMENT_CAUTION } from '../words/standing-cautions.ts';
import { ALL, DRAWING_WIDTHS_MM, FITTING } from './rooms-columns.ts';
import { drawPlan, listUndrawn } from './room-plan.ts';
import {
  AROUND_OPENINGS,
  HOW_TO_READ,
  IN_THE_LIST,
  orderOf,
  NO_TRIM,
  sayMostDrawn,
  sayNote,
  sayTrim,
  sayUndrawn,
  TYPED,
} from './rooms-words.ts';
import type { RoomsDraft } from './rooms-draft.ts';

/**
 * As many rooms as are drawn: a plan is a picture of half a page, and a workbook with more of them opens and
 * prints too slowly.
 */
const MOST_DRAWN = 200;
/** Below the highest row that Excel takes (grammar/row-height.ts). */
const HIGHEST_ROW = 400;

/** A list of the page with its heading. */
interface Part {
  readonly heading: SheetRow;
  readonly rows: readonly SheetRow[];
}

export function addRoomPage(rooms: RoomsDraft, fittings: RoomFittings): void {
  const { draft, pages, acrossSheets } = rooms;
  const { name } = fittings.room;
  const undrawn = listUndrawn(fittings);
  const head: SheetRow[] = [
    spreadRow(name, nameStyle(name), ALL),
    verdictRow(() => acrossSheets.at('verdictOnProduction'), ALL),
    spreadRow(CROSSCUT_CAUTION, 'caution', ALL),
    spreadRow(JUDGMENT_CAUTION, 'caution', ALL),
    spreadRow(HOW_TO_READ, 'note', ALL),
    ...(undrawn.length === 0 ? [] : [spreadRow(sayUndrawn(undrawn), 'caution', ALL)]),
  ];
  const headings = FITTING.headings(rooms.plan.job.shop);
  const parts = listParts(rooms, fittings);
  const below = [
    spreadRow(IN_THE_LIST, 'note', ALL),
    headings,
    ...parts.flatMap(({ heading, rows }) => [heading, ...rows]),
  ];
  const plan =
    draft.drawn < MOST_DRAWN ? choosePlan(rooms, fittings, [...head, ...below]) : undefined;
  pages.turnPage();
  const above =
    plan === undefined ? [spreadRow(sayMostDrawn(MOST_DRAWN), 'note', ALL)] : roomFor(plan);
  const placed = pages.add([...head, ...above]);
  const [, verdictAt] = placed;
  if (verdictAt !== undefined) markVerdict(draft, verdictAt, 0);
  const drawAt = placed[head.length];
  if (plan !== undefined && drawAt !== undefined) draft.draw(drawAt, 0, plan, `${name} plan`);
  pages.hold(spreadRow(IN_THE_LIST, 'note', ALL), headings);
  const again = [spreadRow(`${name}, continued`, nameStyle(name), ALL), headings];
  if (parts.length === 0) pages.add([spreadRow(NO_TRIM, 'wrapped', ALL)]);
  for (const { heading, rows } of parts) {
    const [first, ...rest] = rows;
    if (first === undefined) continue;
    pages.add([heading, first], again);
    for (const row of rest) pages.add([row], [...again, heading]);
  }
}

/** The widest plan that leaves the room one page; the middle one where none does. */
function choosePlan(
  { pages, plan }: RoomsDraft,
  fittings: RoomFittings,
  rows: readonly SheetRow[],
): Drawing {
  const draw = (width: number): Drawing => drawPlan(fittings, plan.job.shop, width);
  for (const width of DRAWING_WIDTHS_MM) {
    const drawn = draw(width);
    if (pages.fitOnPage([...rows, ...roomFor(drawn)])) return drawn;
  }
  return draw(DRAWING_WIDTHS_MM[1]);
}

/** Blank rows as high as a drawing. */
function roomFor({ height }: Drawing): SheetRow[] {
  const points = height * POINTS_PER_MM;
  const rows = Math.ceil(points / HIGHEST_ROW);
  return Array.from({ length: rows }, () => ({ cells: [], points: Math.ceil(points / rows) + 1 }));
}

/** In the order of the work: what the trim ends at, the trim, then what nobody gave an order. */
function listParts(rooms: RoomsDraft, fittings: RoomFittings): Part[] {
  const { shop } = rooms.plan.job;
  const section = (text: string): SheetRow => spreadRow(text, 'section', ALL);
  const loose = (text: string, pieces: readonly Piece[]): Part => ({
    heading: section(text),
    rows: pieces.map((piece) => fittingRow(rooms, fittings, { piece, joinedTo: [] }, '')),
  });
  const trims = fittings.trims.map((trim, at): Part => ({
    heading: section(sayTrim(trim, at, shop)),
    rows: trim.pieces.map((one) => fittingRow(rooms, fittings, one, orderOf(at, one))),
  }));
  const parts = [
    loose(AROUND_OPENINGS, fittings.aroundOpenings),
    ...trims,
    loose(TYPED, fittings.typed),
  ];
  return parts.filter(({ rows }) => rows.length > 0);
}

function fittingRow(
  { plan, acrossSheets, facts }: RoomsDraft,
  { room }: RoomFittings,
  fitted: Pick<FittedPiece, 'piece' | 'joinedTo'> & Partial<FittedPiece>,
  mark: string,
): SheetRow {
  const { shop } = plan.job;
  const { piece } = fitted;
  const profile = facts.profiles.get(nameKey(piece.profile));
  const left = sayEnd(piece.left, profile, shop.decimalSign);
  const right = sayEnd(piece.right, profile, shop.decimalSign);
  const number = facts.numbers.get(piece.id) ?? 0;
  const style = piece.done ? 'rowDone' : 'row';
  /** Its own place on Pieces first, which is quick; a list that was sorted is searched. */
  const length = (): string => {
    const [numbers, lengths] = [
      acrossSheets.at('numbersOnPieces'),
      acrossSheets.at('lengthsOnPieces'),
    ];
    return `IF(INDEX(${numbers},${number})=${number},INDEX(${lengths},${number}),SUMIF(${numbers},${number},${lengths}))`;
  };
  return FITTING.row({
    order: cell(mark, 'rowStrong'),
    wall: cell(piece.run, style),
    profile: cell(piece.profile, style),
    mark: cell(piece.mark, style),
    length: piece.done
      ? cell(printExact(piece.cutLength, shop), 'rowRight')
      : sum(
          length,
          numberIn(piece.cutLength, shop.unit),
          lengthStyles([piece.cutLength], shop.unit).row,
        ),
    leftEnd: cell(drawEnd('left', left), style),
    rightEnd: cell(drawEnd('right', right), style),
    note: cell(sayNote(fitted, room.walls, facts.joints.get(piece.id) ?? [], shop), style),
    up: cell(piece.done ? 'done' : null, 'tick'),
  });
}
