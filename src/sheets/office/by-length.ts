/** Molding by molding: a foot or a metre with and without its set-up, and what more of it costs. */
import type { JobPlan, ProfilePlan } from '../../planning/job-plan.ts';
import {
  growingLines,
  MORE_LENGTH,
  priceMore,
  priceOfWork,
  setUpLines,
} from '../../planning/unit-prices.ts';
import { money, total } from '../grammar/figures.ts';
import { cell, sum, type DraftCell, type SheetDraft } from '../grammar/sheet-draft.ts';
import type { PlanAnchors } from '../plan-anchors.ts';
import { LONG_UNIT, numberIn } from '../words/print-length.ts';
import { LENGTHS } from './office-columns.ts';
import { laborFormula, type Terms } from './office-terms.ts';
import { LENGTHS_NOTE, NONE, SECTIONS, TOGETHER, WHOLE_JOB } from './office-words.ts';

/** Each profile's row on this sheet. */
export type LengthRows = ReadonlyMap<ProfilePlan, number>;

export function addLengths(
  draft: SheetDraft,
  plan: JobPlan,
  terms: Terms,
  acrossSheets: PlanAnchors,
): LengthRows {
  const { profiles, jobWork, job } = plan;
  draft.spread(SECTIONS.lengths, 'section');
  draft.spread(LENGTHS_NOTE, 'note');
  draft.put(LENGTHS.headings(job.shop));
  const first = draft.next;
  const rows = new Map(
    profiles.map((planned) => [planned, addProfile(draft, plan, planned, terms, acrossSheets)]),
  );
  if (profiles.length === 0) draft.put(LENGTHS.sparseRow({ profile: cell(NONE.lengths, 'row') }));
  const ofJob = jobWork.money?.priceCents ?? 0;
  if (jobWork.money !== undefined) {
    const price = sum(() => acrossSheets.at('jobPriceOnOffice'), money(ofJob), 'rowDecimal');
    draft.put(LENGTHS.sparseRow({ profile: cell(WHOLE_JOB, 'rowStrong'), price }));
  }
  const prices = profiles.map((one) => one.money.priceCents);
  const setUps = profiles.map((one) => priceOfWork(setUpLines(one), job.shop));
  const span = [first, draft.next - 1] as const;
  const together = {
    profile: cell(TOGETHER, 'totalLabel'),
    price: LENGTHS.sumCell('price', span, money(total(prices) + ofJob), 'total'),
    setUp: LENGTHS.sumCell('setUp', span, money(total(setUps)), 'total'),
  };
  draft.put(LENGTHS.loose(together, cell(null, 'totalLabel')));
  draft.blank();
  return rows;
}

function addProfile(
  draft: SheetDraft,
  { job: { shop } }: JobPlan,
  planned: ProfilePlan,
  terms: Terms,
  acrossSheets: PlanAnchors,
): number {
  const { tally, money: paid, profile } = planned;
  const { holds } = LONG_UNIT[shop.unit];
  const row = draft.next;
  const at = (column: 'long' | 'price' | 'setUp'): string => LENGTHS.at(column, row);
  const long = numberIn(tally.lengthNet, shop.unit) / holds;
  const price = money(paid.priceCents);
  const setUps = setUpLines(planned);
  const setUp = money(priceOfWork(setUps, shop));
  const more = priceMore(planned, MORE_LENGTH[shop.unit], shop);
  const hasSetUp = setUps.length > 0;
  const figure = (isKnown: boolean, formula: string | (() => string), value: number): DraftCell =>
    isKnown ? sum(formula, value, 'rowDecimal') : cell(null, 'row');
  const isLong = more !== undefined;
  const moreFormula = (): string => {
    const { lumber, offcutCredit } = acrossSheets.at('moneyOnOffice', planned);
    const material = `(${lumber}+${offcutCredit})*${terms.material}`;
    const labor = `(${laborFormula(growingLines(planned), acrossSheets)})*${terms.labor}`;
    return `ROUND((${material}+${labor})/${at('long')}*${terms.more},2)`;
  };
  const setUpFormula = (): string =>
    `ROUND((${laborFormula(setUps, acrossSheets)})*${terms.labor},2)`;
  return draft.put(
    LENGTHS.row({
      profile: cell(profile.name, 'rowStrong'),
      long: sum(
        () => `${acrossSheets.at('netLengthOnProduction', planned)}/${holds}`,
        long,
        'rowDecimal',
      ),
      price: sum(() => acrossSheets.at('moneyOnOffice', planned).price, price, 'rowDecimal'),
      perLong: figure(isLong, `${at('price')}/${at('long')}`, price / long),
      withoutSetUp: figure(
        isLong,
        `(${at('price')}-${at('setUp')})/${at('long')}`,
        (price - setUp) / long,
      ),
      setUp: figure(hasSetUp, setUpFormula, setUp),
      share: figure(
        hasSetUp && price > 0,
        `${at('setUp')}/${at('price')}*100`,
        (setUp / price) * 100,
      ),
      more: figure(isLong, moreFormula, money(more ?? 0)),
    }),
  );
}
