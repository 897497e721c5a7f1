/**
 * The part of the independent look at a plan that is about money: every line worked again from its own
 * figures and the shop's settings. Only types and tolerances are imported.
 */
import type { JobPlan, Money, ProfilePlan } from './job-plan.ts';
import type { WorkLine } from './work/work-row.ts';
import { CHECK_SLACK_CENTS } from './tolerance.ts';

export function checkMoney(plan: JobPlan): string[] {
  const { profiles, jobWork } = plan;
  return [
    ...profiles.flatMap(({ profile, byPlan, byAllowance }) =>
      [byPlan, byAllowance].flatMap((costing) => {
        const { setUp, passes, smoothing, crosscuts, joints, other } = costing.hours;
        const hours = setUp + passes + smoothing + crosscuts + joints + other;
        const whose = costing === byPlan ? profile.name : `${profile.name} by the allowance`;
        return checkLines(plan, whose, { ...costing, hours });
      }),
    ),
    ...profiles.flatMap((one) => checkRooms(plan, one)),
    ...(jobWork.money === undefined
      ? []
      : checkLines(plan, 'the job', { ...jobWork, work: jobWork.lines, money: jobWork.money })),
    ...checkPrice(plan),
  ];
}

/** Whether whole cents are an amount, rounded: no farther from it than half a cent. */
function isRounded(wholeCents: number, exactCents: number): boolean {
  return Math.abs(wholeCents - exactCents) <= 0.5 + CHECK_SLACK_CENTS;
}

function checkLines(
  { job: { shop } }: JobPlan,
  name: string,
  {
    hours,
    work,
    money,
  }: { readonly hours: number; readonly work: readonly WorkLine[]; readonly money: Money },
): string[] {
  const wrong: string[] = [];
  const beside = work.reduce((sum, line) => sum + line.money, 0);
  const material = money.lumberCents - money.offcutCreditCents;
  const { laborCents, overheadCents, costCents, contingencyCents, markupCents } = money;
  if (material + laborCents + overheadCents !== costCents) {
    wrong.push(`The cost of ${name} does not add up.`);
  }
  const marked = (material * shop.materialMarkup + laborCents * shop.laborMarkup) / 100;
  const priced = (costCents + contingencyCents + markupCents) / (1 - shop.margin / 100);
  const lines: readonly (readonly [string, number, number])[] = [
    ['labor', laborCents, (hours * shop.hourlyRate + beside) * 100],
    ['overhead', overheadCents, ((material + laborCents) * shop.overhead) / 100],
    ['contingency', contingencyCents, (costCents * shop.contingency) / 100],
    ['markup', markupCents, marked],
    ['price', money.priceCents, priced],
  ];
  for (const [line, said, exact] of lines) {
    if (!isRounded(said, exact)) wrong.push(`The ${line} of ${name} is another.`);
  }
  for (const amount of Object.values(money)) {
    if (!Number.isInteger(amount) || amount < 0) wrong.push(`${name} has money in fractions.`);
  }
  return wrong;
}

function checkRooms({ rooms }: JobPlan, { profile, money }: ProfilePlan): string[] {
  const shares = rooms.filter((line) => line.profile === profile.name);
  const shared = shares.reduce((sum, line) => sum + line.priceCents, 0);
  if (shared === money.priceCents) return [];
  return [`The rooms' prices of ${profile.name} do not add up to its price.`];
}

/** The job's price: what its parts are, that they add up, and the tax on it. */
function checkPrice({ job, rooms, profiles, jobWork, totals }: JobPlan): string[] {
  const { shop } = job;
  const wrong: string[] = [];
  const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);
  const lines = sum(rooms.map((line) => line.priceCents));
  const { linesCents, jobWorkCents, toMinimumCents, deliveryCents, roundingCents, priceCents } =
    totals;
  const costs = [...profiles.map(({ money }) => money.costCents), jobWork.money?.costCents ?? 0];
  if (totals.costCents !== sum(costs)) {
    wrong.push('The cost of the job is not that of its profiles and its work.');
  }
  if (linesCents !== lines) wrong.push("The rooms' prices do not add up to that of the moldings.");
  if (jobWorkCents !== (jobWork.money?.priceCents ?? 0))
    wrong.push('The work of the job is another.');
  const work = lines + jobWorkCents;
  if (priceCents !== work + toMinimumCents + deliveryCents + roundingCents) {
    wrong.push('The price of the job does not add up.');
  }
  const asked = profiles.length === 0 ? 0 : 1;
  if (!isRounded(deliveryCents, asked * shop.delivery * 100)) wrong.push('Delivery is another.');
  const least = asked * shop.minimumCharge * 100;
  if (work < least ? !isRounded(work + toMinimumCents, least) : toMinimumCents !== 0) {
    wrong.push('The job is not brought up to the minimum charge as the shop has it.');
  }
  const step = { cent: 1, dollar: 100, '5': 500 }[shop.priceRounding];
  if (priceCents % step !== 0 || roundingCents < 0 || roundingCents >= step) {
    wrong.push('The price is not rounded up to the next step.');
  }
  const material = profiles.map(({ money }) => money.lumberCents - money.offcutCreditCents);
  const ofMaterial = (sum(material) * (100 + shop.materialMarkup)) / (100 - shop.margin);
  const taxable = { all: priceCents, material: ofMaterial, none: 0 }[shop.taxOn];
  if (!isRounded(totals.taxableCents, taxable)) wrong.push('What is taxed is another.');
  if (!isRounded(totals.taxCents, (totals.taxableCents * shop.tax) / 100)) {
    wrong.push('The tax is another.');
  }
  return wrong;
}
