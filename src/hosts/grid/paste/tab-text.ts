/** Text with tabs and line ends as spreadsheets copy it: a cell with either in it stands in quotes. */
import type { CopiedCell, CopiedCells } from './copied-cells.ts';

/** A quoted cell to its closing quote before a tab or line end; or all up to one. */
const CELL = /"((?:[^"]|"")*)"(?=[\t\n]|$)|([^\t\n]*)/uy;

/** A quote that closes nowhere, as an inch mark or a foot's, is a character like any other. */
export function copiedText(text: string): CopiedCells {
  const lines = text.replace(/\r\n?/gu, '\n').replace(/\n$/u, '');
  const rows: (CopiedCell | null)[][] = [];
  let row: (CopiedCell | null)[] = [];
  let at = 0;
  for (;;) {
    CELL.lastIndex = at;
    const [whole = '', quoted, plain = ''] = CELL.exec(lines) ?? [];
    // Only what needs its quotes was quoted: "A" between them is how it was typed.
    const content =
      quoted !== undefined && /[\t\n"]/u.test(quoted)
        ? quoted.replaceAll('""', '"')
        : quoted === undefined
          ? plain
          : whole;
    row.push(content === '' ? null : { text: content, mayBeFormula: true });
    at += whole.length;
    if (lines[at] === '\t') at += 1;
    else {
      rows.push(row);
      row = [];
      if (at >= lines.length) return { rows, merges: [] };
      at += 1;
    }
  }
}
