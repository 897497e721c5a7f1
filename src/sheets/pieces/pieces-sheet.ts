/** The list of pieces: one flat table to sort and to filter, a box to tick for each piece. */
import { addVerdict } from '../agreement.ts';
import { nameKey, type Profile } from '../../planning/job.ts';
import type { Joint } from '../../planning/joint-places.ts';
import { listJoints } from '../../planning/joints.ts';
import type { JobPlan } from '../../planning/job-plan.ts';
import type { Piece } from '../../planning/piece.ts';
import { countDone, cutPieces } from '../cut-so-far.ts';
import { columns, left, right, sized } from '../grammar/columns.ts';
import type { SheetDescription } from '../grammar/description.ts';
import { lengthStyles } from '../grammar/length-styles.ts';
import { piecesInOrder } from '../numbered-pieces.ts';
import { onSheet, SHEET_NAMES, type PlanAnchors } from '../plan-anchors.ts';
import { numberIn, printExact } from '../words/print-length.ts';
import { sayNotes } from '../words/say-joints.ts';
import { drawEnd, GLYPH_LEGEND, sayEnd } from '../words/say-ends.ts';
import { CUT_MARK, sayTicked, tickedFormula } from '../words/tick-marks.ts';
import { cell, SheetDraft, sum, type SheetRow } from '../grammar/sheet-draft.ts';
import { OFF_DECIMALS } from '../tolerance.ts';

/** By which the columns that name a piece, and its box, are found again. */
export const PIECES_HEADINGS = {
  room: 'Room',
  run: 'Run',
  piece: 'Piece',
  profile: 'Profile',
  done: 'Done',
} as const;

/** As wide as a page lying on its side: what is read at arm's length keeps its size. */
const PRINTED = {
  number: sized(5.5, right('No.')),
  mark: sized(8, left('Mark')),
  room: sized(12.5, left(PIECES_HEADINGS.room)),
  run: sized(11.5, left(PIECES_HEADINGS.run)),
  piece: sized(7, left(PIECES_HEADINGS.piece)),
  profile: sized(11.5, left(PIECES_HEADINGS.profile)),
  length: sized(
    11,
    right(({ unit }) => `Cut length (${unit})`),
  ),
  leftEnd: sized(13, left('Left end')),
  rightEnd: sized(13, left('Right end')),
  stick: sized(7.5, left('From stick')),
  note: sized(11.5, left('Note')),
  done: sized(5.5, left(PIECES_HEADINGS.done)),
};
const PIECES = columns({
  ...PRINTED,
  // For sums and for the eye on the screen.
  line: sized(7, right('Line')),
  off: sized(
    12,
    right(({ unit }) => `Cutting less this (${unit})`),
  ),
});

const SUBTITLE = `Each length is from long point to long point. ${GLYPH_LEGEND} Left and right are as you face the molding on its wall.`;
const ON_SCREEN =
  'Line is the line of Production, by room, in which the piece counts. Where the program can, sort and filter them: every sum goes by Line, and Cutting finds its pieces by No. A cut length that Cutting has otherwise is marked.';

/**
 * Drafts the sheet Pieces: all pieces by room, profile and run. Done pieces are listed and marked;
 * they have no line, and their length stands as text, so that no sum takes them in.
 */
export function draftPieces(
  plan: JobPlan,
  acrossSheets: PlanAnchors,
): { readonly finish: () => SheetDescription } {
  const { paper } = plan.job.shop;
  const printed = Object.keys(PRINTED).length;
  const draft = new SheetDraft(SHEET_NAMES.pieces, PIECES.grid(), true, printed);
  draft.spread('Pieces', 'title');
  const [first, last] = [draft.next + 5, draft.next + 4 + Math.max(1, plan.pieces.length)];
  addVerdict(
    draft,
    () => acrossSheets.at('verdictOnProduction'),
    [0, PIECES.end('leftEnd')],
    ticked(plan, PIECES.range('done', first, last)),
  );
  draft.spread(SUBTITLE, 'note');
  draft.spread(ON_SCREEN, 'note');
  draft.blank();
  const heads = draft.put(PIECES.headings(plan.job.shop));
  const facts: Facts = {
    plan,
    acrossSheets,
    lines: new Map(plan.rooms.map(({ room, profile }, at) => [lineKey(room, profile), at + 1])),
    profiles: new Map(plan.job.profiles.map((one) => [nameKey(one.name), one])),
    sticks: sticksByPiece(plan),
    cut: cutPieces(plan),
    joints: listJoints(plan),
  };
  piecesInOrder(plan).forEach((piece, at) => {
    draft.put(pieceRow(piece, at + 1, draft.next, facts));
  });
  if (plan.pieces.length === 0)
    draft.put(PIECES.sparseRow({ room: cell('No piece is listed.', 'row') }));
  else draft.addTable('Pieces', heads, draft.next - 1, PIECES.width);
  const isOff = `${PIECES.inColumn('off', first)}<>0`;
  draft.highlight(PIECES.area(first, last), isOff, 'caution');
  const listed = (column: 'number' | 'line' | 'length' | 'off' | 'done'): string =>
    onSheet('pieces', PIECES.fixedRange(column, first, last));
  acrossSheets.place('numbersOnPieces', listed('number'));
  acrossSheets.place('linesOnPieces', listed('line'));
  acrossSheets.place('lengthsOnPieces', listed('length'));
  acrossSheets.place('offOnPieces', listed('off'));
  acrossSheets.place('boxesOnPieces', listed('done'));
  return {
    finish: () =>
      draft.finish(
        { paper, orientation: 'landscape', titleRows: [heads, heads], footer: SHEET_NAMES.pieces },
        { rows: heads, columns: 0 },
      ),
  };
}

/** How many pieces are done or cut, those with a tick typed in counted too; at the right of the first line. */
function ticked(plan: JobPlan, boxes: string): SheetRow {
  const as = ' done or cut';
  const { length } = plan.pieces;
  const said = sum(
    tickedFormula(boxes, length, as),
    sayTicked(countDone(plan), length, as),
    'label',
  );
  return {
    ...PIECES.loose({ rightEnd: said }),
    joins: [[PIECES.start('rightEnd'), PIECES.end('done')]],
  };
}

interface Facts {
  readonly plan: JobPlan;
  readonly acrossSheets: PlanAnchors;
  /** Numbers of the lines of `plan.rooms`, from 1, by room and profile. */
  readonly lines: ReadonlyMap<string, number>;
  readonly profiles: ReadonlyMap<string, Profile>;
  readonly sticks: ReadonlyMap<string, readonly string[]>;
  /** Ids of the pieces that are cut, all parts of them. */
  readonly cut: ReadonlySet<string>;
  /** Of each spliced piece, from left to right. */
  readonly joints: ReadonlyMap<string, readonly Joint[]>;
}

function pieceRow(piece: Piece, number: number, row: number, facts: Facts): SheetRow {
  const { shop } = facts.plan.job;
  const { room, run, profile, cutLength, done } = piece;
  const known = facts.profiles.get(nameKey(profile));
  const ends = {
    left: sayEnd(piece.left, known, shop.decimalSign),
    right: sayEnd(piece.right, known, shop.decimalSign),
  };
  const line = done ? undefined : facts.lines.get(lineKey(room, profile));
  const from = done
    ? 'done already'
    : (facts.sticks.get(piece.id) ?? []).map((id) => stickOf(profile, id)).join(' and ');
  const style = done ? 'rowDone' : 'row';
  const length = PIECES.at('length', row);
  const off = (): string => {
    const { cells, overlap } = facts.acrossSheets.at('pieceOnCutting', piece.id);
    return `ROUND(${cells}${overlap === 0 ? '' : `-${overlap}`}-${length},${OFF_DECIMALS})`;
  };
  return PIECES.row({
    number: cell(number, 'rowWhole'),
    mark: cell(piece.mark, style),
    line: cell(line ?? null, 'rowWhole'),
    room: cell(room, style),
    run: cell(run, style),
    piece: cell(sayNumber(piece), piece.kind === 'run' && !done ? 'rowWhole' : style),
    profile: cell(profile, style),
    length: done
      ? cell(printExact(cutLength, shop), 'rowRight')
      : cell(numberIn(cutLength, shop.unit), lengthStyles([cutLength], shop.unit).row),
    off: done ? cell(null, 'rowOff') : sum(off, 0, 'rowOff'),
    leftEnd: cell(drawEnd('left', ends.left), style),
    rightEnd: cell(drawEnd('right', ends.right), style),
    stick: cell(from, style),
    note: cell(sayNotes(piece, facts.joints.get(piece.id) ?? [], shop).join('; '), style),
    done: cell(done ? 'done' : facts.cut.has(piece.id) ? CUT_MARK : null, 'tick'),
  });
}

/** `#2`, beside the profile: Cutting has `Reading cove #2`. */
function stickOf(profile: string, id: string): string {
  return id.startsWith(`${profile} `) ? id.slice(profile.length + 1) : id;
}

/** Its number within the run; for a return piece also the side of the run that it closes. */
export function sayNumber({ kind, number, id }: Piece): string | number {
  return kind === 'run'
    ? number
    : `${number} ${id.endsWith('left') ? 'return left' : 'return right'}`;
}

function lineKey(room: string, profile: string): string {
  return JSON.stringify([room, profile]);
}

function sticksByPiece({ profiles }: JobPlan): Map<string, string[]> {
  const found = new Map<string, string[]>();
  for (const { sticks } of profiles) {
    for (const stick of sticks) {
      for (const { id, unneeded } of stick.pieces) {
        if (unneeded !== undefined) continue;
        const known = found.get(id);
        if (known === undefined) found.set(id, [stick.id]);
        else if (!known.includes(stick.id)) known.push(stick.id);
      }
    }
  }
  return found;
}
