/** What pieces and sticks of `cut` are made of: a piece is cut from sticks of its material alone. */
import { fault, placeFault, type Fault, type Where } from '../core/faults/fault.ts';
import { nameKey, sameName } from '../planning/job.ts';

/** A row of either list. */
export interface OfMaterial {
  /** As it was typed; empty where nothing is. */
  readonly material: string;
  readonly materialAt: Where;
}

/** The materials that sticks are told apart by; none where all pieces are cut from all sticks. */
export function materialsOf(sticks: readonly OfMaterial[]): readonly string[] {
  const named = distinct(sticks);
  return named.length < 2 ? [] : named;
}

/** Pieces and sticks that can't be told to be of one material, or of which: at the cell that must change. */
export function checkMaterials(
  pieces: readonly OfMaterial[],
  sticks: readonly OfMaterial[],
): Fault[] {
  const [ofPieces, ofSticks] = [distinct(pieces), distinct(sticks)];
  if (ofSticks.length === 0) return ofPieces.length < 2 ? [] : untold('sticks', pieces, ofPieces);
  const blankSticks = blanks(sticks);
  if (blankSticks.length > 0) return blankSticks;
  if (ofSticks.length > 1) {
    if (ofPieces.length === 0) return untold('pieces', sticks, ofSticks);
    const blankPieces = blanks(pieces);
    if (blankPieces.length > 0) return blankPieces;
  }
  return pieces
    .filter((one) => one.material !== '' && !ofSticks.some((own) => sameName(own, one.material)))
    .map(({ material, materialAt }) => {
      const details = { known: ofSticks.join(', ') };
      const one = fault('cutting.material-without-sticks', 'material', material, { details });
      return placeFault(one, materialAt);
    });
}

/** One list names several, the other none: at the first that differs. */
function untold(
  other: 'pieces' | 'sticks',
  rows: readonly OfMaterial[],
  materials: readonly string[],
): Fault[] {
  const differs = rows.find(({ material }) => material === materials[1]);
  const details = { other, first: materials[0] ?? '' };
  const one = fault('cutting.materials-untold', 'material', materials[1] ?? '', { details });
  return differs === undefined ? [] : [placeFault(one, differs.materialAt)];
}

function blanks(rows: readonly OfMaterial[]): Fault[] {
  return rows
    .filter(({ material }) => material === '')
    .map(({ materialAt }) =>
      placeFault(fault('cutting.some-materials', 'material', null), materialAt),
    );
}

/** Each once, as it is typed first. */
function distinct(rows: readonly OfMaterial[]): string[] {
  const found = new Map<string, string>();
  for (const { material } of rows) {
    const key = nameKey(material);
    if (key !== '' && !found.has(key)) found.set(key, material);
  }
  return [...found.values()];
}
