/** Prints by choice what was planned, or the set-up of one cove: shown first, as it comes out of the printer. */
import { listPrintChoices, isPageOf, type PrintChoice } from '../print/print-choices.ts';
import type { ProfileAnswer } from '../profile/answer-profile.ts';
import { isOccupied } from '../state/is-occupied.ts';
import { load, type ActionTools } from './action-tools.ts';
import { checkJob } from './check-job.ts';

export interface PrintActions {
  /** Offers what can be printed of the plan; nothing of one that is wrong, or of inputs that have changed. */
  readonly printPlan: () => Promise<void>;
  /** Offers the page of this cove alone. */
  readonly printCove: (answer: ProfileAnswer) => Promise<void>;
  readonly choosePrint: (choice: PrintChoice) => Promise<void>;
}

export function printActions(tools: ActionTools): PrintActions {
  const { store, services, planner, writer, run } = tools;

  async function choose(choice: PrintChoice): Promise<void> {
    store.send({ type: 'print chosen', key: choice.key });
    const { decimalSign } = store.get().printing?.reading ?? { decimalSign: '.' as const };
    const pages = await load(store, 'writer', () =>
      services.layPages(choice.sheet, decimalSign, (text) => isPageOf(choice, text)),
    );
    if (pages !== undefined) store.send({ type: 'print laid', key: choice.key, pages });
  }

  return {
    printPlan: () =>
      run(async () => {
        const { result } = store.get().planning;
        if (result === undefined || result.wrong.length > 0 || isOccupied(store.get())) return;
        const found = await checkJob(tools);
        const loaded = await planner();
        const making = loaded === undefined ? undefined : await writer();
        if (found?.job === undefined || found.fingerprint !== result.fingerprint) return;
        if (loaded === undefined || making === undefined) return;
        const plan = loaded.withHoursOf(result.plan, found.job);
        const described = making.describePlan(plan, { keepsFormulas: false, stamp: result });
        const choices = listPrintChoices(plan, described);
        const [first] = choices;
        if (first === undefined) return;
        store.send({ type: 'print begun', choices, reading: plan.job.shop });
        await choose(first);
      }),
    printCove: ({ profile, setUp, shop }) =>
      run(async () => {
        if (profile === undefined || setUp === undefined) return;
        const loaded = await writer();
        if (loaded === undefined) return;
        const sheet = loaded.describeLoneSetUp(profile, setUp, shop);
        const label = profile.name;
        const choice: PrintChoice = { key: label, label, group: 'One set-up', sheet };
        store.send({ type: 'print begun', choices: [choice], reading: shop });
        await choose(choice);
      }),
    choosePrint: (choice) => run(() => choose(choice)),
  };
}
