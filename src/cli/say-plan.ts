/** A plan in words: what was planned, profile by profile, its lumber group by group, and what it comes to. */
import { formatInches } from '../core/units/format-length.ts';
import { count } from '../sheets/words/print-length.ts';
import { formatFixed } from '../core/units/format-number.ts';
import type { LengthUnit } from '../core/units/length-unit.ts';
import type { ExactInches } from '../core/units/length.ts';
import type { CuttingGroup, JobPlan, ProfilePlan, Totals } from '../planning/job-plan.ts';
import { hoursOf } from '../planning/work/hours.ts';
import type { Shop } from '../planning/shop.ts';
import { sayVolume, VOLUME } from '../sheets/words/lumber-volume.ts';
import { listPriceLines, PRICE_LINES } from '../sheets/words/price-lines.ts';
import { sayRange } from '../sheets/words/say-bid.ts';
import { sayBasis } from '../sheets/words/say-basis.ts';
import { CUT_AWAYS_TITLE, sayCutAway } from '../sheets/words/say-cut-aways.ts';
import { OPTIONS_ALONE, sayOption } from '../sheets/words/say-option.ts';
import { sayTitle } from '../sheets/words/say-title.ts';
import { sayWork } from '../planning/work/work-row.ts';
import { workNotIncluded } from '../sheets/words/say-work.ts';
import { MANUAL_CAUTION } from '../sheets/words/standing-cautions.ts';
import { sayMoney } from '../core/units/say-money.ts';
import { proofOfGroup, sayCost, sayProof } from '../sheets/words/say-proof.ts';
import type { Paragraph } from './report.ts';
import { drawTable } from './text-table.ts';

const columnsIn = (unit: LengthUnit) =>
  [
    { heading: 'Profile' },
    { heading: 'Pieces', align: 'right' },
    { heading: 'Sticks', align: 'right' },
    { heading: 'Net length', align: 'right' },
    { heading: `${VOLUME[unit].name} net`, align: 'right' },
    { heading: 'allowed', align: 'right' },
    { heading: 'bought', align: 'right' },
    { heading: 'Passes', align: 'right' },
    { heading: 'Hours', align: 'right' },
    { heading: 'Price', align: 'right' },
  ] as const;

export function sayPlan(plan: JobPlan): Paragraph[] {
  if (plan.profiles.length === 0) {
    return ['There is nothing left to plan: every run is marked as done.'];
  }
  const { shop } = plan.job;
  const lumber = plan.groups.map((one) => `  ${sayLumber(one, shop)}`);
  return [
    ...titleOf(plan),
    drawTable(
      columnsIn(shop.unit),
      plan.profiles.map((one) => cellsOf(one, shop)),
    ),
    ['Lumber:', ...lumber],
    ...(plan.cutAways.length === 0
      ? []
      : [[`${CUT_AWAYS_TITLE}:`, ...plan.cutAways.map((one) => `  ${sayCutAway(one, shop)}`)]]),
    sayTotals(plan),
    ...sayOptions(plan),
    ...(plan.profiles.some((one) => one.setUp !== undefined) ? [MANUAL_CAUTION] : []),
  ];
}

/** Which job it is, where Job says so. */
function titleOf({ job }: JobPlan): Paragraph[] {
  const said = sayTitle(job.titleBlock);
  return said === '' ? [] : [`${said}.`];
}

function cellsOf({ profile, tally, money }: ProfilePlan, shop: Shop): string[] {
  return [
    profile.name,
    String(tally.pieces),
    String(tally.sticks),
    sayLength(tally.lengthNet, shop),
    ...[tally.boardFeetNet, tally.boardFeetWithAllowance, tally.boardFeetBought].map((feet) =>
      feet === undefined ? '-' : sayVolume(feet, shop),
    ),
    tally.passes === 0 ? '-' : String(tally.passes),
    sayNumber(hoursOf(tally.hours), shop),
    priceOf(shop)(money.priceCents),
  ];
}

function sayLumber(group: CuttingGroup, shop: Shop): string {
  const say = priceOf(shop);
  const proof = proofOfGroup(group);
  return `${group.name} ${sayCost(proof, say)}, ${sayProof(proof, say, shop.decimalSign)}.`;
}

function sayTotals(plan: JobPlan): string[] {
  const { totals, job } = plan;
  const { shop } = job;
  const say = priceOf(shop);
  const done = totals.done === 0 ? '' : ` (${totals.done} more are done already)`;
  const cut = totals.sticksCut === 0 ? '' : ` (${totals.sticksCut} of them cut or begun)`;
  const tax = totals.taxCents === 0 ? '' : `, and ${say(totals.taxCents)} tax on it`;
  return [
    'In all:',
    `  ${count(totals.pieces, 'piece')}${done} from ${count(totals.sticks, 'stick')}${cut}, ${sayLength(totals.lengthNet, shop)} net out of ${sayLength(totals.lengthBought, shop)}`,
    ...sayBoardFeet(totals, shop),
    `  ${totals.passes} passes over the blade, ${sayNumber(totals.hours, shop)} hours`,
    ...(totals.joints === 0 ? [] : [sayJoints(plan)]),
    `  cost ${say(totals.costCents)}, price ${say(totals.priceCents)}${tax}`,
    ...sayPriceLines(totals, say),
    ...(plan.range === undefined ? [] : [`  ${sayRange(plan.range, shop)}`]),
    ...sayWithout(plan),
    `  ${sayBasis(plan)}`,
  ];
}

/** What each costs more, over the price above; nothing where Options has none. */
function sayOptions(plan: JobPlan): Paragraph[] {
  if (plan.options.length === 0) return [];
  const say = priceOf(plan.job.shop);
  const lines = plan.options.map((one) => {
    const what = `  ${one.option.name} (${sayOption(plan, one)})`;
    if (one.more === undefined) return `${what}: taken up, in the price`;
    const { priceCents, taxCents } = one.more;
    return `${what}: ${say(priceCents)}${taxCents === 0 ? '' : `, and ${say(taxCents)} tax on it`}`;
  });
  return [['Options, what each comes to more:', ...lines, `  ${OPTIONS_ALONE}`]];
}

/** What Work says is not in the price; nothing where it says so of none. */
function sayWithout({ job }: JobPlan): string[] {
  const { said } = workNotIncluded(job);
  return said.length === 0 ? [] : [`  not in the price, by Work: ${said.map(sayWork).join('; ')}`];
}

/** `  of that price: moldings $800.00; delivery $60.00`; nothing where it is all for moldings. */
function sayPriceLines(totals: Totals, say: (cents: number) => string): string[] {
  const lines = listPriceLines(totals);
  if (lines.length === 0) return [];
  const more = lines.map(({ line, cents }) => `${PRICE_LINES[line].toLowerCase()} ${say(cents)}`);
  return [`  of that price: moldings ${say(totals.linesCents)}; ${more.join('; ')}`];
}

/** Of what the shop makes; nothing where all is bought ready made. */
function sayBoardFeet(totals: Totals, shop: Shop): string[] {
  const { boardFeetNet, boardFeetWithAllowance, boardFeetBought } = totals;
  if (boardFeetNet === 0) return [];
  const say = (feet: number): string => sayVolume(feet, shop);
  const over = ((boardFeetBought ?? 0) / boardFeetNet - 1) * 100;
  const bought =
    boardFeetBought === undefined
      ? 'as bought not known (Stock gives no Class or Width)'
      : `${say(boardFeetBought)} as bought or pulled, ${formatFixed(over, 0, shop.decimalSign)} % over net`;
  return [
    `  ${say(boardFeetNet)} ${VOLUME[shop.unit].mark} net, ${say(boardFeetWithAllowance)} with the offcut allowance, ${bought}`,
  ];
}

/** `34 joints in spliced pieces, 5.7 of these hours, $328.67 of labor before overhead`. */
function sayJoints({ profiles, totals, job: { shop } }: JobPlan): string {
  const { joints, jointCostCents } = totals;
  const ofJoints = profiles.reduce((sum, { tally }) => sum + tally.hours.joints, 0);
  const hours = sayNumber(ofJoints, shop);
  const cost =
    jointCostCents === 0 ? '' : `, ${priceOf(shop)(jointCostCents)} of labor before overhead`;
  return `  ${count(joints, 'joint')} in spliced pieces, ${hours} of these hours${cost}`;
}

function priceOf(shop: Shop): (cents: number) => string {
  return (cents) => sayMoney(cents, shop.currency, shop.decimalSign);
}

/** Long lengths are read to the inch, or to the centimetre. */
function sayLength(inches: ExactInches, shop: Shop): string {
  if (shop.unit === 'in') return formatInches(inches, { denominator: 1, marks: 'feet and inches' });
  return `${formatFixed(Number(inches) * 0.0254, 2, shop.decimalSign)} m`;
}

function sayNumber(value: number, shop: Shop): string {
  return formatFixed(value, 1, shop.decimalSign);
}
