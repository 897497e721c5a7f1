/** Page, rules and highlights of a sheet as a file takes them. */
import type { WriteSheet } from 'hucre/xlsx';

import { columnLetters } from '../../core/cells/cell-range.ts';
import type {
  HighlightDescription,
  PrintDescription,
  ValidationDescription,
} from '../../sheets/grammar/description.ts';
import { marginsOf } from '../../sheets/grammar/page-size.ts';
import { DESCRIBED_STYLES } from '../workbook/described-styles.ts';
import { highlightForFile } from './file-styles.ts';
import type { FileExtras, SheetPage } from './sheet-page.ts';
import { escapeText } from './xlsx-text.ts';

type XlsxValidation = NonNullable<WriteSheet['dataValidations']>[number];

/** As they stood in the file that the sheet came with, if it came with one. */
export function extrasForFile({
  print,
  validations,
  highlights = [],
  file,
}: SheetPage): FileExtras {
  return (
    file ?? {
      ...page(print),
      dataValidations: validations.map(validation),
      conditionalRules: rules(highlights),
    }
  );
}

function rules(
  highlights: readonly HighlightDescription[],
): NonNullable<FileExtras['conditionalRules']> {
  return highlights.map(({ range, formula, style }, index) => ({
    type: 'expression',
    priority: index + 1,
    formula,
    range,
    style: highlightForFile(DESCRIBED_STYLES[style]),
  }));
}

function validation(one: ValidationDescription): XlsxValidation {
  return {
    range: one.range,
    ...allowed(one.allow),
    allowBlank: true,
    showErrorMessage: true,
    errorStyle: one.strict ? 'stop' : 'warning',
    errorTitle: escapeText(one.title),
    errorMessage: escapeText(one.message),
  };
}

function allowed(
  allow: ValidationDescription['allow'],
): Pick<XlsxValidation, 'type' | 'values' | 'operator' | 'formula1' | 'formula2'> {
  switch (allow.kind) {
    case 'list':
      return { type: 'list', values: [...allow.values] };
    case 'list from':
      return { type: 'list', formula1: allow.formula };
    case 'whole':
      return {
        type: 'whole',
        operator: 'between',
        formula1: String(allow.least),
        formula2: String(allow.most),
      };
  }
}

function page(
  print: PrintDescription,
): Pick<FileExtras, 'pageSetup' | 'headerFooter' | 'rowBreaks'> {
  const { titleRows, printedColumns } = print;
  return {
    pageSetup: {
      paperSize: print.paper,
      orientation: print.orientation,
      margins: { ...marginsOf(print) },
      ...(print.fitWidth ? { fitToPage: true, fitToWidth: 1, fitToHeight: 0 } : {}),
      ...(titleRows === undefined ? {} : { printTitlesRow: `$${titleRows[0]}:$${titleRows[1]}` }),
      ...(printedColumns === undefined
        ? {}
        : { printArea: `$A:$${columnLetters(printedColumns - 1)}` }),
    },
    headerFooter: {
      ...(print.header === '' ? {} : { oddHeader: `&C${headerText(print.header)}` }),
      ...(print.start === undefined
        ? { oddFooter: `&L${headerText(print.footer)}&RPage &P of &N` }
        : {}),
    },
    rowBreaks: (print.breaksAfter ?? []).map((row) => row - 1),
  };
}

/** In headers & begins a code, so a typed one is doubled. */
function headerText(text: string): string {
  return escapeText(text).replaceAll('&', '&&');
}
