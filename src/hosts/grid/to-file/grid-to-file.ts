/** The grid's workbook as the bytes of an .xlsx file, for the person to keep. */
import type { IStyleData, IWorkbookData, IWorksheetData, Nullable } from '@univerjs/core';
import { STANDARD_FONT } from '../../../sheets/grammar/styles.ts';
import { styleList } from '../../xlsx/file-styles.ts';
import type { PlainFont } from '../../workbook/plain-workbook.ts';
import { writePlainWorkbook } from '../../xlsx/write-plain-workbook.ts';
import { keptTextsOf, propertiesOf } from '../book-metadata.ts';
import { namesOfResources } from '../defined-names.ts';
import { toFileStyle } from '../convert-style.ts';
import { fileSheet } from './file-sheet.ts';
import { gridPictures } from './grid-pictures.ts';
import { NO_SPILLS, type GridSpills } from './grid-spills.ts';
import { withSoundTables } from './sound-tables.ts';

type Styles = IWorkbookData['styles'];
type Style = Nullable<IStyleData | string>;

/**
 * Writes the workbook: values, formulas with their values (ours as Excel stores them), styles, sizes,
 * panes, names, tables, page, rules and highlights, pictures at their true size. Sheets made here
 * are marked, so that the file is known again.
 *
 * @param data As the grid saves it.
 * @param spills Answers that stand in other cells than their formulas (see gridSpills).
 * @param made When, a day or a moment as a description says it; absent, it tells of none.
 * @returns The bytes, the same for the same workbook and moment; no author and no path among them.
 */
export function gridToFile(
  data: IWorkbookData,
  spills: GridSpills = NO_SPILLS,
  made?: string,
): Promise<Uint8Array> {
  const { sheetOrder, sheets, styles, resources, name, custom } = data;
  const pictures = gridPictures(resources);
  const font = fontOf(data);
  const list = styleList();
  const names = new Map<string, string | undefined>();
  const styleName = (given: readonly Style[]): string | undefined => {
    const key = given.map(styleKey).join('\n');
    if (!names.has(key)) {
      const style = Object.assign({}, ...given.map((one) => styleOf(one, styles))) as IStyleData;
      names.set(key, list.add(toFileStyle(style, font)));
    }
    return names.get(key);
  };
  return writePlainWorkbook({
    title: name,
    ...(made === undefined ? {} : { made }),
    font,
    styles: list.styles,
    sheets: withSoundTables(
      sheetOrder.map((id) =>
        fileSheet(sheets[id] as Partial<IWorksheetData>, {
          spillRanges: spills.ranges[id],
          spillCells: spills.cells[id],
          pictures: pictures.get(id) ?? [],
          styleName,
        }),
      ),
    ),
    names: namesOfResources(resources, (id) => sheets[id]?.name),
    properties: propertiesOf(custom),
    texts: keptTextsOf(custom),
  });
}

/** The one that cells without a style have: what came with the file, else that of our own sheets. */
function fontOf({ sheetOrder, sheets, styles }: IWorkbookData): PlainFont {
  const first = styleOf(sheets[sheetOrder[0] ?? '']?.defaultStyle, styles);
  return { name: first.ff ?? STANDARD_FONT.name, size: first.fs ?? STANDARD_FONT.size };
}

function styleOf(style: Style, styles: Styles): IStyleData {
  return (typeof style === 'string' ? styles[style] : style) ?? {};
}

function styleKey(style: Style): string {
  return typeof style === 'string' ? style : JSON.stringify(style ?? null);
}
