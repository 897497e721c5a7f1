/** Room by room: its price, and what that is for each foot or metre of its walls. */
import type { JobPlan } from '../../planning/job-plan.ts';
import { priceRooms } from '../../planning/unit-prices.ts';
import { money, total } from '../grammar/figures.ts';
import { cell, sum, type SheetDraft } from '../grammar/sheet-draft.ts';
import type { PlanAnchors } from '../plan-anchors.ts';
import { LONG_UNIT, numberIn } from '../words/print-length.ts';
import { ROOMS } from './office-columns.ts';
import { NONE, ROOMS_NOTE, SECTIONS, TOGETHER, WHOLE_JOB } from './office-words.ts';

export function addRooms(draft: SheetDraft, plan: JobPlan, acrossSheets: PlanAnchors): void {
  const { shop } = plan.job;
  const { holds } = LONG_UNIT[shop.unit];
  const rooms = priceRooms(plan);
  draft.spread(SECTIONS.rooms, 'section');
  draft.spread(ROOMS_NOTE, 'note');
  draft.put(ROOMS.headings(shop));
  const first = draft.next;
  for (const { room, lines, priceCents, wallLength } of rooms) {
    const row = draft.next;
    const price = money(priceCents);
    const walls = wallLength === undefined ? 0 : numberIn(wallLength, shop.unit) / holds;
    const perWall = `${ROOMS.at('price', row)}/${ROOMS.at('walls', row)}`;
    draft.put(
      ROOMS.row({
        room: cell(room, 'rowStrong'),
        price: sum(() => acrossSheets.at('roomPriceOnProduction', lines[0]), price, 'rowDecimal'),
        walls: cell(walls > 0 ? walls : null, 'rowDecimal'),
        perWall: walls > 0 ? sum(perWall, price / walls, 'rowDecimal') : cell(null, 'row'),
      }),
    );
  }
  if (rooms.length === 0) draft.put(ROOMS.sparseRow({ room: cell(NONE.rooms, 'row') }));
  const ofJob = plan.jobWork.money?.priceCents ?? 0;
  if (plan.jobWork.money !== undefined) {
    const price = sum(() => acrossSheets.at('jobPriceOnProduction'), money(ofJob), 'rowDecimal');
    draft.put(ROOMS.sparseRow({ room: cell(WHOLE_JOB, 'rowStrong'), price }));
  }
  const all = money(total(rooms.map(({ priceCents }) => priceCents)) + ofJob);
  const together = {
    room: cell(TOGETHER, 'totalLabel'),
    price: ROOMS.sumCell('price', [first, draft.next - 1], all, 'total'),
  };
  draft.put(ROOMS.loose(together, cell(null, 'totalLabel')));
  draft.blank();
}
