/** What an input workbook on the disk holds beside its tables. */
import { readFile } from 'node:fs/promises';
import { keptInputOf, type KeptInput } from '../xlsx/kept-input.ts';

/** As keptInputOf; undefined for what can't be read too: that is said where its tables are. */
export async function readKeptInput(path: string): Promise<KeptInput | undefined> {
  let bytes: Uint8Array;
  try {
    bytes = await readFile(path);
  } catch {
    return undefined;
  }
  return keptInputOf(bytes, path);
}
