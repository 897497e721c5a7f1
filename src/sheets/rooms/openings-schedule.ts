/** The schedule of doors and windows, at the end of the sheet Rooms. */
import type { Where } from '../../core/faults/fault.ts';
import type { Opening } from '../../planning/job.ts';
import { spreadRow } from '../grammar/paged-rows.ts';
import { cell, type SheetRow } from '../grammar/sheet-draft.ts';
import { printExact } from '../words/print-length.ts';
import { ALL, OPENINGS } from './rooms-columns.ts';
import type { RoomsDraft } from './rooms-draft.ts';

const TITLE = 'Doors and windows';
const HOW =
  'Width and height are of the opening itself. The left edge is measured from the left corner of its wall as you face it, the sill from the floor. The numbers are those of its pieces on Pieces.';

/** All rows of Openings, also those of rooms without walls. */
export function addOpenings({ pages, plan, facts }: RoomsDraft): void {
  const { openings } = plan.job;
  if (openings.length === 0) return;
  const numbersAt = new Map<string, number[]>();
  for (const piece of plan.pieces) {
    const number = facts.numbers.get(piece.id);
    if (piece.made !== undefined || number === undefined) continue;
    const known = numbersAt.get(whereKey(piece.where));
    if (known === undefined) numbersAt.set(whereKey(piece.where), [number]);
    else known.push(number);
  }
  const headings = OPENINGS.headings();
  pages.turnPage();
  pages.hold(spreadRow(TITLE, 'title', ALL), spreadRow(HOW, 'note', ALL), headings);
  const again = [spreadRow(`${TITLE}, continued`, 'title', ALL), headings];
  for (const opening of openings) {
    const numbers = numbersAt.get(whereKey(opening.where)) ?? [];
    pages.add([openingRow(opening, plan.job.shop, numbers)], again);
  }
}

function openingRow(
  opening: Opening,
  shop: RoomsDraft['plan']['job']['shop'],
  numbers: readonly number[],
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
  const places = [
    position === undefined
      ? undefined
      : both(
          printExact(position, shop),
          otherPosition === undefined ? undefined : printExact(otherPosition, shop),
        ),
    sill === undefined ? undefined : `sill ${printExact(sill, shop)}`,
  ];
  return OPENINGS.row({
    room: cell(both(room, otherRoom), 'row'),
    wall: cell(both(wall, otherWall), 'row'),
    kind: cell(quantity === 1 ? kind : `${quantity} × ${kind}`, 'row'),
    width: cell(printExact(opening.width, shop), 'row'),
    height: cell(printExact(opening.height, shop), 'row'),
    sides: cell(casing === undefined ? null : opening.sidesCased, 'rowCenter'),
    reveal: cell(casing === undefined ? null : printExact(opening.reveal, shop), 'row'),
    casing: cell(listed(moldings), 'row'),
    position: cell(listed(places), 'row'),
    pieces: cell(sayNumbers(numbers), 'row'),
  });
}

function listed(words: readonly (string | undefined)[]): string {
  return words.filter((word) => word !== undefined).join(', ');
}

/** `4 to 7, 12`. */
export function sayNumbers(numbers: readonly number[]): string {
  const spans: [from: number, to: number][] = [];
  for (const number of [...numbers].sort((one, other) => one - other)) {
    const last = spans.at(-1);
    if (last?.[1] === number - 1) last[1] = number;
    else spans.push([number, number]);
  }
  return spans
    .map(([from, to]) =>
      from === to ? `${from}` : `${from}${to === from + 1 ? ', ' : ' to '}${to}`,
    )
    .join(', ');
}

function whereKey(where: Where): string {
  return JSON.stringify(where);
}
