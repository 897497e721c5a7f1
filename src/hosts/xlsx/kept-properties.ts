/** A file's custom document properties (ECMA-376 part 1, 15.2.12.2), as far as they are kept. */
import { strFromU8, unzipSync, zipSync } from 'fflate';
import type { Workbook } from 'hucre/xlsx';

import { CHOICE_NOTES } from '../../planning/input/table-choices.ts';
import type { Properties, Property } from '../notes.ts';

const PART = 'docProps/custom.xml';

/** Texts, numbers, and yes or no; not dates. */
export function keptProperties({ properties }: Workbook): Properties {
  return Object.fromEntries(
    Object.entries(properties?.custom ?? {}).filter(
      (pair): pair is [string, Property] => !(pair[1] instanceof Date),
    ),
  );
}

/** Whether the file tells of a person's own tables, without opening more of it than that. */
export function tellsOfTables(bytes: Uint8Array): boolean {
  return notesNamed(partOf(bytes)).length > 0;
}

/**
 * The file without its properties, for where they are too broken to be read; null where there are none.
 *
 * @returns `broken` has a text that says nothing under each note that they seem to have held.
 */
export function withoutProperties(
  bytes: Uint8Array,
): { readonly bytes: Uint8Array; readonly broken: Properties } | null {
  const part = partOf(bytes);
  if (part === null) return null;
  const others = unzipSync(bytes, { filter: ({ name }) => name !== PART });
  const broken = Object.fromEntries(notesNamed(part).map((key) => [key, '']));
  return { bytes: zipSync(others, { level: 0 }), broken };
}

function notesNamed(part: string | null): readonly string[] {
  return part === null ? [] : CHOICE_NOTES.filter((key) => part.includes(`"${key}"`));
}

function partOf(bytes: Uint8Array): string | null {
  try {
    const part = unzipSync(bytes, { filter: ({ name }) => name === PART })[PART];
    return part === undefined ? null : strFromU8(part);
  } catch {
    return null;
  }
}
