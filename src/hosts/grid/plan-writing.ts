/** Before anything is written into the grid: whether it may be, and under which names. */
import { IDefinedNamesService, type IDefinedNamesServiceParam } from '@univerjs/engine-formula';
import { failed, ok, type Outcome } from '../../core/faults/fault.ts';
import type { SheetDescription, WorkbookDescription } from '../../sheets/grammar/description.ts';
import { formulaParts, nameKey, renameIn, type Renamed } from '../formulas/formula-parts.ts';
import type { Notes, WriteChoice } from '../host.ts';
import { freeName, isVariant, sheetsToReplace } from '../may-write.ts';
import { gridSheets, type GridSheet } from './grid-sheets.ts';
import type { Grid } from './grid.ts';

export interface WritingPlan {
  /** Sheets of ours that go when those of their names stand. */
  readonly outgoing: readonly GridSheet[];
  /** With tables and names as they will be called. */
  readonly sheets: readonly SheetDescription[];
  readonly names: readonly PlannedName[];
  /** What the workbook says of itself from then on. */
  readonly says: Notes;
}

export interface PlannedName {
  readonly name: string;
  readonly sheet: string;
  readonly range: string;
  /** A name of ours from an earlier writing, which is pointed elsewhere now. */
  readonly before?: IDefinedNamesServiceParam;
}

/**
 * @returns The plan, or every reason at once why nothing may be written: host.sheet-not-ours,
 *   host.sheet-exists.
 */
export function planWriting(
  grid: Grid,
  description: WorkbookDescription,
  choice: WriteChoice,
): Outcome<WritingPlan> {
  const sheets = gridSheets(grid);
  const { outgoing, faults } = sheetsToReplace(description, choice, sheets);
  if (faults.length > 0) return failed(...faults);
  const known = Object.values(
    grid.services.get(IDefinedNamesService).getDefinedNameMap(grid.book().getId()) ?? {},
  );
  const staying = sheets.filter((sheet) => !outgoing.includes(sheet));
  const tables = staying.flatMap(({ kept }) => kept?.tables ?? []);
  const taken = new Set([...known, ...tables].map(({ name }) => nameKey(name)));
  const names = planNames(description, known, outgoing, taken);
  const renamed: Renamed = {
    sheets: new Map(),
    tables: new Map(
      description.sheets.flatMap(({ tables: described = [] }) =>
        described.map(({ name }) => [nameKey(name), takeName(name, taken)] as const),
      ),
    ),
    names: new Map(names.map(({ described, planned }) => [nameKey(described), planned.name])),
  };
  return ok({
    outgoing,
    sheets: description.sheets.map((sheet) => renameWithin(sheet, renamed)),
    names: names.map(({ planned }) => planned),
    says: description.properties ?? {},
  });
}

/** A name keeps what it is called unless the person has given that to something of their own. */
function planNames(
  description: WorkbookDescription,
  known: readonly IDefinedNamesServiceParam[],
  outgoing: readonly GridSheet[],
  taken: Set<string>,
): { readonly described: string; readonly planned: PlannedName }[] {
  const going = new Set(outgoing.map(({ name }) => nameKey(name)));
  return (description.names ?? []).map((one) => {
    const before = known.find(
      ({ name, formulaOrRefString }) =>
        isVariant(name, one.name) &&
        formulaParts(formulaOrRefString).some((part) => going.has(nameKey(part.name))),
    );
    const planned =
      before === undefined
        ? { ...one, name: takeName(one.name, taken) }
        : { ...one, name: before.name, before };
    return { described: one.name, planned };
  });
}

/** A free name, which is taken then. */
function takeName(name: string, taken: Set<string>): string {
  const free = freeName(name, (key) => taken.has(key));
  taken.add(nameKey(free));
  return free;
}

function renameWithin(sheet: SheetDescription, renamed: Renamed): SheetDescription {
  const moved = [...renamed.tables, ...renamed.names].some(([key, name]) => key !== nameKey(name));
  if (!moved) return sheet;
  const formulaIn = (formula: string): string => renameIn(formula, renamed);
  const { tables = [], validations = [], highlights = [] } = sheet;
  return {
    ...sheet,
    rows: sheet.rows.map((row) => ({
      ...row,
      cells: row.cells.map((cell) =>
        cell?.formula === undefined ? cell : { ...cell, formula: formulaIn(cell.formula) },
      ),
    })),
    tables: tables.map((one) => ({
      ...one,
      name: renamed.tables.get(nameKey(one.name)) ?? one.name,
    })),
    validations: validations.map((one) =>
      one.allow.kind === 'list from'
        ? { ...one, allow: { ...one.allow, formula: formulaIn(one.allow.formula) } }
        : one,
    ),
    highlights: highlights.map((one) => ({ ...one, formula: formulaIn(one.formula) })),
  };
}
