/**
 * What the grid keeps with a sheet that it knows nothing of itself: whose it is, and how it prints.
 * It goes wherever the sheet goes: through undo, into the browser's storage, into a saved file.
 */
import type { KeptTextKey } from '../host.ts';
import type { CustomData } from '@univerjs/core';
import type { TableDescription } from '../../sheets/grammar/description.ts';
import { withText, type KeptTexts } from '../workbook/kept-text.ts';
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

/** Small notes kept with the workbook, among its own custom data. */
interface BookMetadata {
  readonly notes: Readonly<Record<string, string>>;
  readonly texts?: KeptTexts;
}

export function noteOf(custom: CustomData | undefined, key: string): string | undefined {
  const { notes = {} } = readBookMetadata(custom);
  return Object.hasOwn(notes, key) ? notes[key] : undefined;
}

export function withNote(custom: CustomData | undefined, key: string, value: string): CustomData {
  const kept = {
    ...readBookMetadata(custom),
    notes: { ...readBookMetadata(custom).notes, [key]: value },
  };
  return { ...custom, [KEY]: kept };
}

export function keptTextsOf(custom: CustomData | undefined): KeptTexts {
  return readBookMetadata(custom).texts ?? {};
}

export function withKeptText(
  custom: CustomData | undefined,
  key: KeptTextKey,
  text: string | undefined,
): CustomData {
  return withKeptTexts(custom, withText(keptTextsOf(custom), key, text));
}

export function withKeptTexts(custom: CustomData | undefined, texts: KeptTexts): CustomData {
  return { ...custom, [KEY]: { ...readBookMetadata(custom), texts } };
}

function readBookMetadata(custom: CustomData | undefined): Partial<BookMetadata> {
  return (custom as Record<string, BookMetadata | undefined> | null | undefined)?.[KEY] ?? {};
}
