/** What a client is told in words: what the price covers, what the lengths are, how long it holds. */
import type { JobPlan } from '../../planning/job-plan.ts';
import { listSpliced } from '../../planning/joints.ts';
import { OPENING_KINDS, sameName, type JobOption, type Opening } from '../../planning/job.ts';
import { sayFor, type WorkRow } from '../../planning/work/work-row.ts';
import { isService, isUsual, workNotIncluded } from '../words/say-work.ts';
import { count, printExact } from '../words/print-length.ts';
import { OPTIONS_ALONE } from '../words/say-option.ts';

/** The job in a sentence: `4 rooms, 6 moldings, 84 pieces.` */
export function sayJob({ rooms: lines, totals }: JobPlan, rooms: number): string {
  if (rooms === 0) return 'Everything listed is done already.';
  const moldings = new Set(lines.map(({ profile }) => profile)).size;
  return `${count(rooms, 'room')}, ${count(moldings, 'molding')}, ${count(totals.pieces, 'piece')}.`;
}

const WOOD_AND_WORK =
  'The price covers the moldings listed here: the wood, making or buying them, and cutting each piece to length with its ends shaped as measured. Wood for trial cuts, and for what is left over, is included.';
/** A shop that has no hourly rate has priced no work. */
const WOOD_ALONE =
  'The price covers the wood of the moldings listed here, that for trial cuts, and what is left over. The work of making them and of cutting them to length is not in it.';

/** Of a sheet in the shop's workbook alone; the price that follows is without tax. */
export const BEHIND = 'Not as the shop’s sheets: plan again. Their price is now:';

/** Over the line to sign on. */
export const ACCEPTED = 'Accepted as listed here, at the price to pay above:';

/** How the quantities may be used. */
export const LIVE_NOTE =
  'Change a quantity in the marked cells, and every price follows, at the same price each; what was quoted stands beside it. Ask before you order by a changed one.';

/** Of one line; past it the program asks back. */
export const MOST_QUANTITY = 9999;
/** The sheet of the copy as a workbook by itself. */
export const COPY_SHEET = 'Moldings';
/** Under a room's lines: what they come to. */
export const THIS_ROOM = 'This room';
/** Before the mark of the plan; another label where Job has a number of its own. */
export const NUMBER_LABEL = 'Number';
export const MARK_LABEL = 'Mark of the plan';
/** What is paid, and the same once more where the last room ends. */
export const TO_PAY = 'To pay';
export const TO_PAY_AGAIN = 'To pay, all rooms and tax';
export const TO_PAY_WITH_OPTIONS = 'To pay, all rooms, options taken up and tax';
export const ALL_ROOMS = 'All rooms';
/** Over what may be taken up. */
export const TAKE_UP_NOTE = `Not in the price, unless taken up: write 1 in the marked cell, and the price follows; tax comes on it as on the rest. ${OPTIONS_ALONE}`;

/** `In the price: A (Hall: Crown). By June.` */
export function sayTakenUp({ name, note }: JobOption, said: string): string {
  return `In the price: ${name} (${said}).${note === '' ? '' : ` ${note}`}`;
}

/** Before the number of lines that have another quantity; what was quoted in all follows. */
export const AS_QUOTED = 'To pay as quoted. Quantities changed since: ';

/** What the price covers, what it doesn't, and what was allowed for; no number of the shop's own costs. */
export function sayCovered(plan: JobPlan): string[] {
  const { shop, runs } = plan.job;
  const { endAllowance, lengthPrecision } = shop;
  const toWalls = runs.some(({ measuredAs }) => measuredAs === 'wall');
  const print = (length: typeof endAllowance): string => printExact(length, shop);
  return [
    shop.hourlyRate === 0 ? WOOD_ALONE : WOOD_AND_WORK,
    ...sayAlso(plan),
    sayNotCovered(plan),
    `Lengths are those to cut to, with what the ends need, rounded up to the next ${print(lengthPrecision)}.`,
    ...(toWalls && endAllowance.compare(0) > 0
      ? [
          `Where a run was measured from wall to wall, each end has ${print(endAllowance)} more, to trim where it meets the wall.`,
        ]
      : []),
    ...sayJoints(plan),
    'What is found different on site is measured and priced anew.',
  ];
}

/** What a client asks for beside the moldings, by the words that clients know. */
const SERVICES: readonly (readonly [work: string, said: string])[] = [
  ['install', 'fitting'],
  ['prime or finish', 'paint or finish'],
  ['load and deliver', 'delivery'],
];

/** Rows of Work in a client's words, each with the moldings that it is for. */
function sayRows(rows: readonly WorkRow[]): string[] {
  const said = rows.map((row) => {
    const service = SERVICES.find(([work]) => sameName(work, row.work))?.[1] ?? row.work;
    return row.for === undefined ? service : `${service} (${sayFor(row)})`;
  });
  return [...new Set(said)];
}

/** Services and work of the shop's own that Work asks for; without an hourly rate, time alone prices none. */
function workAsked({ job, profiles, jobWork }: JobPlan, isPriced: boolean): WorkRow[] {
  const lines = [...profiles.flatMap(({ work }) => work), ...jobWork.lines];
  return [...new Set(lines.map(({ row }) => row))].filter(
    (row) =>
      row.typed !== undefined &&
      (isService(row) || !isUsual(row)) &&
      (job.shop.hourlyRate > 0 || row.money > 0) === isPriced,
  );
}

/** What is in the price beside making and cutting. */
function sayAlso(plan: JobPlan): string[] {
  const said = sayRows(workAsked(plan, true));
  return said.length === 0 ? [] : [`It covers too: ${said.join(', ')}.`];
}

/** What is not in it, unless a row of Work or a setting has it there. */
function sayNotCovered(plan: JobPlan): string {
  const { job } = plan;
  const { said, unsaid } = workNotIncluded(job);
  const services = SERVICES.flatMap(([work]) => {
    const isDelivered = work === 'load and deliver' && job.shop.delivery > 0;
    return unsaid.filter((row) => row.work === work && !isDelivered);
  });
  const not = sayRows([...services, ...said, ...workAsked(plan, false)]);
  return `It does not cover ${[...not, 'or taking old trim down'].join(', ')}, unless that is agreed in writing.`;
}

/** Pieces named one by one; more are only counted. */
const MOST_NAMED = 8;

/** How many joints, and in which pieces; no word of what they cost the shop. */
function sayJoints({ profiles, totals }: JobPlan): string[] {
  if (totals.joints === 0) return [];
  const spliced = profiles.flatMap(({ sticks }) => listSpliced(sticks));
  const named = spliced
    .slice(0, MOST_NAMED)
    .map(({ id, parts }) => (parts.length === 2 ? id : `${id} (${parts.length} parts)`));
  const more = spliced.length - named.length;
  const where = `${named.join('; ')}${more > 0 ? `; and ${more} more` : ''}`;
  return [
    `${count(spliced.length, 'piece is', 'pieces are')} longer than the wood to be had, and made of parts that are cut at an angle and joined, ${count(totals.joints, 'joint')} in all: ${where}.`,
  ];
}

/** Walls named behind a count of doors or windows; where there are more, only the count is given. */
const MOST_WALLS = 4;

/** What a line's pieces go around, as its room sees it: `1 door (south), 2 windows (north, east)`. */
export function sayAround(openings: ReadonlySet<Opening>, room: string): string {
  return eachKind(openings, (of) => {
    const walls = new Set(of.map((one) => (sameName(one.room, room) ? one.wall : one.otherWall)));
    walls.delete('');
    return walls.size === 0 || walls.size > MOST_WALLS ? '' : ` (${[...walls].join(', ')})`;
  });
}

/** `Trim here goes around 1 door, 3 windows.` */
export function sayOpenings(openings: ReadonlySet<Opening>): string {
  return `Trim here goes around ${eachKind(openings, () => '')}.`;
}

function eachKind(
  openings: ReadonlySet<Opening>,
  sayMore: (of: readonly Opening[]) => string,
): string {
  return OPENING_KINDS.flatMap((kind) => {
    const of = [...openings].filter((one) => one.kind === kind);
    const number = of.reduce((sum, { quantity }) => sum + quantity, 0);
    return number === 0 ? [] : [`${count(number, kind)}${sayMore(of)}`];
  }).join(', ');
}

export function sayHolds(days: number): string {
  return `It holds ${count(days, 'day')} from its date. Where no date is written here, ask before you order.`;
}

/** `Done already, not in this price: Base, 3 pieces; Cove, 1 piece.` */
export function sayDone(done: ReadonlyMap<string, number>): string {
  const parts = [...done].map(([molding, pieces]) => `${molding}, ${count(pieces, 'piece')}`);
  return `Done already, not in this price: ${parts.join('; ')}.`;
}
