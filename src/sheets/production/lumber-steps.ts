/** The first steps: lumber from the rack and the yard, boards ripped to blanks, spares for trial cuts. */
import { countCutStock, listCutStock } from '../../planning/cut/cut-stock.ts';
import { isSpare, plansOf } from '../../planning/job-plan.ts';
import type { CuttingGroup } from '../../planning/job-plan.ts';
import { shortRest } from '../../planning/short-rests.ts';
import { total } from '../grammar/figures.ts';
import { printExact } from '../words/print-length.ts';
import { cell, sum, type DraftCell } from '../grammar/sheet-draft.ts';
import type { OrderFacts, Step } from './order-step.ts';

export function listLumberSteps(facts: OrderFacts): Step[] {
  const { groups, profiles } = facts.plan;
  const cut = listCutStock(profiles);
  const cutOf = (from: 'rack' | 'buy'): number =>
    total([...cut.keys()].map((item) => countCutStock(cut, item, from)));
  const uses = groups.flatMap(({ stockUse }) => stockUse);
  return [
    ...pullStep(facts, 'Pull from the rack', 'fromRack', {
      all: total(uses.map((use) => use.fromRack)),
      cut: cutOf('rack'),
    }),
    ...pullStep(facts, 'Buy', 'toBuy', {
      all: total(uses.map((use) => use.bought)),
      cut: cutOf('buy'),
    }),
    ...groups.flatMap((group) => ripSteps(facts, group)),
    ...spareStep(facts),
  ];
}

function pullStep(
  { onThisSheet }: OrderFacts,
  work: string,
  name: 'fromRack' | 'toBuy',
  { all: value, cut }: { readonly all: number; readonly cut: number },
): Step[] {
  if (value === 0) return [];
  const count = (): DraftCell => sum(() => onThisSheet.at(`total ${name}`), value, 'rowWhole');
  const how = `as listed under lumber${sayCut(cut, value)}`;
  const of = value === 1 ? 'length' : 'lengths';
  return [{ work, how, count, of, see: 'lumber, below' }];
}

/** What is cut already is among the count, and is not to be done again. */
function sayCut(cut: number, all: number): string {
  if (cut === 0) return '';
  return cut === all ? '; all are cut already' : `; ${cut} of them cut already`;
}

function sayRipped(ripped: number, all: number): string {
  if (ripped === 0) return '';
  if (ripped === all) return '; all are ripped already';
  return `; ${ripped} of the boards ${ripped === 1 ? 'is' : 'are'} ripped already`;
}

/** A step for each group's boards: what all of them together are ripped into; board by board stands on Cutting. */
function ripSteps({ plan }: OrderFacts, group: CuttingGroup): Step[] {
  const { name, boards } = group;
  if (boards.length === 0) return [];
  const counts = new Map<string, number>();
  for (const { width, profile } of boards.flatMap(({ strips }) => strips)) {
    const wide = printExact(width, plan.job.shop);
    const what = profile === undefined ? `${wide} to keep` : `${profile} ${wide}`;
    counts.set(what, (counts.get(what) ?? 0) + 1);
  }
  const cut = listCutStock(plansOf(plan, group));
  const ripped = boards.filter(({ item, unit }) => cut.get(item)?.has(unit)).length;
  const into = [...counts].map(([what, number]) => `${number} × ${what}`).join(', ');
  return [
    {
      work: `Rip the boards for ${name}`,
      how: `into ${into}${sayRipped(ripped, boards.length)}`,
      count: () => cell(boards.length, 'rowWhole'),
      of: boards.length === 1 ? 'board' : 'boards',
      see: 'Cutting',
    },
  ];
}

function spareStep({ plan }: OrderFacts): Step[] {
  const { shop } = plan.job;
  // One that would leave too short a blank behind stays on its stick.
  const apart = plan.profiles.filter((planned) => shortRest(planned, shop) === undefined);
  const spares = apart.flatMap(({ sticks }) =>
    sticks.flatMap(({ pieces }) => pieces.filter(isSpare)),
  );
  const [first] = spares;
  if (first === undefined) return [];
  return [
    {
      work: 'Crosscut the set-up spares off',
      how: `each ${printExact(first.length, shop)}, for trial cuts`,
      count: () => cell(spares.length, 'rowWhole'),
      of: spares.length === 1 ? 'spare' : 'spares',
      see: 'Cutting',
    },
  ];
}
