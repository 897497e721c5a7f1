/** What is to be asked before sheets are written. */
import type { WorkbookSurvey } from '../../hosts/host.ts';
import { sameName } from '../../planning/job.ts';
import type { WriteQuestion } from '../state/pane-state.ts';

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
