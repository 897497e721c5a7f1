/** The labor sheet: each hour of the price as a line that a person can see, change and explain. */
import type { JobPlan, ProfilePlan } from '../../planning/job-plan.ts';
import { perUnitIn } from '../../planning/work/per-units.ts';
import { worksOf } from '../../planning/work/works-of.ts';
import { addVerdict } from '../agreement.ts';
import type { SheetDescription } from '../grammar/description.ts';
import { total } from '../grammar/figures.ts';
import { layPages } from '../grammar/lay-pages.ts';
import { roomForRows } from '../grammar/page-size.ts';
import { cell, sum, SheetDraft, type DraftCell, type SheetRow } from '../grammar/sheet-draft.ts';
import { onSheet, SHEET_NAMES, type PlanAnchors } from '../plan-anchors.ts';
import { sayFor, type WorkLine, type WorkRow } from '../../planning/work/work-row.ts';
import { allowedCountCell, countCell } from './count-formulas.ts';
import { GRID, LINES, PRINTED, RATES } from './labor-columns.ts';
import { NO_LINES, sayNotIncluded, saySubtitle, SECTIONS, WHOLE_JOB } from './labor-words.ts';

/** A row of Work with whose it is, its lines as planned and by the allowance; the whole job's has no plan of a profile. */
interface OwnLine {
  readonly row: WorkRow;
  /** Times this are the hours of one. */
  readonly factor: number;
  /** Absent where there is none to do. */
  readonly line?: WorkLine;
  readonly allowed?: WorkLine;
  readonly planned?: ProfilePlan;
}

/** Drafts the sheet Labor: what one of each kind of work takes, then how many there are and what they come to. */
export function draftLabor(
  plan: JobPlan,
  acrossSheets: PlanAnchors,
): { readonly finish: () => SheetDescription } {
  const { shop } = plan.job;
  const draft = new SheetDraft(SHEET_NAMES.labor, GRID, true, PRINTED);
  draft.spread('Labor', 'title');
  addVerdict(draft, () => acrossSheets.at('verdictOnProduction'), [0, PRINTED - 1]);
  draft.spread(saySubtitle(shop), 'note');
  const lines: OwnLine[] = [
    ...plan.profiles.flatMap((planned) => linesOf(planned, plan.job.work)),
    ...plan.jobWork.lines.map((line) => ({ row: line.row, factor: line.factor, line })),
  ];
  const blocks = [1];
  const begin = (): void => {
    blocks.push(draft.next);
  };
  const rates = addRates(draft, plan, lines);
  begin();
  draft.spread(SECTIONS.lines, 'section');
  draft.put(LINES.headings(shop));
  const first = draft.next;
  for (const own of lines) addLine(draft, own, plan, rates, acrossSheets);
  if (lines.length === 0) draft.put(LINES.sparseRow({ work: cell(NO_LINES, 'row') }));
  addTotals(draft, lines, first);
  const not = sayNotIncluded(plan.job);
  if (not.length > 0) {
    begin();
    draft.spread(SECTIONS.without, 'section');
    for (const one of not) draft.spread(one, 'wrapped');
  }
  layPages(draft, blocks, roomForRows(shop.paper, GRID.slice(0, PRINTED)));
  return {
    finish: () =>
      draft.finish({ paper: shop.paper, orientation: 'portrait', footer: SHEET_NAMES.labor }),
  };
}

type Counted = 'count' | 'allowedCount';
type Timed = 'hours' | 'allowedHours';
type Paid = 'money' | 'allowedMoney';

/** The whole job's work is the same by the one and the other. */
function allowedOf({ line, allowed, planned }: OwnLine): WorkLine | undefined {
  return planned === undefined ? line : allowed;
}

/** In the order of Work; a count that is 0 one way or the other has a row all the same. */
function linesOf(planned: ProfilePlan, works: readonly WorkRow[]): OwnLine[] {
  const { byPlan, byAllowance } = planned;
  const isIn = (row: WorkRow) => (one: WorkLine) => one.row === row;
  return worksOf(planned.profile, works).flatMap((row): OwnLine[] => {
    const [line, allowed] = [byPlan.work.find(isIn(row)), byAllowance.work.find(isIn(row))];
    const factor = (line ?? allowed)?.factor;
    if (factor === undefined) return [];
    return [{ row, factor, planned, ...(line && { line }), ...(allowed && { allowed }) }];
  });
}

/** Only what a line goes by: what is not in the price has no rate to change. */
function addRates(
  draft: SheetDraft,
  { job }: JobPlan,
  lines: readonly OwnLine[],
): ReadonlyMap<WorkRow, { readonly row: number; readonly number: number }> {
  const used = new Set(lines.flatMap((own) => [own.row, ...factorsOf(own, job.work)]));
  const rates = new Map<WorkRow, { row: number; number: number }>();
  draft.spread(SECTIONS.rates, 'section');
  draft.put(RATES.headings(job.shop));
  for (const row of job.work.filter((one) => used.has(one))) {
    const number = rates.size + 1;
    const { word, holds } = perUnitIn(job.shop.unit, row.per);
    rates.set(row, { row: draft.next, number });
    draft.put(
      RATES.row({
        number: cell(number, 'rowWhole'),
        work: cell(row.work, 'rowStrong'),
        for: cell(sayFor(row), 'row'),
        per: cell(word, 'row'),
        minutes: cell(inUnit(row.minutes, holds), 'rowNumber'),
        beside: null,
        money: cell(inUnit(row.money, holds), 'rowNumber'),
      }),
    );
  }
  if (rates.size === 0) draft.put(RATES.sparseRow({ work: cell(NO_LINES, 'row') }));
  return rates;
}

function addLine(
  draft: SheetDraft,
  own: OwnLine,
  { job }: JobPlan,
  rates: ReturnType<typeof addRates>,
  acrossSheets: PlanAnchors,
): void {
  const { row: work, factor, line, planned } = own;
  const allowed = allowedOf(own);
  const rate = rates.get(work);
  if (rate === undefined) throw new RangeError(`Nothing says what ${work.work} takes.`);
  const row = draft.next;
  const minutes = RATES.fixed('minutes', rate.row);
  const { unit } = job.shop;
  const { word, holds } = perUnitIn(unit, work.per);
  const at = (column: Counted | 'minutes' | 'factor'): string => LINES.at(column, row);
  const hours = (count: Counted, value = 0): DraftCell =>
    sum(`${at(count)}*${at('minutes')}*${at('factor')}/60`, value, 'rowDecimal');
  const money = (count: Counted, value = 0): DraftCell =>
    sum(`${at(count)}*${RATES.fixed('money', rate.row)}`, value, 'rowDecimal');
  draft.put(
    LINES.row({
      number: cell(rate.number, 'rowWhole'),
      work: cell(work.work, 'rowStrong'),
      profile: cell(planned?.profile.name ?? WHOLE_JOB, 'row'),
      per: cell(word, 'row'),
      minutes: sum(minutes, inUnit(work.minutes, holds), 'rowNumber'),
      factor: factorCell(factor, factorsOf(own, job.work), rates),
      count:
        line === undefined || planned === undefined
          ? cell(line?.count ?? 0, 'rowDecimal')
          : countCell(line, planned, unit, acrossSheets),
      hours: hours('count', line?.hours),
      money: money('count', line?.money),
      allowedCount:
        allowed === undefined
          ? cell(0, 'rowDecimal')
          : planned === undefined
            ? sum(at('count'), allowed.count, 'rowDecimal')
            : allowedCountCell(allowed, planned, unit, acrossSheets),
      allowedHours: hours('allowedCount', allowed?.hours),
      allowedMoney: money('allowedCount', allowed?.money),
    }),
  );
  const on = (column: Counted | Timed | Paid): string => onSheet('labor', LINES.fixed(column, row));
  const lend = (one: WorkLine, counted: Counted, timed: Timed, paid: Paid): void => {
    acrossSheets.place('countOnLabor', on(counted), one);
    acrossSheets.place('hoursOnLabor', on(timed), one);
    acrossSheets.place('moneyOnLabor', on(paid), one);
  };
  if (line !== undefined) lend(line, 'count', 'hours', 'money');
  if (own.allowed !== undefined) lend(own.allowed, 'allowedCount', 'allowedHours', 'allowedMoney');
}

/** What one takes, for a metre of so many feet: as it was typed, though a foot of it is kept. */
function inUnit(each: number, holds: number): number {
  return holds === 1 ? each : Number((each * holds).toPrecision(12));
}

/** The rows of Work whose factor a line's hours are times. */
function factorsOf({ row, planned }: OwnLine, works: readonly WorkRow[]): WorkRow[] {
  if (planned === undefined || row.per !== 'foot') return [];
  return worksOf(planned.profile, works).filter(({ per, isOurs }) => per === 'factor' && isOurs);
}

function factorCell(
  factor: number,
  rows: readonly WorkRow[],
  rates: ReturnType<typeof addRates>,
): DraftCell {
  const cells = rows.flatMap((one) => {
    const rate = rates.get(one);
    return rate === undefined ? [] : RATES.fixed('minutes', rate.row);
  });
  return cells.length === 0 ? cell(factor, 'rowNumber') : sum(cells.join('*'), factor, 'rowNumber');
}

function addTotals(draft: SheetDraft, lines: readonly OwnLine[], first: number): void {
  const rows = [first, draft.next - 1] as const;
  const label = cell(null, 'totalLabel');
  const added = (column: Timed | Paid, of: (one: OwnLine) => number | undefined): DraftCell =>
    LINES.sumCell(column, rows, total(lines.map((one) => of(one) ?? 0)), 'total');
  const cells: SheetRow = LINES.loose(
    {
      work: cell('Together', 'totalLabel'),
      hours: added('hours', ({ line }) => line?.hours),
      money: added('money', ({ line }) => line?.money),
      allowedHours: added('allowedHours', (one) => allowedOf(one)?.hours),
      allowedMoney: added('allowedMoney', (one) => allowedOf(one)?.money),
    },
    label,
  );
  draft.put(cells);
}
