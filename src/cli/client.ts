/** The command client: a job in, the client's copy out, a workbook by itself. */
import { paintPng } from '../hosts/file/paint-png.ts';
import { writeWorkbook } from '../hosts/xlsx/write-workbook.ts';
import type { JobPlan } from '../planning/job-plan.ts';
import { planToJson } from '../planning/plan-json.ts';
import { describeClientCopy } from '../sheets/client/client-sheet.ts';
import { clientRooms } from '../sheets/client/client-rooms.ts';
import { count } from '../sheets/print-length.ts';
import { sayMoney } from '../sheets/say-money.ts';
import type { Call, Command, Report } from './command.ts';
import { SECONDS_OPTION, STEPS_OPTION } from './effort.ts';
import { INPUT_ARGUMENT } from './plan-input.ts';
import { planToFile } from './plan-to-file.ts';
import { reportJson, reportWords } from './report.ts';
import { FORCE_OPTION, JSON_OPTION } from './shared-options.ts';

/** Grows when a field changes its meaning or goes; new fields alone don't change it. */
const CLIENT_JSON_VERSION = 1;

export const CLIENT: Command = {
  name: 'client',
  summary:
    "Plans a job and writes the client's copy: rooms, moldings and prices, no figure of the shop's own.",
  arguments: [INPUT_ARGUMENT],
  options: [
    {
      name: '--out',
      value: 'FILE.xlsx',
      says: "Where the client's copy goes.",
      needed: true,
    },
    FORCE_OPTION,
    SECONDS_OPTION,
    STEPS_OPTION,
    JSON_OPTION,
  ],
  notes: [
    'The workbook opens in any spreadsheet: change a quantity and every price follows. It leaves the date for you to fill in; the shop setting “price holds days” says how long the price holds from then.',
    'The plan is made anew: give --steps to plan, client and export for the same price in all three.',
    "With --json: { version, price, tax, toPay, currency, rooms, cautions, faults, workbook }, money in the shop's currency; at fault { faults, cautions }.",
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
  const saved = await planToFile(call, {
    ending: '.xlsx',
    make: (plan) => writeWorkbook(describeClientCopy(plan), { paint: paintPng }),
  });
  if (saved.plan === undefined) return saved.refusal;
  const { plan, out } = saved;
  if (call.flags.has('--json')) return reportJson(0, toJson(plan, out));
  return reportWords(0, [sayClient(plan, out)], { faults: [], cautions: plan.cautions });
}

function toJson(plan: JobPlan, out: string) {
  const { totals, rooms, cautions, faults } = planToJson(plan);
  const { price, tax, currency } = totals;
  const { priceCents, taxCents } = plan.totals;
  return {
    version: CLIENT_JSON_VERSION,
    price,
    tax,
    toPay: (priceCents + taxCents) / 100,
    currency,
    rooms: rooms.map((one) => ({ room: one.room, price: one.price })),
    cautions,
    faults,
    workbook: out,
  };
}

function sayClient(plan: JobPlan, out: string): string {
  const { shop } = plan.job;
  const { priceCents, taxCents } = plan.totals;
  const say = (cents: number): string => sayMoney(cents, shop.currency, shop.decimalSign);
  const rooms = clientRooms(plan).filter(({ lines }) => lines.length > 0);
  const lines = rooms.reduce((sum, room) => sum + room.lines.length, 0);
  const what =
    rooms.length === 0
      ? 'nothing to price: every run is marked as done'
      : `${count(rooms.length, 'room')}, ${count(lines, 'line')} with a quantity to change`;
  return [
    `Written: ${out}`,
    `  ${what}`,
    `  to pay ${say(priceCents + taxCents)}, of which tax ${say(taxCents)}`,
    `  holds ${count(shop.priceHoldsDays, 'day')} from the date that you fill in`,
    "It has nothing of the shop's costs, hours, margin or stock.",
  ].join('\n');
}
