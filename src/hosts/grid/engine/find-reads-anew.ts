/** Keeps formulas right when sheets and names come, go and change, and when rows are sorted. */
import {
  IUniverInstanceService,
  ObjectMatrix,
  UniverInstanceType,
  type ICommandInfo,
  type Injector,
  type IUnitRange,
  type Nullable,
  type Workbook,
} from '@univerjs/core';
import {
  FormulaDataModel,
  IActiveDirtyManagerService,
  IFunctionService,
  RemoveDefinedNameMutation,
  SetDefinedNameMutation,
  type ISetDefinedNameMutationParam,
} from '@univerjs/engine-formula';
import {
  InsertSheetMutation,
  RemoveSheetMutation,
  ReorderRangeMutation,
  SetWorksheetNameMutation,
  type ISetWorksheetNameMutationParams,
} from '@univerjs/sheets';

/** Names of sheets by the workbook's and their own ids. */
type Sheets = Record<string, Record<string, string>>;

/**
 * The engine remembers which cells a formula reads, and forgets too little of it. Of one that names
 * a missing sheet it remembers cells of the formula's own sheet, also once the other is there, and
 * then works formulas out in a wrong order; one with a name it reads as when the name was first met.
 * So whenever a sheet or a name comes, goes or changes, or rows change places, what it remembers is found anew.
 */
export function findReadsAnew(services: Injector): void {
  const dirt = services.get(IActiveDirtyManagerService);
  for (const { id } of [InsertSheetMutation, RemoveSheetMutation, SetWorksheetNameMutation]) {
    const known = dirt.get(id);
    dirt.register(id, {
      commandId: id,
      getDirtyData: (command) => {
        const { dirtyNameMap = renamed(command), ...rest } = known?.getDirtyData(command) ?? {};
        const sheets = everySheet(services);
        return {
          ...rest,
          dirtyNameMap: withoutReplaced(dirtyNameMap, sheets),
          clearDependencyTreeCache: sheets,
        };
      },
    });
  }
  const sorting = dirt.get(ReorderRangeMutation.id);
  dirt.register(ReorderRangeMutation.id, {
    commandId: ReorderRangeMutation.id,
    getDirtyData: (command) => ({
      ...sorting?.getDirtyData(command),
      clearDependencyTreeCache: everySheet(services),
    }),
  });
  for (const { id } of [SetDefinedNameMutation, RemoveDefinedNameMutation]) {
    const known = dirt.get(id);
    dirt.register(id, {
      commandId: id,
      getDirtyData: (command) => {
        const { unitId, name, formulaOrRefString } = command.params as ISetDefinedNameMutationParam;
        const { spellings, cells } = formulasWith(services, unitId, name);
        services.get(IFunctionService).deleteFormulaAstCacheKey(...spellings);
        const names = [name, ...spellings].map((one) => [one, formulaOrRefString] as const);
        return {
          ...known?.getDirtyData(command),
          dirtyDefinedNameMap: { [unitId]: Object.fromEntries(names) },
          dirtyRanges: cells,
          clearDependencyTreeCache: everySheet(services),
        };
      },
    });
  }
}

function everySheet(services: Injector): Sheets {
  const books = services
    .get(IUniverInstanceService)
    .getAllUnitsForType<Workbook>(UniverInstanceType.UNIVER_SHEET);
  return Object.fromEntries(
    books.map((book) => [
      book.getUnitId(),
      Object.fromEntries(book.getSheets().map((one) => [one.getSheetId(), one.getName()])),
    ]),
  );
}

/** A formula that named a sheet before there was one of that name is worked out with it now. */
function renamed({ params }: ICommandInfo): Sheets {
  const { unitId, subUnitId, name } = params as ISetWorksheetNameMutationParams;
  return { [unitId]: { [subUnitId]: name } };
}

/** By a sheet that is gone the engine would read that name, though another bears it now. */
function withoutReplaced(
  changed: Readonly<Record<string, Nullable<Readonly<Record<string, string>>>>>,
  there: Sheets,
): Sheets {
  return Object.fromEntries(
    Object.entries(changed).map(([book, names]) => {
      const now = there[book] ?? {};
      const borne = new Set(Object.values(now));
      const left = Object.entries(names ?? {}).filter(
        ([id, name]) => id in now || !borne.has(name),
      );
      return [book, Object.fromEntries(left)];
    }),
  );
}

/** Where formulas stand that have the name in them, or a text like it: none is left out. */
function formulasWith(
  services: Injector,
  unitId: string,
  name: string,
): { readonly spellings: readonly string[]; readonly cells: IUnitRange[] } {
  const spellings = new Set<string>();
  const cells: IUnitRange[] = [];
  const formulas = services.get(FormulaDataModel).getFormulaData()[unitId] ?? {};
  for (const [sheetId, rows] of Object.entries(formulas)) {
    new ObjectMatrix(rows ?? {}).forValue((row, column, cell) => {
      const formula = cell?.f ?? '';
      const at = formula.toLowerCase().indexOf(name.toLowerCase());
      if (at < 0) return;
      // Names match whatever their case; what the engine remembers doesn't.
      spellings.add(formula.slice(at, at + name.length));
      const range = { startRow: row, endRow: row, startColumn: column, endColumn: column };
      cells.push({ unitId, sheetId, range });
    });
  }
  return { spellings: [...spellings], cells };
}
