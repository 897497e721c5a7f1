/** Long texts kept in the workbook as custom XML parts (ExcelApi 1.5): they are saved and copied with it. */
import type { KeptTextKey } from '../host.ts';
import { namespaceOf, unwrapText, wrapText } from '../workbook/kept-text.ts';

/** Of several, which only a copied part could make, the first that can be read. */
export async function keptText(
  context: Excel.RequestContext,
  key: KeptTextKey,
): Promise<string | undefined> {
  const parts = context.workbook.customXmlParts.getByNamespace(namespaceOf(key));
  parts.load('items/id');
  await context.sync();
  const texts = parts.items.map((part) => part.getXml());
  if (texts.length === 0) return undefined;
  await context.sync();
  return texts.flatMap(({ value }) => unwrapText(value)?.text ?? [])[0];
}

/** The text takes the place of the one before; without one, that goes. */
export async function keepText(
  context: Excel.RequestContext,
  key: KeptTextKey,
  text: string | undefined,
): Promise<void> {
  const { customXmlParts } = context.workbook;
  const before = customXmlParts.getByNamespace(namespaceOf(key));
  before.load('items/id');
  await context.sync();
  if (text !== undefined) customXmlParts.add(wrapText(key, text));
  for (const part of before.items) part.delete();
  await context.sync();
}
