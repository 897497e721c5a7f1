/** What prices are made by: what lumber and labor make of the price, and how much more is asked about. */
import type { Shop } from '../../planning/shop.ts';
import { MORE_LENGTH, priceFactors } from '../../planning/unit-prices.ts';
import type { WorkLine } from '../../planning/work/work-row.ts';
import { cell, sum, type DraftCell, type SheetDraft } from '../grammar/sheet-draft.ts';
import { hoursOnLabor, moneyBeside } from '../hours-on-labor.ts';
import type { PlanAnchors } from '../plan-anchors.ts';
import { LONG_UNIT, numberIn } from '../words/print-length.ts';
import { TERMS } from './office-columns.ts';
import { MORE_SAYS, SECTIONS, TERM_LINES, TERMS_SAY } from './office-words.ts';

/** The cells of them, as formulas name them. */
export type Terms = Readonly<Record<keyof typeof TERM_LINES, string>>;

export function addTerms(draft: SheetDraft, shop: Shop, acrossSheets: PlanAnchors): Terms {
  draft.spread(SECTIONS.terms, 'section');
  const put = (name: keyof Terms, figure: DraftCell, says: string): string => {
    const label = cell(TERM_LINES[name], 'fact');
    const row = draft.put(TERMS.row({ label, figure, says: cell(says, 'quietLabel') }));
    return TERMS.fixed('figure', row);
  };
  const factor = (markup: 'materialMarkup' | 'laborMarkup') => (): string => {
    const rates = acrossSheets.at('ratesOnOffice');
    const cost = `(1+${rates.overhead}/100)*(1+${rates.contingency}/100)`;
    return `(${cost}+${rates[markup]}/100)/(1-${rates.margin}/100)`;
  };
  const { material, labor } = priceFactors(shop);
  const { unit } = shop;
  const more = numberIn(MORE_LENGTH[unit], unit) / LONG_UNIT[unit].holds;
  const terms = {
    material: put(
      'material',
      sum(factor('materialMarkup'), material, 'number'),
      TERMS_SAY.material,
    ),
    labor: put('labor', sum(factor('laborMarkup'), labor, 'number'), TERMS_SAY.labor),
    more: put('more', cell(more, 'input'), MORE_SAYS[unit]),
  };
  draft.blank();
  return terms;
}

/** What lines of work cost as they stand on Labor, unrounded; 0 where there are none. */
export function laborFormula(lines: readonly WorkLine[], acrossSheets: PlanAnchors): string {
  if (lines.length === 0) return '0';
  const { hourlyRate } = acrossSheets.at('ratesOnOffice');
  return `(${hoursOnLabor(lines, acrossSheets)})*${hourlyRate}${moneyBeside(lines, acrossSheets)}`;
}
