/** An address as squares that a phone's camera reads (ISO/IEC 18004), for paper. */
import encodeQR from 'qr';
import { DOTS_PER_INCH, type Drawing, type PathShape, type TextShape } from './drawing.ts';

const DOT_MM = 25.4 / DOTS_PER_INCH;
/** ISO/IEC 18004:2024, 9.1: blank squares around the others. */
const QUIET = 4;
/** So wide are the squares together at least; each is as many whole dots of a print as that takes. */
const LEAST_MM = 25;
/** Under this a square is no longer told apart on an office printer's paper. Common practice [C]. */
const LEAST_DOTS = 5;
const WORDS = { size: 3.6, above: 3, below: 1 } as const;

/**
 * @param address What is read; byte for byte.
 * @param words Under the squares, in one line of a dozen letters.
 * @returns Squares that a fault in 15 of 100 leaves readable, edges on whole dots of the print.
 */
export function drawCode(address: string, words: string, title: string): Drawing {
  const dark = encodeQR(address, 'raw', { ecc: 'medium', border: QUIET });
  const across = dark.length;
  const dots = Math.max(LEAST_DOTS, Math.ceil(LEAST_MM / DOT_MM / (across - 2 * QUIET)));
  const square = dots * DOT_MM;
  const width = across * square;
  const caption: TextShape = {
    kind: 'text',
    at: [width / 2, width + WORDS.above],
    text: words,
    size: WORDS.size,
    anchor: 'middle',
    tone: 'ink',
  };
  return {
    title,
    alt: `A code to scan: ${words}. It holds the address ${address}`,
    width,
    height: width + WORDS.above + WORDS.below,
    shapes: [...dark.flatMap((row, at) => runsOf(row, at * square, square)), caption],
  };
}

/** Dark squares beside each other as one. */
function runsOf(row: readonly boolean[], top: number, square: number): PathShape[] {
  const runs: PathShape[] = [];
  for (let from = 0; from < row.length; from++) {
    if (row[from] !== true) continue;
    let to = from;
    while (row[to] === true) to++;
    const [left, right, bottom] = [from * square, to * square, top + square];
    runs.push({
      kind: 'path',
      points: [
        [left, top],
        [right, top],
        [right, bottom],
        [left, bottom],
      ],
      closed: true,
      fill: 'ink',
    });
    from = to;
  }
  return runs;
}
