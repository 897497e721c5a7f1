/** What stands round openings, kind by kind: what one of a kind comes to on average. */
import type { JobPlan } from '../../planning/job-plan.ts';
import {
  priceOpenings,
  type OpeningMolding,
  type OpeningPrice,
} from '../../planning/unit-prices.ts';
import { money, total } from '../grammar/figures.ts';
import { cell, sum, type SheetDraft } from '../grammar/sheet-draft.ts';
import { LONG_UNIT, numberIn } from '../words/print-length.ts';
import type { LengthRows } from './by-length.ts';
import { LENGTHS, OPENINGS } from './office-columns.ts';
import { NONE, OPENINGS_NOTE, SECTIONS } from './office-words.ts';

export function addOpenings(draft: SheetDraft, plan: JobPlan, rows: LengthRows): void {
  const { shop } = plan.job;
  const kinds = priceOpenings(plan);
  draft.spread(SECTIONS.openings, 'section');
  draft.spread(OPENINGS_NOTE, 'note');
  draft.put(OPENINGS.headings(shop));
  for (const kind of kinds) {
    addKind(draft, kind);
    for (const molding of kind.moldings) addMolding(draft, plan, molding, rows);
  }
  if (kinds.length === 0) draft.put(OPENINGS.sparseRow({ kind: cell(NONE.openings, 'row') }));
  draft.blank();
}

/** Its own row sums those of its moldings, which follow. */
function addKind(draft: SheetDraft, { kind, openings, moldings }: OpeningPrice): void {
  const row = draft.next;
  const price = money(total(moldings.map(({ priceCents }) => priceCents)));
  const own = [row + 1, row + moldings.length] as const;
  const cells = {
    kind: cell(kind, 'stick'),
    openings: cell(openings, 'stickWhole'),
    price: OPENINGS.sumCell('price', own, price, 'stickDecimal'),
    each: sum(
      `${OPENINGS.at('price', row)}/${OPENINGS.at('openings', row)}`,
      price / openings,
      'stickDecimal',
    ),
  };
  draft.put({ ...OPENINGS.loose(cells, cell(null, 'stick')), joins: OPENINGS.joins() });
}

function addMolding(
  draft: SheetDraft,
  { job: { shop } }: JobPlan,
  { planned, openings, lengthNet, priceCents }: OpeningMolding,
  rows: LengthRows,
): void {
  const of = rows.get(planned);
  if (of === undefined) throw new RangeError(`${planned.profile.name} has no row by length.`);
  const row = draft.next;
  const at = (column: 'openings' | 'long' | 'price'): string => OPENINGS.at(column, row);
  const long = numberIn(lengthNet, shop.unit) / LONG_UNIT[shop.unit].holds;
  const price = money(priceCents);
  const share = `${LENGTHS.fixed('price', of)}*${at('long')}/${LENGTHS.fixed('long', of)}`;
  draft.put(
    OPENINGS.row({
      kind: cell(null, 'row'),
      profile: cell(planned.profile.name, 'row'),
      openings: cell(openings, 'rowWhole'),
      long: cell(long, 'rowDecimal'),
      price: sum(`ROUND(${share},2)`, price, 'rowDecimal'),
      each: sum(`${at('price')}/${at('openings')}`, price / openings, 'rowDecimal'),
    }),
  );
}
