/**
 * What the grid keeps with a sheet that it knows nothing of itself: whose it is, and how it prints.
 * It goes wherever the sheet goes: through undo, into the browser's storage, into a saved file.
 */
import type { CustomData } from '@univerjs/core';
import type {
  PrintDescription,
  SheetDescription,
  TableDescription,
  ValidationDescription,
} from '../../sheets/description.ts';

export type SheetOwner = 'person' | 'tool';

/** Under this key among a sheet's custom data. */
const KEY = 'coveledger';

export interface KeptOfSheet {
  readonly owner: SheetOwner;
  /** The name it was written under: a sheet of ours that was renamed is the person's. */
  readonly name: string;
  readonly print: PrintDescription;
  readonly tables: readonly TableDescription[];
  readonly validations: readonly ValidationDescription[];
}

export function keepOfSheet(sheet: SheetDescription, owner: SheetOwner): CustomData {
  const { name, print, tables = [], validations = [] } = sheet;
  const kept: KeptOfSheet = { owner, name, print, tables, validations };
  return { [KEY]: kept };
}

/** Undefined for a sheet that was never written here. */
export function keptOfSheet(custom: CustomData | undefined): KeptOfSheet | undefined {
  return (custom as Record<string, KeptOfSheet | undefined> | null | undefined)?.[KEY];
}
