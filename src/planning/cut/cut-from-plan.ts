/** What the ticks on the sheets of a plan say: which of its sticks are cut. */
import type { ExactInches } from '../../core/units/length.ts';
import type { CutPiece, CutStick, JobPlan, ProfilePlan } from '../job-plan.ts';
import { rowOfStock } from '../same-row.ts';
import { boardsOf, type Boards } from './boards-of.ts';
import {
  cutKey,
  endsOfPiece,
  sizesOfProfile,
  type CutAlready,
  type PieceThen,
  type Ticks,
} from './cut-already.ts';

/**
 * The sticks of a plan that are ticked, and those that a ticked piece is of: once a piece is off a
 * stick, the rest of it is what it is. A piece that is done on Pieces is off its stick too.
 */
export function cutFromPlan(plan: JobPlan, ticks: Ticks): CutAlready[] {
  const parts = partsOf(plan);
  const boards = boardsOf(plan);
  return plan.profiles.flatMap((planned) =>
    planned.sticks.flatMap((stick) => {
      const pieces = stick.pieces.map((piece, at) =>
        pieceThen(piece, isTicked(ticks, stick, piece, at), parts),
      );
      return pieces.some(({ isCut }) => isCut) ? [stickThen(planned, stick, pieces, boards)] : [];
    }),
  );
}

/** The same plan, its sticks and pieces marked as the ticks have them. */
export function markCut(plan: JobPlan, ticks: Ticks): JobPlan {
  let sticksCut = 0;
  const profiles = plan.profiles.map((planned): ProfilePlan => {
    const sticks = planned.sticks.map((stick): CutStick => {
      const marked = markStick(stick, ticks);
      if (marked.isCut === true) sticksCut += 1;
      return marked;
    });
    return { ...planned, sticks };
  });
  return { ...plan, profiles, totals: { ...plan.totals, sticksCut } };
}

/** Whether every piece that a plan has as cut is ticked still. */
export function keepsCuts({ profiles }: JobPlan, ticks: Ticks): boolean {
  return profiles.every(({ sticks }) =>
    sticks.every((stick) =>
      stick.pieces.every((piece, at) => piece.isCut !== true || isTicked(ticks, stick, piece, at)),
    ),
  );
}

function markStick(stick: CutStick, ticks: Ticks): CutStick {
  const { id, item, unit, strip, strips, fromRack, length, offcut, offcutKept } = stick;
  const pieces = stick.pieces.map((cut, at): CutPiece => {
    const { id: pieceId, piece, part, length: long, unneeded, recutTo } = cut;
    return {
      id: pieceId,
      ...(piece === undefined ? {} : { piece }),
      ...(part === undefined ? {} : { part }),
      length: long,
      ...(unneeded === undefined ? {} : { unneeded }),
      ...(recutTo === undefined ? {} : { recutTo }),
      ...(isTicked(ticks, stick, cut, at) ? { isCut: true } : {}),
    };
  });
  const isCut = pieces.some((one) => one.isCut);
  return {
    id,
    item,
    unit,
    strip,
    strips,
    fromRack,
    length,
    pieces,
    offcut,
    offcutKept,
    ...(isCut ? { isCut } : {}),
  };
}

function isTicked(ticks: Ticks, stick: CutStick, { id, piece }: CutPiece, at: number): boolean {
  return (
    ticks.sticks.has(stick.id) ||
    ticks.cuts.has(cutKey(stick.id, at + 1)) ||
    (piece !== undefined && ticks.pieces.has(id))
  );
}

function pieceThen(
  { id, length, piece, part, unneeded }: CutPiece,
  isCut: boolean,
  parts: ReadonlyMap<string, readonly ExactInches[]>,
): PieceThen {
  if (unneeded !== undefined) return { ...unneeded, isCut };
  const whole = piece?.cutLength ?? length;
  const ends = piece === undefined ? '' : endsOfPiece(piece);
  const all = part === undefined ? undefined : parts.get(id);
  return {
    id,
    length,
    isCut,
    ends,
    whole,
    ...(part === undefined || all === undefined ? {} : { part, parts: all }),
  };
}

function stickThen(
  { profile }: ProfilePlan,
  { id, item, unit, strip, offcut }: CutStick,
  pieces: readonly PieceThen[],
  boards: Boards,
): CutAlready {
  const board = boards.get(item)?.get(unit);
  const { price, per, have } = item;
  return {
    id,
    profile: profile.name,
    sizes: sizesOfProfile(profile),
    row: { ...rowOfStock(item), price, per, have },
    unit,
    strip,
    blankWidths: (board?.strips ?? []).map((one) => one.width),
    pieces,
    offcut,
  };
}

/** How long the parts of every spliced piece are, in the order of their numbers. */
function partsOf({ profiles }: JobPlan): ReadonlyMap<string, readonly ExactInches[]> {
  const parts = new Map<string, ExactInches[]>();
  for (const { id, part, length, unneeded } of profiles.flatMap(({ sticks }) =>
    sticks.flatMap(({ pieces }) => pieces),
  )) {
    if (part === undefined || unneeded !== undefined) continue;
    const all = parts.get(id) ?? [];
    parts.set(id, all);
    all[part - 1] = length;
  }
  return parts;
}
