/** The command trial: the cove aimed at and the one measured in, what to move out. */
import { syntax } from '../core/faults/argument.ts';
import { faultsToJson } from '../core/faults/fault-json.ts';
import { fault, type Fault } from '../core/faults/fault.ts';
import type { Blade } from '../core/cove/cove.ts';
import { checkCove } from '../core/cove/feasibility.ts';
import type { Sizes } from '../core/exact/sensitivity.ts';
import { sayTrial } from '../core/exact/say-trial.ts';
import { judgeTrial, MEASURED_TO_INCHES, type TrialAnswer } from '../core/exact/trial-cut.ts';
import { toDegrees } from '../core/units/angle.ts';
import type { DecimalSign } from '../core/units/format-number.ts';
import { parseLength } from '../core/units/length.ts';
import { askAboutLength, THICKEST_INCHES, WIDEST_INCHES } from '../core/units/plausible-length.ts';
import { MANUAL_CAUTION, standingCautions } from '../sheets/words/standing-cautions.ts';
import { argumentAt, type Call, type Command, type Report } from './command.ts';
import { DECIMAL_OPTION, readDecimal, wordDecimals } from './decimal-option.ts';
import { readLengthOption } from './length-option.ts';
import { BLADE_OPTIONS, readBlade } from './blade-options.ts';
import { reportJson, reportRefusal, reportWords, type Paragraph } from './report.ts';
import { JSON_OPTION } from './shared-options.ts';
import { drawTable } from './text-table.ts';

/** Grows when a field changes its meaning or goes; new fields alone don't change it. */
const TRIAL_JSON_VERSION = 1;

const SIZES = 'width x depth x off-center, as in "3 5/8 x 7/8 x 3/8"; off-center 0 where left out';

export const TRIAL: Command = {
  name: 'trial',
  summary: 'Says what to move after a trial cut that was measured, and what was likely wrong.',
  arguments: [
    { name: 'AIMED', says: `The cove that the set-up is for: ${SIZES}.` },
    {
      name: 'MEASURED',
      says: 'What the trial piece measures, in the same form; off-center below 0 where the deep side lies toward the near rail.',
    },
  ],
  options: [
    ...BLADE_OPTIONS,
    { name: '--measured-to', value: 'LENGTH', says: 'What the measuring may be off by (1/64).' },
    DECIMAL_OPTION,
    JSON_OPTION,
  ],
  notes: [
    'Moves are added to what approach, tilt and height read now. How the rails are marked for the next approach: the set-up page has the marks of each.',
    'With --json: { version, moves { approachDeg from the blade line, tiltDeg from upright, height }, sure (the same, one standard deviation), next (what they read then), likely [{ cause, by, left }], isRight, cautions, faults }, lengths in inches, nothing rounded; at fault { faults, cautions }.',
  ],
  examples: ['"3 5/8 x 7/8 x 3/8" "3 11/16 x 57/64 x 3/8"'],
  exits: {
    0: 'Answered.',
    1: "The cove aimed at can't be made, or what was measured comes from no such set-up.",
    2: 'The call is wrong.',
  },
  run: runTrial,
};

function runTrial(call: Call): Promise<Report> {
  const json = call.flags.has('--json');
  const faults: Fault[] = [];
  const decimalSign = readDecimal(call, faults);
  const aimed = readSizes('AIMED', argumentAt(call, 0), decimalSign, faults);
  const measured = readSizes('MEASURED', argumentAt(call, 1), decimalSign, faults);
  const blade = readBlade(call, decimalSign, faults);
  const usual = { name: '--measured-to', usual: '1/64', most: 1 };
  const measuredTo = Number(readLengthOption(call, usual, decimalSign, faults));
  return Promise.resolve(
    faults.length > 0
      ? reportRefusal(2, { faults: wordDecimals(faults, decimalSign), cautions: [] }, json)
      : answer(
          { aimed, measured, blade, measuredTo: measuredTo || MEASURED_TO_INCHES },
          decimalSign,
          json,
        ),
  );
}

interface Asked {
  readonly aimed: Sizes;
  readonly measured: Sizes;
  readonly blade: Blade;
  readonly measuredTo: number;
}

function answer(
  { aimed, measured, blade, measuredTo }: Asked,
  decimalSign: DecimalSign,
  json: boolean,
): Report {
  const word = (found: readonly Fault[]): Fault[] => wordDecimals(found, decimalSign);
  const { faults, cautions } = checkCove(aimed, blade);
  const refuse = (found: readonly Fault[]): Report =>
    reportRefusal(1, { faults: word(found), cautions: word(cautions) }, json);
  if (faults.length > 0) return refuse(faults);
  const judged = judgeTrial(aimed, blade, measured, measuredTo);
  if (!judged.ok) return refuse(judged.faults);
  const said = word([...sayTrial(judged.value, measuredTo), ...cautions]);
  if (!json)
    return reportWords(0, sayMoves(judged.value, decimalSign), { faults: [], cautions: said });
  const { moves, sure, next, likely, isRight } = judged.value;
  const inDegrees = ({ approach, tilt, height }: TrialAnswer['moves']): object => ({
    approachDeg: approach,
    tiltDeg: tilt,
    height,
  });
  return reportJson(0, {
    version: TRIAL_JSON_VERSION,
    moves: inDegrees(moves),
    sure: inDegrees(sure),
    next: {
      approachDeg: toDegrees(next.approach),
      tiltDeg: toDegrees(next.tilt),
      height: next.height,
    },
    likely,
    isRight,
    cautions: faultsToJson(said),
    faults: [],
  });
}

/** Width, depth and off-center between signs of times. */
function readSizes(name: string, typed: string, decimalSign: DecimalSign, faults: Fault[]): Sizes {
  const argument = syntax(name);
  const parts = typed.trim().split(/\s*[x×*]\s*/iu);
  if (parts.length < 2 || parts.length > 3 || parts.includes('')) {
    faults.push(fault('trial.sizes', argument, typed));
    return { width: 0, depth: 0, offCenter: 0 };
  }
  const most = [WIDEST_INCHES, THICKEST_INCHES, WIDEST_INCHES];
  const sizes = parts.map((part, at) => {
    const read = parseLength(part, argument, { unit: 'in', decimalSign });
    if (!read.ok) {
      faults.push(...read.faults);
      return 0;
    }
    const inches = Number(read.value);
    const asked = askAboutLength(argument, part, Math.abs(inches), most[at] ?? WIDEST_INCHES);
    if (asked !== undefined) faults.push(asked);
    return inches;
  });
  const [width = 0, depth = 0, offCenter = 0] = sizes;
  return { width, depth, offCenter };
}

function sayMoves({ moves, next }: TrialAnswer, sign: DecimalSign): Paragraph[] {
  const said = (value: number, decimals: number): string =>
    value.toFixed(decimals).replace('.', sign).replace('-', '−');
  const move = (value: number, decimals: number, unit: string): string =>
    `${said(Math.abs(value), decimals)}${unit} ${value < 0 ? 'less' : 'more'}`;
  const rows = [
    [
      'Approach, from the blade line',
      move(moves.approach, 2, '°'),
      `${said(toDegrees(next.approach), 2)}°`,
    ],
    [
      'Tilt of the blade, from upright',
      move(moves.tilt, 2, '°'),
      `${said(toDegrees(next.tilt), 2)}°`,
    ],
    [
      'Highest tooth above table, last pass',
      move(moves.height, 3, ' in'),
      `${said(next.height, 3)} in`,
    ],
  ];
  return [
    MANUAL_CAUTION,
    drawTable(
      [
        { heading: 'Set' },
        { heading: 'Move it by', align: 'right' },
        { heading: 'So that it reads', align: 'right' },
      ],
      rows,
    ),
    ['Every time:', ...standingCautions().map((one) => `  ${one}`)],
  ];
}
