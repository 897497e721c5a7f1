import { phrase, type Argument } from '../../core/faults/argument.ts';
import { failed, fault, ok, type Fault, type Outcome } from '../../core/faults/fault.ts';
import { countSticks, type StickOrder } from '../../cutting/count-sticks.ts';
import { LONGEST_RUN_INCHES } from '../../core/units/plausible-length.ts';
import type { ArgumentTable } from '../argument.ts';
import { answerOnce } from '../answer.ts';
import type { Range } from '../cell.ts';
import { isBlank, readArgument } from '../read-argument.ts';
import { blockOf, sizeFault, type Block } from '../shape.ts';

const LENGTH = {
  kind: 'length',
  least: 'above 0',
  blank: 'refused',
  most: LONGEST_RUN_INCHES,
} as const;

export const ARGUMENTS = {
  pieces: { name: 'pieces', ...LENGTH },
  stickLength: { name: 'stickLength', ...LENGTH },
  quantities: { name: 'quantities', kind: 'whole number', least: 0, most: 20_000, blank: 1 },
  kerf: { name: 'kerf', kind: 'length', least: 'from 0', blank: 1 / 8, zero: 'left out' },
  endTrim: { name: 'endTrim', kind: 'length', least: 'from 0', blank: 0 },
} as const satisfies ArgumentTable;

const { pieces: PIECES, quantities: QUANTITIES, ...SINGLES } = ARGUMENTS;
/** A message is for reading: past so many faults it says how many more there are. */
const MOST_FAULTS_SAID = 5;

/**
 * How many sticks of one length a range of pieces can be cut from, by a quick plan: enough; fewer may
 * do. Blank cells are skipped.
 * @customfunction STICKS
 * @helpurl functions.html#sticks
 * @param pieces Lengths of the pieces, a range: inches, or texts such as 7' 4 3/8" or 2.29 m.
 * @param stickLength Length of a stick: inches, or a text such as 16' or 4.8 m.
 * @param [quantities] How many of each piece, a range of the same size as pieces: whole numbers; 1
 * each when left out.
 * @param [kerf] Lost at each cut: inches, or a text such as 1/8 or 3 mm; 1/8 in when left out or 0,
 * the text "0" for none.
 * @param [endTrim] Cut off each end of every stick: inches, or a text such as 1/2 or 12 mm; 0 when
 * left out.
 * @example =COVE.STICKS({84;84;32}, 192)
 */
export function sticks(
  pieces: any[][],
  stickLength: any[][],
  quantities?: any[][],
  kerf?: any[][],
  endTrim?: any[][],
): any[][] {
  return answerOnce(SINGLES, { stickLength, kerf, endTrim }, (given) => {
    const list = readPieces(pieces, quantities);
    if (!list.ok) return failed(...shorten(list.faults));
    const count = countSticks({ ...given, pieces: list.value });
    return count.ok ? ok([[count.value.sticks]]) : failed(...shorten(count.faults));
  });
}

function readPieces(pieces: Range, quantities: Range): Outcome<StickOrder['pieces']> {
  const lengths = blockOf(pieces);
  const counts = blockOf(quantities);
  const single = counts.rows === 1 && counts.columns === 1;
  if (!single && (counts.rows !== lengths.rows || counts.columns !== lengths.columns)) {
    return failed(unlike(counts, lengths));
  }
  if (single && (lengths.rows > 1 || lengths.columns > 1) && !isBlank(counts.at(0, 0))) {
    return failed(unlike(counts, lengths));
  }
  const list: StickOrder['pieces'][number][] = [];
  const faults: Fault[] = [];
  for (let row = 0; row < lengths.rows; row += 1) {
    for (let column = 0; column < lengths.columns; column += 1) {
      const cell = lengths.at(row, column);
      if (isBlank(cell)) continue;
      const name = nameOf('piece', lengths, row, column);
      const many = nameOf('quantity', lengths, row, column);
      const length = readArgument({ ...PIECES, name }, cell);
      const quantity = readArgument({ ...QUANTITIES, name: many }, counts.at(row, column));
      if (length.ok && quantity.ok) {
        list.push({ name, length: length.value, quantity: quantity.value });
      }
      for (const one of [length, quantity]) if (!one.ok) faults.push(...one.faults);
    }
  }
  if (faults.length > 0) return failed(...faults);
  return list.length > 0 ? ok(list) : failed(fault('length.missing', PIECES.name, null));
}

/** What faults call a piece or its quantity: by its place from the first row and column of the range. */
function nameOf(what: 'piece' | 'quantity', block: Block, row: number, column: number): Argument {
  if (block.rows === 1 && block.columns === 1) {
    return what === 'piece' ? 'thePiece' : 'theQuantity';
  }
  if (block.columns === 1) return phrase(`${what}InRow`, { row: row + 1 });
  return phrase(`${what}InCell`, { row: row + 1, column: column + 1 });
}

function unlike(counts: Block, lengths: Block): Fault {
  const wanted = { wantedRows: lengths.rows, wantedColumns: lengths.columns };
  return sizeFault('function.shape', QUANTITIES.name, counts, wanted);
}

function shorten(faults: readonly Fault[]): readonly Fault[] {
  const more = faults.length - MOST_FAULTS_SAID;
  if (more <= 0) return faults;
  return [...faults.slice(0, MOST_FAULTS_SAID), fault('function.more-faults', PIECES.name, more)];
}
