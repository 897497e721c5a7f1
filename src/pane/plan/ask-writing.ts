/** What is to be asked before sheets are written. */
import type { WorkbookSurvey } from '../../hosts/host.ts';
import { sameName } from '../../planning/job.ts';
import { sayList } from '../job/say-findings.ts';
import type { PlanningState, WriteQuestion } from '../state/pane-state.ts';

/** Which sheets of ours are replaced, which are added, and what points into those replaced. */
export function askWriting(names: readonly string[], survey: WorkbookSurvey): WriteQuestion {
  const ours = survey.sheets.filter(
    (sheet) => sheet.ours && names.some((n) => sameName(n, sheet.name)),
  );
  const replaced = ours.map(({ name }) => name);
  return {
    replaced,
    added: names.filter((name) => !replaced.some((one) => sameName(one, name))),
    pointing: ours
      .map(({ name, pointedAtBy }) => ({ sheet: name, cells: pointedAtBy }))
      .filter(({ cells }) => cells.length > 0),
  };
}

/** Which sheets are replaced and added, and what of that which was typed on them stays: the ticks that a plan takes as cut. */
export function sayReplaced(
  { replaced, added }: WriteQuestion,
  { ticks, result, ticksLost }: Pick<PlanningState, 'ticks' | 'result' | 'ticksLost'>,
): string {
  const stays =
    ticks !== undefined && ticks.sticksCut > 0 && !ticksLost && result?.droppedCutKey === undefined;
  const were = replaced.length === 1 ? 'was' : 'were';
  return [
    `${sayList(replaced)} ${were} made here before and will be replaced.`,
    stays
      ? 'What is ticked beside sticks and pieces on Cutting, and under Done on Pieces, stays as cut. Anything else that was typed there goes: other ticks, notes, rates, quantities.'
      : 'Anything that was typed there goes: ticks, notes, rates, quantities.',
    ...(added.length === 0 ? [] : [`${sayList(added)} will be added.`]),
  ].join(' ');
}
