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
import { addAllowed } from './allowed-table.ts';
import { countCell } from './count-formulas.ts';
import { GRID, LINES, RATES } from './labor-columns.ts';
import { NO_LINES, sayNotIncluded, SECTIONS, SUBTITLE, WHOLE_JOB } from './labor-words.ts';

/** A line with whose it is; the whole job's has no plan of a profile. */
interface OwnLine {
  readonly line: WorkLine;
  readonly planned?: ProfilePlan;
}

/** Drafts the sheet Labor: what one of each kind of work takes, then how many there are and what they come to. */
export function draftLabor(
  plan: JobPlan,
  acrossSheets: PlanAnchors,
): { readonly finish: () => SheetDescription } {
  const { shop } = plan.job;
  const draft = new SheetDraft(SHEET_NAMES.labor, GRID, true);
  draft.spread('Labor', 'title');
  addVerdict(draft, () => acrossSheets.at('verdictOnProduction'), [0, GRID.length - 1]);
  draft.spread(SUBTITLE, 'note');
  draft.blank();
  const lines: OwnLine[] = [
    ...plan.profiles.flatMap((planned) => planned.work.map((line) => ({ line, planned }))),
    ...plan.jobWork.lines.map((line) => ({ line })),
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
  draft.blank();
  begin();
  addAllowed(draft, plan, acrossSheets);
  const not = sayNotIncluded(plan.job);
  if (not.length > 0) {
    begin();
    draft.spread(SECTIONS.without, 'section');
    for (const one of not) draft.spread(one, 'wrapped');
  }
  layPages(draft, blocks, roomForRows(shop.paper, GRID, 'landscape'));
  return {
    finish: () =>
      draft.finish({ paper: shop.paper, orientation: 'landscape', footer: SHEET_NAMES.labor }),
  };
}

/** Only what a line goes by: what is not in the price has no rate to change. */
function addRates(
  draft: SheetDraft,
  { job }: JobPlan,
  lines: readonly OwnLine[],
): ReadonlyMap<WorkRow, { readonly row: number; readonly number: number }> {
  const used = new Set(lines.flatMap((own) => [own.line.row, ...factorsOf(own, job.work)]));
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
        money: cell(inUnit(row.money, holds), 'rowNumber'),
      }),
    );
  }
  if (rates.size === 0) draft.put(RATES.sparseRow({ work: cell(NO_LINES, 'row') }));
  draft.blank();
  return rates;
}

function addLine(
  draft: SheetDraft,
  own: OwnLine,
  { job }: JobPlan,
  rates: ReturnType<typeof addRates>,
  acrossSheets: PlanAnchors,
): void {
  const { line, planned } = own;
  const { row: work, count, factor, hours, money } = line;
  const rate = rates.get(work);
  if (rate === undefined) throw new RangeError(`Nothing says what ${work.work} takes.`);
  const row = draft.next;
  const minutes = RATES.fixed('minutes', rate.row);
  const { word, holds } = perUnitIn(job.shop.unit, work.per);
  const at = (column: 'count' | 'minutes' | 'factor'): string => LINES.at(column, row);
  draft.put(
    LINES.row({
      number: cell(rate.number, 'rowWhole'),
      work: cell(work.work, 'rowStrong'),
      profile: cell(planned?.profile.name ?? WHOLE_JOB, 'row'),
      per: cell(word, 'row'),
      minutes: sum(minutes, inUnit(work.minutes, holds), 'rowNumber'),
      factor: factorCell(factor, factorsOf(own, job.work), rates),
      count:
        planned === undefined
          ? cell(count, 'rowDecimal')
          : countCell(line, planned, job.shop.unit, acrossSheets),
      hours: sum(`${at('count')}*${at('minutes')}*${at('factor')}/60`, hours, 'rowDecimal'),
      money: sum(`${at('count')}*${RATES.fixed('money', rate.row)}`, money, 'rowDecimal'),
    }),
  );
  acrossSheets.place('hoursOnLabor', onSheet('labor', LINES.fixed('hours', row)), line);
  acrossSheets.place('countOnLabor', onSheet('labor', LINES.fixed('count', row)), line);
  acrossSheets.place('moneyOnLabor', onSheet('labor', LINES.fixed('money', row)), line);
}

/** What one takes, for a metre of so many feet: as it was typed, though a foot of it is kept. */
function inUnit(each: number, holds: number): number {
  return holds === 1 ? each : Number((each * holds).toPrecision(12));
}

/** The rows of Work whose factor a line's hours are times. */
function factorsOf({ line, planned }: OwnLine, works: readonly WorkRow[]): WorkRow[] {
  if (planned === undefined || line.row.per !== 'foot') return [];
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
  const cells: SheetRow = LINES.loose(
    {
      work: cell('Together', 'totalLabel'),
      hours: LINES.sumCell('hours', rows, total(lines.map(({ line }) => line.hours)), 'total'),
      money: LINES.sumCell('money', rows, total(lines.map(({ line }) => line.money)), 'total'),
    },
    label,
  );
  draft.put(cells);
}
