/** The workbook's custom document properties (ExcelApi 1.7), in which notes are kept. */
import type { Notes } from '../host.ts';
import { withNotes, type Properties } from '../notes.ts';

export async function loadProperties(context: Excel.RequestContext): Promise<Properties> {
  const { custom } = context.workbook.properties;
  custom.load('items/key,items/value');
  await context.sync();
  const texts = custom.items.flatMap(({ key, value }): (readonly [string, string])[] => {
    const held: unknown = value;
    return typeof held === 'string' ? [[key, held]] : [];
  });
  return Object.fromEntries(texts);
}

/** Asks for what differs; done with the next sync. @param before As they were when last loaded. */
export function changeProperties(
  context: Excel.RequestContext,
  before: Properties,
  notes: Notes,
): void {
  const { custom } = context.workbook.properties;
  const after = withNotes(before, notes);
  for (const name of Object.keys(before)) {
    if (!Object.hasOwn(after, name)) custom.getItem(name).delete();
  }
  for (const [name, value] of Object.entries(after)) {
    if (before[name] !== value) custom.add(name, value);
  }
}
