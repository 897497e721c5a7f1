/** Workbooks in the fake Excel for tests of its host, and how their sheets are looked at. */
import type { Outcome } from '../../src/core/faults/fault.ts';
import { openExcelHost } from '../../src/hosts/excel/open-excel-host.ts';
import type { WorkbookHost } from '../../src/hosts/host.ts';
import { FakeExcel } from './excel-fake/fake-excel.ts';
import type { FakeSheet } from './excel-fake/workbook-model.ts';
import type { WorkbookView } from './workbook-view.ts';

/** A PNG of one pixel. */
export const TINY_PNG =
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';

export function hostOf(fake: FakeExcel): WorkbookHost {
  return openExcelHost({
    ...fake.program,
    paint: () => Promise.resolve(Uint8Array.from(atob(TINY_PNG), (one) => one.charCodeAt(0))),
  });
}

export function valueOf<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(outcome.faults.map((one) => one.message).join('\n'));
  return outcome.value;
}

export function codesOf(outcome: Outcome<unknown>): string[] {
  return outcome.ok ? [] : outcome.faults.map(({ code }) => code);
}

/** What was written, as if it stood alone. */
export function writtenSheets(fake: FakeExcel, names: readonly string[]): WorkbookView {
  const view = fake.view();
  return { ...view, sheets: view.sheets.filter(({ name }) => names.includes(name)) };
}

/** A workbook as a person may have it: sheets, a table, a name, and formulas of their own. */
export function personsWorkbook(): {
  readonly fake: FakeExcel;
  readonly theirs: readonly FakeSheet[];
} {
  const fake = new FakeExcel();
  const budget = fake.addSheet('Budget', [
    ['Room', 'Cost'],
    ['Hall', 1200],
    ['Total', { formula: '=SUM(B2:B2)', value: 1200 }],
  ]);
  const trim = fake.addSheet('Trim list', [
    ['Room', 'Profile', 'Length'],
    ['Hall', 'Base', '=not a formula'],
    ['Hall', 'Crown', 96.5],
  ]);
  fake.addTable(trim, 'A1:C3', 'Trim');
  fake.addName('Margin', "='Budget'!$B$2");
  budget.make(1, 1).look.fill = 'FFFF00';
  return { fake, theirs: [budget, trim] };
}
