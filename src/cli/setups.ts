/** The command setups: coves in, the saw's set-ups out. */
import type { Fault } from '../core/faults/fault.ts';
import { faultsToJson } from '../core/faults/fault-json.ts';
import { answerSetUp, SET_UP_HEADINGS, type SetUpAnswer } from './answer-set-up.ts';
import { argumentAt, type Call, type Command, type Report } from './command.ts';
import { DECIMAL_OPTION, readDecimal, wordDecimals } from './decimal-option.ts';
import { LIST_FORMS } from './open-list.ts';
import { readList } from './read-list.ts';
import { reportJson, reportRefusal, reportWords } from './report.ts';
import { saySetUps } from './say-set-ups.ts';
import { JSON_OPTION } from './shared-options.ts';

export const SETUPS: Command = {
  name: 'setups',
  summary: 'Works out approach, tilt and passes for coves cut on the table saw.',
  arguments: [
    {
      name: 'FILE.csv',
      says: `Headings Profile, Cove width, Cove depth, and as you like Off-center (0 where blank), Blade diameter (10), Kerf (1/8), Off-center to (deepest line, or blade middle). One cove a row; bare numbers are inches. ${LIST_FORMS}`,
    },
  ],
  options: [DECIMAL_OPTION, JSON_OPTION],
  notes: [
    "The approach is given twice: from the blade line, and from the table's front edge (what is left to 90°). Off-center is how far the deepest line on the wood lies from the middle of the cove at its face; its deep side lies toward the far rail.",
    'With --json: an array, one object a row (profile, ok, approachDeg from the blade line, approachFromFrontDeg, tiltDeg, passCount, passHeights, deepestLine and bladeMiddle from the middle of the cove, faults, cautions), nothing rounded; a caution about the headings stands with the first row. A file that can\'t be read gives { "faults", "cautions" }.',
  ],
  examples: ['coves.csv', 'coves.csv --json', 'hohlkehlen.csv --decimal comma'],
  exits: {
    0: 'Every row can be made.',
    1: "A row can't be read or can't be made; the others are answered.",
    2: 'The call is wrong, or the file as a whole: not there, no CSV, a heading missing, no rows.',
  },
  run: runSetUps,
};

async function runSetUps(call: Call): Promise<Report> {
  const json = call.flags.has('--json');
  const calledWrong: Fault[] = [];
  const decimalSign = readDecimal(call, calledWrong);
  if (calledWrong.length > 0) return reportRefusal(2, { faults: calledWrong, cautions: [] }, json);
  const word = (found: readonly Fault[]): Fault[] => wordDecimals(found, decimalSign);
  const table = await readList(argumentAt(call, 0), SET_UP_HEADINGS, decimalSign);
  const cautions = word(table.cautions);
  if (!table.ok) return reportRefusal(2, { faults: word(table.faults), cautions }, json);
  const { rows, findings } = table.value;
  const answers = rows.map((row): SetUpAnswer => {
    const one = answerSetUp(row, findings);
    return { ...one, faults: word(one.faults), cautions: word(one.cautions) };
  });
  const exit = answers.every((one) => one.ok) ? 0 : 1;
  if (json) {
    const ofHeadings = (index: number) => (index === 0 ? cautions : []);
    const toJson = (one: SetUpAnswer, index: number) => ({
      ...one,
      faults: faultsToJson(one.faults),
      cautions: faultsToJson([...ofHeadings(index), ...one.cautions]),
    });
    return reportJson(exit, answers.map(toJson));
  }
  return reportWords(exit, saySetUps(answers, decimalSign), {
    faults: answers.flatMap((one) => one.faults),
    cautions: [...cautions, ...answers.flatMap((one) => one.cautions)],
  });
}
