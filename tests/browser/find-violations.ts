/** What axe finds on a page against WCAG 2.2 AA and its best practices. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core'), 'utf8');

export interface Violation {
  readonly rule: string;
  readonly html: string;
  /** Inside of an element that another's program makes. */
  readonly isForeign: boolean;
}

interface AxeResult {
  readonly violations: readonly {
    readonly id: string;
    readonly nodes: readonly { readonly html: string; readonly element: Element }[];
  }[];
}

declare global {
  var axe: { run: (options: object) => Promise<AxeResult> };
}

/** @param foreign A selector of what another's program makes; nothing is, where absent. */
export async function findViolations(page: Page, foreign = ':not(*)'): Promise<Violation[]> {
  // As a debugger does: the page's policy takes no script that isn't its own.
  await page.evaluate(AXE);
  return page.evaluate(async (selector) => {
    const { violations } = await axe.run({ elementRef: true });
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ html, element }) => ({
        rule: id,
        html: html.slice(0, 160),
        isForeign: element.closest(selector) !== null,
      })),
    );
  }, foreign);
}
