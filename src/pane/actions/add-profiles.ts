/** Adds the profiles that runs and openings name to the person's table of them, to be filled in. */
import { columnLetters } from '../../core/cells/cell-range.ts';
import { count } from '../../sheets/words/print-length.ts';
import { missingProfiles, rowsForProfiles } from '../../planning/input/missing-profiles.ts';
import { parseLength } from '../../core/units/length.ts';
import { rowForCove } from '../../planning/input/row-for-cove.ts';
import type { Shop } from '../../planning/shop.ts';
import { usualCove, type TypedCove } from '../profile/cove-fields.ts';
import type { JobFound } from '../job/job-found.ts';
import { openHostOf } from '../state/open-host.ts';
import type { ActionTools } from './action-tools.ts';
import { checkJob } from './check-job.ts';
import { placeOf, withTable } from './with-table.ts';

export interface ProfileActions {
  readonly addMissingProfiles: () => Promise<void>;
  /** The cove of one's own as a row of Profiles, whose table is made where there is none. */
  readonly addCove: (name: string, typed: TypedCove) => Promise<void>;
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

  async function addTyped(name: string, typed: TypedCove): Promise<void> {
    const host = openHostOf(store.get());
    const before = await checkJob(tools);
    if (host === undefined || before === undefined) return;
    const found = await withTable(tools, host, before, 'Profiles');
    const table = found?.inputs.find((one) => one.name === 'Profiles');
    const place = found === undefined ? undefined : placeOf(found, 'Profiles');
    if (found === undefined || table === undefined || place === undefined) return;
    const row = accept(rowForCove(table, name, typed, found.shop));
    const added = row === undefined ? undefined : accept(await host.appendRows(place, [row.value]));
    if (added === undefined) return;
    store.send({
      type: 'done',
      notice: `${name} was added on ${place.sheet}, row ${added.value.line}. Say there what it is made of.${sayOtherBlade(typed, found.shop)}`,
    });
    store.send({ type: 'profile chosen', name });
    await checkJob(tools);
  }

  return {
    addCove: (name, typed) =>
      run(async () => {
        if (store.get().busy !== undefined) return;
        store.send({ type: 'busy', with: 'Adding the profile' });
        await addTyped(name, typed);
        store.send({ type: 'busy', with: undefined });
      }),
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

/** A row has no blade of its own. */
function sayOtherBlade(typed: TypedCove, shop: Shop): string {
  const usual = usualCove(shop);
  const isSame = (['bladeDiameter', 'kerf'] as const).every((size) => {
    const [tried, own] = [typed[size], usual[size]].map((text) => parseLength(text, size, shop));
    return tried?.ok === true && own?.ok === true && tried.value.equals(own.value);
  });
  return isSame
    ? ''
    : ` It was tried with another blade than Shop’s, ${usual.bladeDiameter} with a kerf of ${usual.kerf}: the job’s set-up is for that one.`;
}
