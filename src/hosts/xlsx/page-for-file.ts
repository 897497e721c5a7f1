/** Page, rules and highlights of a sheet as a file takes them. */
import type { FileExtras, SheetPage } from './sheet-page.ts';
import { xlsxHighlights, xlsxPage, xlsxValidation } from './xlsx-sheet.ts';

/** As they stood in the file that the sheet came with, if it came with one. */
export function extrasForFile(page: SheetPage): FileExtras {
  return page.file ?? describedExtras(page);
}

function describedExtras({ print, validations, highlights = [] }: SheetPage): FileExtras {
  const { pageSetup, ...page } = xlsxPage(print);
  const [first, last] = print.titleRows ?? [];
  return {
    ...page,
    pageSetup: {
      ...pageSetup,
      ...(first === undefined || last === undefined
        ? {}
        : { printTitlesRow: `$${first}:$${last}` }),
    },
    dataValidations: validations.map(xlsxValidation),
    conditionalRules: xlsxHighlights(highlights),
  };
}
