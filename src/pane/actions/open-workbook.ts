/** Finds the workbook beside the pane, or opens a file in its place. */
import { own } from '../../core/faults/argument.ts';
import { failed, fault, ok, type Outcome } from '../../core/faults/fault.ts';
import { sayError } from '../../core/faults/say-error.ts';
import type { WorkbookHost } from '../../hosts/host.ts';
import { CHOICE_NOTES } from '../../planning/input/table-choices.ts';
import { keptNotes } from '../job/kept-choices.ts';
import { openHostOf } from '../state/open-host.ts';
import type { ActionTools } from './action-tools.ts';
import { checkJob, watchJob } from './check-job.ts';
import { recallPlans } from './kept-plans.ts';
import { PLANNING } from './plan-job.ts';

export interface WorkbookActions {
  /** Looks for the workbook beside the pane; returns what ends all watching. */
  readonly begin: () => () => void;
  readonly openFile: (file: OpenedFile) => Promise<void>;
  /** Another workbook has come to stand beside the pane. */
  readonly standBeside: (host: WorkbookHost) => Promise<void>;
}

/** A browser's File is one. */
export interface OpenedFile {
  readonly name: string;
  readonly arrayBuffer: () => Promise<ArrayBuffer>;
}

export function workbookActions(tools: ActionTools): WorkbookActions {
  const { store, services, accept, run } = tools;
  let unwatch = (): void => undefined;
  let ended = false;
  let opening = 0;

  async function use(host: WorkbookHost): Promise<void> {
    unwatch();
    store.send({ type: 'workbook opened', host });
    unwatch = watchJob(host, tools);
    await checkJob(tools);
    await recallPlans(tools, host);
    const separator = await host.listSeparator();
    if (openHostOf(store.get()) === host) store.send({ type: 'separator found', separator });
  }

  return {
    begin: () => {
      ended = false;
      const isBrokenOff = services.visit.get(PLANNING) === 'yes';
      if (isBrokenOff) services.visit.set(PLANNING, '');
      void run(async () => {
        const beside = await services.host;
        // A file that was opened in the meantime stays.
        if (ended || openHostOf(store.get()) !== undefined) return;
        if (beside.host === undefined) store.send({ type: 'workbook missing', why: beside.why });
        else await use(beside.host);
        // Last, so that it is heard.
        if (isBrokenOff) store.send({ type: 'planning broken off' });
      });
      return () => {
        ended = true;
        unwatch();
      };
    },
    standBeside: (host) =>
      run(async () => {
        // Whatever is still being opened comes too late.
        opening += 1;
        store.send({ type: 'busy', with: undefined });
        await use(host);
      }),
    openFile: (file) =>
      run(async () => {
        // Sheets that are being written come to their end in the workbook that they are written to.
        if (store.get().writing.kind === 'writing') return;
        const turn = ++opening;
        store.send({ type: 'busy', with: `Opening ${file.name}` });
        const bytes = await readBytes(file);
        const opened = bytes.ok ? await services.openFile(file.name, bytes.value) : bytes;
        // Of two files the one that was chosen last is meant, however long the first one takes.
        if (turn !== opening) return;
        store.send({ type: 'busy', with: undefined });
        const accepted = accept(opened);
        if (accepted === undefined) return;
        const host = accepted.value;
        const said = await host.recall(CHOICE_NOTES);
        if (said.ok) await host.remember(keptNotes(services.preferences, file.name, said.value));
        await use(host);
      }),
  };
}

/** A folder that was dropped, or a file that was moved or is kept shut by another program, can't be read. */
export async function readBytes(file: OpenedFile): Promise<Outcome<Uint8Array>> {
  try {
    return ok(new Uint8Array(await file.arrayBuffer()));
  } catch (error) {
    return failed(fault('pane.file-unreadable', own(file.name), sayError(error)));
  }
}
