/** A plan as a workbook for the shop's wall and the client's desk. */
import type { JobPlan } from '../planning/job-plan.ts';
import { describeClient } from './client/client-sheet.ts';
import { draftCutting } from './cutting/cutting-sheet.ts';
import {
  DESCRIPTION_VERSION,
  type SheetDescription,
  type WorkbookDescription,
} from './grammar/description.ts';
import { stampSheet, tellOfShop, type Stamp } from './stamp.ts';
import { describeSetUpFormulas } from './formulas/set-up-formulas.ts';
import { draftLabor } from './labor/labor-sheet.ts';
import { describeLabels } from './labels/labels-sheet.ts';
import { describeOutlines } from './outlines/outlines-sheet.ts';
import { draftOffice } from './office/office-sheet.ts';
import { draftPieces } from './pieces/pieces-sheet.ts';
import { newPlanAnchors } from './plan-anchors.ts';
import { draftProduction } from './production/production-sheet.ts';
import { draftRooms } from './rooms/rooms-sheet.ts';
import { fileTitle } from './words/say-title.ts';
import { draftYard } from './yard/yard-sheet.ts';
import { describeSetUps } from './set-ups/set-ups-sheet.ts';

export interface SheetChoice {
  /** Adds the set-up numbers as plain formulas, which answer without the add-in. */
  readonly keepsFormulas?: boolean;
  /** What the sheets, their pages and their file tell of their making; absent, nothing. */
  readonly stamp?: Stamp;
  /** Where the page is hosted that made this, for the codes on Set-ups; Shop's own goes before it. */
  readonly pageAddress?: string;
}

/**
 * Describes the sheets Production, Labor, Office, Pieces, Set-ups, Outlines (where coves are cut), Cutting,
 * Labels (where Shop asks for them), Rooms (where rooms have walls), Yard (where something is bought) and Client: all totals as plain
 * formulas with what they come to, lengths as they are planned. It holds nothing of the person's but
 * the job's own words.
 *
 * @param plan A plan that was made; see checkJobPlan.
 */
export function describePlan(plan: JobPlan, choice: SheetChoice = {}): WorkbookDescription {
  const acrossSheets = newPlanAnchors();
  // These point to cells of each other, and of sheets described after them: they are finished last.
  const production = draftProduction(plan, acrossSheets, choice.stamp);
  const labor = draftLabor(plan, acrossSheets);
  const office = draftOffice(plan, acrossSheets);
  const pieces = draftPieces(plan, acrossSheets);
  const cutting = draftCutting(plan, acrossSheets);
  const rooms = draftRooms(plan, acrossSheets);
  const yard = draftYard(plan, acrossSheets);
  const client = describeClient(plan, acrossSheets, choice.stamp);
  const outlines = describeOutlines(plan);
  const labels = describeLabels(plan, choice.stamp);
  const stamped = (sheet: SheetDescription): SheetDescription =>
    stampSheet(sheet, plan.job, choice.stamp);
  return {
    version: DESCRIPTION_VERSION,
    title: fileTitle('Production workbook', plan.job.titleBlock),
    ...tellOfShop(plan.job.titleBlock, choice.stamp),
    sheets: [
      stamped(production.finish()),
      stamped(labor.finish()),
      stamped(office.finish()),
      stamped(pieces.finish()),
      stamped(describeSetUps(withPageAddress(plan, choice.pageAddress))),
      ...(outlines === undefined ? [] : [stamped(outlines)]),
      stamped(cutting.finish()),
      ...(labels === undefined ? [] : [labels]),
      ...(rooms === undefined ? [] : [stamped(rooms.finish())]),
      ...(yard === undefined ? [] : [stamped(yard.finish())]),
      client,
      ...(choice.keepsFormulas === true ? describeSetUpFormulas(plan).map(stamped) : []),
    ],
  };
}

function withPageAddress(plan: JobPlan, pageAddress: string | undefined): JobPlan {
  const { job } = plan;
  if (pageAddress === undefined || job.shop.pageAddress !== undefined) return plan;
  return { ...plan, job: { ...job, shop: { ...job.shop, pageAddress } } };
}
