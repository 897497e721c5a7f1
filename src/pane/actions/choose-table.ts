/** Which place, and which of its columns, stand for a table of the job. */
import type { TablePlace } from '../../hosts/host.ts';
import type { JobTableName } from '../../planning/input/read-job.ts';
import { filledCells } from '../../planning/input/headings/column-contents.ts';
import { guessColumns, type ColumnMap } from '../../planning/input/map-columns.ts';
import { choiceOf } from '../../planning/input/match-tables.ts';
import { writeChoices, type Choices } from '../../planning/input/table-choices.ts';
import { recallChoices } from '../job/find-job.ts';
import { keepNotes } from '../job/kept-choices.ts';
import { openHostOf } from '../state/open-host.ts';
import type { ActionTools } from './action-tools.ts';
import { checkJob } from './check-job.ts';

export interface TableActions {
  /** Two tables are alike: this one is meant, with its own headings. */
  readonly takeAsItIs: (name: JobTableName, placeKey: string) => Promise<void>;
  /** Opens the choice of place and columns, guessed or as it was made before. */
  readonly beginMapping: (name: JobTableName) => Promise<void>;
  readonly choosePlace: (placeKey: string) => Promise<void>;
  /** Keeps what was chosen and reads the tables by it. */
  readonly keepMapping: () => Promise<void>;
  /** Goes back to what the tables' own names and headings say. */
  readonly forgetChoice: (name: JobTableName) => Promise<void>;
}

export function tableActions(tools: ActionTools): TableActions {
  const { store, accept, run, services } = tools;
  const findPlace = (key: string | undefined): TablePlace | undefined =>
    store.get().reading.found?.survey.places.find((place) => place.key === key);

  async function keep(change: (choices: Choices) => Choices): Promise<void> {
    const host = openHostOf(store.get());
    if (host === undefined) return;
    const choices = accept(await recallChoices(host));
    if (choices === undefined) return;
    const notes = writeChoices(change(choices.value));
    if (accept(await host.remember(notes)) === undefined) return;
    const name = store.get().reading.found?.survey.name ?? '';
    if (host.kind === 'file') keepNotes(services.preferences, name, notes);
    store.send({ type: 'mapping ended' });
    await checkJob(tools);
  }

  async function choosePlace(placeKey: string): Promise<void> {
    const { mapping } = store.get();
    const place = findPlace(placeKey);
    if (mapping === undefined || place === undefined) return;
    const first = guessColumns(place.headings, mapping.table);
    store.send({ type: 'place chosen', placeKey, columns: first });
    await readPlace(place, mapping.table, first);
  }

  /** Looks at the rows: filled columns are guessed before empty ones, and the first rows are shown. */
  async function readPlace(
    place: TablePlace,
    name: JobTableName,
    first: ColumnMap | undefined,
  ): Promise<void> {
    await run(async () => {
      const host = openHostOf(store.get());
      // What can't be read is said when the table is to be used.
      const read = await host?.readTable(place, name);
      if (read?.ok !== true) return;
      const raw = read.value;
      const isFilled = (column: number): boolean => filledCells(raw, column).length > 0;
      const guess =
        first === undefined
          ? undefined
          : { first, better: guessColumns(raw.headings.cells, name, isFilled) };
      store.send({ type: 'place read', placeKey: place.key, raw, guess });
    });
  }

  return {
    takeAsItIs: (name, placeKey) =>
      run(async () => {
        const place = findPlace(placeKey);
        if (place !== undefined) await keep((all) => ({ ...all, [name]: choiceOf(place) }));
      }),
    beginMapping: async (name) => {
      store.send({ type: 'mapping begun', table: name });
      const standing = store.get().reading.found?.tables.find((table) => table.name === name);
      const { place, choice } = standing ?? {};
      if (place === undefined) return;
      if (choice?.columns === undefined) await choosePlace(place.key);
      else {
        store.send({ type: 'place chosen', placeKey: place.key, columns: choice.columns });
        await readPlace(place, name, undefined);
      }
    },
    choosePlace,
    keepMapping: () =>
      run(async () => {
        const { mapping } = store.get();
        const place = findPlace(mapping?.placeKey);
        if (mapping === undefined || place === undefined) return;
        const { table, columns } = mapping;
        await keep((all) => ({ ...all, [table]: choiceOf(place, columns) }));
      }),
    forgetChoice: (name) =>
      run(() =>
        keep((all) => Object.fromEntries(Object.entries(all).filter(([other]) => other !== name))),
      ),
  };
}
