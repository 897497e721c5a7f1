/** Pictures on the grid's sheets as a file takes them. */
import type { IResources } from '@univerjs/core';
import type { PlainPicture } from '../../workbook/plain-workbook.ts';
import { resourceOf } from '../defined-names.ts';

const RESOURCE = 'SHEET_DRAWING_PLUGIN';
const PNG = 'data:image/png;base64,';

/** What is read of a picture as the grid keeps it. */
interface GridPicture {
  readonly source?: string;
  readonly title?: string;
  readonly description?: string;
  readonly transform?: { readonly width?: number; readonly height?: number } | null;
  readonly sheetTransform?: {
    readonly from: { readonly row: number; readonly column: number };
  };
}

interface SheetPictures {
  readonly data?: Readonly<Record<string, GridPicture>>;
  readonly order?: readonly string[];
}

/** PNGs of each sheet by its id, the lowest first; what is no PNG in the workbook itself is left out. */
export function gridPictures(
  resources: IResources | undefined,
): ReadonlyMap<string, PlainPicture[]> {
  const all = resourceOf<SheetPictures>(resources, RESOURCE);
  return new Map(
    Object.entries(all).map(([sheet, { data = {}, order = Object.keys(data) }]) => [
      sheet,
      order.flatMap((id) => picture(data[id])),
    ]),
  );
}

function picture(one: GridPicture | undefined): PlainPicture[] {
  const { source = '', title = '', description = '', transform, sheetTransform } = one ?? {};
  const { width = 0, height = 0 } = transform ?? {};
  if (sheetTransform === undefined || !source.startsWith(PNG) || width <= 0 || height <= 0)
    return [];
  const { row, column } = sheetTransform.from;
  const png = Uint8Array.from(atob(source.slice(PNG.length)), (char) => char.charCodeAt(0));
  return [{ png, row, column, width, height, title, alt: description }];
}
