/** The rule of the printed page: paper, margins, header and footer. */
import type { PrintDescription } from '../../sheets/grammar/description.ts';
import { marginsOf } from '../../sheets/grammar/page-size.ts';
import { STANDARD_FONT } from '../../sheets/grammar/styles.ts';

/** Upright; ANSI/ASME Y14.1 size A; ISO 216. */
const PAPERS = { letter: ['8.5in', '11in'], a4: ['210mm', '297mm'] } as const;
const HEAD = `font: 8pt ${STANDARD_FONT.name}, 'Liberation Sans', sans-serif; color: #444444;`;

/** A header is there only to warn. */
const WARNING = `font: bold 10pt ${STANDARD_FONT.name}, 'Liberation Sans', sans-serif;`;

export function pageRule(print: PrintDescription): string {
  const { paper, orientation, header, footer, start } = print;
  const [width, height] = PAPERS[paper];
  const size = orientation === 'portrait' ? `${width} ${height}` : `${height} ${width}`;
  const { top, right, bottom, left } = marginsOf(print);
  const foot = `@bottom-left { content: ${quote(footer)}; ${HEAD} }
  @bottom-right { content: "Page " counter(page) " of " counter(pages); ${HEAD} }`;
  return `@page {
  size: ${size};
  margin: ${top}in ${right}in ${bottom}in ${left}in;
  @top-center { content: ${quote(header)}; ${WARNING} }
  ${start === undefined ? foot : ''}
}`;
}

/** A text of a style sheet: whatever could end it is written by its number (CSS Syntax 3, 4.3.7). */
function quote(text: string): string {
  const escaped = text.replace(
    /["\\<\p{Cc}\p{Zl}\p{Zp}]/gu,
    (character) => `\\${(character.codePointAt(0) ?? 32).toString(16)} `,
  );
  return `"${escaped}"`;
}
