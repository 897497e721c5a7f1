/** The table that another spreadsheet puts on the clipboard as HTML. */
import type { CopiedCell, CopiedCells } from './copied-cells.ts';

type Merge = CopiedCells['merges'][number];

/** A cell spans no more: a broken number must not make a sheet of a million cells. */
const WIDEST_SPAN = 1000;

/** Roughly how many cells are in it, told without reading it. */
export function countCells(html: string): number {
  return html.match(/<t[dh][\s>]/giu)?.length ?? 0;
}

/** Null where there is no table in it. Nothing of it is run, loaded or shown. */
export function copiedHtml(html: string): CopiedCells | null {
  const page = new DOMParser().parseFromString(html, 'text/html');
  const table = page.querySelector('table');
  if (table === null) return null;
  const formats = formatsByClass(page);
  const rows: (CopiedCell | null)[][] = [];
  const merges: Merge[] = [];
  const covered = new Set<string>();
  for (const [r, tr] of [...table.rows].entries()) {
    const row: (CopiedCell | null)[] = [];
    for (const cell of tr.cells) {
      while (covered.has(`${r},${row.length}`)) row.push(null);
      const left = row.length;
      const [down, across] = [span(cell.rowSpan), span(cell.colSpan)];
      row.push(copiedCell(cell, formats));
      for (let more = 1; more < across; more++) row.push(null);
      if (down * across === 1) continue;
      merges.push({ top: r, left, bottom: r + down - 1, right: left + across - 1 });
      for (let y = r + 1; y < r + down; y++) {
        for (let x = left; x < left + across; x++) covered.add(`${y},${x}`);
      }
    }
    rows.push(row);
  }
  const last = rows.length - 1;
  return {
    rows,
    merges: merges
      .map((one) => ({ ...one, bottom: Math.min(one.bottom, last) }))
      .filter(({ top, left, bottom, right }) => top < bottom || left < right),
  };
}

function span(given: number): number {
  return Math.min(Math.max(1, given), WIDEST_SPAN);
}

function copiedCell(
  cell: HTMLTableCellElement,
  formats: ReadonlyMap<string, string>,
): CopiedCell | null {
  const text = shownText(cell);
  if (text === '') return null;
  const value = heldValue(cell);
  const format = formatOf(cell, formats);
  if (typeof value === 'string' || format === '@')
    return { text: typeof value === 'string' ? value : text, isText: true };
  return {
    text,
    ...(value === undefined ? {} : { number: value }),
    ...(format === undefined || format === 'General' ? {} : { format }),
  };
}

/** What the other program tells of the value: a number, a text, or nothing. */
function heldValue(cell: Element): number | string | undefined {
  const own = cell.getAttribute('data-sheets-value');
  if (own !== null) return sheetsValue(own);
  if (cell.hasAttribute('x:str')) return shownText(cell);
  const number = cell.getAttribute('sdval') ?? cell.getAttribute('x:num') ?? '';
  return number !== '' && Number.isFinite(Number(number)) ? Number(number) : undefined;
}

/** JSON of a kind (1), and the value under its number: 2 text, 3 number. */
function sheetsValue(json: string): number | string | undefined {
  try {
    const held = JSON.parse(json) as Readonly<Record<string, unknown>>;
    if (held['1'] === 2 && typeof held['2'] === 'string') return held['2'];
    return held['1'] === 3 && typeof held['3'] === 'number' ? held['3'] : undefined;
  } catch {
    return undefined;
  }
}

function formatOf(cell: Element, formats: ReadonlyMap<string, string>): string | undefined {
  // Locale of the format; of the text; the format itself.
  const own = /^[^;]*;[^;]*;(.+)$/su.exec(cell.getAttribute('sdnum') ?? '')?.[1];
  if (own !== undefined) return own;
  const styled = msoFormat(cell.getAttribute('style') ?? '');
  if (styled !== undefined) return styled;
  for (const name of cell.classList) {
    const format = formats.get(name);
    if (format !== undefined) return format;
  }
  return undefined;
}

function formatsByClass(page: Document): ReadonlyMap<string, string> {
  const formats = new Map<string, string>();
  for (const { textContent } of page.querySelectorAll('style')) {
    for (const [, name = '', rules = ''] of textContent.matchAll(/\.([\w-]+)\s*\{([^}]*)\}/gu)) {
      const format = msoFormat(rules);
      if (format !== undefined) formats.set(name, format);
    }
  }
  return formats;
}

/** Written with a backslash before most signs, and bare words for the usual ones. */
function msoFormat(rules: string): string | undefined {
  const found = /mso-number-format:\s*("(?:[^"\\]|\\.)*"|[^;]+)/iu.exec(rules)?.[1];
  return found?.replace(/^"|"$/gu, '').replace(/\\(.)/gsu, '$1').trim();
}

/** As a browser would show it: runs of blanks are one, a break ends a line. */
function shownText(cell: Element): string {
  let text = '';
  const walk = (node: Node): void => {
    if (node.nodeType === Node.TEXT_NODE)
      text += (node.nodeValue ?? '').replace(/[ \t\r\n]+/gu, ' ');
    else if (node.nodeName === 'BR') text += '\n';
    else if (node.nodeName !== 'STYLE' && node.nodeName !== 'SCRIPT') node.childNodes.forEach(walk);
  };
  cell.childNodes.forEach(walk);
  return text
    .replaceAll('\u00A0', ' ')
    .replace(/ *\n */gu, '\n')
    .trim();
}
