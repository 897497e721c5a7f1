/** The code on a set-up's page: its numbers on any phone, where the page is hosted. */
import { drawCode } from '../../drawings/code.ts';
import type { Drawing } from '../../drawings/drawing.ts';
import type { SetUpPlan } from '../../planning/job-plan.ts';
import { writeSawCode } from '../../planning/saw-code/saw-code.ts';
import type { Shop } from '../../planning/shop.ts';

/** Beside pageAddress. */
const SAW_PAGE = 'saw.html';

/** The address that the code holds; undefined where Shop doesn't say where the page is hosted. */
export function addressOfSetUp(
  { profile, setUp, sticks }: SetUpPlan,
  shop: Shop,
): string | undefined {
  if (shop.pageAddress === undefined) return undefined;
  const hasNote = profile.note !== '';
  const code = writeSawCode({ profile, setUp, shop, blanks: sticks.length, hasNote });
  return `${shop.pageAddress}${SAW_PAGE}#${code}`;
}

export function drawSetUpCode(planned: SetUpPlan, shop: Shop): Drawing | undefined {
  const address = addressOfSetUp(planned, shop);
  if (address === undefined) return undefined;
  return drawCode(address, 'On a phone', `Code of ${planned.profile.name}`);
}
