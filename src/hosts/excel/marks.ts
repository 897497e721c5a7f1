/** Hidden names of sheets while they are written, beside the one that says a sheet was made here. */
import { markText } from '../made-mark.ts';

/** A sheet that is not finished: what an earlier failure left behind. */
export const STAGED = 'Coveledger_staged';
/** A sheet of ours whose replacement has taken over its name. */
export const OUTGOING = 'Coveledger_outgoing';

/** What sheets are called while they are written. */
const STAGED_NAME = /^Coveledger ~\d+$/u;
export const stagedName = (number: number): string => `Coveledger ~${number}`;
export const isStagedName = (name: string): boolean => STAGED_NAME.test(name);

export function mark(sheet: Excel.Worksheet, name: string, text: string): void {
  sheet.names.add(name, markText(text)).visible = false;
}

export function unmark(sheet: Excel.Worksheet, name: string): void {
  sheet.names.getItem(name).delete();
}
