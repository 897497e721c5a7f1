/**
 * A zip's parts as they lie in it, packed: most of a file that another program's library wrote can go into
 * a new zip as they are. PKWARE APPNOTE 6.3.3: 4.3.7 local header, 4.3.12 central directory, 4.3.16 its end.
 */
import { deflateSync, strFromU8, strToU8 } from 'fflate';

import { crc32 } from '../png/crc32.ts';

export interface PackedPart {
  readonly name: string;
  readonly method: number;
  readonly crc: number;
  /** Bytes once it is unpacked. */
  readonly size: number;
  readonly packed: Uint8Array;
}

const LOCAL = 0x04034b50;
const CENTRAL = 0x02014b50;
const END = 0x06054b50;
const [LOCAL_BYTES, CENTRAL_BYTES, END_BYTES] = [30, 46, 22];
const STORED = 0;
const DEFLATED = 8;
/** 2.0, the first that deflates; names are UTF-8. */
const VERSION = 20;
const UTF8 = 1 << 11;
/** 1 January 1980, midnight, the earliest that a zip can say: parts tell nothing of when. */
const DAY = (1 << 5) | 1;
/** Of its end's counts; more would need another kind of end. */
const MOST_PARTS = 0xffff;
/** The usual between speed and size. */
const LEVEL = 6;

/** @param zip Without a comment and under 4 GB, as libraries write it. */
export function packedParts(zip: Uint8Array): ReadonlyMap<string, PackedPart> {
  const view = new DataView(zip.buffer, zip.byteOffset, zip.byteLength);
  const end = zip.length - END_BYTES;
  if (end < 0 || view.getUint32(end, true) !== END) throw new RangeError('This is no plain zip.');
  const parts = new Map<string, PackedPart>();
  let at = view.getUint32(end + 16, true);
  for (let count = view.getUint16(end + 10, true); count > 0; count--) {
    const nameBytes = view.getUint16(at + 28, true);
    const name = strFromU8(zip.subarray(at + CENTRAL_BYTES, at + CENTRAL_BYTES + nameBytes));
    const local = view.getUint32(at + 42, true);
    // The local header's own lengths: its extra field may be another than the directory's.
    const from =
      local + LOCAL_BYTES + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
    parts.set(name, {
      name,
      method: view.getUint16(at + 10, true),
      crc: view.getUint32(at + 16, true),
      size: view.getUint32(at + 24, true),
      packed: zip.subarray(from, from + view.getUint32(at + 20, true)),
    });
    at += CENTRAL_BYTES + nameBytes + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return parts;
}

export function packPart(name: string, bytes: Uint8Array): PackedPart {
  const deflated = deflateSync(bytes, { level: LEVEL });
  const isSmaller = deflated.length < bytes.length;
  return {
    name,
    method: isSmaller ? DEFLATED : STORED,
    crc: crc32(bytes),
    size: bytes.length,
    packed: isSmaller ? deflated : bytes,
  };
}

/** @throws RangeError for more parts than a plain zip holds (a bug of the caller's) */
export function zipParts(parts: readonly PackedPart[]): Uint8Array {
  if (parts.length > MOST_PARTS) throw new RangeError(`${parts.length} parts are too many.`);
  const names = parts.map(({ name }) => strToU8(name));
  const bytes = parts.reduce(
    (sum, { packed }, at) =>
      sum + LOCAL_BYTES + CENTRAL_BYTES + 2 * (names[at]?.length ?? 0) + packed.length,
    END_BYTES,
  );
  const zip = new Uint8Array(bytes);
  const view = new DataView(zip.buffer);
  let at = 0;
  const put = (...numbers: readonly (readonly [bytes: 2 | 4, value: number])[]): void => {
    for (const [wide, value] of numbers) {
      if (wide === 2) view.setUint16(at, value, true);
      else view.setUint32(at, value, true);
      at += wide;
    }
  };
  const append = (more: Uint8Array): void => {
    zip.set(more, at);
    at += more.length;
  };
  /** What both headers of a part say alike. */
  const said = ({ method, crc, size, packed }: PackedPart, name: Uint8Array) =>
    [
      [2, VERSION],
      [2, UTF8],
      [2, method],
      [2, 0],
      [2, DAY],
      [4, crc],
      [4, packed.length],
      [4, size],
      [2, name.length],
      [2, 0],
    ] as const;
  const offsets = parts.map((part, index) => {
    const offset = at;
    const name = names[index] ?? new Uint8Array();
    put([4, LOCAL], ...said(part, name));
    append(name);
    append(part.packed);
    return offset;
  });
  const directory = at;
  parts.forEach((part, index) => {
    const name = names[index] ?? new Uint8Array();
    put([4, CENTRAL], [2, VERSION], ...said(part, name));
    // No comment, the first disk, no attributes.
    put([2, 0], [2, 0], [2, 0], [4, 0], [4, offsets[index] ?? 0]);
    append(name);
  });
  const length = at - directory;
  put([4, END], [2, 0], [2, 0], [2, parts.length], [2, parts.length]);
  put([4, length], [4, directory], [2, 0]);
  return zip;
}
