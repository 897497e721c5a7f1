/** A client's copy on the disk. */
import { readFile } from 'node:fs/promises';
import type { CopyFile } from '../../sheets/client/copy-sheet.ts';
import { copyInFile } from '../xlsx/read-copy-file.ts';

/** Undefined for what is none, and for what can't be read: that is said where its tables are read. */
export async function readCopyFile(path: string): Promise<CopyFile | undefined> {
  let bytes: Uint8Array;
  try {
    bytes = await readFile(path);
  } catch {
    return undefined;
  }
  return copyInFile(bytes, path);
}
