/** What an input workbook holds beside its tables: plans that are kept with it, and their sheets with ticks. */
import type { RawRow } from '../../planning/input/raw-table.ts';
import { SHEET_NAMES } from '../../sheets/plan-anchors.ts';
import type { KeptTexts } from '../workbook/kept-text.ts';
import { keptTextsOf } from './kept-parts.ts';
import { openWorkbook, partsOf, rowsOf } from './open-workbook.ts';

export interface KeptInput {
  readonly texts: KeptTexts;
  readonly cutting: readonly RawRow[];
  readonly pieces: readonly RawRow[];
}

/** Undefined for what is no workbook, or has no plan in it: what is wrong with it is said where its tables are read. */
export async function keptInputOf(bytes: Uint8Array, name: string): Promise<KeptInput | undefined> {
  if (!partsOf(bytes, name).ok) return undefined;
  const texts = keptTextsOf(bytes);
  if (Object.keys(texts).length === 0) return undefined;
  const names: readonly string[] = [SHEET_NAMES.cutting, SHEET_NAMES.pieces];
  const opened = await openWorkbook(bytes, name, (sheet) => names.includes(sheet));
  if (!opened.ok) return undefined;
  const rows = (wanted: string): readonly RawRow[] => {
    const sheet = opened.value.sheets.find((one) => one.name === wanted);
    return sheet === undefined ? [] : rowsOf(sheet);
  };
  return { texts, cutting: rows(SHEET_NAMES.cutting), pieces: rows(SHEET_NAMES.pieces) };
}
