/**
 * A plan for the phone or tablet at the saw, as one file that asks nothing of a network: each cove with its
 * numbers, drawings and passes, each stick with its pieces, to tap off.
 */
import { isCovePlan, plansOf, type JobPlan } from '../../planning/job-plan.ts';
import { sayStamp, type Stamp } from '../../sheets/stamp.ts';
import { printExact } from '../../sheets/words/print-length.ts';
import { fileTitle, sayTitle } from '../../sheets/words/say-title.ts';
import type { Screen } from './screen.ts';
import { writeShopPage } from './shop-page.ts';
import { cornersScreen, setUpScreen } from './set-up-screen.ts';
import { ripScreen, stickReading, stickScreens } from './stick-screens.ts';

/** A file goes on to be opened when the job has moved on. */
const OTHER_MARK =
  'Where the printed sheets bear another mark, this page is of another plan: save it anew.';

const TICKS_OF_PLAN =
  'Ticks stay on this device, for this very plan. They are not in the workbook: tick them on Cutting too, so that the next plan knows what is cut.';

/**
 * @param plan A plan that was made; see checkJobPlan.
 * @param stamp What is told of its making; absent, nothing.
 * @returns HTML, the same for the same plan. Ticks are kept under what the screens say, so that another
 * plan's ticks are never taken for these.
 */
export function writeShopView(plan: JobPlan, stamp?: Stamp): string {
  const { shop, titleBlock } = plan.job;
  const reading = stickReading(plan);
  const screens = plan.groups.flatMap((group): Screen[] => {
    const plans = plansOf(plan, group);
    return [
      ripScreen(reading, group, plans),
      ...plans.flatMap((planned) => [
        isCovePlan(planned) ? setUpScreen(shop, planned, planned.sticks.length) : undefined,
        cornersScreen(plan, planned),
        ...stickScreens(reading, planned),
      ]),
    ].filter((screen) => screen !== undefined);
  });
  return writeShopPage({
    title: fileTitle('At the saw', titleBlock),
    heading: sayTitle(titleBlock),
    made: stamp === undefined ? [] : [sayStamp(stamp, shop.decimalSign), OTHER_MARK],
    leastBlank: printExact(shop.leastBlankLength, shop),
    screens,
    ticks: TICKS_OF_PLAN,
  });
}
