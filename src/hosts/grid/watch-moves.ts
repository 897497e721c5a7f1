/** Keeps tables, rules and pages of a sheet where they belong when rows and columns come and go. */
import {
  CommandType,
  ICommandService,
  IUniverInstanceService,
  UniverInstanceType,
  type CustomData,
  type ICommandInfo,
  type IMutation,
  type IMutationInfo,
  type Injector,
  type IRange,
  type Workbook,
  type Worksheet,
} from '@univerjs/core';
import { EffectRefRangId, SheetInterceptorService } from '@univerjs/sheets';
import { toCustomData, readCustomData } from './sheet-metadata.ts';
import { shiftMetadata, type LineChange } from './shift-metadata.ts';

export interface KeepParams {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly custom: CustomData | undefined;
}

/** Puts what is kept with a sheet in place of what was. */
export const KEEP: IMutation<KeepParams> = {
  id: 'coveledger.mutation.keep-of-sheet',
  type: CommandType.MUTATION,
  handler: (accessor, { unitId, subUnitId, custom }) => {
    const sheet = bookOf(accessor.get(IUniverInstanceService), unitId)?.getSheetBySheetId(
      subUnitId,
    );
    sheet?.setCustomMetadata(custom);
    return sheet !== undefined;
  },
};

const CHANGES: Readonly<Record<string, Pick<LineChange, 'lines' | 'kind'>>> = {
  [EffectRefRangId.InsertRowCommandId]: { lines: 'rows', kind: 'come' },
  [EffectRefRangId.InsertColCommandId]: { lines: 'columns', kind: 'come' },
  [EffectRefRangId.RemoveRowCommandId]: { lines: 'rows', kind: 'go' },
  [EffectRefRangId.RemoveColCommandId]: { lines: 'columns', kind: 'go' },
};

const NOTHING = { redos: [], undos: [] };

/** Part of the same step as the rows or columns themselves, so that Undo puts it back as it was. */
export function watchMoves(services: Injector): void {
  services.get(ICommandService).registerCommand(KEEP);
  services.get(SheetInterceptorService).interceptCommand({
    getMutations: (command) => {
      const change = changeOf(command);
      const sheet = sheetOf(services.get(IUniverInstanceService), command);
      const custom = sheet?.getCustomMetadata();
      const kept = readCustomData(custom);
      if (change === null || sheet === undefined || kept === undefined) return NOTHING;
      const place = { unitId: sheet.getUnitId(), subUnitId: sheet.getSheetId() };
      const keep = (made: CustomData | undefined): IMutationInfo => ({
        id: KEEP.id,
        params: { ...place, custom: made },
      });
      return {
        redos: [keep({ ...custom, ...toCustomData(shiftMetadata(kept, change)) })],
        undos: [keep(custom)],
      };
    },
  });
}

interface ChangeParams {
  readonly range: IRange;
  readonly unitId?: string;
  readonly subUnitId?: string;
}

function changeOf({ id, params }: ICommandInfo): LineChange | null {
  const change = CHANGES[id];
  if (change === undefined) return null;
  const { startRow, endRow, startColumn, endColumn } = (params as ChangeParams).range;
  return change.lines === 'rows'
    ? { ...change, at: startRow, count: endRow - startRow + 1 }
    : { ...change, at: startColumn, count: endColumn - startColumn + 1 };
}

/** Rows that go are not told with their sheet: it is the one in sight. */
function sheetOf(books: IUniverInstanceService, { params }: ICommandInfo): Worksheet | undefined {
  const { unitId, subUnitId, range } = (params ?? {}) as Partial<ChangeParams>;
  const book = bookOf(books, unitId ?? range?.unitId);
  const id = subUnitId ?? range?.sheetId;
  return id === undefined ? book?.getActiveSheet() : (book?.getSheetBySheetId(id) ?? undefined);
}

function bookOf(books: IUniverInstanceService, unitId: string | undefined): Workbook | undefined {
  const kind = UniverInstanceType.UNIVER_SHEET;
  const book =
    unitId === undefined
      ? books.getCurrentUnitOfType<Workbook>(kind)
      : books.getUnit<Workbook>(unitId, kind);
  return book ?? undefined;
}
