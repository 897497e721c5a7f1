/** The list of pieces by room on the production sheet, a box to tick for each. */
import type { JobPlan } from '../../planning/job-plan.ts';
import { nameKey, type Profile } from '../../planning/job.ts';
import type { Piece } from '../../planning/piece.ts';
import { sumOf, total } from '../plan-cells.ts';
import { count, numberIn, printExact } from '../print-length.ts';
import type { ProductionCells } from './production-cells.ts';
import { sayEnd } from '../say-ends.ts';
import { cell, sum, type SheetDraft } from '../sheet-draft.ts';

/**
 * Adds the list and gives its row of headings. Done pieces are listed and marked; their number
 * column is blank, so that no sum takes them in.
 */
export function addPieces(draft: SheetDraft, plan: JobPlan, own: ProductionCells): number {
  const { unit } = plan.job.shop;
  draft.spread('Pieces, room by room', 'section');
  const heads = draft.add(
    cell('Piece', 'heading'),
    cell('Profile', 'heading'),
    cell('Cut length', 'headingRight'),
    cell(`to cut (${unit})`, 'headingRight'),
    cell('Left end', 'heading'),
    cell('measured to', 'heading'),
    cell('Right end', 'heading'),
    cell('measured to', 'heading'),
    cell('From stick', 'heading'),
    cell('Note', 'heading'),
    cell('Done', 'heading'),
  );
  const first = draft.next;
  const profiles = new Map(plan.job.profiles.map((one) => [nameKey(one.name), one]));
  const sticks = sticksByPiece(plan);
  for (const [room, pieces] of byRoom(plan.pieces)) {
    addRoom(draft, room, pieces, plan);
    for (const piece of pieces) {
      addPiece(
        draft,
        plan,
        piece,
        profiles.get(nameKey(piece.profile)),
        sticks.get(piece.id) ?? [],
      );
    }
  }
  own.pieces = [first, Math.max(first, draft.next - 1)];
  return heads;
}

function addRoom(draft: SheetDraft, room: string, pieces: readonly Piece[], plan: JobPlan): void {
  const { unit } = plan.job.shop;
  const live = pieces.filter((piece) => !piece.done);
  const first = draft.next + 1;
  const last = draft.next + pieces.length;
  const done = pieces.length - live.length;
  const also = done === 0 ? '' : `; ${count(done, 'piece')} done already`;
  // Nothing stands in the column of profiles: sums by profile go by it.
  const row = draft.add(
    cell(room, 'stick'),
    cell(null, 'stick'),
    sum(`COUNT(D${first}:D${last})`, live.length, 'stickRight'),
    sum(
      sumOf('D', first, last),
      total(live.map((piece) => numberIn(piece.cutLength, unit))),
      'stickNumber',
    ),
    cell(`pieces to cut, and their length together${also}`, 'stick'),
  );
  draft.merge(row, 4, 10);
}

function addPiece(
  draft: SheetDraft,
  plan: JobPlan,
  piece: Piece,
  profile: Profile | undefined,
  sticks: readonly string[],
): void {
  const { unit } = plan.job.shop;
  const left = sayEnd(piece.left, profile);
  const right = sayEnd(piece.right, profile);
  const style = piece.done ? 'rowDone' : 'row';
  draft.add(
    cell(piece.id, style),
    cell(piece.profile, style),
    cell(printExact(piece.cutLength, unit), 'rowRight'),
    cell(piece.done ? null : numberIn(piece.cutLength, unit), 'rowNumber'),
    cell(left.end, style),
    cell(left.point, style),
    cell(right.end, style),
    cell(right.point, style),
    cell(piece.done ? 'done already' : sticks.join(' and '), style),
    cell(piece.note, style),
    cell(piece.done ? 'done' : null, 'tick'),
  );
}

/** Rooms in the order in which they first come up; two that differ in case are two. */
function byRoom(pieces: readonly Piece[]): Map<string, Piece[]> {
  const rooms = new Map<string, Piece[]>();
  for (const piece of pieces) {
    const list = rooms.get(piece.room);
    if (list === undefined) rooms.set(piece.room, [piece]);
    else list.push(piece);
  }
  return rooms;
}

function sticksByPiece(plan: JobPlan): Map<string, string[]> {
  const found = new Map<string, string[]>();
  for (const { sticks } of plan.profiles) {
    for (const stick of sticks) {
      for (const { id } of stick.pieces) found.set(id, [...(found.get(id) ?? []), stick.id]);
    }
  }
  return found;
}
