/** Whether described sheets may be written into a workbook, and which names are free in it. */
import { fault, type Fault } from '../core/faults/fault.ts';
import type { WorkbookDescription } from '../sheets/grammar/description.ts';
import { nameKey } from './formulas/formula-parts.ts';
import type { WriteChoice } from './host.ts';

/** A sheet that the workbook has already. */
export interface SheetThere {
  readonly name: string;
  /** Written by us before, with owner `tool`. */
  readonly ours: boolean;
  /** The person has protected it. */
  readonly isProtected?: boolean;
}

/**
 * The sheets of ours that go when those described stand, or every reason why none may be written:
 * host.sheet-protected, host.sheet-not-ours, host.sheet-exists.
 *
 * @param there The sheets whose names count as taken.
 */
export function sheetsToReplace<Sheet extends SheetThere>(
  description: WorkbookDescription,
  { owner, replace }: WriteChoice,
  there: readonly Sheet[],
): { readonly outgoing: readonly Sheet[]; readonly faults: readonly Fault[] } {
  const replaceable = new Set(replace.map(nameKey));
  const sheets = new Map(there.map((sheet) => [nameKey(sheet.name), sheet]));
  const faults: Fault[] = [];
  const outgoing: Sheet[] = [];
  for (const { name } of description.sheets) {
    const sheet = sheets.get(nameKey(name));
    if (sheet === undefined) continue;
    const refuse = (code: Fault['code']): number => faults.push(fault(code, 'sheet', sheet.name));
    if (sheet.isProtected === true) refuse('host.sheet-protected');
    if (!sheet.ours || owner === 'person') refuse('host.sheet-not-ours');
    else if (!replaceable.has(nameKey(name))) refuse('host.sheet-exists');
    else outgoing.push(sheet);
  }
  return { outgoing, faults };
}

/** The name, or the first of name_2, name_3, ... that isn't taken. */
export function freeName(name: string, isTaken: (key: string) => boolean): string {
  let free = name;
  for (let number = 2; isTaken(nameKey(free)); number++) free = `${name}_${number}`;
  return free;
}

/** Whether `freeName` may have made it of that name. */
export function isVariant(made: string, name: string): boolean {
  const [key, of] = [nameKey(made), nameKey(name)];
  return key === of || (key.startsWith(`${of}_`) && /^\d+$/u.test(key.slice(of.length + 1)));
}
