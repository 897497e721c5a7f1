/**
 * A plan for the phone or tablet at the saw, as one file that asks nothing of a network: each cove with its
 * numbers, drawings and passes, each stick with its pieces, to tap off.
 */
import { hashText } from '../../core/hash-text.ts';
import { isCovePlan, plansOf, type JobPlan } from '../../planning/job-plan.ts';
import { sayStamp, type Stamp } from '../../sheets/stamp.ts';
import { printExact } from '../../sheets/words/print-length.ts';
import { fileTitle, sayTitle } from '../../sheets/words/say-title.ts';
import { standingCautions } from '../../sheets/words/standing-cautions.ts';
import { STYLE } from './look.ts';
import { escapeHtml, paragraph } from './markup.ts';
import type { Screen } from './screen.ts';
import { SCRIPT, SCRIPT_HASH } from './script.ts';
import { cornersScreen, setUpScreen } from './set-up-screen.ts';
import { ripScreen, stickReading, stickScreens } from './stick-screens.ts';

/** Nothing is loaded, and no script runs but the file's own. */
const POLICY = `default-src 'none'; style-src 'unsafe-inline'; script-src 'sha256-${SCRIPT_HASH}'; base-uri 'none'; form-action 'none'`;

/**
 * @param plan A plan that was made; see checkJobPlan.
 * @param stamp What is told of its making; absent, nothing.
 * @returns HTML, the same for the same plan. Ticks are kept under what the screens say, so that another
 * plan's ticks are never taken for these.
 */
export function writeShopView(plan: JobPlan, stamp?: Stamp): string {
  const { shop, titleBlock } = plan.job;
  const reading = stickReading(plan);
  const screens = plan.groups.flatMap((group): Screen[] => {
    const plans = plansOf(plan, group);
    return [
      ripScreen(reading, group, plans),
      ...plans.flatMap((planned) => [
        isCovePlan(planned) ? setUpScreen(plan, planned) : undefined,
        cornersScreen(plan, planned),
        ...stickScreens(reading, planned),
      ]),
    ].filter((screen) => screen !== undefined);
  });
  const cautions = standingCautions(printExact(shop.leastBlankLength, shop));
  const title = fileTitle('At the saw', titleBlock);
  const made = stamp === undefined ? '' : sayStamp(stamp, shop.decimalSign);
  const named = sayTitle(titleBlock);
  const sections = screens.map(({ title: of, body }, at) => section(`s${at + 1}`, of, body));
  const key = hashText([made, ...sections].join('\n'));
  return [
    '<!doctype html>',
    `<html lang="en" data-key="coveledger ${key}">`,
    '<head><meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${POLICY}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escapeHtml(title)}</title>`,
    `<style>${STYLE}</style></head>`,
    '<body>',
    `<header><h1>${escapeHtml(named === '' ? 'At the saw' : named)}</h1>`,
    made === '' ? '' : paragraph(made, 'note'),
    '<p id="said" class="script strong" role="status"></p></header>',
    '<main>',
    readFirst(cautions),
    allScreens(screens),
    ...sections,
    '</main>',
    '<nav class="ways" aria-label="Screens"><button type="button" id="back">Back</button>' +
      '<button type="button" id="list">All</button>' +
      '<button type="button" id="next" class="main">Next</button></nav>',
    `<script>${SCRIPT}</script>`,
    '</body></html>',
    '',
  ].join('\n');
}

function section(id: string, title: string, body: string): string {
  return `<section class="screen" id="${id}"><h2 tabindex="-1">${escapeHtml(title)}</h2>${body}</section>`;
}

function readFirst(cautions: readonly string[]): string {
  const lines = cautions.map((line) => `<li>${escapeHtml(line)}</li>`).join('');
  return section(
    'read-first',
    'Read first',
    `<ol class="cautions">${lines}</ol>` +
      '<p class="script"><button type="button" id="have-read" class="main">I have read these</button></p>',
  );
}

/** A row a screen; boxes are counted by the script as they are ticked. */
function allScreens(screens: readonly Screen[]): string {
  const rows = screens.map(({ title, ticks, done }, at) => {
    const id = `s${at + 1}`;
    const state = ticks === 0 ? '' : `${done} of ${ticks} done`;
    return `<li><a href="#${id}"><span>${escapeHtml(title)}</span><span class="note" data-of="${id}">${state}</span></a></li>`;
  });
  const none =
    screens.length === 0 ? paragraph('Nothing is left to be cut: every run is done.') : '';
  return section(
    'all',
    'All that is to be done',
    `${none}<ul class="all">${rows.join('')}</ul>` +
      '<p>Ticks stay on this device, for this very plan. They are not in the workbook: tick them on Cutting too, so that the next plan knows what is cut.</p>' +
      '<p class="script"><button type="button" id="untick">Take all ticks off</button></p>' +
      '<p id="awake" class="script note"></p>',
  );
}
