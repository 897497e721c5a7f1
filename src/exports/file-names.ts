/** Names of files made from names of profiles and rooms, sound on every system. */

/** Long enough to tell profiles apart, short enough for a path of 260 characters. */
const MOST_CHARACTERS = 48;
/** Names that Windows keeps for devices (Microsoft, "Naming Files, Paths, and Namespaces"). */
const DEVICE = /^(con|prn|aux|nul|com\d|lpt\d)$/iu;
const UNNAMED = 'unnamed';

/**
 * Gives each text a name of letters, figures and hyphens, no two the same without regard to case.
 *
 * @returns a function that remembers what it gave
 */
export function newFileNames(): (text: string) => string {
  const taken = new Set<string>();
  return (text) => {
    const base = plainName(text);
    for (let number = 1; ; number++) {
      const name = number === 1 ? base : `${base}-${number}`;
      const key = name.toLowerCase();
      if (taken.has(key)) continue;
      taken.add(key);
      return name;
    }
  };
}

function plainName(text: string): string {
  const words = text.normalize('NFC').replace(/[^\p{L}\p{M}\p{N}]+/gu, '-');
  const clipped = Array.from(words).slice(0, MOST_CHARACTERS).join('');
  const trimmed = clipped.replace(/^-+|-+$/gu, '');
  if (trimmed === '') return UNNAMED;
  return DEVICE.test(trimmed) ? `${trimmed}-` : trimmed;
}
