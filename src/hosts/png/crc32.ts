/** The check number of a PNG's chunks. PNG (W3C, third edition): 5.5 and annex D. */

const POLYNOMIAL = 0xedb88320;
const TABLE = Int32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit++)
    rest = (rest & 1) === 1 ? POLYNOMIAL ^ (rest >>> 1) : rest >>> 1;
  return rest;
});

/** @returns A whole number from 0 to 2³² - 1. */
export function crc32(bytes: Uint8Array): number {
  let rest = -1;
  for (const byte of bytes) rest = (TABLE[(rest ^ byte) & 255] ?? 0) ^ (rest >>> 8);
  return ~rest >>> 0;
}
