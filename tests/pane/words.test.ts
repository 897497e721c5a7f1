import { describe, expect, test } from '@jest/globals';
import type { FunctionReference } from '../../src/pane/services.ts';
import {
  gistOf,
  searchFunctions,
  showCall,
  showExample,
} from '../../src/pane/functions/show-example.ts';
import { nextTab } from '../../src/pane/style/next-tab.ts';
import { sayReplaced } from '../../src/pane/plan/ask-writing.ts';
import { sayProgress } from '../../src/pane/plan/say-progress.ts';
import { sayProfiles, sayResult } from '../../src/pane/plan/say-result.ts';
import { planOf } from '../planning/make-job.ts';
import { DEMO } from '../sheets/sheet-jobs.ts';

const TILT: FunctionReference = {
  id: 'tilt',
  name: 'COVE.TILT',
  description: 'Tilt of the blade that cuts a cove, in degrees from upright.',
  parameters: [
    { name: 'width', description: 'Width of the cove', optional: false },
    { name: 'kerf', description: 'Thickness of the cut', optional: true },
  ],
  example: '=COVE.TILT(3, "7/8, about", 0.5)',
};

describe('Before sheets are replaced', () => {
  const question = { replaced: ['Cutting', 'Pieces'], added: ['Outlines'], pointing: [] };
  const ticks = { cutKey: 'a', sticksCut: 2, sticks: 9, keepsCuts: true };
  const all =
    /replaced\. Anything that was typed there goes: ticks, notes, rates, quantities\. Outlines will be added\.$/u;

  test('it is said that ticks of what is cut stay, and that all else that was typed goes', () => {
    expect(sayReplaced(question, { ticks, result: undefined, ticksLost: false })).toBe(
      'Cutting and Pieces were made here before and will be replaced. What is ticked beside sticks and pieces on Cutting, and under Done on Pieces, stays as cut. Anything else that was typed there goes: other ticks, notes, rates, quantities. Outlines will be added.',
    );
  });

  test('nothing is said to stay where nothing is ticked, where ticks can’t be read or are dropped', async () => {
    const none = { ...ticks, sticksCut: 0 };
    expect(sayReplaced(question, { ticks: none, result: undefined, ticksLost: false })).toMatch(
      all,
    );
    expect(sayReplaced(question, { ticks, result: undefined, ticksLost: true })).toMatch(all);
    const kept = { fingerprint: '', tables: [], day: '2026-01-01' };
    const result = {
      ...kept,
      plan: await planOf({}),
      effort: { seconds: 0 },
      cutKey: '',
      droppedCutKey: 'a',
      wrong: [],
    };
    expect(sayReplaced(question, { ticks, result, ticksLost: false })).toMatch(all);
  });
});

describe('The reference of functions', () => {
  test('shows an example as the person types it; what stands in quotes stays', () => {
    expect(showExample(TILT.example, ',')).toBe(TILT.example);
    expect(showExample(TILT.example, ';')).toBe('=COVE.TILT(3; "7/8, about"; 0,5)');
    expect(showCall(TILT, ';')).toBe('COVE.TILT(width; [kerf])');
  });

  test('finds by every word of the search, in names, descriptions and arguments', () => {
    const others = [TILT, { ...TILT, name: 'COVE.CUT', description: 'x', parameters: [] }];
    expect(searchFunctions(others, '')).toHaveLength(2);
    expect(searchFunctions(others, ' UPRIGHT  kerf ')).toEqual([TILT]);
    expect(searchFunctions(others, 'upright board')).toEqual([]);
  });

  test('says what a function is for in its first words', () => {
    expect(gistOf(TILT.description)).toBe('Tilt of the blade that cuts a cove');
    expect(gistOf('(x)')).toBe('(x)');
  });
});

describe('Tabs by the arrow keys', () => {
  test('go round and round, and to both ends', () => {
    const names = ['a', 'b', 'c'];
    expect(nextTab(names, 'c', 'ArrowRight')).toBe('a');
    expect(nextTab(names, 'a', 'ArrowLeft')).toBe('c');
    expect(nextTab(names, 'b', 'Home')).toBe('a');
    expect(nextTab(names, 'b', 'End')).toBe('c');
    expect(nextTab(names, 'b', 'x')).toBeUndefined();
  });
});

describe('The progress of a planning', () => {
  const progress = {
    done: 1,
    of: 4,
    profile: 'Base',
    phase: 'quick plans',
    costCents: 123_456,
    boundCents: 100_000,
    stopping: false,
  };
  const money = { currency: '$', decimalSign: '.' } as const;

  test('says which profile of how many, what it costs so far, and the least possible', () => {
    expect(sayProgress(progress, money)).toEqual({
      share: 0.25,
      phase: 'Base (2 of 4): quick plans',
      cost: 'Lumber and its labor so far $1,234.56; it can’t be less than $1,000.00 (a gap of 23.5 %).',
    });
  });

  test('says that it is stopping, and no cost where none is known yet', () => {
    const stopping = { ...progress, stopping: true, costCents: undefined };
    expect(sayProgress(stopping, money)).toMatchObject({ phase: 'Stopping', cost: undefined });
  });
});

describe('A plan at a glance', () => {
  test('gives the totals of the plan, and offcuts that leave room for kerfs and trims', async () => {
    const plan = await planOf(DEMO);
    const rows = new Map(sayResult(plan).map(({ label, value }) => [label, value]));
    expect(rows.get('Pieces')).toBe(String(plan.totals.pieces));
    expect(rows.get('Sticks')).toBe(String(plan.totals.sticks));
    expect(rows.get('Passes over the blade')).toBe(String(plan.totals.passes));
    expect(rows.get('Price')).toBe(
      `$${(plan.totals.priceCents / 100).toLocaleString('en-US', { minimumFractionDigits: 2 })}`,
    );
    const feet = (label: string): number => {
      const [, whole = '0', inches = '0'] =
        /^(?:(\d+)' )?(\d+)?/u.exec(rows.get(label) ?? '') ?? [];
      return Number(whole) + Number(inches) / 12;
    };
    const sticks = plan.profiles.flatMap((one) => one.sticks);
    const offcuts = sticks.reduce((sum, { offcut }) => sum + Number(offcut), 0) / 12;
    expect(Math.abs(feet('Offcuts') - offcuts)).toBeLessThan(1);
    expect(feet('Length, net') + offcuts).toBeLessThan(feet('Length, bought or from the rack'));
  });

  test('says for each profile how near its lumber is to the least cost', async () => {
    const plan = await planOf(DEMO);
    const lines = sayProfiles(plan);
    expect(lines.map(({ name }) => name)).toEqual(plan.profiles.map(({ profile }) => profile.name));
    for (const { bound } of lines)
      expect(bound).toMatch(/proven least cost|of the least possible/u);
  });
});
