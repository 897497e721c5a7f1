/** One suite for every host that writes a description of sheets: what is written reads back. */
import { describe, expect } from '@jest/globals';

import type { WorkbookDescription } from '../../src/sheets/grammar/description.ts';
import { testCells } from './host-suite-cells.ts';
import { testDrawings } from './host-suite-drawings.ts';
import { testSheets } from './host-suite-sheets.ts';
import type { SheetView, WorkbookView } from './workbook-view.ts';

/** A host: it writes a description, and what it wrote can be read back by other means than its own. */
export interface TestedHost<Written> {
  readonly name: string;
  write(description: WorkbookDescription): Promise<Written>;
  readBack(written: Written): Promise<WorkbookView>;
  readonly differs?: Differences;
}

/** Where a host rightly does otherwise, and why. */
export interface Differences {
  /** The workbook's own title is not set. */
  readonly title?: string;
  /** Formulas' cached values are not written. */
  readonly values?: string;
  /** Tables, validations, highlights and pages are kept with the sheet, not shown. */
  readonly kept?: string;
}

/** What the suite's parts need of a host. */
export interface WrittenAndRead {
  readonly write: (description: WorkbookDescription) => Promise<unknown>;
  /** Writes and reads back. */
  readonly through: (description: WorkbookDescription) => Promise<WorkbookView>;
  /** The same for a workbook of one sheet. */
  readonly onlySheet: (description: WorkbookDescription) => Promise<SheetView>;
  readonly differs: Differences;
}

export function testHost<Written>(host: TestedHost<Written>): void {
  const through = async (description: WorkbookDescription): Promise<WorkbookView> =>
    host.readBack(await host.write(description));
  const tested: WrittenAndRead = {
    write: (description) => host.write(description),
    through,
    differs: host.differs ?? {},
    async onlySheet(description) {
      const view = await through(description);
      expect(view.sheets).toHaveLength(1);
      return view.sheets[0]!;
    },
  };
  describe(`The ${host.name} host`, () => {
    testCells(tested);
    testSheets(tested);
    testDrawings(tested);
  });
}
