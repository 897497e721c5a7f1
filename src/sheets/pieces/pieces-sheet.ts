/** The list of pieces: one flat table to sort and to filter, a box to tick for each piece. */
import { nameKey, type Profile } from '../../planning/job.ts';
import type { JobPlan } from '../../planning/job-plan.ts';
import type { Piece } from '../../planning/piece.ts';
import { absoluteRange } from '../../core/cells/cell-range.ts';
import type { CellDescription, SheetDescription } from '../grammar/description.ts';
import { lengthStyles } from '../grammar/length-styles.ts';
import { SHEET_NAMES, type PlanCells } from '../plan-cells.ts';
import { numberIn, printExact } from '../words/print-length.ts';
import { sayEnd } from '../words/say-ends.ts';
import { cell, SheetDraft } from '../grammar/sheet-draft.ts';
import type { StyleName } from '../grammar/styles.ts';

const COLUMNS = [7, 15, 21, 8, 15, 12, 12, 15, 16, 15, 16, 16, 18, 7].map((width) => ({ width }));
/** Columns from 0 that formulas on other sheets add up. */
const LINE = 0;
const TO_CUT = 6;

const SUBTITLE =
  'Left and right are as you face the molding on its wall. Line is the line of Production, by room, in which the piece counts. Sort and filter as you like: every sum goes by Line.';

/**
 * Describes the sheet Pieces: all pieces by room, profile and run. Done pieces are listed and marked;
 * they have no line and no length to cut, so that no sum takes them in.
 */
export function describePieces(plan: JobPlan, cells: PlanCells): SheetDescription {
  const { unit, paper } = plan.job.shop;
  const draft = new SheetDraft(SHEET_NAMES.pieces, COLUMNS, true);
  draft.spread('Pieces', 'title');
  draft.spread(SUBTITLE, 'note');
  draft.blank();
  const heads = draft.add(
    cell('Line', 'headingRight'),
    cell('Room', 'heading'),
    cell('Run', 'heading'),
    cell('Piece', 'heading'),
    cell('Profile', 'heading'),
    cell('Cut length', 'headingRight'),
    cell(`To cut (${unit})`, 'headingRight'),
    cell('Left end', 'heading'),
    cell('Left, measured to', 'heading'),
    cell('Right end', 'heading'),
    cell('Right, measured to', 'heading'),
    cell('From stick', 'heading'),
    cell('Note', 'heading'),
    cell('Done', 'heading'),
  );
  const lengths = plan.pieces.map(({ cutLength }) => cutLength);
  const facts: Facts = {
    plan,
    number: lengthStyles(lengths, unit).row,
    lines: new Map(plan.rooms.map(({ room, profile }, at) => [lineKey(room, profile), at + 1])),
    profiles: new Map(plan.job.profiles.map((one) => [nameKey(one.name), one])),
    sticks: sticksByPiece(plan),
  };
  for (const piece of sortPieces(plan)) draft.add(...pieceCells(piece, facts));
  if (plan.pieces.length === 0) draft.add(null, cell('No piece is listed.', 'row'));
  else draft.addTable('Pieces', heads, draft.next - 1);
  const column = (at: number): string =>
    absoluteRange(SHEET_NAMES.pieces, { top: heads, left: at, bottom: draft.next - 2, right: at });
  cells.linesOnPieces = column(LINE);
  cells.lengthsOnPieces = column(TO_CUT);
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

function pieceCells(piece: Piece, facts: Facts): CellDescription[] {
  const { shop } = facts.plan.job;
  const { room, run, profile, cutLength, done } = piece;
  const known = facts.profiles.get(nameKey(profile));
  const left = sayEnd(piece.left, known, shop.decimalSign);
  const right = sayEnd(piece.right, known, shop.decimalSign);
  const line = done ? undefined : facts.lines.get(lineKey(room, profile));
  const from = done ? 'done already' : (facts.sticks.get(piece.id) ?? []).join(' and ');
  const style = done ? 'rowDone' : 'row';
  return [
    cell(line ?? null, 'rowWhole'),
    cell(room, style),
    cell(run, style),
    cell(sayNumber(piece), piece.kind === 'run' && !done ? 'rowWhole' : style),
    cell(profile, style),
    cell(printExact(cutLength, shop), 'rowRight'),
    cell(done ? null : numberIn(cutLength, shop.unit), facts.number),
    cell(left.end, style),
    cell(left.point, style),
    cell(right.end, style),
    cell(right.point, style),
    cell(from, style),
    cell(piece.note, style),
    cell(done ? 'done' : null, 'tick'),
  ];
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
