/** Plans the job, lets it be stopped, and writes what was planned. */
import type { Planner } from '../planner.ts';
import type { Job } from '../../planning/job.ts';
import { sameName } from '../../planning/job.ts';
import type { WorkbookHost } from '../../hosts/host.ts';
import type { WorkbookDescription } from '../../sheets/description.ts';
import { askWriting } from '../plan/ask-writing.ts';
import { WRITTEN_NOTE } from '../job/find-job.ts';
import { openHostOf } from '../state/open-host.ts';
import type { ActionTools } from './action-tools.ts';
import { breathe } from './breathe.ts';

export interface PlanActions {
  readonly plan: () => Promise<void>;
  readonly stop: () => void;
  /** Writes at once where nothing is replaced; else asks first. */
  readonly askToWrite: () => Promise<void>;
  /** After the question was answered with yes. */
  readonly write: () => Promise<void>;
}

export function planActions(tools: ActionTools): PlanActions {
  const { store, planner, accept, run, services } = tools;
  let signal = { aborted: false };

  async function planFound(loaded: Planner, job: Job, fingerprint: string): Promise<void> {
    const own = { aborted: false };
    signal = own;
    store.send({ type: 'planning begun', of: job.profiles.length });
    const { turn } = store.get().planning;
    const { plan, faults, cautions } = await loaded.planJob(job, {
      signal: own,
      pause: breathe(() => performance.now()),
      onProfile: (done, of, profile) =>
        store.send({
          type: 'planning moved',
          turn,
          progress: { done, of, profile, phase: '', costCents: undefined, boundCents: undefined },
        }),
      onProgress: (progress) => store.send({ type: 'planning moved', turn, progress }),
    });
    if (own.aborted) {
      store.send({ type: 'planning stopped', turn });
      return;
    }
    const result =
      plan === undefined ? undefined : { plan, fingerprint, wrong: loaded.checkJobPlan(plan) };
    store.send({ type: 'planning ended', turn, result, faults, cautions });
  }

  async function describeResult(): Promise<WorkbookDescription | undefined> {
    const { result } = store.get().planning;
    if (result === undefined || result.wrong.length > 0) return undefined;
    return (await planner())?.describePlan(result.plan);
  }

  async function writeNow(
    host: WorkbookHost,
    description: WorkbookDescription,
    replace: readonly string[],
  ): Promise<void> {
    const { result } = store.get().planning;
    if (result === undefined) return;
    store.send({ type: 'writing begun', of: description.sheets.length });
    const outcome = await host.write(description, {
      owner: 'tool',
      replace,
      onProgress: (done, of) => store.send({ type: 'writing moved', done, of }),
    });
    const written = accept(outcome);
    if (written === undefined) {
      store.send({ type: 'writing dropped' });
      return;
    }
    const { sheets, file } = written.value;
    if (file !== undefined) services.saveFile(file.name, file.bytes);
    const { fingerprint } = result;
    store.send({ type: 'written', sheets, file: file?.name, fingerprint });
    accept(await host.remember(WRITTEN_NOTE, fingerprint));
  }

  return {
    plan: () =>
      run(async () => {
        const { found } = store.get().reading;
        if (found?.job === undefined || store.get().planning.running !== undefined) return;
        const loaded = await planner();
        if (loaded !== undefined) await planFound(loaded, found.job, found.fingerprint);
      }),
    stop: () => {
      signal.aborted = true;
      store.send({ type: 'planning stopping' });
    },
    askToWrite: () =>
      run(async () => {
        const host = openHostOf(store.get());
        const description = await describeResult();
        if (host === undefined || description === undefined) return;
        const look = accept(await host.look());
        if (look === undefined) return;
        const question = askWriting(
          description.sheets.map(({ name }) => name),
          look.value,
        );
        if (question.replaced.length > 0 && host.can.writeInPlace) {
          store.send({ type: 'writing asked', question });
        } else {
          await writeNow(host, description, question.replaced);
        }
      }),
    write: () =>
      run(async () => {
        const { writing } = store.get();
        const host = openHostOf(store.get());
        const description = await describeResult();
        if (writing.kind !== 'asking' || host === undefined || description === undefined) return;
        // Only what was asked about may be replaced, whatever has come to stand there since.
        const asked = description.sheets
          .map(({ name }) => name)
          .filter((name) => writing.question.replaced.some((one) => sameName(one, name)));
        await writeNow(host, description, asked);
      }),
  };
}
