/** A plan as a workbook for the shop's wall and the client's desk. */
import type { JobPlan } from '../planning/job-plan.ts';
import { describeClient } from './client/client-sheet.ts';
import { draftCutting } from './cutting/cutting-sheet.ts';
import { DESCRIPTION_VERSION, type WorkbookDescription } from './description.ts';
import { newPlanCells } from './plan-cells.ts';
import { draftProduction } from './production/production-sheet.ts';
import { describeSetUps } from './set-ups/set-ups-sheet.ts';

/**
 * Describes the sheets Production, Set-ups, Cutting and Client: all totals as plain formulas with
 * what they come to, lengths as they are planned, nothing of the person's in it but the job's words.
 *
 * @param plan A plan that was made; see checkJobPlan.
 */
export function describePlan(plan: JobPlan): WorkbookDescription {
  const cells = newPlanCells();
  // Each of these points to cells of the others, so all are placed before any is finished.
  const production = draftProduction(plan, cells);
  const cutting = draftCutting(plan, cells);
  const client = describeClient(plan, cells);
  return {
    version: DESCRIPTION_VERSION,
    title: 'Production workbook',
    sheets: [production.finish(), describeSetUps(plan), cutting.finish(), client],
  };
}
