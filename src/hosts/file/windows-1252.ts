/**
 * Windows-1252, in which older Windows programs save. Node 20's own decoder takes it for Latin-1,
 * which has control characters where this has quotes and dashes.
 */

/** 0x80 to 0x9F (WHATWG Encoding, index-windows-1252); the rest is as in Latin-1. */
const UPPER = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008DŽ\u008F' + '\u0090‘’“”•–—˜™š›œ\u009DžŸ';

export function decodeWindows1252(bytes: Uint8Array): string {
  const latin = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1');
  return latin.replace(/[\u0080-\u009F]/g, (one) => UPPER[one.charCodeAt(0) - 0x80] ?? one);
}
