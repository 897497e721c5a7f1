/** The command demo: a first result without any input of one's own. */
import { stat } from 'node:fs/promises';
import { resolve } from 'node:path';
import { paintPng } from '../hosts/file/paint-png.ts';
import { saveFile } from '../hosts/file/save-files.ts';
import { writeWorkbook } from '../hosts/xlsx/write-workbook.ts';
import { describePlan } from '../sheets/describe-plan.ts';
import type { Caution, Fault } from '../core/faults/fault.ts';
import { sayStamp, type Stamp } from '../sheets/stamp.ts';
import type { Call, Command, Report } from './command.ts';
import { DEMO_FOLDER } from './demo-job.ts';
import { readEffort } from './effort.ts';
import { planInput } from './plan-input.ts';
import { reportRefusal } from './report.ts';
import { sayCall } from './say-call.ts';
import { sayPlan } from './say-plan.ts';
import { sayWorkbook } from './say-workbook.ts';
import { PLANNING_OPTIONS, readDay } from './shared-options.ts';
import { refusePlan, reportPlan } from './terse-report.ts';

const DEMO_FILE = 'coveledger-demo.xlsx';

export const DEMO: Command = {
  name: 'demo',
  summary: `Plans the demo job, an invented library, and writes ${DEMO_FILE} into this folder.`,
  arguments: [],
  options: PLANNING_OPTIONS,
  notes: [`An earlier ${DEMO_FILE} is replaced.`],
  examples: [''],
  exits: {
    0: 'Planned and written.',
    2: "The call is wrong, or the workbook can't be written here.",
  },
  run: runDemo,
};

async function runDemo(call: Call): Promise<Report> {
  const faults: Fault[] = [];
  const [effort, made] = [readEffort(call, faults), readDay(call, faults)];
  if (faults.length > 0) return reportRefusal(2, { faults, cautions: [] }, false);
  const planned = await planInput(DEMO_FOLDER, { effort, isSilent: call.flags.has('--quiet') });
  if (planned.plan === undefined) return refusePlan(call, planned.exit, planned);
  const { plan, from } = planned;
  const stamp: Stamp = { fingerprint: from.fingerprint, ...made, effort };
  const description = describePlan(plan, { stamp });
  const path = resolve(DEMO_FILE);
  const replaced = await isThere(path);
  const saved = await saveFile(path, await writeWorkbook(description, { paint: paintPng }), {
    replace: true,
  });
  if (!saved.ok) return reportRefusal(2, { faults: saved.faults, cautions: [] }, false);
  const paragraphs = [
    'The demo job: the trim of an invented small-town library, from assets/demo.',
    ...sayPlan(plan),
    sayStamp(stamp, plan.job.shop.decimalSign),
    sayWorkbook(path, description),
    ...(replaced ? [`The ${DEMO_FILE} that was here before is replaced.`] : []),
    `Open it in any spreadsheet. For a job of your own: ${sayCall('new', 'job.xlsx')}`,
  ];
  // Its tables are files of the program, not of this folder: no place in them is said.
  const cautions = plan.cautions.map(withoutPlace);
  return reportPlan(call, paragraphs, cautions);
}

function withoutPlace({ code, argument, given, limit, details, message }: Caution): Caution {
  const more = { ...(limit && { limit }), ...(details && { details }) };
  return { code, argument, given, ...more, message };
}

async function isThere(path: string): Promise<boolean> {
  try {
    await stat(path);
    return true;
  } catch {
    return false;
  }
}
