/** Holds the plan against an earlier one, or against a client's copy that came back. */
import { own } from '../../core/faults/argument.ts';
import { fault, type Fault } from '../../core/faults/fault.ts';
import { yieldNowAndThen, yieldToBrowser } from '../../hosts/yield-to-browser.ts';
import type { PlanToKeep } from '../../planning/kept/keep-plan.ts';
import type { CopyFile } from '../../sheets/client/copy-sheet.ts';
import { sayNumbered } from '../../sheets/words/say-copy.ts';
import type { WorkbookDescription } from '../../sheets/grammar/description.ts';
import { markOf, sayStamp } from '../../sheets/stamp.ts';
import type { OtherFile } from '../services.ts';
import type { Planner, Writer } from '../planner.ts';
import { isOccupied } from '../state/is-occupied.ts';
import { openHostOf } from '../state/open-host.ts';
import type { Compared, PlanResult } from '../state/pane-state.ts';
import { load, type ActionTools } from './action-tools.ts';
import { readBytes, type OpenedFile } from './open-workbook.ts';

export interface CompareActions {
  /** With the plan that the written sheets are of. */
  readonly compareWritten: () => Promise<void>;
  /** With a workbook that carries its plan, or a client's copy. */
  readonly compareFile: (file: OpenedFile) => Promise<void>;
  /** Writes the sheet Changes into the workbook, in place of an earlier one. */
  readonly writeChanges: () => Promise<void>;
  /** Saves it as a file by itself. */
  readonly saveChanges: () => Promise<void>;
}

const COMPARING = 'Comparing';

export function compareActions(tools: ActionTools): CompareActions {
  const { store, services, planner, writer, accept, run } = tools;

  const isFree = (): boolean => !isOccupied(store.get()) && store.get().busy === undefined;

  /** The plan that stands, as long as it is sound. */
  function planNow(): PlanResult | undefined {
    const { result } = store.get().planning;
    return result === undefined || result.wrong.length > 0 ? undefined : result;
  }

  async function busy(what: string, action: () => Promise<void>): Promise<void> {
    if (!isFree()) return;
    store.send({ type: 'busy', with: what });
    await action();
    store.send({ type: 'busy', with: undefined });
  }

  /** Shown as long as it is still of the workbook and of the plan that it was made of. */
  function show(result: PlanResult, compared: Compared | readonly Fault[], name: string): void {
    if (planNow() !== result) return;
    if ('kind' in compared) store.send({ type: 'compared', compared });
    else store.send({ type: 'comparison refused', name, faults: compared });
  }

  function against(
    loaded: Planner,
    before: PlanToKeep,
    result: PlanResult,
    name: string,
  ): Compared | readonly Fault[] {
    const [was, is] = [before, result].map(({ plan }) => plan.job.shop.currency);
    if (was !== is) {
      const details = { before: was ?? '' };
      return [fault('plan.other-currency', 'plan', is ?? '', { details })];
    }
    const sayPlan = (what: string, of: PlanToKeep): string =>
      `${what}. ${sayStamp(of, result.plan.job.shop.decimalSign)}`;
    const files = { before: sayPlan(name, before), after: sayPlan('This plan', result) };
    const comparison = loaded.comparePlans(before.plan, result.plan);
    return { kind: 'plans', name, files, comparison, job: result.plan.job };
  }

  function ofCopy(
    loaded: Writer,
    copy: CopyFile,
    result: PlanResult,
    name: string,
  ): Compared | readonly Fault[] {
    const { number, day } = copy;
    if (number === undefined) return [fault('copy.no-number', own(name), null)];
    const { written } = store.get().planning;
    const plans: readonly PlanToKeep[] = written === undefined ? [result] : [result, written];
    const ofNumber = plans.filter((one) => markOf(one) === number);
    if (ofNumber.length === 0) {
      const dated = result.plan.job.titleBlock.date ?? result.day;
      const limit = sayNumbered(markOf(result), dated);
      return [fault('copy.other-plan', own(name), sayNumbered(number, day), { limit })];
    }
    const read = loaded.readCopyOf(ofNumber, copy, name);
    if (!read.ok) return read.faults;
    const { from, returned } = read.value;
    const { job } = from.plan;
    const files = {
      before: sayStamp(from, job.shop.decimalSign),
      after: `${name}, ${sayNumbered(number, day)}.`,
    };
    return { kind: 'copy', name, files, returned, job };
  }

  async function ofFile(
    loaded: Planner,
    other: OtherFile,
    result: PlanResult,
    name: string,
  ): Promise<Compared | readonly Fault[]> {
    if (other.kind === 'copy') {
      const reading = await writer();
      return reading === undefined ? [] : ofCopy(reading, other.copy, result, name);
    }
    const { texts } = other.kept;
    const faults: Fault[] = [];
    for (const key of ['plan', 'written-plan'] as const) {
      const text = texts[key];
      if (text === undefined) continue;
      const now = yieldNowAndThen(() => performance.now());
      const read = await loaded.readKeptPlan(text, now);
      if (!read.ok) {
        faults.push(...read.faults);
        continue;
      }
      const { plan } = read.value;
      const ticks = key === 'plan' ? undefined : loaded.readTicks(plan, other.kept);
      const marked = ticks === undefined ? plan : loaded.markCut(plan, ticks);
      return against(loaded, { ...read.value, plan: marked }, result, name);
    }
    return faults;
  }

  /** The sheet as it is to be written; undefined where nothing is compared. */
  async function describe(): Promise<WorkbookDescription | undefined> {
    const { compared } = store.get();
    const loaded = compared === undefined ? undefined : await writer();
    if (compared === undefined || loaded === undefined) return undefined;
    const made = services.clock().toISOString();
    return compared.kind === 'plans'
      ? loaded.describeChanges(compared.comparison, compared.files, compared.job, made)
      : loaded.describeCopyChanges(compared.returned, compared.files, compared.job, made);
  }

  return {
    compareWritten: () =>
      run(() =>
        busy(COMPARING, async () => {
          const result = planNow();
          const { written } = store.get().planning;
          const loaded = await planner();
          if (result === undefined || written === undefined || loaded === undefined) return;
          await yieldToBrowser();
          const name = 'The sheets as they are written';
          show(result, against(loaded, written, result, name), name);
        }),
      ),
    compareFile: (file) =>
      run(() =>
        busy(`Comparing with ${file.name}`, async () => {
          const result = planNow();
          const bytes = accept(await readBytes(file));
          const loaded = await planner();
          if (result === undefined || bytes === undefined || loaded === undefined) return;
          const other = accept(await services.readOther(file.name, bytes.value));
          if (other === undefined) return;
          show(result, await ofFile(loaded, other.value, result, file.name), file.name);
        }),
      ),
    writeChanges: () =>
      run(() =>
        busy('Writing the sheet Changes', async () => {
          const host = openHostOf(store.get());
          const description = await describe();
          const survey = host === undefined ? undefined : accept(await host.survey());
          if (host === undefined || description === undefined || survey === undefined) return;
          const names = description.sheets.map(({ name }) => name);
          const replace = survey.value.sheets
            .filter(({ name, ours }) => ours && names.includes(name))
            .map(({ name }) => name);
          const written = accept(await host.write(description, { owner: 'tool', replace }));
          if (written === undefined) return;
          store.send({ type: 'done', notice: 'The sheet Changes is written.' });
        }),
      ),
    saveChanges: () =>
      run(() =>
        busy('Making the sheet Changes', async () => {
          const description = await describe();
          if (description === undefined) return;
          const bytes = await load(store, 'writer', () => services.makeFile(description));
          if (bytes === undefined) return;
          const workbook = (store.get().reading.found?.survey.name ?? '').replace(
            /\.(?:xls[xmb]?|csv|ods)$/iu,
            '',
          );
          const name = workbook === '' ? 'changes.xlsx' : `${workbook}-changes.xlsx`;
          services.saveFile(name, bytes);
          store.send({ type: 'done', notice: `The sheet Changes is saved as ${name}.` });
        }),
      ),
  };
}
