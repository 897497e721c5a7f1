/** Pastes what comes from other programs in our own way; what was copied in the grid, in the grid's. */
import { ISheetClipboardService, PREDEFINED_HOOK_NAME_PASTE } from '@univerjs/sheets-ui';
import { fault, type Fault } from '../../../core/faults/fault.ts';
import type { Grid } from '../grid.ts';
import type { CopiedCells } from './copied-cells.ts';
import { copiedHtml, countCells } from './copied-html.ts';
import { harmlessHtml } from './harmless-html.ts';
import { keepFormats } from './keep-formats.ts';
import { MOST_PASTED_CELLS } from './limits.ts';
import { putCells } from './put-cells.ts';
import { copiedText } from './tab-text.ts';

const HTML = 'text/html';
const TEXT = 'text/plain';
/** The grid's own paste takes a length for a date, and formats of a copied page along. */
const OURS: readonly string[] = [
  PREDEFINED_HOOK_NAME_PASTE.DEFAULT_PASTE,
  PREDEFINED_HOOK_NAME_PASTE.SPECIAL_PASTE_VALUE,
];

/** @param say Told why something was not pasted; the sheet then is as it was. */
export function repairPaste(grid: Grid, say: (faults: readonly Fault[]) => void): void {
  const clipboard = grid.services.get(ISheetClipboardService);
  const usual = {
    keys: clipboard.legacyPaste.bind(clipboard),
    menu: clipboard.paste.bind(clipboard),
  };
  const fromHere = (html: string): boolean => {
    const id = /data-copy-id="([^\s"]+)"/u.exec(html)?.[1];
    return id !== undefined && clipboard.copyContentCache().get(id) !== undefined;
  };
  /** False where there are no cells in it. */
  const paste = (html: string, text: string): boolean => {
    const count = Math.max(countCells(html), countTabs(text));
    if (count > MOST_PASTED_CELLS) {
      say([fault('grid.paste-too-many', 'paste', count, { limit: MOST_PASTED_CELLS })]);
      return true;
    }
    const copied = cellsOf(html, text);
    if (copied === null) return false;
    const put = putCells(grid, copied);
    if (put.ok) clipboard.setShowMenu(false);
    else say(put.faults);
    return true;
  };
  keepFormats(clipboard);
  clipboard.legacyPaste = async (html = '', text = '', files) => {
    if (fromHere(html)) return usual.keys(html, text, files);
    return paste(html, text) || usual.keys(harmlessHtml(html), text, files);
  };
  clipboard.paste = async (item, kind = PREDEFINED_HOOK_NAME_PASTE.DEFAULT_PASTE) => {
    const get = async (type: string): Promise<string> =>
      item.types.includes(type) ? (await item.getType(type)).text() : '';
    const [html, text] = [await get(HTML), await get(TEXT)];
    if (fromHere(html)) return usual.menu(item, kind);
    if (OURS.includes(kind) && paste(html, text)) return true;
    return usual.menu(harmless(item, html), kind);
  };
}

/** The same on a clipboard of its own, its HTML made harmless. */
function harmless(item: ClipboardItem, html: string): ClipboardItem {
  if (html === '') return item;
  const types = item.types.filter((type) => type !== HTML);
  return new ClipboardItem({
    ...Object.fromEntries(types.map((type) => [type, item.getType(type)])),
    [HTML]: new Blob([harmlessHtml(html)], { type: HTML }),
  });
}

function countTabs(text: string): number {
  let count = 0;
  for (let at = 0; at < text.length; at++) if (text[at] === '\t' || text[at] === '\n') count += 1;
  return count;
}

/** A table goes before the text that comes along with it, which has rounded its numbers. */
function cellsOf(html: string, text: string): CopiedCells | null {
  const table = countCells(html) === 0 ? null : copiedHtml(html);
  if (table !== null) return table;
  return text === '' ? null : copiedText(text);
}
