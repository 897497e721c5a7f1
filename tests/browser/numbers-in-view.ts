/** Whether numbers that are acted on stand with their side and unit, all within the screen's width. */
import type { Locator } from 'playwright-core';

/** How a rail's mark says where it is; off the table, it says so. */
const SIDE = /(?:left|right) of|^on the|off the table|the middle of the blade/u;
const UNIT = /\d["°]|\d (?:in|mm)\b/u;
const MARK = /^(?:Near|Far) rail, \w+ edge$/u;
const LEANS = /left|right|it stands upright/u;
/** Counted, not measured. */
const COUNTS = /^Passes$/u;

export interface SeenNumber {
  readonly label: string;
  /** All that stands in its row beside the label. */
  readonly said: string;
}

/**
 * The numbers of every list that is in view. Each must stand whole between the screen's edges, and so must
 * every other text with a number in it, those of drawings too.
 */
export async function numbersIn(place: Locator): Promise<readonly SeenNumber[]> {
  const seen = await place.evaluate((root) => {
    const width = document.documentElement.clientWidth;
    const cut: string[] = [];
    const texts = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
    for (let node = texts.nextNode(); node !== null; node = texts.nextNode()) {
      const text = node.textContent ?? '';
      const parent = node.parentElement!;
      // A stick's bar is moved sideways: its lengths stand in the boxes below it.
      const isHidden = parent.closest('.bar, title, desc, script, style') !== null;
      if (isHidden || !/\d/u.test(text) || !parent.checkVisibility()) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      for (const { left, right } of range.getClientRects()) {
        if (left < 0 || right > width + 0.5) cut.push(`${text} from ${left} to ${right}`);
      }
    }
    const rows = [...root.querySelectorAll('dl > div')].filter((row) => row.checkVisibility());
    return {
      cut,
      numbers: rows.map((row) => ({
        label: row.querySelector('dt')!.textContent,
        said: [...row.querySelectorAll('dd')].map((one) => one.textContent).join(', '),
      })),
    };
  });
  if (seen.cut.length > 0) throw new Error(`Cut at the screen's edge: ${seen.cut.join('; ')}`);
  return seen.numbers;
}

/** What a person could take for something else, a line each. */
export function withoutSideOrUnit(numbers: readonly SeenNumber[]): string[] {
  return numbers.flatMap(({ label, said }) => {
    const isNumber = /\d/u.test(said) && !COUNTS.test(label);
    const lacks = [
      ...(isNumber && !UNIT.test(said) ? ['unit'] : []),
      ...(MARK.test(label) && !SIDE.test(said) ? ['side'] : []),
      ...(/^Tilt of the blade/u.test(label) && !LEANS.test(said) ? ['side'] : []),
    ];
    return lacks.map((what) => `${label}: ${said} has no ${what}`);
  });
}
