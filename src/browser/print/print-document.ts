/** Printed blocks as a page of their own: to be looked at, printed or kept as one file. */
import { escapeHtml } from '../../exports/shop-view/markup.ts';
import type { DecimalSign } from '../../core/units/format-number.ts';
import type { SheetDescription } from '../../sheets/grammar/description.ts';
import { marginsOf } from '../../sheets/grammar/page-size.ts';
import type { PrintedPages } from '../../pane/services.ts';
import { PRINTED_CSS } from './print-css.ts';
import { pageRule } from './page-rule.ts';
import { paperInches, printTables } from './print-table.ts';
import { printedFromDescription } from './printed-from-description.ts';

/** @param isWanted Of a block, by the text that it begins with. */
export function printDocument(
  sheet: SheetDescription,
  decimalSign: DecimalSign,
  isWanted: (heading: string) => boolean,
): PrintedPages {
  const { print, name } = sheet;
  const { width, height } = paperInches(print);
  const { top, right, bottom, left } = marginsOf(print);
  const blocks = printTables(printedFromDescription(sheet, decimalSign), noPictures, isWanted);
  // On the screen each block is a sheet of paper; a printer makes its own.
  const css = `${pageRule(print)}${PRINTED_CSS}
html, body { margin: 0; background: #ffffff; }
@media screen {
  html, body { background: #9aa3a7; color-scheme: light; }
  .printed {
    box-sizing: border-box;
    width: ${width}in;
    min-height: ${height}in;
    margin: 0 0 0.2in;
    padding: ${top}in ${right}in ${bottom}in ${left}in;
    background: #ffffff;
  }
}`;
  const html = `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>${escapeHtml(name)}</title><style>${css}</style></head><body>${blocks.join('')}</body></html>`;
  return { html, blocks: blocks.length, width };
}

/** What is described has drawings, not pictures. */
function noPictures(): string {
  throw new RangeError('A described sheet has no picture.');
}
