/** The command client: a job in, the client's copy out, a workbook by itself. */
import type { JobPlan } from '../planning/job-plan.ts';
import { planToJson } from '../planning/plan-json.ts';
import type { Call, Command, Report } from './command.ts';
import { clientFile } from './files-of-plan.ts';
import { INPUT_ARGUMENT } from './open-job.ts';
import { planToFiles, takesKept } from './plan-to-files.ts';
import { reportJson } from './report.ts';
import { madeToJson, type Stamp } from '../sheets/stamp.ts';
import { FORCE_OPTION, JSON_OPTION, outOption, PLANNING_OPTIONS } from './shared-options.ts';
import { reportPlan } from './terse-report.ts';

/** Grows when a field changes its meaning or goes; new fields alone don't change it. */
const CLIENT_JSON_VERSION = 1;

export const CLIENT: Command = {
  name: 'client',
  summary:
    "Plans a job and writes the client's copy: rooms, moldings and prices, no figure of the shop's own.",
  arguments: [INPUT_ARGUMENT],
  options: [
    { ...outOption('FILE.xlsx', "Where the client's copy goes."), needed: true },
    FORCE_OPTION,
    ...PLANNING_OPTIONS,
    JSON_OPTION,
  ],
  notes: [
    'The workbook opens in any spreadsheet: change a quantity and every price follows. Its date may be typed over; the shop setting “price holds days” says how long the price holds from then. Its number is the mark of the inputs that the sheets of the shop bear.',
    'Where INPUT carries a plan of its inputs (the workbook that plan --out wrote, or one saved from the page after planning), it is of that very plan, to the cent. With --seconds or --steps, and else, the job is planned.',
    "With --json: { version, price, tax, toPay, currency, rooms, options, cautions, faults, made, workbook }, money in the shop's currency; at fault { faults, cautions }.",
  ],
  examples: ['job.xlsx --out job-client.xlsx', 'job-folder --out client.xlsx --force'],
  exits: {
    0: 'Planned and written.',
    1: "The job can't be made as asked.",
    2: "The call or the input is wrong, or the workbook can't be written there.",
  },
  run: runClient,
};

async function runClient(call: Call): Promise<Report> {
  const file = clientFile('--out');
  const out = call.values.get('--out') ?? '';
  const { plan, stamp, refusal } = await planToFiles(call, [file], takesKept(call));
  if (plan === undefined) return refusal;
  if (call.flags.has('--json')) return reportJson(0, toJson(plan, stamp, out));
  return reportPlan(call, [file.say(plan, out, stamp)], plan.cautions);
}

/** They say what lumber costs the shop, or what its hours are: nothing that goes along with a client's copy. */
const OF_THE_OFFICE = /^job\.(?:spare-takes-stick|trim-spoils-fit|hours-[a-z-]+)$/u;

function toJson(plan: JobPlan, stamp: Stamp, out: string) {
  const { totals, rooms, options, cautions, faults } = planToJson(plan);
  const { moldings, jobWork, toMinimum, delivery, rounding, price, tax, currency } = totals;
  const { priceCents, taxCents } = plan.totals;
  return {
    version: CLIENT_JSON_VERSION,
    moldings,
    jobWork,
    toMinimum,
    delivery,
    rounding,
    price,
    tax,
    toPay: (priceCents + taxCents) / 100,
    currency,
    rooms: rooms.map((one) => ({ room: one.room, price: one.price })),
    options: options.map(({ option, note, taken, price: more, tax: taxOnIt }) => {
      return { option, note, taken, price: more, tax: taxOnIt };
    }),
    cautions: cautions.filter(({ code }) => !OF_THE_OFFICE.test(code)),
    faults,
    made: madeToJson(stamp),
    workbook: out,
  };
}
