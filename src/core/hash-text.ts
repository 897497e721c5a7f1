const OFFSETS = [0x811c9dc5, 0x01000193] as const;
const PRIME = 0x01000193;

/**
 * 16 hexadecimal digits that change with any character of a text. FNV-1a (Fowler, Noll, Vo) of 32 bits
 * over UTF-16 units, twice with different offsets: it guards against slips, not against a forger.
 */
export function hashText(text: string): string {
  return OFFSETS.map((offset) => {
    let hash: number = offset;
    for (let at = 0; at < text.length; at++) {
      hash = Math.imul(hash ^ text.charCodeAt(at), PRIME);
    }
    return (hash >>> 0).toString(16).padStart(8, '0');
  }).join('');
}
