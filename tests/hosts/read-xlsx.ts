/** Reads an .xlsx back for tests: unzipped with fflate, its XML read here, by ECMA-376 part 1. */
import { strFromU8, unzipSync } from 'fflate';

import { readDrawings } from './read-xlsx-drawings.ts';
import { lookReader, type LookReader } from './read-xlsx-look.ts';
import type {
  CellView,
  HighlightView,
  PrintView,
  SheetView,
  TableView,
  ValidationView,
  WorkbookView,
} from './workbook-view.ts';
import { childOf, childrenOf, parseXml, textOf, type Element } from './xml.ts';

/** 18.3.1.63: 1 is letter, 9 is A4. */
const PAPERS: Readonly<Record<string, string>> = { 1: 'letter', 9: 'a4' };
/** Pixels of the standard font's widest digit and of the padding, as 18.3.1.13 needs them. */
const [DIGIT, PADDING] = [7, 5];

type Parts = ReadonlyMap<string, Element>;

/** Names that a workbook has for one sheet: what each page repeats, and what of it is printed. */
interface Printed {
  readonly titles: Element | undefined;
  readonly area: Element | undefined;
}

export function xlsxParts(bytes: Uint8Array): Parts {
  const parts = new Map<string, Element>();
  for (const [name, part] of Object.entries(unzipSync(bytes))) {
    if (/\.(xml|rels)$/.test(name)) parts.set(name, parseXml(strFromU8(part)));
  }
  return parts;
}

/** @param withDrawings Not for what another program saved, which places pictures in its own way. */
export function readXlsxBack(bytes: Uint8Array, withDrawings = true): WorkbookView {
  const parts = xlsxParts(bytes);
  const media = unzipSync(bytes, { filter: ({ name }) => name.startsWith('xl/media/') });
  const workbook = part(parts, 'xl/workbook.xml');
  const targets = relations(parts, 'xl/workbook.xml');
  const shared = childrenOf(parts.get('xl/sharedStrings.xml'), 'si').map(richText);
  const look = lookReader(part(parts, 'xl/styles.xml'));
  const defined = childrenOf(childOf(workbook, 'definedNames'), 'definedName');
  const sheets = childrenOf(childOf(workbook, 'sheets'), 'sheet').map((sheet, index) => {
    const path = targets.get(sheet.attributes['r:id'] ?? '') ?? '';
    const definedHere = (what: string): Element | undefined =>
      defined.find(
        ({ attributes }) =>
          attributes['name'] === `_xlnm.${what}` && attributes['localSheetId'] === `${index}`,
      );
    const printed = {
      titles: definedHere('Print_Titles'),
      area: definedHere('Print_Area'),
    };
    const drawings = [...relations(parts, path).values()]
      .filter((target) => withDrawings && target.includes('/drawings/'))
      .flatMap((target) =>
        readDrawings(part(parts, target), relations(parts, target), (name) => media[name]),
      );
    const view = readSheet(parts, path, sheet.attributes['name'] ?? '', shared, look, printed);
    return { ...view, drawings };
  });
  const names = defined.filter(({ attributes }) => attributes['localSheetId'] === undefined);
  return {
    title: textOf(childOf(part(parts, 'docProps/core.xml'), 'dc:title')),
    sheets,
    names: Object.fromEntries(names.map((one) => [one.attributes['name']!, textOf(one)] as const)),
    properties: Object.fromEntries(
      childrenOf(parts.get('docProps/custom.xml'), 'property').map(
        (one) => [one.attributes['name']!, textOf(one)] as const,
      ),
    ),
  };
}

function readSheet(
  parts: Parts,
  path: string,
  name: string,
  shared: readonly string[],
  look: LookReader,
  printed: Printed,
): Omit<SheetView, 'drawings'> {
  const sheet = part(parts, path);
  const rows = childrenOf(childOf(sheet, 'sheetData'), 'row');
  const cells = rows.flatMap((row) => childrenOf(row, 'c'));
  const pane = childOf(sheet, 'sheetViews', 'sheetView', 'pane')?.attributes;
  // Our writer gives each column its own element; others may span several with one.
  const widths = childrenOf(childOf(sheet, 'cols'), 'col').map(({ attributes }) => {
    const pixels = Number(attributes['width']) * DIGIT - PADDING;
    return Math.round((pixels / DIGIT) * 100) / 100;
  });
  return {
    name,
    cells: Object.fromEntries(
      cells.map((c) => [c.attributes['r']!, readCell(c, shared, look)] as const),
    ),
    merges: childrenOf(childOf(sheet, 'mergeCells'), 'mergeCell').map((m) => m.attributes['ref']!),
    tables: [...relations(parts, path).values()]
      .filter((target) => target.includes('/tables/'))
      .map((target) => readTable(part(parts, target))),
    validations: childrenOf(childOf(sheet, 'dataValidations'), 'dataValidation').map(
      readValidation,
    ),
    highlights: childrenOf(sheet, 'conditionalFormatting').flatMap((one) =>
      childrenOf(one, 'cfRule').map((rule) => readHighlight(one, rule, look)),
    ),
    freeze:
      pane?.['state'] === 'frozen'
        ? { rows: Number(pane['ySplit'] ?? 0), columns: Number(pane['xSplit'] ?? 0) }
        : null,
    widths,
    heights: Object.fromEntries(
      rows
        .filter(({ attributes }) => isTrue(attributes['customHeight']))
        .map(({ attributes }) => [Number(attributes['r']), Number(attributes['ht'])]),
    ),
    print: readPrint(sheet, printed),
  };
}

function readCell(cell: Element, shared: readonly string[], look: LookReader): CellView {
  const { t = 'n', s = '0' } = cell.attributes;
  const formula = childOf(cell, 'f');
  const v = childOf(cell, 'v');
  const raw = v === undefined ? null : textOf(v);
  const common = { formula: formula === undefined ? null : textOf(formula), look: look.cell(s) };
  if (t === 'inlineStr') {
    return { ...common, kind: 'text', value: richText(childOf(cell, 'is')) };
  }
  if (raw === null) return { ...common, kind: 'blank', value: null };
  if (t === 's') return { ...common, kind: 'text', value: shared[Number(raw)]! };
  if (t === 'str') return { ...common, kind: 'text', value: unescape(raw) };
  if (t === 'b') return { ...common, kind: 'boolean', value: isTrue(raw) };
  if (t === 'e') return { ...common, kind: 'error', value: raw };
  return { ...common, kind: 'number', value: Number(raw) };
}

/** A string item's text: its own t, or those of its runs (18.4.8). */
function richText(item: Element | undefined): string {
  const runs = childrenOf(item, 'r').map((run) => childOf(run, 't'));
  const texts = [...childrenOf(item, 't'), ...runs];
  for (const text of texts) {
    const value = textOf(text);
    const kept = text?.attributes['xml:space'] === 'preserve';
    if (/^[ \t\n]|[ \t\n]$/.test(value) && !kept)
      throw new Error(`the spaces of "${value}" get lost`);
  }
  return unescape(texts.map(textOf).join(''));
}

/** 22.9.2.19: _x000A_ stands for the character of that number. */
function unescape(text: string): string {
  return text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) =>
    String.fromCharCode(Number.parseInt(code, 16)),
  );
}

function readTable(table: Element): TableView {
  const columns = childrenOf(childOf(table, 'tableColumns'), 'tableColumn');
  if (table.attributes['name'] !== table.attributes['displayName']) throw new Error('two names');
  return {
    name: table.attributes['name']!,
    range: table.attributes['ref']!,
    headings: columns.map(({ attributes }) => unescape(attributes['name']!)),
  };
}

function readValidation(one: Element): ValidationView {
  const { type, operator, sqref, errorStyle = 'stop', errorTitle, error } = one.attributes;
  const [first = '', second = ''] = ['formula1', 'formula2'].map((f) => textOf(childOf(one, f)));
  const own = /^"(.*)"$/.exec(first)?.[1];
  const kind = type === 'whole' ? 'whole' : own === undefined ? 'list from' : 'list';
  if (!isTrue(one.attributes['showErrorMessage'])) throw new Error('it would never be said');
  if (kind === 'whole' && (operator ?? 'between') !== 'between') throw new Error('not between');
  return {
    range: sqref!,
    kind,
    allowed: kind === 'whole' ? [first, second] : (own?.split(',') ?? [first]),
    strict: errorStyle === 'stop',
    title: unescape(errorTitle ?? ''),
    message: unescape(error ?? ''),
  };
}

function readHighlight(formatting: Element, rule: Element, look: LookReader): HighlightView {
  if (rule.attributes['type'] !== 'expression') throw new Error('not by a formula');
  return {
    range: formatting.attributes['sqref']!,
    formula: textOf(childOf(rule, 'formula')),
    ...look.highlight(rule.attributes['dxfId']!),
  };
}

function readPrint(sheet: Element, { titles, area }: Printed): PrintView {
  const setup = childOf(sheet, 'pageSetup')?.attributes ?? {};
  const fit = isTrue(childOf(sheet, 'sheetPr', 'pageSetUpPr')?.attributes['fitToPage']);
  const header = textOf(childOf(sheet, 'headerFooter', 'oddHeader'));
  const footer = textOf(childOf(sheet, 'headerFooter', 'oddFooter'));
  const [, footerLeft = '', footerRight = ''] = /^&L(.*)&R(.*)$/s.exec(unescape(footer)) ?? [];
  return {
    paper: PAPERS[setup['paperSize'] ?? ''] ?? 'none',
    orientation: setup['orientation'] ?? 'none',
    fitWidth: fit && setup['fitToWidth'] === '1' && setup['fitToHeight'] === '0',
    titleRows: titles === undefined ? null : textOf(titles),
    printedColumns: area === undefined ? null : textOf(area).split('!').at(-1)!,
    breaksAfter: childrenOf(childOf(sheet, 'rowBreaks'), 'brk').map((b) =>
      Number(b.attributes['id']),
    ),
    headerMiddle: unescape(header).replace(/^&C/, ''),
    footerLeft,
    footerRight,
  };
}

/** XML Schema's boolean is written either way. */
function isTrue(text: string | undefined): boolean {
  return text === '1' || text === 'true';
}

function part(parts: Parts, name: string): Element {
  const found = parts.get(name);
  if (found === undefined) throw new Error(`${name} is missing`);
  return found;
}

/** Ids to the parts they lead to, by full name. */
function relations(parts: Parts, name: string): Map<string, string> {
  const [, folder = '', file = ''] = /^(.*)\/([^/]*)$/.exec(name) ?? [];
  const found = childrenOf(parts.get(`${folder}/_rels/${file}.rels`), 'Relationship');
  return new Map(
    found.map(({ attributes }) => {
      const target = attributes['Target']!;
      const path = new URL(target, `file:///${folder}/`).pathname.slice(1);
      return [attributes['Id']!, path];
    }),
  );
}
