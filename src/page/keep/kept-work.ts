/** The work as it is kept in the browser between visits. */
import type { IWorkbookData } from '@univerjs/core';

export const KEPT_VERSION = 1;

export interface KeptWork {
  readonly version: typeof KEPT_VERSION;
  /** Counts up with each saving: whoever knows an earlier one has been overtaken. */
  readonly turn: number;
  /** Milliseconds since 1970. */
  readonly savedAt: number;
  /** The workbook's name. */
  readonly name: string;
  /** Whether a person has changed anything since it was opened or made. */
  readonly touched: boolean;
  readonly data: IWorkbookData;
}

/** What is to be kept, taken when it is. */
export type WorkNow = Pick<KeptWork, 'name' | 'touched' | 'data'>;

export type KeptReading =
  | { readonly kind: 'none' }
  | { readonly kind: 'work'; readonly work: KeptWork }
  /** Of a later version of this page; or not what this page keeps. */
  | { readonly kind: 'newer' | 'damaged'; readonly turn: number };

/** What stands in the browser's storage may be anything: another version's, or half of a record. */
export function readKept(record: unknown): KeptReading {
  if (record === undefined) return { kind: 'none' };
  const { version, turn, savedAt, name, touched, data } = isRecord(record) ? record : {};
  const known = typeof turn === 'number' ? turn : 0;
  if (typeof version === 'number' && version > KEPT_VERSION) return { kind: 'newer', turn: known };
  const isSound =
    version === KEPT_VERSION &&
    typeof turn === 'number' &&
    typeof savedAt === 'number' &&
    typeof name === 'string' &&
    typeof touched === 'boolean' &&
    isWorkbook(data);
  return isSound
    ? { kind: 'work', work: { version, turn, savedAt, name, touched, data } }
    : { kind: 'damaged', turn: known };
}

/** As much as the grid needs to open it: sheets in their order, cells in rows in columns. */
function isWorkbook(data: unknown): data is IWorkbookData {
  if (!isRecord(data)) return false;
  const { id, sheetOrder, sheets, styles } = data;
  if (typeof id !== 'string' || !Array.isArray(sheetOrder) || sheetOrder.length === 0) return false;
  if (!isRecord(sheets) || !isRecord(styles)) return false;
  return sheetOrder.every((one) => typeof one === 'string' && isSheet(sheets[one]));
}

function isSheet(sheet: unknown): boolean {
  if (!isRecord(sheet) || typeof sheet['name'] !== 'string') return false;
  const { cellData = {} } = sheet;
  return isRecord(cellData) && Object.values(cellData).every(isRecord);
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
