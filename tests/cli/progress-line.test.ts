import { describe, expect, test } from '@jest/globals';
import { progressLine } from '../../src/cli/progress-line.ts';

const GAIN = { phase: 'quick plans', costCents: 123456, boundCents: 120000 };

function terminal(more: { readonly isTTY?: boolean; readonly columns?: number } = { isTTY: true }) {
  const written: string[] = [];
  let time = 0;
  const out = { ...more, write: (text: string) => written.push(text) };
  return { written, out, now: () => time, pass: (milliseconds: number) => (time += milliseconds) };
}

describe('The line of progress', () => {
  test('tells profile, phase, cost and the least, written over and wiped away at the end', () => {
    const { written, out, now } = terminal();
    const line = progressLine(out, now);
    line.name(1, 5, 'Tall base');
    line.show(GAIN);
    line.end();
    expect(written).toEqual([
      '\rTall base (2 of 5), quick plans: 1,234.56 so far, 1,200.00 at least\u001b[K',
      '\r\u001b[K',
    ]);
  });

  test('is not written faster than ten times a second, nor after its end', () => {
    const { written, out, now, pass } = terminal();
    const line = progressLine(out, now);
    line.show(GAIN);
    pass(99);
    line.show({ ...GAIN, costCents: 1 });
    expect(written).toHaveLength(1);
    pass(1);
    line.show({ ...GAIN, costCents: 2 });
    expect(written[1]).toContain('0.02 so far');
    line.end();
    pass(1000);
    line.show(GAIN);
    expect(written).toHaveLength(3);
  });

  test('never takes two lines, whatever width the terminal knows', () => {
    for (const [columns, room] of [
      [30, 29],
      [0, 79],
    ] as const) {
      const { written, out, now } = terminal({ isTTY: true, columns });
      const line = progressLine(out, now);
      line.name(
        0,
        1,
        'A profile with a name that is longer than any terminal is wide, by far, by far',
      );
      line.show(GAIN);
      expect(written[0]!.length).toBe('\r'.length + room + '\u001b[K'.length);
    }
  });

  test('writes nothing to what is no terminal', () => {
    const { written, out } = terminal({});
    for (const line of [progressLine(out), progressLine(undefined)]) {
      line.show(GAIN);
      line.end();
    }
    expect(written).toEqual([]);
  });

  test('leaves no trace where nothing was told', () => {
    const { written, out } = terminal();
    progressLine(out).end();
    expect(written).toEqual([]);
  });
});
