/** The list of pieces: one flat table to sort and to filter, a box to tick for each piece. */
import { nameKey, type Profile } from '../../planning/job.ts';
import type { JobPlan } from '../../planning/job-plan.ts';
import type { Piece } from '../../planning/piece.ts';
import { columns, left, right, sized } from '../grammar/columns.ts';
import type { SheetDescription } from '../grammar/description.ts';
import { lengthStyles } from '../grammar/length-styles.ts';
import { onSheet, SHEET_NAMES, type PlanAnchors } from '../plan-anchors.ts';
import { numberIn, printExact } from '../words/print-length.ts';
import { sayEnd } from '../words/say-ends.ts';
import { cell, SheetDraft, type SheetRow } from '../grammar/sheet-draft.ts';
import type { StyleName } from '../grammar/styles.ts';

const PIECES = columns({
  line: sized(7, right('Line')),
  room: sized(15, left('Room')),
  run: sized(21, left('Run')),
  piece: sized(8, left('Piece')),
  profile: sized(15, left('Profile')),
  length: sized(12, right('Cut length')),
  toCut: sized(
    12,
    right(({ unit }) => `To cut (${unit})`),
  ),
  leftEnd: sized(15, left('Left end')),
  leftPoint: sized(16, left('Left, measured to')),
  rightEnd: sized(15, left('Right end')),
  rightPoint: sized(16, left('Right, measured to')),
  stick: sized(16, left('From stick')),
  note: sized(18, left('Note')),
  done: sized(7, left('Done')),
});

const SUBTITLE =
  'Left and right are as you face the molding on its wall. Line is the line of Production, by room, in which the piece counts. Where the program can, sort and filter them: every sum goes by Line.';

/**
 * Describes the sheet Pieces: all pieces by room, profile and run. Done pieces are listed and marked;
 * they have no line and no length to cut, so that no sum takes them in.
 */
export function describePieces(plan: JobPlan, acrossSheets: PlanAnchors): SheetDescription {
  const { unit, paper } = plan.job.shop;
  const draft = new SheetDraft(SHEET_NAMES.pieces, PIECES.grid(), true);
  draft.spread('Pieces', 'title');
  draft.spread(SUBTITLE, 'note');
  draft.blank();
  const heads = draft.put(PIECES.headings(plan.job.shop));
  const lengths = plan.pieces.map(({ cutLength }) => cutLength);
  const facts: Facts = {
    plan,
    number: lengthStyles(lengths, unit).row,
    lines: new Map(plan.rooms.map(({ room, profile }, at) => [lineKey(room, profile), at + 1])),
    profiles: new Map(plan.job.profiles.map((one) => [nameKey(one.name), one])),
    sticks: sticksByPiece(plan),
  };
  for (const piece of sortPieces(plan)) draft.put(pieceRow(piece, facts));
  if (plan.pieces.length === 0)
    draft.put(PIECES.sparseRow({ room: cell('No piece is listed.', 'row') }));
  else draft.addTable('Pieces', heads, draft.next - 1, PIECES.width);
  const listed = (column: 'line' | 'toCut'): string =>
    onSheet('pieces', PIECES.fixedRange(column, heads + 1, draft.next - 1));
  acrossSheets.place('linesOnPieces', listed('line'));
  acrossSheets.place('lengthsOnPieces', listed('toCut'));
  return draft.finish(
    { paper, orientation: 'landscape', titleRows: [heads, heads], footer: 'Pieces' },
    { rows: heads, columns: 0 },
  );
}

interface Facts {
  readonly plan: JobPlan;
  readonly number: StyleName;
  /** Numbers of the lines of `plan.rooms`, from 1, by room and profile. */
  readonly lines: ReadonlyMap<string, number>;
  readonly profiles: ReadonlyMap<string, Profile>;
  readonly sticks: ReadonlyMap<string, readonly string[]>;
}

function pieceRow(piece: Piece, facts: Facts): SheetRow {
  const { shop } = facts.plan.job;
  const { room, run, profile, cutLength, done } = piece;
  const known = facts.profiles.get(nameKey(profile));
  const ends = {
    left: sayEnd(piece.left, known, shop.decimalSign),
    right: sayEnd(piece.right, known, shop.decimalSign),
  };
  const line = done ? undefined : facts.lines.get(lineKey(room, profile));
  const from = done ? 'done already' : (facts.sticks.get(piece.id) ?? []).join(' and ');
  const style = done ? 'rowDone' : 'row';
  return PIECES.row({
    line: cell(line ?? null, 'rowWhole'),
    room: cell(room, style),
    run: cell(run, style),
    piece: cell(sayNumber(piece), piece.kind === 'run' && !done ? 'rowWhole' : style),
    profile: cell(profile, style),
    length: cell(printExact(cutLength, shop), 'rowRight'),
    toCut: cell(done ? null : numberIn(cutLength, shop.unit), facts.number),
    leftEnd: cell(ends.left.end, style),
    leftPoint: cell(ends.left.point, style),
    rightEnd: cell(ends.right.end, style),
    rightPoint: cell(ends.right.point, style),
    stick: cell(from, style),
    note: cell(piece.note, style),
    done: cell(done ? 'done' : null, 'tick'),
  });
}

/** Its number within the run; for a return piece also the side of the run that it closes. */
function sayNumber({ kind, number, id }: Piece): string | number {
  return kind === 'run'
    ? number
    : `${number} ${id.endsWith('left') ? 'return left' : 'return right'}`;
}

/** By room as they first come up, then by profile as Profiles has them, then by run. */
function sortPieces({ pieces, job }: JobPlan): readonly Piece[] {
  const profiles = new Map(job.profiles.map(({ name }, at) => [name, at]));
  const rooms = new Map<string, number>();
  for (const { room } of pieces) if (!rooms.has(room)) rooms.set(room, rooms.size);
  const place = (at: number | undefined): number => at ?? 0;
  return [...pieces].sort(
    (one, other) =>
      place(rooms.get(one.room)) - place(rooms.get(other.room)) ||
      place(profiles.get(one.profile)) - place(profiles.get(other.profile)),
  );
}

function lineKey(room: string, profile: string): string {
  return JSON.stringify([room, profile]);
}

function sticksByPiece({ profiles }: JobPlan): Map<string, string[]> {
  const found = new Map<string, string[]>();
  for (const { sticks } of profiles) {
    for (const stick of sticks) {
      for (const { id } of stick.pieces) {
        const known = found.get(id);
        if (known === undefined) found.set(id, [stick.id]);
        else if (!known.includes(stick.id)) known.push(stick.id);
      }
    }
  }
  return found;
}
