/** The schedule of doors and windows, at the end of the sheet Rooms. */
import type { Opening } from '../../planning/job.ts';
import { openingOfPiece } from '../../planning/pieces/opening-of-piece.ts';
import { spreadRow } from '../grammar/paged-rows.ts';
import { cell, type SheetRow } from '../grammar/sheet-draft.ts';
import { printExact } from '../words/print-length.ts';
import { ALL, OPENINGS } from './rooms-columns.ts';
import type { RoomsDraft } from './rooms-draft.ts';

const TITLE = 'Doors and windows';
const HOW =
  'Width and height are of the opening itself. The left edge is measured from the left corner of its wall as you face it, the sill from the floor. Sides are those that are cased. Its pieces are named by their marks, as on Pieces.';

/** All rows of Openings, also those of rooms without walls. */
export function addOpenings({ pages, plan }: RoomsDraft): void {
  const { openings } = plan.job;
  if (openings.length === 0) return;
  const openingOf = openingOfPiece(openings);
  const marksOf = new Map<Opening, string[]>();
  for (const piece of plan.pieces) {
    const opening = openingOf(piece);
    if (opening === undefined) continue;
    const known = marksOf.get(opening);
    if (known === undefined) marksOf.set(opening, [piece.mark]);
    else known.push(piece.mark);
  }
  const headings = OPENINGS.headings();
  pages.turnPage();
  pages.hold(spreadRow(TITLE, 'title', ALL), spreadRow(HOW, 'note', ALL), headings);
  const again = [spreadRow(`${TITLE}, continued`, 'title', ALL), headings];
  for (const opening of openings) {
    const marks = marksOf.get(opening) ?? [];
    pages.add([openingRow(opening, plan.job.shop, marks)], again);
  }
}

function openingRow(
  opening: Opening,
  shop: RoomsDraft['plan']['job']['shop'],
  marks: readonly string[],
): SheetRow {
  const { room, otherRoom, wall, otherWall, kind, quantity, casing, apron, stool } = opening;
  const { position, otherPosition, sill } = opening;
  const moldings = [
    casing,
    apron === undefined ? undefined : `apron ${apron}`,
    stool === undefined ? undefined : `stool ${stool}`,
  ];
  const both = (one: string, other: string | undefined): string =>
    other === undefined || other === '' ? one : `${one}; other side ${other}`;
  const at = (wallName: string, edge: Opening['position']): string =>
    edge === undefined ? wallName : `${wallName}; ${printExact(edge, shop)}`;
  const size = `${printExact(opening.width, shop)} × ${printExact(opening.height, shop)}`;
  const cased = `${opening.sidesCased}; ${printExact(opening.reveal, shop)}`;
  return OPENINGS.row({
    room: cell(both(room, otherRoom), 'row'),
    wall: cell(
      both(at(wall, position), otherWall === '' ? undefined : at(otherWall, otherPosition)),
      'row',
    ),
    kind: cell(
      listed([
        `${quantity === 1 ? kind : `${quantity} × ${kind}`}; ${size}`,
        sill === undefined ? undefined : `sill ${printExact(sill, shop)}`,
      ]),
      'row',
    ),
    cased: cell(casing === undefined ? null : cased, 'row'),
    casing: cell(listed(moldings), 'row'),
    pieces: cell(sayMarks(marks), 'row'),
  });
}

function listed(words: readonly (string | undefined)[]): string {
  return words.filter((word) => word !== undefined).join(', ');
}

/** `R1-4 to R1-7, R2-3`, in their order; marks that follow each other are one span. */
export function sayMarks(marks: readonly string[]): string {
  const spans: [from: string, to: string, count: number][] = [];
  for (const mark of marks) {
    const last = spans.at(-1);
    if (last === undefined || followerOf(last[1]) !== mark) spans.push([mark, mark, 1]);
    else {
      last[1] = mark;
      last[2] += 1;
    }
  }
  return spans
    .map(([from, to, count]) => (count === 1 ? from : `${from}${count === 2 ? ', ' : ' to '}${to}`))
    .join(', ');
}

/** The mark with the next number. */
function followerOf(mark: string): string {
  return mark.replace(/\d+$/u, (digits) => String(Number(digits) + 1));
}
