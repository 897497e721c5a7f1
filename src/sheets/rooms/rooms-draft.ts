/** The sheet Rooms while it is drafted. */
import type { Joint } from '../../planning/joint-places.ts';
import type { Profile } from '../../planning/job.ts';
import type { JobPlan } from '../../planning/job-plan.ts';
import type { PagedRows } from '../grammar/paged-rows.ts';
import type { SheetDraft } from '../grammar/sheet-draft.ts';
import type { PlanAnchors } from '../plan-anchors.ts';

/** What is drafted, and what its rows go by. */
export interface RoomsDraft {
  readonly draft: SheetDraft;
  readonly pages: PagedRows;
  readonly plan: JobPlan;
  readonly acrossSheets: PlanAnchors;
  readonly facts: {
    /** Each piece's No. on Pieces, by its id. */
    readonly numbers: ReadonlyMap<string, number>;
    readonly profiles: ReadonlyMap<string, Profile>;
    /** Of each spliced piece, from left to right. */
    readonly joints: ReadonlyMap<string, readonly Joint[]>;
  };
}
