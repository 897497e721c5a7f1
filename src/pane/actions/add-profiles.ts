/** Adds the profiles that runs and openings name to the person's table of them, to be filled in. */
import { columnLetters } from '../../core/cells/cell-range.ts';
import { count } from '../../sheets/words/print-length.ts';
import { missingProfiles, rowsForProfiles } from '../../planning/input/missing-profiles.ts';
import type { JobFound } from '../job/job-found.ts';
import { openHostOf } from '../state/open-host.ts';
import type { ActionTools } from './action-tools.ts';
import { checkJob } from './check-job.ts';

export interface ProfileActions {
  readonly addMissingProfiles: () => Promise<void>;
}

export function profileActions(tools: ActionTools): ProfileActions {
  const { store, accept, run } = tools;

  async function add(found: JobFound): Promise<void> {
    const host = openHostOf(store.get());
    const table = found.inputs.find(({ name }) => name === 'Profiles');
    const place = found.tables.find(({ name }) => name === 'Profiles')?.place;
    const names = missingProfiles(found.faults);
    if (host === undefined || table === undefined || place === undefined) return;
    const made = rowsForProfiles(table, names, found.shop);
    if (names.length === 0 || made === undefined) return;
    const { rows, toFill, asksMake } = made;
    const added = accept(await host.appendRows(place, rows));
    if (added === undefined) return;
    const cell = `${columnLetters(toFill)}${added.value.line}`;
    const shown = accept(await host.show({ sheet: place.sheet, cell }, true));
    const were = names.length === 1 ? 'was' : 'were';
    const what = `${count(names.length, 'profile')} ${were} added on ${place.sheet}.`;
    const next = asksMake
      ? 'Say under Make what each is, where it has a “?”: a cove asks for its sizes then.'
      : 'Each is a molding that is bought, since the table has no column Make.';
    // Where a cell can't be shown, that is what stands in the pane.
    if (shown !== undefined) store.send({ type: 'done', notice: `${what} ${next}` });
    await checkJob(tools);
  }

  return {
    addMissingProfiles: () =>
      run(async () => {
        if (store.get().busy !== undefined) return;
        store.send({ type: 'busy', with: 'Adding the profiles' });
        // Somebody may have typed since the tables were read.
        const found = await checkJob(tools);
        if (found !== undefined) await add(found);
        store.send({ type: 'busy', with: undefined });
      }),
  };
}
