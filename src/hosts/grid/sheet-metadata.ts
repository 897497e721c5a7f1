/**
 * What the grid keeps with a sheet that it knows nothing of itself: whose it is, and how it prints.
 * It goes wherever the sheet goes: through undo, into the browser's storage, into a saved file.
 */
import type { CustomData } from '@univerjs/core';
import type { TableDescription } from '../../sheets/grammar/description.ts';
import type { SheetPage } from '../xlsx/sheet-page.ts';

export type SheetOwner = 'person' | 'tool';

/** Under this key among a sheet's custom data. */
const KEY = 'coveledger';

export interface SheetMetadata extends SheetPage {
  readonly owner: SheetOwner;
  /** The name it was written under: a sheet of ours that was renamed is the person's. */
  readonly name: string;
  readonly tables: readonly TableDescription[];
}

export function toCustomData(kept: SheetMetadata): CustomData {
  return { [KEY]: kept };
}

/** Undefined for a sheet that was never written here. */
export function readCustomData(custom: CustomData | undefined): SheetMetadata | undefined {
  return (custom as Record<string, SheetMetadata | undefined> | null | undefined)?.[KEY];
}
