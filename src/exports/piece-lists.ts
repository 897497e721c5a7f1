/** Lists of what is cut: every piece, every cut with its stick, every offcut that is kept. */
import { nameKey, type Profile } from '../planning/job.ts';
import { listJoints } from '../planning/joints.ts';
import type { CutStick, JobPlan, ProfilePlan } from '../planning/job-plan.ts';
import type { Piece } from '../planning/piece.ts';
import { numberIn, printExact } from '../sheets/words/print-length.ts';
import { sayEnd } from '../sheets/words/say-ends.ts';
import { sayNotes } from '../sheets/words/say-joints.ts';
import { sayStock } from '../sheets/words/say-stock.ts';
import type { List, ListValue } from './csv-list.ts';

export function listAllPieces(plan: JobPlan): List {
  const { shop } = plan.job;
  const { unit } = shop;
  const profiles = new Map(plan.job.profiles.map((one) => [nameKey(one.name), one]));
  const sticks = sticksByPiece(plan);
  const joints = listJoints(plan);
  const row = (piece: Piece, profile: Profile | undefined): ListValue[] => {
    const left = sayEnd(piece.left, profile, shop.decimalSign);
    const right = sayEnd(piece.right, profile, shop.decimalSign);
    return [
      piece.id,
      piece.room,
      piece.run,
      piece.profile,
      printExact(piece.cutLength, shop),
      numberIn(piece.cutLength, unit),
      left.end,
      left.point,
      right.end,
      right.point,
      (sticks.get(piece.id) ?? []).join(' and '),
      piece.onePiece ? 'yes' : '',
      piece.match,
      piece.done ? 'yes' : '',
      sayNotes(piece, joints.get(piece.id) ?? [], shop).join('; '),
    ];
  };
  return {
    name: 'pieces',
    headings: [
      'Piece',
      'Room',
      'Run',
      'Profile',
      'Cut length',
      `Cut length (${unit})`,
      'Left end',
      'Left measured to',
      'Right end',
      'Right measured to',
      'From stick',
      'One piece',
      'Match',
      'Done',
      'Note',
    ],
    rows: plan.pieces.map((piece) => row(piece, profiles.get(nameKey(piece.profile)))),
  };
}

/** A row a cut, in the order in which a stick is cut. */
export function listCuts(plan: JobPlan): List {
  const { shop } = plan.job;
  const { unit } = shop;
  const rows = eachStick(plan, ({ profile }, stick) =>
    stick.pieces.map((piece, at): ListValue[] => [
      profile.name,
      stick.id,
      sayStock(stick.item, shop),
      stick.unit,
      stick.strip,
      stick.strips,
      stick.fromRack ? 'rack' : 'buy',
      numberIn(stick.length, unit),
      at + 1,
      piece.id,
      piece.part ?? null,
      printExact(piece.length, shop),
      numberIn(piece.length, unit),
      piece.unneeded !== undefined ? 'left over' : piece.isCut === true ? 'yes' : '',
    ]),
  );
  return {
    name: 'cuts',
    headings: [
      'Profile',
      'Stick',
      'Stock',
      'Stick or board number',
      'Blank',
      'Blanks across',
      'From',
      `Stick length (${unit})`,
      'Cut',
      'Piece',
      'Part',
      'Length',
      `Length (${unit})`,
      'Cut already',
    ],
    rows,
  };
}

export function listOffcuts(plan: JobPlan): List {
  const { shop } = plan.job;
  const { unit } = shop;
  const rows = eachStick(plan, ({ profile }, stick) =>
    stick.offcutKept
      ? [[profile.name, stick.id, printExact(stick.offcut, shop), numberIn(stick.offcut, unit)]]
      : [],
  );
  return {
    name: 'offcuts',
    headings: ['Profile', 'Of stick', 'Length', `Length (${unit})`],
    rows,
  };
}

function eachStick(
  { profiles }: JobPlan,
  rowsOf: (planned: ProfilePlan, stick: CutStick) => ListValue[][],
): ListValue[][] {
  return profiles.flatMap((planned) => planned.sticks.flatMap((stick) => rowsOf(planned, stick)));
}

function sticksByPiece(plan: JobPlan): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const stick of plan.profiles.flatMap(({ sticks }) => sticks)) {
    for (const { id, unneeded } of stick.pieces) {
      if (unneeded !== undefined) continue;
      const known = found.get(id);
      if (known === undefined) found.set(id, [stick.id]);
      else known.push(stick.id);
    }
  }
  return found;
}
