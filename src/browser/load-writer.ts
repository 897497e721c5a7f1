/** What makes sheets and files of a plan, in a chunk of its own: reading and planning don't wait for it. */
import { exportPlan } from '../exports/export-plan.ts';
import { writeShopView } from '../exports/shop-view/shop-view.ts';
import type { Writer } from '../pane/planner.ts';
import { describeChanges } from '../sheets/changes/changes-sheet.ts';
import { describeCopyChanges } from '../sheets/changes/copy-changes.ts';
import { describeClientCopy } from '../sheets/client/client-sheet.ts';
import { readCopyOf } from '../sheets/client/read-copy-of.ts';
import { describePlan } from '../sheets/describe-plan.ts';
import { describeLoneSetUp } from '../sheets/set-ups/set-ups-sheet.ts';

export const writer: Writer = {
  describePlan,
  describeLoneSetUp,
  describeClientCopy,
  exportPlan,
  writeShopView,
  describeChanges,
  readCopyOf,
  describeCopyChanges,
};
