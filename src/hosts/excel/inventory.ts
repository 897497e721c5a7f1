/** What there is in the workbook: sheets, whose they are, tables and names. */
import { formulaParts, nameKey } from '../formulas/formula-parts.ts';
import { MADE, markText } from '../made-mark.ts';
import { isStagedName, OUTGOING, STAGED } from './marks.ts';

export interface Inventory {
  readonly workbook: string;
  readonly structureProtected: boolean;
  readonly sheets: readonly FoundSheet[];
  readonly names: readonly FoundName[];
}

export interface FoundSheet {
  readonly id: string;
  readonly name: string;
  readonly isProtected: boolean;
  /** Made here, under the name that it still bears. */
  readonly ours: boolean;
  /** What an earlier failure left behind: nobody's, to be removed. */
  readonly leftover: boolean;
  /** Still bears the mark of an earlier replacement that failed. */
  readonly markedOutgoing: boolean;
  readonly tables: readonly FoundTable[];
}

export interface FoundTable {
  readonly id: string;
  readonly name: string;
  readonly headed: boolean;
}

export interface FoundName {
  readonly name: string;
  readonly formula: string;
}

/** Looks through the workbook, in two requests. */
export async function takeInventory(context: Excel.RequestContext): Promise<Inventory> {
  const { workbook } = context;
  workbook.load('name');
  workbook.protection.load('protected');
  const { worksheets, tables, names } = workbook;
  worksheets.load('items/id,items/name');
  tables.load('items/id,items/name,items/showHeaders,items/worksheet/id');
  names.load('items/name,items/formula');
  await context.sync();
  const asked = worksheets.items.map((sheet) => {
    sheet.protection.load('protected');
    const marks = [MADE, STAGED, OUTGOING].map((name) => {
      const found = sheet.names.getItemOrNullObject(name);
      found.load('formula');
      return found;
    });
    const used = isStagedName(sheet.name) ? sheet.getUsedRangeOrNullObject() : undefined;
    used?.load('address');
    return { sheet, marks, used };
  });
  await context.sync();
  return {
    workbook: workbook.name,
    structureProtected: workbook.protection.protected,
    names: names.items.map(({ name, formula }) => ({ name, formula: String(formula) })),
    sheets: asked.map(({ sheet, marks, used }) => {
      const [made, staged, outgoing] = marks.map((one) =>
        one.isNullObject ? null : String(one.formula),
      );
      const bearsItsName = made === markText(sheet.name);
      const leftover = staged !== null || (outgoing !== null && !bearsItsName);
      const begun = used?.isNullObject === true && made === null;
      return {
        id: sheet.id,
        name: sheet.name,
        isProtected: sheet.protection.protected,
        ours: bearsItsName && !leftover,
        leftover: leftover || begun,
        markedOutgoing: outgoing !== null,
        tables: tables.items
          .filter((table) => table.worksheet.id === sheet.id)
          .map(({ id, name, showHeaders }) => ({ id, name, headed: showHeaders })),
      };
    }),
  };
}

/** Whether a formula names one of these sheets, or one of their tables. */
export function pointsAt(formula: string, sheets: readonly FoundSheet[]): boolean {
  return formulaParts(formula).some(({ kind, name }) => {
    const key = nameKey(name);
    if (kind === 'sheet') return sheets.some((sheet) => nameKey(sheet.name) === key);
    if (kind !== 'table') return false;
    return sheets.some((sheet) => sheet.tables.some((table) => nameKey(table.name) === key));
  });
}
