/** What is kept with a sheet, after a table of it has grown downwards. */
import { cellName, parseRange, type CellRange } from '../../core/cells/cell-range.ts';
import type { SheetMetadata } from './sheet-metadata.ts';

/** A table's range before, and its last row, from 0, from now on. */
export interface Growth {
  readonly table: CellRange;
  readonly bottom: number;
}

/** The table grows, and so do rules of its columns that reach to its last row. */
export function growMetadata(kept: SheetMetadata, growth: Growth): SheetMetadata {
  const { tables, validations, highlights, file } = kept;
  const grown = <T extends { readonly range: string }>(all: readonly T[]): T[] =>
    all.map((one) => ({ ...one, range: growRanges(one.range, growth) }));
  const { dataValidations, conditionalRules } = file ?? {};
  return {
    ...kept,
    tables: grown(tables),
    validations: grown(validations),
    ...(highlights === undefined ? {} : { highlights: grown(highlights) }),
    ...(file === undefined
      ? {}
      : {
          file: {
            ...file,
            ...(dataValidations === undefined ? {} : { dataValidations: grown(dataValidations) }),
            ...(conditionalRules === undefined
              ? {}
              : { conditionalRules: grown(conditionalRules) }),
          },
        }),
  };
}

/** One range, or several with blanks between them as rules in a file have them. */
function growRanges(text: string, growth: Growth): string {
  const grown = text.split(' ').map((one) => {
    const range = parseRange(one.replaceAll('$', ''));
    return range === null || !growsAlong(range, growth)
      ? one
      : `${cellName(range.top, range.left)}:${cellName(growth.bottom, range.right)}`;
  });
  return grown.join(' ');
}

/** Whether a range is of the table's columns and ends with its last row. */
export function growsAlong(range: CellRange, { table }: Growth): boolean {
  return (
    range.bottom === table.bottom &&
    range.top >= table.top &&
    range.left >= table.left &&
    range.right <= table.right
  );
}
