/** Room by room: its lines' prices; its price, and what that is for each foot or metre of its walls. */
import type { JobPlan, ProfilePlan, RoomLine } from '../../planning/job-plan.ts';
import { priceRooms } from '../../planning/unit-prices.ts';
import { money, total } from '../grammar/figures.ts';
import { cell, sum, type SheetDraft } from '../grammar/sheet-draft.ts';
import type { PlanAnchors } from '../plan-anchors.ts';
import { LONG_UNIT, numberIn } from '../words/print-length.ts';
import type { OfficeAnchors } from './office-anchors.ts';
import { LINES, ROOMS } from './office-columns.ts';
import { LINES_NOTE, NONE, ROOMS_NOTE, SECTIONS, TOGETHER, WHOLE_JOB } from './office-words.ts';

/** A line for each profile of each room, as Production has them; each bears its share of the profile's price. */
export function addLines(
  draft: SheetDraft,
  plan: JobPlan,
  acrossSheets: PlanAnchors,
  onThisSheet: OfficeAnchors,
): void {
  draft.spread(SECTIONS.lines, 'section');
  draft.spread(LINES_NOTE, 'note');
  draft.put(LINES.headings(plan.job.shop));
  const plans = new Map(plan.profiles.map((planned) => [planned.profile.name, planned]));
  const before = new Map<ProfilePlan, RoomLine>();
  const first = draft.next;
  plan.rooms.forEach((line, at) => {
    const planned = plans.get(line.profile);
    if (planned === undefined) throw new RangeError(`Nothing is planned of ${line.profile}.`);
    /** What the profile's lines come to from the first to one, rounded: so lines add up to its price. */
    const worth = (one: RoomLine): string => {
      const { numbers, lengths, number } = acrossSheets.at('downToLineOnProduction', one);
      const { price } = acrossSheets.at('moneyOnOffice', planned);
      const length = acrossSheets.at('netLengthOnProduction', planned);
      return `ROUND(${price}*SUMIF(${numbers},${number},${lengths})/${length},2)`;
    };
    const previous = before.get(planned);
    before.set(planned, line);
    const row = draft.put(
      LINES.row({
        line: cell(at + 1, 'rowWhole'),
        room: cell(line.room, 'row'),
        profile: cell(line.profile, 'row'),
        price: sum(
          () => (previous === undefined ? worth(line) : `${worth(line)}-${worth(previous)}`),
          money(line.priceCents),
          'rowDecimal',
        ),
      }),
    );
    onThisSheet.place('linePrice', LINES.at('price', row), line);
  });
  if (plan.rooms.length === 0) draft.put(LINES.sparseRow({ room: cell(NONE.rooms, 'row') }));
  const prices = money(total(plan.rooms.map(({ priceCents }) => priceCents)));
  const together = {
    room: cell(TOGETHER, 'totalLabel'),
    price: LINES.sumCell('price', [first, draft.next - 1], prices, 'total'),
  };
  const row = draft.put(LINES.loose(together, cell(null, 'totalLabel')));
  onThisSheet.place('total priceByRoom', LINES.at('price', row));
  draft.blank();
}

export function addRooms(
  draft: SheetDraft,
  plan: JobPlan,
  acrossSheets: PlanAnchors,
  onThisSheet: OfficeAnchors,
): void {
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
        price: sum(
          lines.map((line) => onThisSheet.at('linePrice', line)).join('+'),
          price,
          'rowDecimal',
        ),
        walls: cell(walls > 0 ? walls : null, 'rowDecimal'),
        perWall: walls > 0 ? sum(perWall, price / walls, 'rowDecimal') : cell(null, 'row'),
      }),
    );
  }
  if (rooms.length === 0) draft.put(ROOMS.sparseRow({ room: cell(NONE.rooms, 'row') }));
  const ofJob = plan.jobWork.money?.priceCents ?? 0;
  if (plan.jobWork.money !== undefined) {
    const price = sum(() => acrossSheets.at('jobPriceOnOffice'), money(ofJob), 'rowDecimal');
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
