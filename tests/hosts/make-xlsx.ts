/** Makes small .xlsx files by hand, so that reading is tested on files our own writer never made. */
import { strToU8, zipSync, type Zippable } from 'fflate';

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';

export interface HandMade {
  /** Each sheet's name and the inside of its sheetData. */
  readonly sheets: readonly (readonly [name: string, sheetData: string])[];
  /** The inside of sst. */
  readonly sharedStrings?: string;
  /** More parts, or others in their place. */
  readonly parts?: Readonly<Record<string, string>>;
}

/** The styles that there always are; those of formats follow. */
export const MADE_STYLES = 4;

/** Style 1 is a date (built-in format 14), style 2 a time of its own format, style 3 text. */
export const stylesXml = (formats: readonly string[] = []): string => `<styleSheet xmlns="${MAIN}">
<numFmts count="${formats.length + 1}">${['h:mm', ...formats]
  .map((one, at) => `<numFmt numFmtId="${164 + at}" formatCode="${escaped(one)}"/>`)
  .join('')}</numFmts>
<fonts count="1"><font><sz val="11"/><name val="Calibri"/></font></fonts>
<fills count="1"><fill><patternFill patternType="none"/></fill></fills>
<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>
<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>
<cellXfs count="${MADE_STYLES + formats.length}">${[
  0,
  14,
  164,
  49,
  ...formats.map((_, at) => 165 + at),
]
  .map((id) => `<xf numFmtId="${id}" fontId="0" fillId="0" borderId="0" xfId="0"/>`)
  .join('')}</cellXfs></styleSheet>`;

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
}

export function makeXlsx({ sheets, sharedStrings = '', parts = {} }: HandMade): Uint8Array {
  const numbered = sheets.map(([name, data], index) => ({ name, data, id: index + 1 }));
  const files: Record<string, string> = {
    '[Content_Types].xml': `<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/></Types>`,
    '_rels/.rels': relationships([['rId1', 'officeDocument', 'xl/workbook.xml']]),
    'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets>${numbered
      .map(({ name, id }) => `<sheet name="${name}" sheetId="${id}" r:id="rId${id}"/>`)
      .join('')}</sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': relationships([
      ...numbered.map(({ id }) => [`rId${id}`, 'worksheet', `worksheets/sheet${id}.xml`] as const),
      ['rId98', 'styles', 'styles.xml'],
      ['rId99', 'sharedStrings', 'sharedStrings.xml'],
    ]),
    'xl/styles.xml': stylesXml(),
    'xl/sharedStrings.xml': `<sst xmlns="${MAIN}">${sharedStrings}</sst>`,
    ...Object.fromEntries(
      numbered.map(({ data, id }) => [
        `xl/worksheets/sheet${id}.xml`,
        `<worksheet xmlns="${MAIN}"><sheetData>${data}</sheetData></worksheet>`,
      ]),
    ),
    ...parts,
  };
  const zippable: Zippable = {};
  for (const [name, xml] of Object.entries(files)) zippable[name] = strToU8(xml);
  return zipSync(zippable);
}

/** A row of cells with inline text, or numbers. */
export function row(number: number, ...values: readonly (string | number | null)[]): string {
  const cells = values.map((value, index) => {
    const at = `${String.fromCharCode(65 + index)}${number}`;
    if (value === null) return '';
    if (typeof value === 'number') return `<c r="${at}"><v>${value}</v></c>`;
    return `<c r="${at}" t="inlineStr"><is><t xml:space="preserve">${value}</t></is></c>`;
  });
  return `<row r="${number}">${cells.join('')}</row>`;
}

function relationships(all: readonly (readonly [string, string, string])[]): string {
  const inside = all.map(
    ([id, type, target]) =>
      `<Relationship Id="${id}" Type="${OFFICE}/${type}" Target="${target}"/>`,
  );
  return `<Relationships xmlns="${PACKAGE}/relationships">${inside.join('')}</Relationships>`;
}
