/** Saves the client's copy of what was planned, as a file by itself. */
import { isOccupied } from '../state/is-occupied.ts';
import { openHostOf } from '../state/open-host.ts';
import { load, type ActionTools } from './action-tools.ts';
import { rest } from './breathe.ts';
import { checkJob } from './check-job.ts';

export interface ClientActions {
  /** Nothing is saved of a plan that is wrong, or of inputs that have changed: the Plan tab says so. */
  readonly saveClient: () => Promise<void>;
}

export function clientActions(tools: ActionTools): ClientActions {
  const { store, planner, run, services } = tools;

  async function save(): Promise<void> {
    const { result } = store.get().planning;
    if (openHostOf(store.get()) === undefined || result === undefined || result.wrong.length > 0) {
      return;
    }
    const found = await checkJob(tools);
    if (found?.fingerprint !== result.fingerprint) return;
    const loaded = await planner();
    if (loaded === undefined) return;
    // A large plan takes a while to be laid out: the screen is drawn before.
    await rest();
    const name = clientFile(found.look.name);
    const copy = loaded.describeClientCopy(result.plan);
    const bytes = await load(store, 'What writes files', () => services.makeFile(copy));
    if (bytes === undefined) return;
    services.saveFile(name, bytes);
    const notice = `The client’s copy is saved as ${name}, with no figure of the shop’s own. Fill in its date.`;
    store.send({ type: 'done', notice });
  }

  return {
    saveClient: () =>
      run(async () => {
        if (isOccupied(store.get()) || store.get().busy !== undefined) return;
        store.send({ type: 'busy', with: 'Making the client’s copy' });
        await save();
        store.send({ type: 'busy', with: undefined });
      }),
  };
}

/** After the workbook: trim.xlsx gives trim-client.xlsx. */
function clientFile(workbook: string): string {
  const base = workbook.replace(/\.(?:xls[xmb]?|csv|ods)$/iu, '');
  return base === '' ? 'client.xlsx' : `${base}-client.xlsx`;
}
