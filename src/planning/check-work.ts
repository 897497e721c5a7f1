/**
 * The part of the independent look at a plan that is about work: every count taken again from pieces and
 * sticks, every hour from its count. By the allowance, see
 * check-allowance.ts. Only types, tolerances and what makes two names the same are imported.
 */
import { nameKey } from './job.ts';
import { allowedCounts } from './check-allowance.ts';
import type { Costing, JobPlan, ProfilePlan } from './job-plan.ts';
import type { Hours } from './work/hours.ts';
import type { WorkLine, WorkRow } from './work/work-row.ts';
import { CHECK_SLACK_HOURS } from './tolerance.ts';

export function checkWork(plan: JobPlan): string[] {
  const { lines, hours } = plan.jobWork;
  const ofJob = lines.reduce((sum, line) => sum + line.hours, 0);
  return [
    ...plan.profiles.flatMap((one) => [
      ...checkProfile(plan, one, one.byPlan, one.profile.name, {}),
      ...checkProfile(
        plan,
        one,
        one.byAllowance,
        `${one.profile.name} by the allowance`,
        allowedCounts(plan, one),
      ),
      ...(hoursOf(one.tally.hours) === hoursOf(one.byPlan.hours)
        ? []
        : [`The hours of ${one.profile.name} are not those of its plan.`]),
    ]),
    ...lines.flatMap((line) => checkLine('the job', line, jobCount(plan, line.row), 1)),
    ...(isSame(ofJob, hours) ? [] : ['The hours of the whole job do not add up.']),
  ];
}

function isSame(one: number, other: number): boolean {
  return Math.abs(one - other) <= CHECK_SLACK_HOURS * (1 + Math.abs(other));
}

function hoursOf({ setUp, passes, smoothing, crosscuts, joints, other }: Hours): number {
  return setUp + passes + smoothing + crosscuts + joints + other;
}

/** @param counts Those that are others than the plan's sticks have them. */
function checkProfile(
  plan: JobPlan,
  planned: ProfilePlan,
  { work, hours }: Costing,
  whose: string,
  counts: Readonly<Record<string, number>>,
): string[] {
  const added = work.reduce((sum, line) => sum + line.hours, 0);
  const names = work.map(({ row }) => nameKey(row.work));
  const factors = plan.job.work.filter(
    ({ per, isOurs, typed }) => per === 'factor' && isOurs && typed !== undefined,
  );
  const wrong = isSame(added, hoursOf(hours)) ? [] : [`The hours of ${whose} do not add up.`];
  if (new Set(names).size < names.length) wrong.push(`${whose} has a work twice.`);
  for (const line of work) {
    const count = counts[line.row.per] ?? countFor(plan, planned, line.row);
    const factor = line.row.per === 'foot' && factors.length > 0 ? line.factor : 1;
    wrong.push(...checkLine(whose, line, count, factor));
    if (!isFor(line.row, planned)) wrong.push(`${line.row.work} is not for ${whose}.`);
  }
  return wrong;
}

function isFor({ for: whom }: WorkRow, { profile }: ProfilePlan): boolean {
  if (whom === undefined) return true;
  if ('make' in whom) return whom.make === profile.make;
  return nameKey(whom.profile) === nameKey(profile.name);
}

function checkLine(
  whose: string,
  { row, count, factor, hours, money }: WorkLine,
  counted: number,
  times: number,
): string[] {
  const name = `${row.work} of ${whose}`;
  const wrong: string[] = [];
  if (!row.isOurs) wrong.push(`${name} is not ours and in the price.`);
  if (!isSame(count, counted)) wrong.push(`${name} is counted as ${count}, not ${counted}.`);
  if (factor !== times || !isSame(hours, (counted * row.minutes * times) / 60)) {
    wrong.push(`The hours of ${name} are others.`);
  }
  if (!isSame(money, counted * row.money)) wrong.push(`The money of ${name} is another.`);
  return wrong;
}

function jobCount({ job, rooms }: JobPlan, { per }: WorkRow): number {
  if (per === 'job') return 1;
  if (per === 'room') return new Set(rooms.map(({ room }) => room)).size;
  return job.openings.reduce((sum, { quantity }) => sum + quantity, 0);
}

/** Every count in one pass over the profile's pieces and sticks. */
function countFor(plan: JobPlan, planned: ProfilePlan, { per }: WorkRow): number {
  const { profile, sticks, setUp } = planned;
  const pieces = plan.pieces.filter(
    ({ profile: name, done }) => !done && nameKey(name) === nameKey(profile.name),
  );
  const net = pieces.reduce((sum, piece) => sum + Number(piece.cutLength), 0);
  const long = sticks.reduce((sum, stick) => sum + Number(stick.length), 0);
  const passes = setUp?.passHeights.length ?? 0;
  const ends = pieces
    .filter(({ kind }) => kind === 'run')
    .flatMap(({ left, right }) => [left, right].map((end) => end.kind as string));
  const endsOf = (...kinds: readonly string[]): number =>
    ends.filter((kind) => kinds.includes(kind)).length;
  const miters = endsOf('inside miter', 'outside miter');
  const cuts = sticks.flatMap((stick) => stick.pieces);
  const parts = new Map<string, number>();
  for (const { id, part } of cuts) {
    if (part !== undefined) parts.set(id, (parts.get(id) ?? 0) + 1);
  }
  const width =
    setUp === undefined
      ? Number(profile.blankWidth)
      : setUp.arcLength + setUp.flats.near + setUp.flats.far;
  const all = plan.profiles.flatMap((one) => one.sticks);
  const shares = sticks.map(
    ({ item, unit }) => 1 / all.filter((one) => one.item === item && one.unit === unit).length,
  );
  const onBoards = sticks.filter(({ item }) => item.kind === 'board');
  const counts: Readonly<Record<string, number>> = {
    'set-up': setUp === undefined ? 0 : 1,
    pass: passes * sticks.length,
    'foot a pass': (passes * long) / 12,
    foot: net / 12,
    'foot a cut': ((profile.make === 'crown cove' ? 2 : 0) * long) / 12,
    'foot a rip': onBoards.reduce((sum, stick) => sum + Number(stick.length), 0) / 12,
    'square foot': ((setUp?.arcLength ?? 0) * net) / 144,
    'square foot a coat': (width * net) / 144,
    piece: pieces.length,
    crosscut: cuts.length + sticks.length,
    miter: profile.spring === undefined ? miters : 0,
    'compound miter': profile.spring === undefined ? 0 : miters,
    cope: endsOf('cope'),
    return: endsOf('return'),
    joint: [...parts.values()].reduce((sum, count) => sum + count - 1, 0),
    'board foot': planned.tally.boardFeetWithAllowance ?? 0,
    board: shares.reduce((sum, share) => sum + share, 0),
  };
  return counts[per] ?? Number.NaN;
}
