/** The grid as the rest of the page knows it. */
import type { Injector, IWorkbookData, PluginCtor } from '@univerjs/core';
import type { FUniver } from '@univerjs/core/facade';
import type { FWorkbook } from '@univerjs/sheets/facade';
import type { Location } from './error-reasons.ts';
import type { ReadCell } from './raw-cell.ts';
import type { DegreesOf } from './degrees-of.ts';

export interface Grid {
  readonly api: FUniver;
  /** Where the grid's own services are had from. */
  readonly services: Injector;
  /** Makes a part of the grid known that its first sight doesn't wait for. */
  readonly addPart: (part: PluginCtor) => void;
  /** Puts a workbook in the place of the one that is there. */
  open(data: IWorkbookData): void;
  book(): FWorkbook;
  /** What a cell holds, unrounded, spilled cells too. */
  readonly readCell: ReadCell;
  /** How a formula that answers an angle shows it in a cell of that format. */
  readonly degreesOf: DegreesOf;
  /** Why a cell shows an error, or nothing where answers would stand, in words; empty where there is no reason of ours. */
  readonly whyError: (place: Location) => string;
}
