/**
 * The part of the independent look at a plan that is about its price by the offcut allowance: lumber and
 * counts from pieces and the row that prices them, no stick asked. Only types, tolerances and what makes two
 * names the same are imported.
 */
import { nameKey } from './job.ts';
import type { JobPlan, ProfilePlan } from './job-plan.ts';
import { CHECK_SLACK_CENTS, CHECK_SLACK_INCHES } from './tolerance.ts';

/** What is said up to here is none of a stick. */
const OVER = 1e-6;

export function checkAllowance(plan: JobPlan): string[] {
  const { shop } = plan.job;
  return plan.profiles.flatMap((planned) => {
    const { name } = planned.profile;
    const { lumber, money } = planned.byAllowance;
    const { unit, per } = lumber;
    const { inches, sticks } = allowedLengthOf(plan, planned);
    const feet = Number(unit.item.length) / 12;
    const net =
      per === 'foot' ? netInches(plan, planned) / 12 : (planned.tally.boardFeetNet ?? Number.NaN);
    const each =
      per === 'foot'
        ? unit.priceCents / unit.strips / feet
        : unit.priceCents / (unit.boardFeet ?? Number.NaN);
    const exact = net * timesOf(plan, planned) * each;
    const wrong: string[] = [];
    const say = (what: string): void => {
      wrong.push(`The ${what} of ${name} by the allowance is another.`);
    };
    if (!(Math.abs(money.lumberCents - exact) <= 0.5 + CHECK_SLACK_CENTS)) say('lumber');
    if (money.offcutCreditCents !== 0) say('offcut credit');
    if (!(Math.abs(lumber.inches - inches) < CHECK_SLACK_INCHES)) say('length');
    if (lumber.sticks !== sticks) say('count of sticks');
    if (!plan.job.stock.includes(unit.item)) say('row of Stock');
    const priced = { plan: planned.byPlan, allowance: planned.byAllowance }[shop.priceBasis];
    if (planned.money !== priced.money || planned.work !== priced.work) {
      wrong.push(`The price of ${name} does not go by the ${shop.priceBasis}.`);
    }
    return wrong;
  });
}

function piecesOf(plan: JobPlan, { profile }: ProfilePlan): JobPlan['pieces'] {
  return plan.pieces.filter(
    ({ profile: name, done }) => !done && nameKey(name) === nameKey(profile.name),
  );
}

function netInches(plan: JobPlan, planned: ProfilePlan): number {
  return piecesOf(plan, planned).reduce((sum, piece) => sum + Number(piece.cutLength), 0);
}

function timesOf({ job: { shop } }: JobPlan, { profile }: ProfilePlan): number {
  const percent = profile.offcutAllowancePercent ?? shop.offcutAllowance;
  return shop.allowanceOf === 'net' ? (100 + percent) / 100 : 100 / (100 - percent);
}

function allowedLengthOf(plan: JobPlan, planned: ProfilePlan): { inches: number; sticks: number } {
  const inches = netInches(plan, planned) * timesOf(plan, planned);
  const exact = inches / Number(planned.byAllowance.lumber.unit.item.length);
  const whole = Math.floor(exact);
  return { inches, sticks: exact - whole > OVER / 2 ? whole + 1 : whole };
}

/** What the sticks of a plan count, as the allowance counts it. */
export function allowedCounts(
  plan: JobPlan,
  planned: ProfilePlan,
): Readonly<Record<string, number>> {
  const { profile, setUp, byAllowance } = planned;
  const { unit, longestStick } = byAllowance.lumber;
  const pieces = piecesOf(plan, planned);
  const { inches, sticks } = allowedLengthOf(plan, planned);
  const { shop } = plan.job;
  const passes = setUp?.passHeights.length ?? 0;
  const longest = Number(longestStick) - 2 * Number(shop.endTrim);
  const tangent = Math.tan((shop.spliceAngle * Math.PI) / 180);
  const joints = pieces.reduce((sum, { cutLength, onePiece, match }) => {
    const long = Number(cutLength) > longest + CHECK_SLACK_INCHES;
    if (!long || onePiece || match !== '' || profile.blankThickness === undefined) return sum;
    const step = Number(shop.lengthPrecision);
    const up = (length: number): number => Math.ceil(length / step - CHECK_SLACK_INCHES) * step;
    const overlap = up(Number(profile.blankThickness) * tangent);
    const most = Math.floor(longest / step + CHECK_SLACK_INCHES) * step;
    let parts = 1;
    while (parts * most - (parts - 1) * overlap < Number(cutLength) - CHECK_SLACK_INCHES) parts++;
    return sum + parts - 1;
  }, 0);
  return {
    'set-up': setUp === undefined || pieces.length === 0 ? 0 : 1,
    pass: passes * sticks,
    'foot a pass': (passes * inches) / 12,
    'foot a cut': ((profile.make === 'crown cove' ? 2 : 0) * inches) / 12,
    'foot a rip': unit.item.kind === 'board' ? inches / 12 : 0,
    crosscut: pieces.length + joints + sticks,
    joint: joints,
    board: Math.ceil(sticks / unit.strips),
  };
}
