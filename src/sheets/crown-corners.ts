/** What a molding at a spring angle needs for its corners: miter and bevel for each. */
import { computeCrownCut } from '../core/crown/crown-cut.ts';
import { computeBackBevels, computeCrownSize } from '../core/crown/crown-size.ts';
import { degrees, toDegrees, toRadians } from '../core/units/angle.ts';
import type { JobPlan, ProfilePlan } from '../planning/job-plan.ts';
import { sameName, type Profile } from '../planning/job.ts';
import type { Piece } from '../planning/piece.ts';
import { printDegrees, printMark } from './print-length.ts';
import { cell, type SheetDraft } from './sheet-draft.ts';

/** The corners that the pieces of a profile turn, each once, with how many ends turn it. */
interface Corner {
  readonly kind: 'inside' | 'outside' | 'return';
  readonly cornerDeg: number;
  ends: number;
}

/** Adds drop, projection, back bevels and the table of corners; nothing without a spring angle. */
export function addCrown(draft: SheetDraft, plan: JobPlan, profile: Profile): void {
  const { spring, blankWidth } = profile;
  const { unit } = plan.job.shop;
  if (spring === undefined) return;
  draft.spread('Crown', 'section');
  const leaning = toRadians(spring);
  addFact(draft, 'Spring angle', printDegrees(spring), 'from the wall to the back of the crown');
  const bevels = computeBackBevels({ spring: leaning });
  if (blankWidth !== undefined) {
    const size = computeCrownSize({ faceWidth: Number(blankWidth), spring: leaning });
    if (size.ok) {
      const { drop, projection } = size.value;
      const text = `${printMark(drop, unit)} and ${printMark(projection, unit)}`;
      addFact(draft, 'Drop and projection', text, 'down the wall; out along the ceiling');
    }
  }
  if (bevels.ok) {
    const { wall, ceiling } = bevels.value;
    const text = `${printDegrees(toDegrees(wall))} and ${printDegrees(toDegrees(ceiling))}`;
    addFact(
      draft,
      'Back bevels',
      text,
      'from the back: the one on the wall, the one on the ceiling',
    );
  }
  const corners = listCorners(plan.pieces.filter((one) => isLive(one, profile)));
  if (corners.length === 0) return;
  draft.add(
    cell('Corner of the walls', 'heading'),
    cell('Ends', 'headingRight'),
    cell('Miter, from square', 'headingRight'),
    cell('Bevel, from upright', 'headingRight'),
    cell('Flat on its back on the saw', 'heading'),
  );
  draft.merge(draft.next - 1, 4, 7);
  for (const corner of corners) addCorner(draft, profile, corner);
}

/** The page of a crown that is bought: its corners alone. */
export function addCrownAlone(draft: SheetDraft, plan: JobPlan, { profile }: ProfilePlan): void {
  draft.spread(profile.name, 'title');
  draft.spread('Bought at a spring angle: no cove to cut, corners to miter', 'subtitle');
  draft.blank();
  addCrown(draft, plan, profile);
}

/** A row that says what, how much, and from where it is measured. */
export function addFact(draft: SheetDraft, label: string, value: string, from: string): void {
  const row = draft.add(cell(label, 'label'), cell(value, 'setting'), null, cell(from, 'wrapped'));
  draft.merge(row, 1, 2);
  draft.merge(row, 3, 7);
}

function addCorner(draft: SheetDraft, { spring }: Profile, corner: Corner): void {
  if (spring === undefined) return;
  const cut = computeCrownCut({
    spring: toRadians(spring),
    corner: toRadians(degrees(corner.cornerDeg)),
  });
  if (!cut.ok) return;
  const { miter, bevel } = cut.value;
  const how = {
    inside: 'inside, miters and copes',
    outside: 'outside',
    return: 'return to the wall',
  };
  const row = draft.add(
    cell(`${printDegrees(corner.cornerDeg)}, ${corner.kind}`, 'row'),
    cell(corner.ends, 'rowWhole'),
    cell(printDegrees(toDegrees(miter)), 'rowRight'),
    cell(printDegrees(toDegrees(bevel)), 'rowRight'),
    cell(how[corner.kind], 'row'),
  );
  draft.merge(row, 4, 7);
}

function isLive(piece: Piece, profile: Profile): boolean {
  return !piece.done && sameName(piece.profile, profile.name);
}

/** A cope begins as an inside miter; a return turns a right angle. */
function listCorners(pieces: readonly Piece[]): Corner[] {
  const found = new Map<string, Corner>();
  for (const { kind, cornerDeg } of pieces.flatMap((piece) => [piece.left, piece.right])) {
    if (kind === 'square') continue;
    const corner =
      kind === 'return'
        ? ({ kind: 'return', cornerDeg: 90 } as const)
        : ({ kind: kind === 'outside miter' ? 'outside' : 'inside', cornerDeg } as const);
    const key = `${corner.kind} ${corner.cornerDeg}`;
    const known = found.get(key);
    if (known === undefined) found.set(key, { ...corner, ends: 1 });
    else known.ends += 1;
  }
  return [...found.values()].sort(
    (one, other) => one.kind.localeCompare(other.kind, 'en') || one.cornerDeg - other.cornerDeg,
  );
}
