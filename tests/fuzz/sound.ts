/** What must hold of any reading, whatever was read. */
import type { Fault, Outcome } from '../../src/core/faults/fault.ts';
import type { RawTable } from '../../src/planning/input/raw-table.ts';
import { listUnknowns } from '../../src/planning/price-unknowns.ts';
import { readJob } from '../../src/planning/input/read-job.ts';

/** A message is for a person: it stops, and it holds nothing of the program's inside. */
const LONGEST_MESSAGE = 4_000;
const INSIDE = /\bNaN\b|\bundefined\b|\[object|\bInfinity\b|e\+\d\d/u;
/** In quotes stands what the person gave, whatever it is. */
const QUOTED = /“[^”]*”|"[^"]*"/gu;

/** What is wrong with what a door gave; nothing where all holds. */
export function whatIsWrong(read: Outcome<readonly RawTable[]>): string[] {
  if (!read.ok)
    return [
      ...(read.faults.length === 0 ? ['refused without a word'] : []),
      ...read.faults.flatMap(wrongFault),
    ];
  const reading = readJob([...read.value], 'job');
  const wrong = [...reading.faults, ...reading.cautions].flatMap(wrongFault);
  const { job } = reading;
  if (job === undefined) return reading.faults.length > 0 ? wrong : [...wrong, 'no job, no fault'];
  const lengths = [
    ...job.runs.map(({ length }) => length),
    ...job.stock.map(({ length }) => length),
    ...job.openings.flatMap(({ width, height }) => [width, height]),
  ].map(Number);
  if (!lengths.every((inches) => inches > 0 && inches < 1_000_000)) wrong.push('a length is none');
  if (!job.runs.every(({ quantity }) => Number.isInteger(quantity) && quantity > 0)) {
    wrong.push('a quantity is none');
  }
  const money = job.stock.map(({ price }) => price);
  if (!money.every((price) => Number.isFinite(price) && price >= 0)) wrong.push('a price is none');
  if (!job.hours.every(({ hours }) => hours > 0 && hours < 1_000_000)) wrong.push('hours are none');
  const work = job.work.flatMap(({ minutes, range = { low: minutes, high: minutes } }) => [
    range.low,
    minutes,
    range.high,
  ]);
  if (!work.every((each) => Number.isFinite(each) && each >= 0)) wrong.push('minutes are none');
  const unsure = listUnknowns(job.shop).every(
    ({ is: { low, high } }) => 0 <= low && low <= 1 && high >= 1,
  );
  if (!unsure) wrong.push('a range is none');
  return wrong;
}

function wrongFault({ code, message }: Fault): string[] {
  const said = message.replace(QUOTED, '');
  if (message.trim() === '' || message.length > LONGEST_MESSAGE)
    return [`${code}: ${message.length} long`];
  return INSIDE.test(said) ? [`${code}: ${said.slice(0, 300)}`] : [];
}
