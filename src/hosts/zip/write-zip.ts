/** Files in one zip, the same bytes for the same files. */
import { strToU8, zipSync, type Zippable } from 'fflate';

/** Earliest that a zip can say, in whichever time zone: files tell nothing of when. */
const WRITTEN = new Date(1980, 0, 1);

/**
 * @param files Texts by paths with forward slashes, no path twice; they are written as UTF-8.
 * @throws RangeError for a path that comes twice (a bug of the caller's)
 */
export function writeZip(
  files: readonly { readonly path: string; readonly text: string }[],
): Uint8Array {
  const parts: Zippable = {};
  for (const { path, text } of files) {
    if (path in parts) throw new RangeError(`There are two files ${path}.`);
    parts[path] = strToU8(text);
  }
  return zipSync(parts, { mtime: WRITTEN });
}
