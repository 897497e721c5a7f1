/** The page for the phone at the saw, as text: what it says without its script. */
import { beforeAll, describe, expect, test } from '@jest/globals';
import { createHash } from 'node:crypto';

import { toDegrees } from '../../src/core/units/angle.ts';
import { formatDegrees } from '../../src/core/units/format-mark.ts';
import { SCRIPT, SCRIPT_HASH } from '../../src/exports/shop-view/script.ts';
import { writeShopView } from '../../src/exports/shop-view/shop-view.ts';
import { isCovePlan, type JobPlan } from '../../src/planning/job-plan.ts';
import { printExact } from '../../src/sheets/words/print-length.ts';
import { standingCautions } from '../../src/sheets/words/standing-cautions.ts';
import { planOf } from '../planning/make-job.ts';
import { JOBS } from '../sheets/sheet-jobs.ts';

const unescape = (text: string): string =>
  text
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&');

/** Each screen's own markup, by its title. */
function screensOf(html: string): Map<string, string> {
  const parts = html.split('<section class="screen" id="').slice(1);
  return new Map(
    parts.map((part) => {
      const [, title = ''] = /<h2 tabindex="-1">(.*?)<\/h2>/u.exec(part) ?? [];
      return [unescape(title), part.split('</section>')[0]!];
    }),
  );
}

const ticksOf = (markup: string): string[] =>
  [...markup.matchAll(/data-tick="(.*?)"/gu)].map(([, name = '']) => unescape(name));

describe.each(Object.keys(JOBS))('The page for the saw of the job “%s”', (name) => {
  let plan: JobPlan;
  let html: string;
  let screens: Map<string, string>;

  beforeAll(async () => {
    plan = await planOf(JOBS[name]!);
    html = writeShopView(plan);
    screens = screensOf(html);
  });

  test('begins with every caution, and has a screen for each cove and each stick', () => {
    const { shop } = plan.job;
    const first = unescape(screens.get('Read first')!);
    for (const line of standingCautions(printExact(shop.leastBlankLength, shop)))
      expect(first).toContain(line);
    for (const { profile, sticks, setUp } of plan.profiles) {
      expect(screens.has(`${profile.name}: at the saw`)).toBe(setUp !== undefined);
      for (let at = 1; at <= sticks.length; at++)
        expect(screens.has(`${profile.name}: stick ${at} of ${sticks.length}`)).toBe(true);
    }
  });

  test('says each angle of a cove with what it is measured from, and each rail mark with its side', () => {
    const { decimalSign } = plan.job.shop;
    for (const { profile, setUp } of plan.profiles.filter(isCovePlan)) {
      const words = unescape(screens.get(`${profile.name}: at the saw`)!);
      const angle = toDegrees(setUp.setting.approach);
      const figure = (label: string, value: string): string =>
        `<dt>${label}</dt><dd class="big">${value}</dd>`;
      expect(words).toContain(
        figure('Approach, from the blade line', formatDegrees(angle, decimalSign)),
      );
      expect(words).toContain(
        figure('Approach, from the front edge', formatDegrees(90 - angle, decimalSign)),
      );
      const marks = [
        ...words.matchAll(
          /<dt>(?:Near|Far) rail, \w+ edge<\/dt><dd class="big(?: long)?">(.*?)<\/dd>/gu,
        ),
      ];
      expect(marks.length >= 4).toBe(setUp.rails !== undefined);
      for (const [, mark = ''] of marks)
        expect(mark).toMatch(
          /(?:left|right) of the blade line|^on the blade line|off the table|the middle of the blade/u,
        );
      const passes = ticksOf(words).filter((tick) => tick.startsWith('pass '));
      expect(passes).toHaveLength(setUp.passHeights.length);
      expect(words.split('highest tooth above the table')).toHaveLength(passes.length + 2);
    }
  });

  test('has every length of every stick in its order, to tap off, and none twice', () => {
    const names = ticksOf(html);
    expect(new Set(names).size).toBe(names.length);
    for (const { profile, sticks } of plan.profiles) {
      sticks.forEach(({ pieces }, at) => {
        const words = screens.get(`${profile.name}: stick ${at + 1} of ${sticks.length}`)!;
        const figures = [
          ...words.matchAll(/<span class="words"><span class="big">(.*?)<\/span>/gu),
        ];
        expect(figures.map(([, said = '']) => unescape(said))).toEqual(
          pieces.map(({ length }) => printExact(length, plan.job.shop)),
        );
        expect(words.split(' checked disabled')).toHaveLength(
          1 + pieces.filter(({ isCut }) => isCut === true).length,
        );
      });
    }
  });

  test('asks for nothing outside of itself, has no money in it, and is the same twice', () => {
    const elsewhere = html.replaceAll('http://www.w3.org/2000/svg', '');
    expect(elsewhere).not.toMatch(/https?:|\bsrc=|\burl\(|@import|<link/u);
    const shown = [...screens.values()].join('');
    expect(shown).not.toMatch(/<script|<style/u);
    // Names may hold a currency's sign; a price is a number after it.
    expect(shown).not.toMatch(/[$€] ?\d/u);
    expect(writeShopView(plan)).toBe(html);
  });
});

test('The file’s own policy lets its script run, and no other', () => {
  expect(createHash('sha256').update(SCRIPT).digest('base64')).toBe(SCRIPT_HASH);
  expect(SCRIPT).not.toContain('</script');
});
