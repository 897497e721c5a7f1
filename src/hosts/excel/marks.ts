/**
 * Sheets made here carry a hidden name of their own, which travels with them when they are renamed
 * or copied; its text is the name that the sheet was written under.
 */

/** A sheet that may be replaced. */
export const MADE = 'Coveledger_sheet';
/** A sheet that is not finished: what an earlier failure left behind. */
export const STAGED = 'Coveledger_staged';
/** A sheet of ours whose replacement has taken over its name. */
export const OUTGOING = 'Coveledger_outgoing';

/** What sheets are called while they are written. */
const STAGED_NAME = /^Coveledger ~\d+$/u;
export const stagedName = (number: number): string => `Coveledger ~${number}`;
export const isStagedName = (name: string): boolean => STAGED_NAME.test(name);

/** The mark's text as a formula. */
export function markText(name: string): string {
  return `="${name.replaceAll('"', '""')}"`;
}

export function mark(sheet: Excel.Worksheet, name: string, text: string): void {
  sheet.names.add(name, markText(text)).visible = false;
}

export function unmark(sheet: Excel.Worksheet, name: string): void {
  sheet.names.getItem(name).delete();
}
