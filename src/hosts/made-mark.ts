/**
 * A sheet made here carries a hidden name of its own, in Excel and in a file alike. It travels with
 * the sheet when that is renamed or copied; its text is the name that the sheet was written under.
 */

/** A sheet that may be replaced. */
export const MADE = 'Coveledger_sheet';

/** The mark's text as a formula. */
export function markText(name: string): string {
  return `="${name.replaceAll('"', '""')}"`;
}
