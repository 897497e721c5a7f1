/** Where the stop is set: each length of a profile once, longest first, and how often it is still to be cut. */
import type { JobPlan, ProfilePlan } from '../../planning/job-plan.ts';
import type { ExactInches } from '../../core/units/length.ts';
import { lengthStyles } from '../grammar/length-styles.ts';
import { spreadRow, type PagedRows } from '../grammar/paged-rows.ts';
import { cell, sum, type DraftCell, type SheetRow } from '../grammar/sheet-draft.ts';
import { numberIn } from '../words/print-length.ts';
import type { CuttingAnchors } from './cutting-anchors.ts';
import { ALL, BOTH, STOPS, STOPS_ACROSS } from './cutting-columns.ts';

const TITLE = 'Stops: each length, and how many of it are still to be cut';

/** Nothing where all is cut. */
export function addStops(pages: PagedRows, plan: JobPlan, onThisSheet: CuttingAnchors): void {
  const all = plan.profiles.map((planned) => ({ planned, stops: listStops(planned) }));
  const left = all.filter(({ stops }) => stops.length > 0);
  if (left.length === 0) return;
  pages.hold(spreadRow(TITLE, 'section', ALL));
  for (const { planned, stops } of left) {
    const name = spreadRow(planned.profile.name, 'fact', ALL);
    pages.hold(name);
    for (let at = 0; at < stops.length; at += STOPS_ACROSS.length) {
      const row = stopsRow(stops.slice(at, at + STOPS_ACROSS.length), planned, plan, onThisSheet);
      pages.add([row], [name]);
    }
  }
  pages.add([{ cells: [] }]);
}

interface Stop {
  readonly length: ExactInches;
  readonly times: number;
}

function listStops({ sticks }: ProfilePlan): Stop[] {
  const found = new Map<string, { length: ExactInches; times: number }>();
  for (const { length, isCut } of sticks.flatMap(({ pieces }) => pieces)) {
    if (isCut === true) continue;
    const known = found.get(length.toFraction());
    if (known === undefined) found.set(length.toFraction(), { length, times: 1 });
    else known.times += 1;
  }
  return [...found.values()].sort((one, other) => other.length.compare(one.length));
}

/** Counted below, so that a length that is typed over there is missed here. */
function stopsRow(
  stops: readonly Stop[],
  planned: ProfilePlan,
  { job }: JobPlan,
  onThisSheet: CuttingAnchors,
): SheetRow {
  const { unit } = job.shop;
  const cells = stops.flatMap(({ length, times }, at): [string, DraftCell][] => {
    const names = STOPS_ACROSS[at];
    if (names === undefined) return [];
    const stop = numberIn(length, unit);
    const formula = (): string => {
      const [first, last] = onThisSheet.at('layOuts', planned);
      return BOTH.map(
        ({ table }) =>
          `SUMIF(${table.range('length', first, last)},${stop},${table.range('open', first, last)})`,
      ).join('+');
    };
    return [
      [names[0], cell(stop, lengthStyles([length], unit).cut)],
      [names[1], sum(formula, times, 'rowTimes')],
    ];
  });
  return STOPS.sparseRow(Object.fromEntries(cells));
}
