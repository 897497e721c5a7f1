/** Reads the pictures of a sheet's drawing part, by ECMA-376 part 1, 20.5. */
import { columnLetters } from '../../src/core/cells/cell-range.ts';
import type { DrawingView } from './workbook-view.ts';
import { childOf, childrenOf, textOf, type Element } from './xml.ts';

/** 20.1.2.1: a millimetre is 36,000 English Metric Units. */
const EMU_PER_MM = 36_000;
/** PNG (W3C, third edition, 5.2 and 11.2.1): signature, then a header chunk of 13 bytes. */
const PNG_START = '89504e470d0a1a0a0000000d49484452';

export function readDrawings(
  drawing: Element,
  relations: ReadonlyMap<string, string>,
  mediaAt: (name: string) => Uint8Array | undefined,
): DrawingView[] {
  return [
    // One that stretches from cell to cell would follow the columns, not its own size.
    ...childrenOf(drawing, 'xdr:twoCellAnchor').map((): never => {
      throw new Error('a picture without a size of its own');
    }),
    ...childrenOf(drawing, 'xdr:oneCellAnchor').map((anchor): DrawingView => {
      const [row, column] = ['row', 'col'].map((name) =>
        Number(textOf(childOf(anchor, 'xdr:from', `xdr:${name}`))),
      ) as [number, number];
      const offsets = ['rowOff', 'colOff'].map((name) =>
        textOf(childOf(anchor, 'xdr:from', `xdr:${name}`)),
      );
      if (offsets.some((offset) => offset !== '0')) throw new Error('not at a corner');
      const size = childOf(anchor, 'xdr:ext')?.attributes ?? {};
      const inner = childOf(anchor, 'xdr:pic', 'xdr:spPr', 'a:xfrm', 'a:ext')?.attributes ?? {};
      if (size['cx'] !== inner['cx'] || size['cy'] !== inner['cy']) throw new Error('two sizes');
      const named = childOf(anchor, 'xdr:pic', 'xdr:nvPicPr', 'xdr:cNvPr')?.attributes ?? {};
      const blip = childOf(anchor, 'xdr:pic', 'xdr:blipFill', 'a:blip')?.attributes ?? {};
      const bytes = mediaAt(relations.get(blip['r:embed'] ?? '') ?? '') ?? new Uint8Array();
      return {
        at: `${columnLetters(column)}${row + 1}`,
        widthMm: Number(size['cx']) / EMU_PER_MM,
        heightMm: Number(size['cy']) / EMU_PER_MM,
        title: named['title'] ?? '',
        alt: named['descr'] ?? '',
        isPng: Buffer.from(bytes).toString('hex').startsWith(PNG_START),
      };
    }),
  ];
}
