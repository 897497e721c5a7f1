/** Makes input sheets, blank or filled with the demo: in the workbook, or as a file to keep. */
import type { WorkbookHost } from '../../hosts/host.ts';
import type { WorkbookDescription } from '../../sheets/grammar/description.ts';
import { missingSheets } from '../job/input-sheets.ts';
import { sayList } from '../job/say-findings.ts';
import { openHostOf } from '../state/open-host.ts';
import { load, type ActionTools } from './action-tools.ts';
import { checkJob } from './check-job.ts';
import type { OpenedFile } from './open-workbook.ts';

export type InputKind = 'blank' | 'metric' | 'demo';

const FILE_NAMES: Readonly<Record<InputKind, string>> = {
  blank: 'trim.xlsx',
  metric: 'trim.xlsx',
  demo: 'demo-trim.xlsx',
};

export interface InputActions {
  readonly makeInput: (kind: InputKind) => Promise<void>;
}

/** `open` takes a file into the pane: the demo is shown at once, not only kept. */
export function inputActions(
  tools: ActionTools,
  open: (file: OpenedFile) => Promise<void>,
): InputActions {
  const { store, services, accept, planner, run } = tools;

  async function describe(kind: InputKind): Promise<WorkbookDescription | undefined> {
    const loaded = await planner();
    if (loaded === undefined) return undefined;
    if (kind === 'metric') return loaded.describeInput([], 'mm');
    if (kind === 'blank') return loaded.describeInput([], store.get().reading.found?.shop.unit);
    const demo = await load(store, 'demo', services.loadDemo);
    return demo === undefined ? undefined : loaded.describeInput(demo);
  }

  async function writeInto(host: WorkbookHost, whole: WorkbookDescription): Promise<void> {
    const survey = accept(await host.survey());
    if (survey === undefined) return;
    const tables = store.get().reading.found?.tables ?? [];
    const description = missingSheets(whole, tables, survey.value);
    if (description.sheets.length === 0) {
      store.send({ type: 'done', notice: 'Every input sheet is here already.' });
      await checkJob(tools);
      return;
    }
    const written = accept(await host.write(description, { owner: 'person', replace: [] }));
    if (written === undefined) return;
    const { file, sheets } = written.value;
    if (file !== undefined) services.saveFile(file.name, file.bytes);
    const names = sayList(
      sheets.length === 0 ? description.sheets.map(({ name }) => name) : sheets,
    );
    const notice =
      file === undefined
        ? `Made: ${names}. They are yours: nothing here writes over them.`
        : `${file.name} has the sheets ${names}. Fill it in, save it, and open it here.`;
    store.send({ type: 'done', notice });
    await checkJob(tools);
  }

  async function writeFile(kind: InputKind, whole: WorkbookDescription): Promise<void> {
    const name = FILE_NAMES[kind];
    const bytes = await services.makeFile(whole);
    services.saveFile(name, bytes);
    if (kind === 'demo') {
      await open({ name, arrayBuffer: () => Promise.resolve(Uint8Array.from(bytes).buffer) });
      store.send({ type: 'done', notice: `${name} is saved as a file, and open here.` });
    } else {
      const notice = `${name} is saved as a file. Fill it in with any spreadsheet, save it, and open it here.`;
      store.send({ type: 'done', notice });
    }
  }

  return {
    makeInput: (kind) =>
      run(async () => {
        if (store.get().busy !== undefined) return;
        store.send({ type: 'busy', with: 'Making the sheets' });
        const whole = await describe(kind);
        const host = openHostOf(store.get());
        if (whole !== undefined) {
          await (host === undefined ? writeFile(kind, whole) : writeInto(host, whole));
        }
        store.send({ type: 'busy', with: undefined });
      }),
  };
}
