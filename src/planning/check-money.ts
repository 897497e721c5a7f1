/**
 * The part of the independent look at a plan that is about money: every line worked again from its own
 * figures and the shop's settings. Only types and tolerances are imported.
 */
import type { JobPlan, ProfilePlan } from './job-plan.ts';
import { CHECK_SLACK_CENTS } from './tolerance.ts';

export function checkMoney(plan: JobPlan): string[] {
  return [...plan.profiles.flatMap((one) => checkLines(plan, one)), ...checkPrice(plan)];
}

/** Whether whole cents are an amount, rounded: no farther from it than half a cent. */
function isRounded(wholeCents: number, exactCents: number): boolean {
  return Math.abs(wholeCents - exactCents) <= 0.5 + CHECK_SLACK_CENTS;
}

function checkLines(plan: JobPlan, { profile, money, tally }: ProfilePlan): string[] {
  const { shop } = plan.job;
  const wrong: string[] = [];
  const { setUp, passes, smoothing, crosscuts, joints } = tally.hours;
  const hours = setUp + passes + smoothing + crosscuts + joints;
  const material = money.lumberCents - money.offcutCreditCents;
  const { laborCents, overheadCents, costCents, contingencyCents, markupCents } = money;
  if (material + laborCents + overheadCents !== costCents) {
    wrong.push(`The cost of ${profile.name} does not add up.`);
  }
  const marked = (material * shop.materialMarkup + laborCents * shop.laborMarkup) / 100;
  const priced = (costCents + contingencyCents + markupCents) / (1 - shop.margin / 100);
  const lines: readonly (readonly [string, number, number])[] = [
    ['labor', laborCents, hours * shop.hourlyRate * 100],
    ['overhead', overheadCents, ((material + laborCents) * shop.overhead) / 100],
    ['contingency', contingencyCents, (costCents * shop.contingency) / 100],
    ['markup', markupCents, marked],
    ['price', money.priceCents, priced],
  ];
  for (const [name, said, exact] of lines) {
    if (!isRounded(said, exact)) wrong.push(`The ${name} of ${profile.name} is another.`);
  }
  const shares = plan.rooms.filter((line) => line.profile === profile.name);
  if (shares.reduce((sum, line) => sum + line.priceCents, 0) !== money.priceCents) {
    wrong.push(`The rooms' prices of ${profile.name} do not add up to its price.`);
  }
  for (const amount of Object.values(money)) {
    if (!Number.isInteger(amount) || amount < 0)
      wrong.push(`${profile.name} has money in fractions.`);
  }
  return wrong;
}

/** The job's price: what its parts are, that they add up, and the tax on it. */
function checkPrice({ job, rooms, profiles, totals }: JobPlan): string[] {
  const { shop } = job;
  const wrong: string[] = [];
  const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);
  const lines = sum(rooms.map((line) => line.priceCents));
  const { linesCents, toMinimumCents, deliveryCents, roundingCents, priceCents } = totals;
  if (totals.costCents !== sum(profiles.map(({ money }) => money.costCents))) {
    wrong.push('The cost of the job is not that of its profiles.');
  }
  if (linesCents !== lines) wrong.push("The rooms' prices do not add up to that of the moldings.");
  if (priceCents !== lines + toMinimumCents + deliveryCents + roundingCents) {
    wrong.push('The price of the job does not add up.');
  }
  const asked = profiles.length === 0 ? 0 : 1;
  if (!isRounded(deliveryCents, asked * shop.delivery * 100)) wrong.push('Delivery is another.');
  const least = asked * shop.minimumCharge * 100;
  if (lines < least ? !isRounded(lines + toMinimumCents, least) : toMinimumCents !== 0) {
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
