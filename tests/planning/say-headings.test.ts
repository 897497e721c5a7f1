import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from '@jest/globals';
import { describeHeadings, sayHeading } from '../../src/planning/input/headings/say-headings.ts';
import { TABLE_HEADINGS } from '../../src/planning/input/headings/table-headings.ts';
import { describeInput } from '../../src/sheets/describe-input.ts';

const readme = readFileSync(join(import.meta.dirname, '..', '..', 'README.md'), 'utf8');

describe('The headings of the input tables', () => {
  test('stand in README as npm run catalogue writes them', () => {
    const [, listed] =
      /<!-- headings: made by npm run catalogue -->\n\n([\s\S]*)\n\n<!-- \/headings -->/u.exec(
        readme,
      ) ?? [];
    expect(listed).toBe(describeHeadings(100));
    for (const line of (listed ?? '').split('\n')) expect(line.length).toBeLessThanOrEqual(100);
  });

  test('stand on the How to sheet, each with what it says', () => {
    const howTo = describeInput().sheets.find(({ name }) => name === 'How to');
    const rows = (howTo?.rows ?? []).map(({ cells }) => cells.map((cell) => cell?.value ?? null));
    for (const one of Object.values(TABLE_HEADINGS).flat()) {
      expect(rows).toContainEqual([one.heading, sayHeading(one)]);
    }
  });

  test('are said with what they hold, whether they are needed, and the other words', () => {
    const [length] = TABLE_HEADINGS.Stock.filter(({ heading }) => heading === 'Length');
    expect(length && sayHeading(length)).toBe(
      'Length, needed. Of one stick or board. Also read: len, lengths, stick length, board length.',
    );
    const [kind] = TABLE_HEADINGS.Stock.filter(({ heading }) => heading === 'Kind');
    expect(kind && sayHeading(kind)).toMatch(/^One of stick, board\. /u);
  });
});
