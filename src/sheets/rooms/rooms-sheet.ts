/** The rooms: a page for each room of Walls, for the fitter; then the schedule of doors and windows. */
import { listJoints } from '../../planning/joints.ts';
import { nameKey } from '../../planning/job.ts';
import type { JobPlan } from '../../planning/job-plan.ts';
import { listRoomFittings } from '../../planning/rooms/room-fittings.ts';
import type { SheetDescription } from '../grammar/description.ts';
import { roomForRows } from '../grammar/page-size.ts';
import { PagedRows } from '../grammar/paged-rows.ts';
import { SheetDraft } from '../grammar/sheet-draft.ts';
import { pieceNumbers } from '../numbered-pieces.ts';
import { SHEET_NAMES, type PlanAnchors } from '../plan-anchors.ts';
import { addOpenings } from './openings-schedule.ts';
import { addRoomPage } from './room-page.ts';
import { GRID } from './rooms-columns.ts';
import type { RoomsDraft } from './rooms-draft.ts';

/** @returns undefined where no room has Walls */
export function draftRooms(
  plan: JobPlan,
  acrossSheets: PlanAnchors,
): { readonly finish: () => SheetDescription } | undefined {
  const { shop, walls, profiles } = plan.job;
  if (walls.length === 0) return undefined;
  const draft = new SheetDraft(SHEET_NAMES.rooms, GRID, true);
  const pages = new PagedRows(draft, GRID, roomForRows(shop.paper, GRID));
  const rooms: RoomsDraft = {
    draft,
    pages,
    plan,
    acrossSheets,
    facts: {
      numbers: pieceNumbers(plan),
      profiles: new Map(profiles.map((one) => [nameKey(one.name), one])),
      joints: listJoints(plan),
    },
  };
  for (const fittings of listRoomFittings(plan)) addRoomPage(rooms, fittings);
  addOpenings(rooms);
  return {
    finish: () =>
      draft.finish({ paper: shop.paper, orientation: 'portrait', footer: SHEET_NAMES.rooms }),
  };
}
