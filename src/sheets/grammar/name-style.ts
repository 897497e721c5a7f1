/** How a profile's name stands over its page: large, and smaller where it would take many lines. */
import type { StyleName } from './styles.ts';

const LONG = 80;

export function nameStyle(name: string): StyleName {
  return Array.from(name).length > LONG ? 'longTitle' : 'wrappedTitle';
}
