/** Sticks that are cut alike: of one row of Stock, into the same lengths with the same ends, in one order. */
import type { CutPiece, CutStick } from '../../planning/job-plan.ts';
import type { Profile } from '../../planning/job.ts';
import { wordsOfPiece, type PieceReading, type PieceWords } from './cutting-stick.ts';
import { sayOnSaw } from './saw-ends.ts';
import { sayOnBoard, sayPlaces } from './say-stretch.ts';

export interface LaidPiece {
  /** Of the first of its sticks. */
  readonly words: PieceWords;
  readonly left: string;
  readonly right: string;
}

/** One way of cutting a stick, and the sticks that are cut so. */
export interface LayOut {
  readonly first: CutStick;
  readonly sticks: readonly CutStick[];
  readonly pieces: readonly LaidPiece[];
  /** What else must be known of it, a row each. */
  readonly notes: readonly string[];
}

/** As the sticks come, so long as `wide` says; those of more sticks than that first, then by stock, the most pieces first. */
export function listLayOuts(
  sticks: readonly CutStick[],
  profile: Profile,
  reading: PieceReading,
  wide: number,
): readonly LayOut[] {
  const rows = new Map<CutStick['item'], number>();
  const found = new Map<string, { first: CutStick; sticks: CutStick[]; pieces: LaidPiece[] }>();
  for (const stick of sticks) {
    const { item, length, offcut, offcutKept, isCut = false } = stick;
    if (!rows.has(item)) rows.set(item, rows.size);
    const pieces = stick.pieces.map((cut): LaidPiece => {
      const words = wordsOfPiece(cut, stick, profile, reading);
      const joints = reading.joints.get(cut.id) ?? [];
      return { words, ...sayOnSaw(words, profile, joints, reading.shop.decimalSign) };
    });
    const key = JSON.stringify([
      rows.get(item),
      length.toFraction(),
      offcut.toFraction(),
      offcutKept,
      // Where pieces of it lie on its board is said of one that is still to be cut.
      item.stretch !== undefined && isCut,
      pieces.map(({ words: { cut, lie }, left, right }) => [
        cut.length.toFraction(),
        ...[left, right, lie],
        cut.piece === undefined ? markOf(cut) : '',
      ]),
    ]);
    const known = found.get(key);
    if (known === undefined) found.set(key, { first: stick, sticks: [stick], pieces });
    else known.sticks.push(stick);
  }
  const all = [...found.values()].map((one): LayOut => ({ ...one, notes: notesOf(one, reading) }));
  const isWide = (one: LayOut): boolean => one.sticks.length > wide;
  return all.sort(
    (one, other) =>
      Number(isWide(other)) - Number(isWide(one)) ||
      (rows.get(one.first.item) ?? 0) - (rows.get(other.first.item) ?? 0) ||
      other.pieces.length - one.pieces.length,
  );
}

/** What is written on the piece, or on a part of it; of one that no run asks for, what it is. */
export function markOf({ piece, part, unneeded }: CutPiece): string {
  if (piece !== undefined) return part === undefined ? piece.mark : `${piece.mark}, part ${part}`;
  return unneeded === undefined ? 'spare' : 'left over';
}

/** Where it lies on a board with defects, and what is left over of an earlier plan. */
function notesOf(
  { first, sticks }: Omit<LayOut, 'notes'>,
  { shop, numbers }: PieceReading,
): string[] {
  const { stretch } = first.item;
  const onBoard =
    stretch === undefined
      ? []
      : [`${sayOnBoard(stretch, shop)} ${sayPlaces(first, stretch, shop)}`.trim()];
  const left = sticks.flatMap(({ id, pieces: cuts }) =>
    cuts.flatMap(({ id: name, unneeded, recutTo }, at) => {
      if (unneeded === undefined) return [];
      const number = recutTo === undefined ? undefined : numbers.get(recutTo.id);
      const now =
        number === undefined
          ? 'nothing asks for it now'
          : `could be recut to No. ${number} on Pieces`;
      return [`${at + 1} of ${id}, ${name}, is left over: ${now}.`];
    }),
  );
  return [...onBoard, ...left];
}
