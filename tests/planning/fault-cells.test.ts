import { describe, expect, test } from '@jest/globals';
import type { Fault } from '../../src/core/faults/fault.ts';
import { judgeJob } from '../../src/planning/judge-job.ts';
import { planJob } from '../../src/planning/plan-job.ts';
import { PLAIN, readTables, type Tables } from './make-job.ts';
import { ROOM_CASES } from './room-cases.ts';

const RUNS = 'Room,Run,Profile,Length,Measured as,Quantity,Left end,Right end,Match';
const OPENINGS = 'Room,Wall,Kind,Width,Height,Casing,Apron,Stool,Position,Quantity';
const PROFILES =
  'Profile,Make,Cove width,Cove depth,Off-center,Blank width,Blank thickness,Near flat,Spring,Species,Class,Miter across';
const SHOP = 'Setting,Value,Unit';
const STOCK = 'For,Kind,Class,Width,Length,Price,Per';
const BASE = 'Base,buy,,,,5,3/4,,,,,\nCasing,buy,,,,3 1/2,3/4,,,,,';
const COVE_RUN = `${RUNS}\nHall,north,Cove,60,,,,,`;
const BOARDS = `${STOCK}\nBase,stick,,,16',2,foot\nCasing,stick,,,16',2,foot\nPoplar,board,,10,12',5,piece`;

/** A cove of these sizes, used by a run; `shop` as rows of settings. */
const cove = (sizes: string, shop = ''): Tables => ({
  runs: COVE_RUN,
  profiles: `${PROFILES}\nCove,cove,${sizes},,Poplar,,`,
  shop: `${SHOP}\n${shop}`,
  stock: BOARDS,
});
const base = (runs: string, more: Tables = {}): Tables => ({
  runs: `${RUNS}\n${runs}`,
  openings: OPENINGS,
  profiles: `${PROFILES}\n${BASE}`,
  stock: BOARDS,
  ...more,
});

/** What is spoiled, the fault that comes, the heading or setting of its cell, and what mends it there. */
interface Case {
  readonly spoiled: Tables;
  readonly code: string;
  readonly at: string;
  readonly mended: string;
}

const CASES: readonly Case[] = [
  {
    spoiled: base('Hall,north,Bass,60,,,,,'),
    code: 'job.profile-unknown',
    at: 'Profile',
    mended: 'Base',
  },
  {
    spoiled: base('Hall,north,Base,60,,,,,', {
      openings: `${OPENINGS}\nHall,,door,30,80,Case,,,,`,
    }),
    code: 'job.profile-unknown',
    at: 'Casing',
    mended: 'Casing',
  },
  {
    spoiled: base('Hall,north,Base,60,,,,,', {
      openings: `${OPENINGS}\nHall,,window,30,50,,Aprn,,,`,
    }),
    code: 'job.profile-unknown',
    at: 'Apron',
    mended: 'Casing',
  },
  {
    spoiled: base('Hall,north,Base,60,,,,,', {
      openings: `${OPENINGS}\nHall,,window,30,50,,,Stool,,`,
    }),
    code: 'job.profile-unknown',
    at: 'Stool',
    mended: 'Casing',
  },
  {
    spoiled: { ...base(''), runs: 'Room,Profile,Length,One piece\nHall,Base,500,yes' },
    code: 'cutting.unserved',
    at: 'Length',
    mended: '60',
  },
  {
    spoiled: base('Hall,north,Base,six,,,,,'),
    code: 'length.unreadable',
    at: 'Length',
    mended: '60',
  },
  {
    spoiled: base('Hall,north,Base,60,,0,,,'),
    code: 'number.too-small',
    at: 'Quantity',
    mended: '1',
  },
  {
    spoiled: base(
      ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i', 'j', 'k']
        .map((one) => `Hall,${one},Base,60,,10000,,,`)
        .join('\n'),
    ),
    code: 'job.quantity-too-large',
    at: 'Quantity',
    mended: '1',
  },
  {
    spoiled: base('Hall,north,Base,60,,,,,a\nHall,south,Casing,60,,,,,a'),
    code: 'job.match-of-two-profiles',
    at: 'Match',
    mended: 'b',
  },
  {
    spoiled: base('Hall,north,Base,90,long point,,outside miter,,', {
      openings: `${OPENINGS}\nHall,north,door,30,80,Casing,,,40,`,
    }),
    code: 'job.opening-needs-wall-length',
    at: 'Measured as',
    mended: 'wall',
  },
  {
    spoiled: base('Hall,north,Base,90,,,outside miter,,', {
      profiles: `${PROFILES}\nBase,buy,,,,5,,,,,,`,
    }),
    code: 'job.projection-unknown',
    at: 'Blank thickness',
    mended: '3/4',
  },
  {
    spoiled: base('Hall,north,Base,60,,,,,', {
      openings: `${OPENINGS}\nHall,north,door,30,80,Casing,,,10,`,
      profiles: `${PROFILES}\nBase,buy,,,,5,3/4,,,,,\nCasing,buy,,,,,3/4,,,,,thickness`,
    }),
    code: 'job.casing-needs-width',
    at: 'Blank width',
    mended: '3',
  },
  {
    spoiled: base('Hall,north,Base,60,,,,,', {
      openings: `${OPENINGS}\nHall,north,door,30,80,Casing,,,50,`,
    }),
    code: 'job.opening-outside-wall',
    at: 'Position',
    mended: '10',
  },
  {
    spoiled: base('Hall,north,Base,60,,,,,', {
      stock: `${STOCK}\nBase,stick,,,16',2,board foot`,
      profiles: `${PROFILES}\nBase,buy,,,,,,,,,,`,
    }),
    code: 'job.price-per-needs',
    at: 'Width',
    mended: '5',
  },
  { spoiled: cove('30,1/2,,31,1,'), code: 'cove.too-wide', at: 'Cove width', mended: '3' },
  {
    spoiled: cove('1/8,1/2,,31,1,'),
    code: 'cove.no-wider-than-kerf',
    at: 'Cove width',
    mended: '3',
  },
  { spoiled: cove('3,6,,4,7,'), code: 'cove.too-deep-for-blade', at: 'Cove depth', mended: '1/2' },
  {
    spoiled: cove('3,1/2,1.6,4,1,'),
    code: 'cove.off-center-beyond-half',
    at: 'Off-center',
    mended: '1/4',
  },
  {
    spoiled: cove('3,1/2,0.7,5,1,'),
    code: 'cove.tilt-beyond-stop',
    at: 'Off-center',
    mended: '1/4',
  },
  {
    spoiled: cove('1.5,0.09,0.75,4,1,'),
    code: 'cove.no-tilt-enough',
    at: 'Off-center',
    mended: '0',
  },
  {
    spoiled: cove('3,3/4,,4,1 1/4,', 'greatest height upright,1/2,'),
    code: 'cove.blade-cannot-rise',
    at: 'Cove depth',
    mended: '3/8',
  },
  {
    spoiled: cove('5,3.9,,6,5,'),
    code: 'cove.blade-cannot-rise-unstated-saw',
    at: 'Cove depth',
    mended: '1',
  },
  { spoiled: cove('3,3/4,,4,7/8,'), code: 'cove.web-too-thin', at: 'Blank thickness', mended: '1' },
  { spoiled: cove('3,1/2,,3.1,1,'), code: 'cove.flat-too-narrow', at: 'Blank width', mended: '4' },
  { spoiled: cove('3,1/2,,4,1,0'), code: 'cove.flat-too-narrow', at: 'Near flat', mended: '1/2' },
  {
    spoiled: cove('3,1/2,,3.4,1,3/8'),
    code: 'cove.flat-too-narrow',
    at: 'Blank width',
    mended: '4',
  },
  {
    spoiled: cove('3,1/2,,4,1,', 'kerf,4 in,'),
    code: 'cove.kerf-too-thick',
    at: 'kerf',
    mended: '1/8',
  },
  {
    spoiled: cove('3,1/2,,4,1,', 'step,1/2,'),
    code: 'cove.step-too-high',
    at: 'step',
    mended: '1/16',
  },
  {
    spoiled: cove('3,1/2,,4,1,', 'first pass,1/2,'),
    code: 'cove.step-too-high',
    at: 'first pass',
    mended: '1/16',
  },
  {
    spoiled: cove('3,1/2,,4,1,', 'step,1/9999,'),
    code: 'cove.too-many-passes',
    at: 'step',
    mended: '1/16',
  },
  {
    spoiled: cove('3,1/2,,40,1,', 'table front,10,\ntable back,12,'),
    code: 'rails.corner-alone',
    at: 'Blank width',
    mended: '4',
  },
  {
    spoiled: {
      ...cove('3,1/2,,3 1/4,1,'),
      profiles: `${PROFILES}\nCove,crown cove,3,1/2,,3 1/4,1,,38,Poplar,,`,
    },
    code: 'crown.bevel-too-near',
    at: 'Blank width',
    mended: '6',
  },
  {
    spoiled: { ...cove('3,1/2,,4,1,'), profiles: `${PROFILES}\nCove,cove,3,1/2,,4,1,,,Oak,,` },
    code: 'job.no-stock',
    at: 'Species',
    mended: 'Poplar',
  },
  {
    spoiled: cove('3,1/2,,4,1,', 'set-up spare,400,'),
    code: 'cutting.unserved',
    at: 'set-up spare',
    mended: '0',
  },
  {
    spoiled: cove('3,1/2,,4,1,', 'blade diameter,none,'),
    code: 'length.unreadable',
    at: 'blade diameter',
    mended: '10',
  },
];

async function faultsOf(tables: Tables): Promise<readonly Fault[]> {
  const read = readTables(tables);
  if (read.job === undefined) return [...read.faults, ...judgeJob(read).faults];
  const judged = judgeJob(read).faults;
  const planned = await planJob(read.job, { budget: { steps: 0 } });
  // What is told as a job is typed is what planning tells, but for the sticks.
  expect(planned.faults.filter(({ code }) => !code.startsWith('cutting.'))).toEqual(judged);
  return planned.faults;
}

/** The table with one cell changed, and the heading or the setting that it stands under. */
function change(tables: Tables, { where }: Fault, text: string): { tables: Tables; at: string } {
  if (where === undefined || !('file' in where)) throw new Error('The fault stands nowhere.');
  const name = where.file.replace('.csv', '') as keyof Tables;
  const rows = (tables[name] ?? PLAIN[name]).split('\n').map((row) => row.split(','));
  const row = rows[where.line - 1] ?? [];
  const heading = rows[0]?.[where.column - 1] ?? '';
  const at = name === 'shop' && heading === 'Value' ? (row[0] ?? '') : heading;
  row[where.column - 1] = text;
  return { tables: { ...tables, [name]: rows.map((one) => one.join(',')).join('\n') }, at };
}

describe('A fault stands at the cell that must change', () => {
  const rooms = ROOM_CASES.map(([spoiled, code, at, mended]) => ({ spoiled, code, at, mended }));
  test.each([...CASES, ...rooms])(
    '$code at $at: changing that cell alone makes it go',
    async (one) => {
      const faults = await faultsOf(one.spoiled);
      const found = faults.filter(({ code }) => code === one.code);
      expect([one.code, found.length > 0]).toEqual([one.code, true]);
      const changed = change(one.spoiled, found[0]!, one.mended);
      expect(changed.at).toBe(one.at);
      const after = await faultsOf(changed.tables);
      const key = (fault: Fault): string => JSON.stringify([fault.code, fault.where]);
      expect(after.map(key)).not.toContain(key(found[0]!));
    },
  );
});
