/**
 * What the grid keeps with its workbook that it knows nothing of itself: the properties of its file,
 * notes among them, and plans as long texts. They go through undo, into the browser's storage and into a saved file.
 */
import {
  CommandType,
  ICommandService,
  IUniverInstanceService,
  UniverInstanceType,
  type CustomData,
  type IMutation,
  type IMutationInfo,
  type Injector,
  type Workbook,
} from '@univerjs/core';
import type { KeptTextKey, Notes } from '../host.ts';
import { notesIn, withNotes, type Properties } from '../notes.ts';
import { withText, type KeptTexts } from '../workbook/kept-text.ts';
import type { Grid } from './grid.ts';
import type { OneChange } from './one-change.ts';

/** Under this key among the workbook's custom data. */
const KEY = 'coveledger';

interface NoteParams {
  readonly unitId: string;
  readonly notes: Notes;
}

const NOTE: IMutation<NoteParams> = {
  id: 'coveledger.mutation.note',
  type: CommandType.MUTATION,
  handler: (accessor, { unitId, notes }) => {
    const book = accessor
      .get(IUniverInstanceService)
      .getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET);
    book?.setCustomMetadata(rememberNotes(book.getCustomMetadata(), notes));
    return book !== null && book !== undefined;
  },
};

interface BookMetadata {
  readonly properties?: Properties;
  /** Work that an earlier version kept in the browser has its notes here. */
  readonly notes?: Notes;
  readonly texts?: KeptTexts;
}

export function customOf(grid: Grid): CustomData | undefined {
  return grid.book().getWorkbook().getCustomMetadata();
}

export function propertiesOf(custom: CustomData | undefined): Properties {
  return readBookMetadata(custom).properties ?? {};
}

export function toBookData(properties: Properties, texts: KeptTexts = {}): CustomData {
  return { [KEY]: { properties, texts } satisfies BookMetadata };
}

export function keptTextsOf(custom: CustomData | undefined): KeptTexts {
  return readBookMetadata(custom).texts ?? {};
}

export function withKeptText(
  custom: CustomData | undefined,
  key: KeptTextKey,
  text: string | undefined,
): CustomData {
  const kept = readBookMetadata(custom);
  return { ...custom, [KEY]: { ...kept, texts: withText(kept.texts ?? {}, key, text) } };
}

export function recallNotes(custom: CustomData | undefined, keys: readonly string[]): Notes {
  const { properties = {}, notes: old = {} } = readBookMetadata(custom);
  const notes = notesIn(properties, keys);
  const own = (key: string): string | undefined => (Object.hasOwn(old, key) ? old[key] : undefined);
  return Object.fromEntries(keys.map((key) => [key, notes[key] ?? own(key)]));
}

export function rememberNotes(custom: CustomData | undefined, notes: Notes): CustomData {
  const { properties = {}, notes: old = {}, texts } = readBookMetadata(custom);
  const rest = Object.entries(old).filter(([key]) => !Object.hasOwn(notes, key));
  const kept: BookMetadata = {
    properties: withNotes(properties, notes),
    ...(texts === undefined ? {} : { texts }),
    ...(rest.length === 0 ? {} : { notes: Object.fromEntries(rest) }),
  };
  return { ...custom, [KEY]: kept };
}

/** What a writing says of the workbook goes back with it when it is taken back. */
export function changeNotes(grid: Grid, notes: Notes, change: OneChange): void {
  const keys = Object.keys(notes);
  if (keys.length === 0) return;
  const unitId = grid.book().getId();
  const step = (changed: Notes): IMutationInfo => ({
    id: NOTE.id,
    params: { unitId, notes: changed } satisfies NoteParams,
  });
  change.make(step(notes), step(recallNotes(customOf(grid), keys)));
}

/** Makes `changeNotes` known to the grid. */
export function takeNotes(services: Injector): void {
  services.get(ICommandService).registerCommand(NOTE);
}

function readBookMetadata(custom: CustomData | undefined): BookMetadata {
  return (custom as Record<string, BookMetadata | undefined> | null | undefined)?.[KEY] ?? {};
}
