/** The command cut: pieces and sticks in, a cutting plan out. */
import { own, syntax } from '../core/faults/argument.ts';
import { fault, placeFault, type Fault } from '../core/faults/fault.ts';
import { checkPlan } from '../cutting/check/check-plan.ts';
import type { StickAnswer } from '../cutting/problem/problem.ts';
import { settingOf, type SettingKey } from '../planning/shop.ts';
import { argumentAt, type Call, type Command, type Report } from './command.ts';
import { cutToJson, pieceBehind } from './cut-json.ts';
import { DECIMAL_OPTION, readDecimal, wordDecimals } from './decimal-option.ts';
import { readEffort, SECONDS_OPTION, STEPS_OPTION } from './effort.ts';
import { checkMaterials } from './cut-materials.ts';
import { readLengthOption } from './length-option.ts';
import { LIST_FORMS } from './open-list.ts';
import { planWithin } from './plan-within.ts';
import {
  checkKerfTwice,
  PIECE_HEADINGS,
  readKerfColumn,
  readPieceRows,
  readStickRows,
  STICK_HEADINGS,
  WIDEST_KERF,
  type PieceRow,
} from './read-cut.ts';
import { readList } from './read-list.ts';
import { reportJson, reportRefusal, reportWords } from './report.ts';
import { sayCut, sayMeasured } from './say-cut.ts';
import { JSON_OPTION } from './shared-options.ts';
import { checkInputOnce } from './standard-input.ts';
import { stateCut, type CutOrder, type StatedCut } from './state-cut.ts';

const USUAL_KERF = usual('crosscutKerf');
const USUAL_TRIM = usual('endTrim');
/** Nobody takes more off an end, in inches. Common practice [C]. */
const LONGEST_TRIM = 12;

export const CUT: Command = {
  name: 'cut',
  summary:
    'Plans which pieces are cut from which sticks, for the least money or the least length that it finds.',
  arguments: [
    {
      name: 'PIECES.csv',
      says: `Headings Length, and as you like Quantity (1 where blank), Label, Material (cut from sticks of the same alone), Unit (of the row's bare numbers: in, ft, mm, cm, m). ${LIST_FORMS}`,
    },
    {
      name: 'STICKS.csv',
      says: `Headings Length, and as you like Price (of one stick, to the cent; of all or of none, in one currency), Count (as many as needed where blank), Material, Unit, Kerf (the same in every row that states one). ${LIST_FORMS}`,
    },
  ],
  options: [
    {
      name: '--kerf',
      value: 'LENGTH',
      says: `Lost at each cut between two pieces (${USUAL_KERF} in).`,
    },
    {
      name: '--end-trim',
      value: 'LENGTH',
      says: `Comes off each end of every stick, its own cut included (${USUAL_TRIM} in).`,
    },
    DECIMAL_OPTION,
    SECONDS_OPTION,
    STEPS_OPTION,
    JSON_OPTION,
  ],
  notes: [
    'A stick may be filled exactly: n pieces need n - 1 cuts between them. Bare numbers are inches; 90 mm and 7\' 4 3/8" are read too. No piece is spliced.',
    'Where the sticks are of several materials, each piece names its own and is cut from sticks of that alone; a material stands in the answer then.',
    'With prices the plan costs the least that is found. Without any, it takes the least length of sticks together; the answer says which.',
    "With --json: { version, optimized, cost, currency, length, bound, kerf, endTrim, status, proven, sticks: [{ length, material?, price, pieces, labels, offcut }], unserved: [{ label, length, material?, why }], duals, credits, tried?, faults, cautions }, lengths in inches, money in the prices' own, which currency names where a price does (else null). optimized is cost or length; where it is length, cost and every price are null, and bound and what it follows from are inches of stick in the place of money. No plan is cheaper than bound: the duals (what a piece of each length is worth; no stick can be filled with more than its price and credit) less each credit times its count, rounded up to a sum that the prices can make; where there is tried, that sum is tried.prices, and bound is known from trying every plan that it leaves room for. status is proven, gap, or unfinished where it was stopped. Input at fault gives { faults, cautions }.",
  ],
  examples: [
    'pieces.csv sticks.csv',
    'lists.xlsx#Pieces lists.xlsx#Sticks',
    'pieces.csv sticks.csv --kerf 3/32 --end-trim "12 mm"',
    'teile.csv stangen.csv --decimal comma',
  ],
  exits: {
    0: 'Every piece is planned.',
    1: 'Some pieces are left over: no stick is long enough, or the sticks run out.',
    2: 'The call or a file is wrong; nothing is planned.',
  },
  run: runCut,
};

async function runCut(call: Call): Promise<Report> {
  const json = call.flags.has('--json');
  const once = checkInputOnce(call.arguments, CUT.name);
  if (!once.ok) return reportRefusal(2, { faults: once.faults, cautions: [] }, json);
  const faults: Fault[] = [];
  const decimalSign = readDecimal(call, faults);
  const pieceTable = await readList(argumentAt(call, 0), PIECE_HEADINGS, decimalSign);
  const stickTable = await readList(argumentAt(call, 1), STICK_HEADINGS, decimalSign);
  const kerfOption = readLengthOption(
    call,
    { name: '--kerf', usual: USUAL_KERF, most: WIDEST_KERF },
    decimalSign,
    faults,
  );
  const endTrim = readLengthOption(
    call,
    { name: '--end-trim', usual: USUAL_TRIM, most: LONGEST_TRIM },
    decimalSign,
    faults,
  );
  const effort = readEffort(call, faults);
  const pieces = pieceTable.ok
    ? readPieceRows(pieceTable.value.rows, pieceTable.value.findings)
    : [];
  const sticks = stickTable.ok ? readStickRows(stickTable.value.rows) : [];
  const stated = stickTable.ok ? readKerfColumn(stickTable.value.rows) : undefined;
  if (stated !== undefined && call.values.has('--kerf')) {
    faults.push(...checkKerfTwice(stated, kerfOption));
  }
  const kerf = stated?.kerf ?? kerfOption;
  for (const table of [pieceTable, stickTable]) {
    faults.push(...(table.ok ? table.value.findings.faults : table.faults));
  }
  if (!pieceTable.ok && hasPrices(pieceTable.faults)) {
    const details = { second: argumentAt(call, 1) };
    faults.push(
      fault('cutting.lists-swapped', syntax('PIECES.csv'), argumentAt(call, 0), { details }),
    );
  }
  if (faults.length === 0) faults.push(...checkMaterials(pieces, sticks));
  const word = (found: readonly Fault[]): Fault[] => wordDecimals(found, decimalSign);
  const cautions = word([...pieceTable.cautions, ...stickTable.cautions]);
  const refused = (found: readonly Fault[]): Report =>
    reportRefusal(2, { faults: word(found), cautions }, json);
  if (faults.length > 0) return refused(faults);
  const order: CutOrder = { pieces, sticks, kerf, endTrim, decimalSign };
  const problemStated = stateCut(order);
  if (!problemStated.ok) return refused(problemStated.faults);
  const cut = problemStated.value;
  const { problem } = cut;
  const planned = await planWithin(
    { effort, isSilent: json, sayMoney: sayMeasured(order, cut) },
    ({ planSticks, options }) => planSticks(problem, options),
  );
  if (!planned.ok) return refused(planned.faults);
  const answer = planned.value;
  const wrong = checkPlan(problem, answer.plan);
  if (wrong.length > 0) throw new RangeError(`The cutting plan is wrong: ${wrong.join(' ')}`);
  const leftOver = word(leftOverFaults(cut, answer));
  const exit = leftOver.length > 0 ? 1 : 0;
  if (json) return reportJson(exit, cutToJson(order, cut, answer, leftOver, cautions));
  return reportWords(exit, sayCut(order, cut, answer), { faults: leftOver, cautions });
}

/** One fault a row of pieces, at its line: how many of how many are left over, and why. */
function leftOverFaults(stated: StatedCut, { plan }: StickAnswer): Fault[] {
  const leftOver = new Map<PieceRow, { count: number; why: string }>();
  for (const { demandId, why } of plan.unserved) {
    const row = pieceBehind(stated, demandId);
    leftOver.set(row, { count: (leftOver.get(row)?.count ?? 0) + 1, why });
  }
  return [...leftOver].map(([row, { count, why }]) => {
    const details = { why, length: { inches: Number(row.length) } };
    const argument = row.label === '' ? 'piecesUnlabelled' : own(row.label);
    const more = { limit: row.quantity, details };
    return placeFault(fault('cutting.left-over', argument, count, more), row.where);
  });
}

/** Prices stand with sticks: where pieces have them, the lists may be the wrong way round. */
function hasPrices(faults: readonly Fault[]): boolean {
  return faults.some(
    ({ code, details }) => code === 'table.column-unused' && details?.['may'] === 'price',
  );
}

function usual(key: SettingKey): string {
  return settingOf(key).usual ?? '0';
}
