/** Before anything is written: whether it may be, and under which names. */
import { failed, fault, ok, type Outcome } from '../../core/faults/fault.ts';
import type { WorkbookDescription } from '../../sheets/grammar/description.ts';
import type { WriteChoice } from '../host.ts';
import { nameKey, type Renamed } from '../formulas/formula-parts.ts';
import { freeName, isVariant, sheetsToReplace } from '../may-write.ts';
import { stagedName } from './marks.ts';
import { pointsAt, type FoundSheet, type Inventory } from './inventory.ts';

export interface WritingPlan {
  /** Sheets of ours that go, each with where it stands. */
  readonly outgoing: readonly FoundSheet[];
  /** Sheets that an earlier failure left behind, and names that point into them. */
  readonly leftovers: readonly FoundSheet[];
  readonly leftoverNames: readonly string[];
  /** What each sheet is called while it is written, in the description's order. */
  readonly stagedSheets: readonly string[];
  /** What tables are called in the end, where that isn't what they are written as. */
  readonly tables: readonly { readonly staged: string; readonly final: string }[];
  /** Workbook names: new ones, and those of ours that are pointed elsewhere in the end. */
  readonly names: readonly PlannedName[];
  /** From the description's names to those that hold while it is written. */
  readonly renamed: Renamed;
}

export interface PlannedName {
  readonly described: string;
  readonly final: string;
  /** What the name of ours refers to until then; absent for a new one. */
  readonly before?: string;
}

/**
 * Plans the writing.
 *
 * @returns The plan, or every reason at once why nothing may be written: host.workbook-protected,
 *   host.sheet-not-ours, host.sheet-exists, host.sheet-protected.
 */
export function planWriting(
  description: WorkbookDescription,
  choice: WriteChoice,
  found: Inventory,
): Outcome<WritingPlan> {
  const standing = found.sheets.filter(({ leftover }) => !leftover);
  const { outgoing, faults: refused } = sheetsToReplace(description, choice, standing);
  const faults = [
    ...(found.structureProtected
      ? [fault('host.workbook-protected', 'workbook', found.workbook)]
      : []),
    ...refused,
  ];
  if (faults.length > 0) return failed(...faults);
  const leftovers = found.sheets.filter((sheet) => sheet.leftover);
  const staying = found.names.filter(({ formula }) => !pointsAt(formula, leftovers));
  const tables = nameTables(description, found, outgoing, staying);
  const names = nameNames(description, found, outgoing, staying);
  const stagedSheets = nameSheets(description, found);
  return ok({
    outgoing,
    leftovers,
    leftoverNames: found.names.filter((one) => !staying.includes(one)).map(({ name }) => name),
    stagedSheets,
    tables: tables.filter(({ staged, final }) => staged !== final),
    names,
    renamed: {
      sheets: new Map(
        description.sheets.map(({ name }, index) => [nameKey(name), stagedSheets[index] ?? name]),
      ),
      tables: new Map(tables.map(({ described, staged }) => [nameKey(described), staged])),
      names: new Map(names.map(({ described, final }) => [nameKey(described), final])),
    },
  });
}

function nameSheets(description: WorkbookDescription, { sheets }: Inventory): string[] {
  // Also not those of leftovers, which go in the same request.
  const taken = new Set(sheets.map(({ name }) => nameKey(name)));
  let number = 0;
  return description.sheets.map(() => {
    do number += 1;
    while (taken.has(nameKey(stagedName(number))));
    return stagedName(number);
  });
}

interface NamedTable {
  readonly described: string;
  readonly staged: string;
  readonly final: string;
}

/** A table keeps its name unless the person has given it to something of their own. */
function nameTables(
  description: WorkbookDescription,
  { sheets }: Inventory,
  outgoing: readonly FoundSheet[],
  names: Inventory['names'],
): NamedTable[] {
  const theirs = sheets.filter((sheet) => !outgoing.includes(sheet) && !sheet.leftover);
  const kept = [...theirs.flatMap(({ tables }) => tables), ...names];
  const keptKeys = new Set(kept.map(({ name }) => nameKey(name)));
  const goingKeys = new Set(
    sheets
      .filter((sheet) => !theirs.includes(sheet))
      .flatMap(({ tables }) => tables.map(({ name }) => nameKey(name))),
  );
  const described = description.sheets.flatMap(({ tables = [] }) => tables);
  const finals = new Set<string>();
  return described.map(({ name }) => {
    const final = freeName(name, (key) => keptKeys.has(key) || finals.has(key));
    finals.add(nameKey(final));
    const busy = goingKeys.has(nameKey(final));
    const staged = busy
      ? freeName(
          `${final}_new`,
          (key) => keptKeys.has(key) || goingKeys.has(key) || finals.has(key),
        )
      : final;
    finals.add(nameKey(staged));
    return { described: name, staged, final };
  });
}

function nameNames(
  description: WorkbookDescription,
  { sheets }: Inventory,
  outgoing: readonly FoundSheet[],
  names: Inventory['names'],
): PlannedName[] {
  const tables = sheets.flatMap((sheet) => sheet.tables);
  const taken = new Set([...names, ...tables].map(({ name }) => nameKey(name)));
  return (description.names ?? []).map(({ name }) => {
    const ours = names.find((one) => isVariant(one.name, name) && pointsAt(one.formula, outgoing));
    if (ours !== undefined) return { described: name, final: ours.name, before: ours.formula };
    const final = freeName(name, (key) => taken.has(key));
    taken.add(nameKey(final));
    return { described: name, final };
  });
}
