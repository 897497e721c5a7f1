/**
 * Rooms typed once, L-shaped, with a door and a window each: tables read, closure checked, runs made.
 * The same runs typed by hand, in the same shop, are what it is measured against.
 */
import { readCsvTable } from '../../build/hosts/file/read-csv.js';
import { readJob } from '../../build/planning/input/read-job.js';
import { PROFILES, STOCK, time } from './bench-jobs.mjs';

const ROOMS = 1_000;
/** Of the processor, which a machine with other work to do takes hardly more of. */
const AIM_SECONDS = 1;
/** As in a program that has just begun; and again. */
const TURNS = ['cold', 'warm'];

export function walledTables(rooms = ROOMS) {
  const walls = ['Room,Wall,Length,Turn'];
  const openings = ['Room,Wall,Kind,Width,Height,Casing,Position,Sill'];
  for (let at = 1; at <= rooms; at++) {
    const more = at % 48;
    const sides = [
      [216 + more, 'inside'],
      [120, 'inside'],
      [96, 'outside'],
      [72, 'inside'],
      [120 + more, 'inside'],
      [192, 'inside'],
    ];
    sides.forEach(([length, turn], wall) => {
      walls.push(`Room ${at},${wall + 1},${length},${turn}`);
    });
    openings.push(`Room ${at},5,door,36,80,Casing,42,`);
    openings.push(`Room ${at},1,window,60,48,Casing,78,32`);
  }
  const trim = [
    'Room,Profile,Where,Height',
    'all,Base,floor,',
    'all,Cove,ceiling,',
    'all,Casing,height,32',
  ];
  return {
    Walls: walls.join('\n'),
    Trim: trim.join('\n'),
    Openings: openings.join('\n'),
    Profiles: PROFILES,
    Stock: STOCK,
  };
}

/** Each made run as a row of Runs. */
function typedTables(runs) {
  const lines = ['Room,Run,Profile,Length,Left end,Right end'];
  for (const { room, run, profile, length, left, right } of runs) {
    lines.push(`${room},${run},${profile},${Number(length)},${left.kind},${right.kind}`);
  }
  return { Runs: lines.join('\n'), Profiles: PROFILES, Stock: STOCK };
}

export async function bench() {
  const rows = [];
  for (const turn of TURNS) {
    const read = async (text) => {
      const used = process.cpuUsage();
      const [job, ms] = await time(() => {
        const tables = Object.entries(text).map(
          ([name, csv]) => readCsvTable(csv, `${name}.csv`, name).value,
        );
        const { job, faults } = readJob(tables, 'bench');
        if (job === undefined) throw new Error(faults[0]?.message);
        return job;
      });
      const { user, system } = process.cpuUsage(used);
      return { job, seconds: ms / 1000, processor: (user + system) / 1e6 };
    };
    const walled = await read(walledTables());
    const typed = await read(typedTables(walled.job.runs));
    rows.push({
      rooms: ROOMS,
      turn,
      runs: walled.job.runs.length,
      'made s': +walled.seconds.toFixed(2),
      'processor s': +walled.processor.toFixed(2),
      'typed s': +typed.seconds.toFixed(2),
      'times typed': +(walled.seconds / typed.seconds).toFixed(1),
      aim: `${AIM_SECONDS} processor s: ${walled.processor <= AIM_SECONDS ? 'met' : 'missed'}`,
    });
  }
  return rows;
}
