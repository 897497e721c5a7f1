/**
 * Windows-1252, in which older Windows programs save. Node 20's own decoder takes it for Latin-1,
 * which has control characters where this has quotes and dashes.
 */

/** 0x80 to 0x9F (WHATWG Encoding, index-windows-1252); the rest is as in Latin-1. */
const UPPER = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008DŽ\u008F' + '\u0090‘’“”•–—˜™š›œ\u009DžŸ';
/** No more arguments than any engine takes at once. */
const CHUNK = 8192;

export function decodeWindows1252(bytes: Uint8Array): string {
  let latin = '';
  for (let at = 0; at < bytes.length; at += CHUNK) {
    latin += String.fromCharCode(...bytes.subarray(at, at + CHUNK));
  }
  return latin.replace(/[\u0080-\u009F]/g, (one) => UPPER[one.charCodeAt(0) - 0x80] ?? one);
}
