/** Puts a formula into the selected cell, where the person asked for it. */
import { failed, fault, ok, type Outcome } from '../../core/faults/fault.ts';

const AS_TEXT = '@';

/**
 * @param formula In English, with commas, with its equals sign.
 * @returns Where it stands; or host.cell-not-blank, host.sheet-protected.
 */
export async function putFormula(
  context: Excel.RequestContext,
  formula: string,
): Promise<Outcome<{ readonly sheet: string; readonly cell: string }>> {
  if (!formula.startsWith('=')) throw new RangeError(`"${formula}" is no formula.`);
  const cell = context.workbook.getActiveCell();
  cell.load('address,values,formulas,numberFormat');
  cell.worksheet.load('name');
  cell.worksheet.protection.load('protected');
  await context.sync();
  const sheet = cell.worksheet.name;
  const at = cell.address.slice(cell.address.lastIndexOf('!') + 1);
  if (cell.worksheet.protection.protected) {
    return failed(fault('host.sheet-protected', 'sheet', sheet));
  }
  // A formula that gives "" has no value, and a cell that another spills into has no formula.
  if (cell.values[0]?.[0] !== '' || cell.formulas[0]?.[0] !== '') {
    return failed(fault('host.cell-not-blank', 'cell', `${sheet}!${at}`));
  }
  // In a cell formatted as text it would stay a text.
  if (cell.numberFormat[0]?.[0] === AS_TEXT) cell.numberFormat = [['General']];
  cell.formulas = [[formula]];
  await context.sync();
  return ok({ sheet, cell: at });
}
