/** All that a person can do in the pane, bound to one store; knows no React. */
import type { Where } from '../../core/faults/fault.ts';
import { sayWhere } from '../../core/faults/fault.ts';
import type { PaneServices } from '../services.ts';
import type { FunctionReference } from '../services.ts';
import type { PaneStore } from '../state/store.ts';
import { openHostOf } from '../state/open-host.ts';
import { makeTools } from './action-tools.ts';
import { profileActions, type ProfileActions } from './add-profiles.ts';
import { compareActions, type CompareActions } from './compare-plans.ts';
import { countActions, type CountActions } from './count-list.ts';
import { checkJob } from './check-job.ts';
import { tableActions, type TableActions } from './choose-table.ts';
import { inputActions, type InputActions } from './make-input.ts';
import { workbookActions, type WorkbookActions } from './open-workbook.ts';
import { rateActions, type RateActions } from './take-over-rates.ts';
import { runActions, type RunActions } from './take-over-runs.ts';
import { planActions, type PlanActions } from './plan-job.ts';
import { printActions, type PrintActions } from './print-plan.ts';
import { copyActions, type CopyActions } from './save-copies.ts';
import { writeActions, type WriteActions } from './write-plan.ts';

export interface PaneActions
  extends
    WorkbookActions,
    InputActions,
    ProfileActions,
    RunActions,
    RateActions,
    TableActions,
    PlanActions,
    CountActions,
    WriteActions,
    PrintActions,
    CopyActions,
    CompareActions {
  readonly checkAgain: () => Promise<void>;
  /** Selects a cell in the workbook; the focus goes with it only as far as its program takes it. */
  readonly show: (where: Where, withKeyboard?: boolean) => Promise<void>;
  readonly putExample: (one: FunctionReference) => Promise<void>;
}

export function makeActions(store: PaneStore, services: PaneServices): PaneActions {
  const tools = makeTools(store, services);
  const { accept, run } = tools;
  const workbook = workbookActions(tools);
  return {
    ...workbook,
    ...inputActions(tools, workbook.openFile),
    ...profileActions(tools),
    ...runActions(tools),
    ...rateActions(tools),
    ...tableActions(tools),
    ...planActions(tools),
    ...countActions(tools),
    ...writeActions(tools),
    ...printActions(tools),
    ...copyActions(tools),
    ...compareActions(tools),
    checkAgain: async () => {
      await checkJob(tools);
    },
    show: (where, withKeyboard) =>
      run(async () => {
        const host = openHostOf(store.get());
        if (host !== undefined && accept(await host.show(where, withKeyboard)) !== undefined) {
          store.send({ type: 'trouble put away' });
        }
      }),
    putExample: ({ id, name, example }) =>
      run(async () => {
        const host = openHostOf(store.get());
        if (host === undefined) return;
        const put = await host.putFormula(example);
        const text = put.ok
          ? `The example of ${name} is in ${sayWhere(put.value)}.`
          : put.faults.map(({ message }) => message).join(' ');
        store.send({ type: 'example put', id, text, ok: put.ok });
      }),
  };
}
