/** What a client may take up beside what is in the price, at a price each. */
import { type JobPlan, isPriced, type PricedOption } from '../../planning/job-plan.ts';
import type { ValidationDescription } from '../grammar/description.ts';
import { money } from '../grammar/figures.ts';
import { cell, sum, type SheetDraft } from '../grammar/sheet-draft.ts';
import { PRICE_LINES } from '../words/price-lines.ts';
import { sayOption } from '../words/say-option.ts';
import type { ClientAnchors } from './client-anchors.ts';
import { OPTIONS } from './client-columns.ts';
import { sayTakenUp, TAKE_UP_NOTE } from './client-words.ts';

/** Adds a row for each, and their sum; nothing where Options has none. @returns what may be typed there */
export function addOptions(
  draft: SheetDraft,
  plan: JobPlan,
  anchors: ClientAnchors,
): ValidationDescription[] {
  const { shop } = plan.job;
  const priced = plan.options.filter(isPriced);
  const taken = plan.options.filter((one) => !isPriced(one));
  if (plan.options.length === 0) return [];
  draft.spread('Options', 'section');
  for (const one of taken) draft.spread(sayTakenUp(one.option, sayOption(plan, one)), 'wrapped');
  if (priced.length === 0) {
    draft.blank();
    return [];
  }
  draft.spread(TAKE_UP_NOTE, 'note');
  draft.put(OPTIONS.headings(shop));
  const first = draft.next;
  for (const one of priced) addOption(draft, plan, one);
  const last = draft.next - 1;
  const rows = [first, last] as const;
  const row = draft.put(
    OPTIONS.loose(
      {
        option: cell(PRICE_LINES.options, 'totalLabel'),
        quantity: OPTIONS.sumCell('quantity', rows, 0, 'totalWhole'),
        price: sum(`ROUND(${OPTIONS.sum('price', ...rows)},2)`, 0, 'total'),
      },
      cell(null, 'totalLabel'),
    ),
  );
  draft.blank();
  const quantity = OPTIONS.inColumn('quantity', first);
  const isTaken = `${OPTIONS.inColumn('asQuoted', first)}<>${quantity}`;
  draft.highlight(OPTIONS.area(first, last), isTaken, 'caution');
  const taxable = priced.map(
    ({ more }, at) => `${OPTIONS.at('quantity', first + at)}*${money(more.taxableCents)}`,
  );
  anchors.place('options', {
    taken: OPTIONS.at('quantity', row),
    price: OPTIONS.at('price', row),
    taxable: taxable.join('+'),
  });
  return [
    {
      range: OPTIONS.range('quantity', first, last),
      allow: { kind: 'whole', least: 0, most: 1 },
      strict: true,
      title: 'Taken up',
      message: '1 takes the option up, 0 leaves it out of the price.',
    },
  ];
}

function addOption(draft: SheetDraft, plan: JobPlan, priced: PricedOption): void {
  const { option, more } = priced;
  const said = [`${option.name}: ${sayOption(plan, priced)}`, option.note].filter(
    (one) => one !== '',
  );
  const row = draft.next;
  const price = `ROUND(${OPTIONS.at('quantity', row)}*${OPTIONS.at('each', row)},2)`;
  draft.put(
    OPTIONS.row({
      option: cell(said.join('. '), 'row'),
      quantity: cell(0, 'inputWhole'),
      asQuoted: cell(0, 'rowWhole'),
      each: cell(money(more.priceCents), 'rowDecimal'),
      price: sum(price, 0, 'rowDecimal'),
    }),
  );
}
