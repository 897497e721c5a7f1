/** What the printer gets in the place of the page; on the screen it is not to be seen. */
import { PRINTED_CSS } from '../../browser/print/print-css.ts';
import { pageRule } from '../../browser/print/page-rule.ts';
import { printTables } from '../../browser/print/print-table.ts';
import type { PrintedSheet } from '../../browser/print/printed-sheet.ts';
import { make } from '../shell/element.ts';

const ID = 'print-view';

/** Stands until it is printed; settles once its pictures are there. */
export async function showForPrinting(sheet: PrintedSheet): Promise<void> {
  document.getElementById(ID)?.remove();
  const addresses: string[] = [];
  const tables = printTables(sheet, (png) => {
    const address = URL.createObjectURL(new Blob([Uint8Array.from(png)], { type: 'image/png' }));
    addresses.push(address);
    return address;
  });
  // Made by our own writer, which escapes every text.
  const view = make('div', { id: ID, innerHTML: tables.join('') });
  view.prepend(make('style', {}, pageRule(sheet.print), PRINTED_CSS));
  document.body.append(view);
  window.addEventListener(
    'afterprint',
    () => {
      view.remove();
      for (const address of addresses) URL.revokeObjectURL(address);
    },
    { once: true },
  );
  await Promise.all([...view.querySelectorAll('img')].map((image) => image.decode()));
}
