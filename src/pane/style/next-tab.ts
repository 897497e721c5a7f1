/** The tab that a key leads to from the chosen one, round and round; undefined for other keys. */
export function nextTab<Name extends string>(
  names: readonly Name[],
  chosen: Name,
  key: string,
): Name | undefined {
  const at = names.indexOf(chosen);
  switch (key) {
    case 'ArrowRight':
      return names[(at + 1) % names.length];
    case 'ArrowLeft':
      return names[(at + names.length - 1) % names.length];
    case 'Home':
      return names[0];
    case 'End':
      return names.at(-1);
    default:
      return undefined;
  }
}
