/** Finds the workbook beside the pane, or opens a file in its place. */
import type { WorkbookHost } from '../../hosts/host.ts';
import { openHostOf } from '../state/open-host.ts';
import type { ActionTools } from './action-tools.ts';
import { checkJob, watchJob } from './check-job.ts';

export interface WorkbookActions {
  /** Looks for the workbook beside the pane; returns what ends all watching. */
  readonly begin: () => () => void;
  readonly openFile: (file: OpenedFile) => Promise<void>;
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

  async function use(host: WorkbookHost): Promise<void> {
    unwatch();
    store.send({ type: 'workbook opened', host });
    unwatch = watchJob(host, tools);
    await checkJob(tools);
    store.send({ type: 'separator found', separator: await host.listSeparator() });
  }

  return {
    begin: () => {
      ended = false;
      void run(async () => {
        const host = await services.host;
        // A file that was opened in the meantime stays.
        if (ended || openHostOf(store.get()) !== undefined) return;
        if (host === undefined) store.send({ type: 'workbook missing', why: undefined });
        else await use(host);
      });
      return () => {
        ended = true;
        unwatch();
      };
    },
    openFile: (file) =>
      run(async () => {
        store.send({ type: 'busy', with: `Opening ${file.name}` });
        const bytes = new Uint8Array(await file.arrayBuffer());
        const opened = accept(await services.openFile(file.name, bytes));
        store.send({ type: 'busy', with: undefined });
        if (opened !== undefined) await use(opened.value);
      }),
  };
}
