/** The command match: points traced off an old molding in, the setting that comes nearest out. */
import { faultsToJson } from '../core/faults/fault-json.ts';
import { fault, type Fault } from '../core/faults/fault.ts';
import { sayQuantity } from '../core/faults/quantity.ts';
import type { DecimalSign } from '../core/units/format-number.ts';
import { toDegrees } from '../core/units/angle.ts';
import { matchCove, type MatchAnswer, type Matched } from '../core/match/match-cove.ts';
import { cautionsOfMatch } from '../core/match/say-of-match.ts';
import type { TracePoint } from '../core/match/trace.ts';
import { headed, type Heading } from '../planning/input/headings/heading.ts';
import { lengthIn } from '../planning/input/read-cell.ts';
import type { RowReader } from '../planning/input/row-reader.ts';
import { MANUAL_CAUTION, standingCautions } from '../sheets/words/standing-cautions.ts';
import { BLADE_OPTIONS, readBlade } from './blade-options.ts';
import { argumentAt, type Call, type Command, type Report } from './command.ts';
import { DECIMAL_OPTION, readDecimal, wordDecimals } from './decimal-option.ts';
import { readLengthOption } from './length-option.ts';
import { LIST_FORMS } from './open-list.ts';
import { readList } from './read-list.ts';
import { reportJson, reportRefusal, reportWords, type Paragraph } from './report.ts';
import { JSON_OPTION } from './shared-options.ts';
import { drawTable } from './text-table.ts';

/** Grows when a field changes its meaning or goes; new fields alone don't change it. */
const MATCH_JSON_VERSION = 1;

const HEADINGS: readonly Heading[] = [
  {
    ...headed('across'),
    required: true,
    holds: 'length',
    meaning: 'How far across the profile the point lies, from anywhere.',
    also: ['u', 'x', 'along', 'position'],
  },
  {
    ...headed('deep'),
    required: true,
    holds: 'length',
    meaning: 'How far into the wood it lies from there.',
    also: ['depth', 'y', 'z', 'in', 'out'],
  },
];

export const MATCH: Command = {
  name: 'match',
  summary: 'Finds the set-up whose cove comes nearest to points traced off an old molding.',
  arguments: [
    {
      name: 'POINTS.csv',
      says: `Headings Across and Deep: where each point lies in the molding's end, in order along the profile, from any corner, bare numbers in inches. The first and last point lie on the flats beside the cove. A contour gauge or calipers every 1/8 in are enough. ${LIST_FORMS}`,
    },
  ],
  options: [
    ...BLADE_OPTIONS,
    {
      name: '--tolerance',
      value: 'LENGTH',
      says: 'A miss that is let pass (1/32). Where one setting misses by more, two on one blank are looked for.',
    },
    { name: '--painted', says: 'Paint lies on the molding, which only adds to it.' },
    DECIMAL_OPTION,
    JSON_OPTION,
  ],
  notes: [
    "The approach is given twice: from the blade line, and from the table's front edge (what is left to 90°). What is matched is the outline: where the angles can lie is said beside them, and where that can't be told, why.",
    'With --json: { version, blade, settings (approachDeg from the blade line, tiltDeg from upright, height, deepSide: right is further across, leftEdge, rightEdge, width, depth, offCenter), rms, worst { inches, point }, intervals { approachDeg, tiltDeg, height } or null, arc { radius, rms, worst }, two (as settings, rms and worst; or null), cautions, faults }, lengths in inches, nothing rounded; at fault { faults, cautions }.',
  ],
  examples: ['old-casing.csv', 'old-casing.csv --diameter "9 7/8" --json'],
  exits: {
    0: 'Found.',
    1: "Found, but this saw can't cut it as asked.",
    2: 'The call, the file or a point in it is wrong.',
  },
  run: runMatch,
};

async function runMatch(call: Call): Promise<Report> {
  const json = call.flags.has('--json');
  const faults: Fault[] = [];
  const decimalSign = readDecimal(call, faults);
  const blade = readBlade(call, decimalSign, faults);
  const usual = { name: '--tolerance', usual: '1/32', most: 1 };
  const tolerance = Number(readLengthOption(call, usual, decimalSign, faults));
  const word = (found: readonly Fault[]): Fault[] => wordDecimals(found, decimalSign);
  const table = await readList(argumentAt(call, 0), HEADINGS, decimalSign);
  const cautions = word(table.cautions);
  const points = table.ok ? table.value.rows.map((row) => readPoint(row, decimalSign)) : [];
  faults.push(...(table.ok ? table.value.findings.faults : table.faults));
  if (faults.length > 0) return reportRefusal(2, { faults: word(faults), cautions }, json);
  const loss = call.flags.has('--painted') ? 'paint' : 'even';
  const matched = matchCove({ points, blades: [blade], tolerance, loss });
  if (!matched.ok) return reportRefusal(2, { faults: word(matched.faults), cautions }, json);
  const answer = matched.value;
  const said = [...cautions, ...word(cautionsOfMatch(answer, tolerance))];
  const against = word(answer.faults);
  const exit = against.length > 0 ? 1 : 0;
  if (json) {
    return reportJson(exit, {
      version: MATCH_JSON_VERSION,
      ...toJson(answer),
      cautions: faultsToJson(said),
      faults: faultsToJson(against),
    });
  }
  return reportWords(exit, sayMatch(answer, decimalSign), { faults: against, cautions: said });
}

/** A point at fault reports into the findings of its row. */
function readPoint(row: RowReader, decimalSign: DecimalSign): TracePoint {
  const read = (heading: 'across' | 'deep'): number => {
    const cell = row.value(heading);
    if (!cell.ok) return 0;
    if (cell.value === null) {
      row.refuse(heading, fault('length.missing', heading, null));
      return 0;
    }
    const length = lengthIn(cell.value, heading, { unit: 'in', decimalSign });
    if (length.ok) return Number(length.value);
    for (const one of length.faults) row.refuse(heading, one);
    return 0;
  };
  return { across: read('across'), out: read('deep') };
}

function toJson({ blade, best, intervals, arc, two }: MatchAnswer): object {
  const of = ({ settings, rms, worst }: Matched): object => ({
    settings: settings.map(({ setting, deepSide = null, ...sizes }) => ({
      approachDeg: toDegrees(setting.approach),
      tiltDeg: toDegrees(setting.tilt),
      height: setting.height,
      deepSide,
      ...sizes,
    })),
    rms,
    worst,
  });
  return {
    blade,
    ...of(best),
    intervals:
      typeof intervals === 'string'
        ? null
        : {
            approachDeg: intervals.approach,
            tiltDeg: intervals.tilt,
            height: intervals.height,
          },
    arc,
    two: two === undefined ? null : of(two),
  };
}

function sayMatch({ best, arc, blade }: MatchAnswer, sign: DecimalSign): Paragraph[] {
  const inches = (value: number): string => `${sayFixed(value, 3, sign)} in`;
  const angle = (value: number): string => `${sayFixed(value, 2, sign)}°`;
  const rows = best.settings.flatMap(({ setting, width, depth, offCenter }) => [
    ['Approach, from the blade line', angle(toDegrees(setting.approach))],
    ['Approach, from the front edge', angle(90 - toDegrees(setting.approach))],
    ['Tilt of the blade, from upright', angle(toDegrees(setting.tilt))],
    ['Highest tooth above table, last pass', inches(setting.height)],
    ['It cuts: width', inches(width)],
    ['It cuts: depth', inches(depth)],
    ['It cuts: deepest line off center', inches(offCenter)],
    [
      'Farthest miss, at a point',
      `${inches(Math.abs(best.worst.inches))}, point ${best.worst.point}`,
    ],
    ['Misses on the whole (root of the mean square)', inches(best.rms)],
    ['A true arc instead: radius', inches(arc.radius)],
    ['A true arc instead: farthest miss', inches(arc.worst)],
  ]);
  const size = (value: number): string => sayQuantity({ inches: value }, 'in', sign);
  return [
    MANUAL_CAUTION,
    drawTable(
      [
        { heading: `With a blade of ${size(blade.diameter)}, kerf ${size(blade.kerf)}` },
        { heading: '', align: 'right' },
      ],
      rows,
    ),
    ['Every time:', ...standingCautions().map((one) => `  ${one}`)],
  ];
}

function sayFixed(value: number, decimals: number, sign: DecimalSign): string {
  return value.toFixed(decimals).replace('.', sign);
}
