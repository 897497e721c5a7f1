/** A person's workbook as plain data, opened through any host that reads. */
import { FakeExcel, type PersonsCell } from './excel-fake/fake-excel.ts';
import { letters, readBox } from './excel-fake/address.ts';
import { MADE_STYLES, makeXlsx, stylesXml } from './make-xlsx.ts';

export interface PersonsSheet {
  readonly name: string;
  readonly rows: readonly (readonly PersonsCell[])[];
  readonly tables?: readonly { readonly name: string; readonly range: string }[];
  readonly merges?: readonly string[];
  /** Lines, from 1, that are hidden by hand or by a filter. */
  readonly hidden?: readonly number[];
  /** Columns, from 0, that are hidden. */
  readonly hiddenColumns?: readonly number[];
}

export function inExcel(sheets: readonly PersonsSheet[]): FakeExcel {
  const fake = new FakeExcel();
  const made = sheets.map(({ name, rows }) => fake.addSheet(name, rows));
  sheets.forEach(({ tables = [], merges = [], hidden = [], hiddenColumns = [] }, index) => {
    for (const line of hidden) made[index]!.hiddenRows.add(line - 1);
    for (const column of hiddenColumns) made[index]!.hiddenColumns.add(column);
    for (const { name, range } of tables) fake.addTable(made[index]!, range, name);
    for (const merge of merges) fake.merge(made[index]!, merge);
  });
  return fake;
}

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006/relationships';
const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
/** Date format of make-xlsx.ts. */
const DATE_STYLE = 1;

export function inFile(sheets: readonly PersonsSheet[]): Uint8Array {
  const parts: Record<string, string> = {};
  let tableId = 0;
  const formats = new Set(
    sheets.flatMap(({ rows }) => rows.flat().flatMap((cell) => formatOf(cell) ?? [])),
  );
  if (formats.size > 0) parts['xl/styles.xml'] = stylesXml([...formats]);
  const styleOf = (cell: PersonsCell): number => {
    const format = formatOf(cell);
    return format === undefined ? 0 : MADE_STYLES + [...formats].indexOf(format);
  };
  sheets.forEach(({ rows, tables = [], merges = [], hidden = [], hiddenColumns = [] }, index) => {
    const path = (name: string): string => `xl/worksheets/${name}`;
    const ids = tables.map(({ name, range }) => {
      tableId += 1;
      parts[`xl/tables/table${tableId}.xml`] = tableXml(tableId, name, range, rows);
      return tableId;
    });
    const merged = merges.map((ref) => `<mergeCell ref="${ref}"/>`).join('');
    const joined = ids.map((id) => `<tablePart r:id="rId${id}"/>`).join('');
    parts[path(`sheet${index + 1}.xml`)] =
      `<worksheet xmlns="${MAIN}" xmlns:r="${OFFICE}">${columnsXml(hiddenColumns)}<sheetData>${rows
        .map(
          (cells, row) =>
            `<row r="${row + 1}"${hidden.includes(row + 1) ? ' hidden="1"' : ''}>${cells
              .map((c, at) => cellXml(c, row, at, styleOf(c)))
              .join('')}</row>`,
        )
        .join('')}</sheetData>` +
      (merged && `<mergeCells>${merged}</mergeCells>`) +
      (joined && `<tableParts count="${ids.length}">${joined}</tableParts>`) +
      '</worksheet>';
    parts[path(`_rels/sheet${index + 1}.xml.rels`)] = `<Relationships xmlns="${PACKAGE}">${ids
      .map(
        (id) =>
          `<Relationship Id="rId${id}" Type="${OFFICE}/table" Target="../tables/table${id}.xml"/>`,
      )
      .join('')}</Relationships>`;
  });
  return makeXlsx({ sheets: sheets.map(({ name }) => [escapeXml(name), ''] as const), parts });
}

function columnsXml(hidden: readonly number[]): string {
  const columns = hidden.map((at) => `<col min="${at + 1}" max="${at + 1}" width="0" hidden="1"/>`);
  return columns.length === 0 ? '' : `<cols>${columns.join('')}</cols>`;
}

function tableXml(id: number, name: string, range: string, rows: PersonsSheet['rows']): string {
  const { top, left, right } = readBox(range);
  const columns = Array.from({ length: right - left + 1 }, (_, at) => {
    const heading = escapeXml(rows[top]?.[left + at] as string);
    return `<tableColumn id="${at + 1}" name="${heading}"/>`;
  });
  return `<table xmlns="${MAIN}" id="${id}" name="${name}" displayName="${name}" ref="${range}"><tableColumns count="${columns.length}">${columns.join('')}</tableColumns></table>`;
}

function formatOf(cell: PersonsCell): string | undefined {
  return typeof cell === 'object' && cell !== null && 'held' in cell ? cell.format : undefined;
}

function cellXml(cell: PersonsCell, row: number, column: number, style: number): string {
  const at = `r="${letters(column)}${row + 1}"`;
  if (cell === null) return '';
  if (typeof cell === 'number') return `<c ${at}><v>${cell}</v></c>`;
  if (typeof cell === 'boolean') return `<c ${at} t="b"><v>${Number(cell)}</v></c>`;
  if (typeof cell === 'string') {
    return `<c ${at} t="inlineStr"><is><t xml:space="preserve">${escapeXml(cell)}</t></is></c>`;
  }
  if ('error' in cell) return `<c ${at} t="e"><v>${cell.error}</v></c>`;
  if ('typed' in cell) throw new RangeError('Only Excel reads what is typed.');
  if ('held' in cell) return `<c ${at} s="${style}"><v>${cell.held}</v></c>`;
  if ('date' in cell) return `<c ${at} s="${DATE_STYLE}"><v>${cell.date}</v></c>`;
  const formula = `<f>${escapeXml(cell.formula.slice(1))}</f>`;
  if (typeof cell.value === 'string') {
    return `<c ${at} t="str">${formula}<v>${escapeXml(cell.value)}</v></c>`;
  }
  return `<c ${at}>${formula}<v>${Number(cell.value)}</v></c>`;
}

function escapeXml(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
}
