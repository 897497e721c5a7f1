/** The rows of one stick on the cutting sheet: the stick, its pieces, what is left of it. */
import type { CutPiece, CutStick, JobPlan } from '../../planning/job-plan.ts';
import type { Profile } from '../../planning/job.ts';
import { formatMark } from '../../core/units/format-mark.ts';
import { numberIn, printExact, printStick } from '../print-length.ts';
import { sayEnd, sayPartEnds, SPARE_ENDS, type EndWords } from '../say-ends.ts';
import { sayUnit } from '../say-stock.ts';
import { cell, type SheetDraft } from '../sheet-draft.ts';

/** `parts` is into how many parts each spliced piece is cut. */
export function addStick(
  draft: SheetDraft,
  plan: JobPlan,
  profile: Profile,
  stick: CutStick,
  parts: ReadonlyMap<string, number>,
): void {
  const { unit } = plan.job.shop;
  const left = formatMark(Number(stick.offcut), unit);
  const rest =
    stick.offcut.n === 0n ? 'nothing left' : `${left} left, ${stick.offcutKept ? 'keep' : 'waste'}`;
  const row = draft.add(
    cell(null, 'stick'),
    cell(stick.id, 'stick'),
    cell(printStick(stick.length, unit), 'stickRight'),
    cell(null, 'stick'),
    cell(sayUnit(stick), 'stick'),
    null,
    null,
    cell(rest, 'stick'),
    null,
    cell(null, 'stick'),
    cell(numberIn(stick.length, unit), 'stickNumber'),
    cell(stick.offcutKept ? numberIn(stick.offcut, unit) : null, 'stickNumber'),
  );
  draft.merge(row, 4, 6);
  draft.merge(row, 7, 8);
  stick.pieces.forEach((piece, index) => {
    const count = parts.get(piece.id) ?? 1;
    const ends = endsOf(piece, profile, count, plan.job.shop.spliceAngle);
    draft.add(
      cell(index + 1, 'rowWhole'),
      cell(piece.id, piece.piece === undefined ? 'rowDone' : 'row'),
      cell(printExact(piece.length, unit), 'rowRight'),
      cell(numberIn(piece.length, unit), 'rowNumber'),
      cell(sayPart(piece, count), 'row'),
      cell(ends.left.end, 'row'),
      cell(ends.left.point, 'row'),
      cell(ends.right.end, 'row'),
      cell(ends.right.point, 'row'),
      cell(null, 'tick'),
    );
  });
}

function sayPart({ piece, part }: CutPiece, count: number): string {
  if (piece === undefined) return 'set-up spare: for trial cuts';
  return part === undefined ? '' : `part ${part} of ${count}, splice`;
}

function endsOf(
  { piece, part }: CutPiece,
  profile: Profile,
  count: number,
  spliceAngleDeg: number,
): { left: EndWords; right: EndWords } {
  if (piece === undefined) return SPARE_ENDS;
  const ends = { left: sayEnd(piece.left, profile), right: sayEnd(piece.right, profile) };
  return part === undefined ? ends : sayPartEnds(ends, part, count, spliceAngleDeg);
}
