/** Tells when cells of the person's sheets change. */
import { CommandType, ICommandService, type ICellData, type ICommandInfo } from '@univerjs/core';
import {
  InsertColMutation,
  InsertRowMutation,
  InsertSheetMutation,
  MoveColsMutation,
  MoveRangeMutation,
  MoveRowsMutation,
  RemoveColMutation,
  RemoveRowMutation,
  RemoveSheetMutation,
  ReorderRangeMutation,
  SetRangeValuesMutation,
  SetWorksheetNameMutation,
} from '@univerjs/sheets';
import { gridSheet } from './grid-sheets.ts';
import type { Grid } from './grid.ts';

/** What changes cells: done by a command, a paste, Undo or Redo alike. */
const CHANGES = new Set(
  [
    InsertColMutation,
    InsertRowMutation,
    InsertSheetMutation,
    MoveColsMutation,
    MoveRangeMutation,
    MoveRowsMutation,
    RemoveColMutation,
    RemoveRowMutation,
    RemoveSheetMutation,
    ReorderRangeMutation,
    SetRangeValuesMutation,
    SetWorksheetNameMutation,
  ].map(({ id }) => id),
);

/** What is looked at of the parameters of any of them. */
interface ChangeParams {
  readonly unitId?: string;
  readonly subUnitId?: string;
  readonly sheet?: { readonly id: string };
  readonly from?: { readonly subUnitId: string };
  readonly to?: { readonly subUnitId: string };
  readonly cellValue?: Readonly<Record<number, Readonly<Record<number, ICellData | null>>>>;
}

/**
 * Calls `changed` with a sheet's name, once for changes that come together; returns what ends it.
 * What formulas answer anew is a change too: a length may be one. What is written on sheets of ours
 * is none, but that one of them goes is; what is typed there `typedOnOurs` is told.
 */
export function watchSheets(
  grid: Grid,
  changed: (sheet: string) => void,
  typedOnOurs: (sheet: string) => void = () => undefined,
): () => void {
  const commands = grid.services.get(ICommandService);
  let waiting = new Set<string>();
  let onOurs = new Set<string>();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const tell = (): void => {
    const names = waiting;
    waiting = new Set();
    const ours = onOurs;
    onOurs = new Set();
    timer = undefined;
    for (const name of names) changed(name);
    for (const name of ours) typedOnOurs(name);
  };
  const note = (command: ICommandInfo, going: boolean): void => {
    const { unitId, ...params } = (command.params ?? {}) as ChangeParams;
    const book = grid.book().getWorkbook();
    if (unitId !== book.getUnitId() || changesStyleAlone(params)) return;
    const ids = [params.subUnitId, params.sheet?.id, params.from?.subUnitId, params.to?.subUnitId];
    for (const id of ids) {
      const found = id === undefined ? null : book.getSheetBySheetId(id);
      if (found === null || found === undefined) continue;
      const { name, ours } = gridSheet(found);
      if (!ours || (going && command.id === RemoveSheetMutation.id)) waiting.add(name);
      else if (!going) onOurs.add(name);
    }
    // A renamed sheet is told of by both of its names, one that goes by the one it had.
    if (!going && waiting.size + onOurs.size > 0) timer ??= setTimeout(tell, 0);
  };
  const listen =
    (going: boolean) =>
    (command: ICommandInfo): void => {
      const { type, id } = command;
      if (type === CommandType.MUTATION && CHANGES.has(id)) note(command, going);
    };
  const listeners = [
    commands.beforeCommandExecuted(listen(true)),
    commands.onCommandExecuted(listen(false)),
  ];
  return () => {
    clearTimeout(timer);
    for (const listener of listeners) listener.dispose();
  };
}

function changesStyleAlone({ cellValue }: ChangeParams): boolean {
  if (cellValue === undefined) return false;
  return Object.values(cellValue).every((row) =>
    Object.values(row).every(
      (cell) => cell !== null && Object.keys(cell).every((key) => key === 's'),
    ),
  );
}
