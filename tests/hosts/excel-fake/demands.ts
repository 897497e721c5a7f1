/** What may be asked of the fake at all, and how large it is. */
import type { ClassMembers, Since } from './members.ts';
import { MisuseError } from './office-error.ts';

/** Throws for a member that came with a later requirement set than the fake is to know. */
export function demand(minor: number, className: string, name: string, since: Since): void {
  if (since <= minor) return;
  throw new MisuseError(`${className}.${name} came with ExcelApi 1.${since}`);
}

/** Throws for a path such as items/worksheet/id that can't be loaded. */
export function checkPath(
  known: { readonly classes: Readonly<Record<string, ClassMembers>>; readonly minor: number },
  className: string,
  [name = '', ...rest]: readonly string[],
): void {
  const members = known.classes[className];
  if (name === 'items' && members?.items !== undefined && rest.length > 0) {
    checkPath(known, members.items.gives, rest);
    return;
  }
  const [value, part] = [members?.values?.[name], members?.parts?.[name]];
  if (value?.get !== undefined && rest.length === 0) {
    demand(known.minor, className, name, value.since);
  } else if (part !== undefined && rest.length > 0) {
    demand(known.minor, className, name, part.since);
    checkPath(known, part.gives, rest);
  } else throw new MisuseError(`${className}/${[name, ...rest].join('/')} can't be loaded`);
}

/** Bytes of a value as it is sent. */
export function bytesOf(value: unknown): number {
  if (value === undefined) return 0;
  return new TextEncoder().encode(JSON.stringify(value)).length;
}
