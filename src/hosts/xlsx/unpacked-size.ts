/** How large a zip's parts say they are, before anything is unpacked. */

/** APPNOTE.TXT (PKWARE, 6.3.10), sections 4.3.12 and 4.3.16: signatures and lengths. */
const END_SIGNATURE = 0x06054b50;
const END_LENGTH = 22;
const LONGEST_COMMENT = 65_535;
const ENTRY_SIGNATURE = 0x02014b50;
const ENTRY_LENGTH = 46;
/** Stand where a size of 4 GB or more, or a greater count of parts, is kept elsewhere (4.4.1.4). */
const ELSEWHERE = 0xffffffff;
const COUNTED_ELSEWHERE = 0xffff;

export interface UnpackedPart {
  readonly name: string;
  readonly bytes: number;
  /** The check number (CRC-32) of what it unpacks to. */
  readonly crc: number;
}

/**
 * Reads the sizes in a zip's directory.
 *
 * @returns Each part with the size it unpacks to; null where the directory is damaged, or keeps a
 *   size back (4 GB and over, or none given for a part that holds something).
 */
export function unpackedParts(zip: Uint8Array): readonly UnpackedPart[] | null {
  const view = new DataView(zip.buffer, zip.byteOffset, zip.byteLength);
  const end = findEnd(view);
  if (end === null) return null;
  const count = view.getUint16(end + 10, true);
  // A reader would then follow another directory than the one that is looked at here.
  if (count === COUNTED_ELSEWHERE || view.getUint32(end + 12, true) === ELSEWHERE) return null;
  const parts: UnpackedPart[] = [];
  let at = view.getUint32(end + 16, true);
  for (let left = count; left > 0; left--) {
    if (at + ENTRY_LENGTH > end || view.getUint32(at, true) !== ENTRY_SIGNATURE) return null;
    const packed = view.getUint32(at + 20, true);
    const bytes = view.getUint32(at + 24, true);
    const nameLength = view.getUint16(at + 28, true);
    const name = new TextDecoder().decode(
      zip.subarray(at + ENTRY_LENGTH, at + ENTRY_LENGTH + nameLength),
    );
    // Two bytes are the least that deflate makes of nothing.
    const keptBack = packed === ELSEWHERE || bytes === ELSEWHERE || (bytes === 0 && packed > 2);
    const sizeLater = (view.getUint16(at + 8, true) & 8) !== 0 && packed === 0 && bytes === 0;
    if (keptBack || (sizeLater && !name.endsWith('/'))) return null;
    parts.push({ name, bytes, crc: view.getUint32(at + 16, true) });
    at += ENTRY_LENGTH + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return parts;
}

/** The directory's end record, looked for from behind as a comment may follow it. */
function findEnd(view: DataView): number | null {
  const last = view.byteLength - END_LENGTH;
  for (let at = last; at >= Math.max(0, last - LONGEST_COMMENT); at--) {
    if (view.getUint32(at, true) === END_SIGNATURE) return at;
  }
  return null;
}
