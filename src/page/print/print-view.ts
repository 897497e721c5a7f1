/** What the printer gets in the place of the page; on the screen it is not to be seen. */
import { make } from '../shell/element.ts';
import { pageRule } from './page-rule.ts';
import { printTables } from './print-table.ts';
import type { PrintedSheet } from './printed-sheet.ts';

const ID = 'print-view';

/** Stands until it is printed; settles once its pictures are there. */
export async function showForPrinting(sheet: PrintedSheet): Promise<void> {
  document.getElementById(ID)?.remove();
  const addresses: string[] = [];
  const tables = printTables(sheet, ({ png }) => {
    const address = URL.createObjectURL(new Blob([Uint8Array.from(png)], { type: 'image/png' }));
    addresses.push(address);
    return address;
  });
  const view = make('div', { id: ID }, make('style', {}, pageRule(sheet.print)), ...tables);
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
