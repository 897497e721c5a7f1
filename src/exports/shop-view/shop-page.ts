/** The page round the screens: cautions to be read first, the list of all, and the ways between them. */
import { hashText } from '../../core/hash-text.ts';
import { standingCautions } from '../../sheets/words/standing-cautions.ts';
import { STYLE } from './look.ts';
import { escapeHtml, paragraph } from './markup.ts';
import type { Screen } from './screen.ts';
import { SCRIPT, SCRIPT_HASH } from './script.ts';

/** What the file's script asks for by name in a policy: no other runs. */
export const SCRIPT_SOURCE = `'sha256-${SCRIPT_HASH}'`;

/** Nothing is loaded, and no script runs but the file's own. */
const POLICY = `default-src 'none'; style-src 'unsafe-inline'; script-src ${SCRIPT_SOURCE}; base-uri 'none'; form-action 'none'`;

export interface ShopPage {
  readonly title: string;
  /** Empty: the title. */
  readonly heading: string;
  /** What is told of its making, a line each. */
  readonly made: readonly string[];
  /** The shop's least length of a blank, as printed. */
  readonly leastBlank: string;
  readonly screens: readonly Screen[];
  /** How far ticks go. */
  readonly ticks: string;
  /** Where the address holds what the page is made from: that, before a screen's own name. */
  readonly base?: string;
}

/** What goes into a document, whose script pages it by `data-` attributes of its root. */
export interface ShopDocument {
  readonly root: Readonly<Record<string, string>>;
  readonly body: string;
}

/** Ticks are kept under what the screens say, so that another page's ticks are never taken for these. */
export function shopDocument(page: ShopPage): ShopDocument {
  const { heading, title, made, leastBlank, screens, ticks, base = '' } = page;
  const sections = screens.map(({ title: of, body }, at) => section(screenId(at), of, body));
  const key = hashText([made.join('\n'), ...sections].join('\n'));
  const body = [
    `<header><h1>${escapeHtml(heading === '' ? title : heading)}</h1>`,
    ...made.map((line) => paragraph(line, 'note')),
    '<p id="said" class="script strong" role="status"></p></header>',
    '<main>',
    readFirst(standingCautions(leastBlank)),
    allScreens(screens, ticks, base),
    ...sections,
    '</main>',
    '<nav class="ways" aria-label="Screens"><button type="button" id="back">Back</button>' +
      '<button type="button" id="list">All</button>' +
      '<button type="button" id="next" class="main">Next</button></nav>',
  ];
  return {
    root: {
      'data-key': `coveledger ${key}`,
      ...(base === '' ? {} : { 'data-base': base, 'data-start': screenId(0) }),
    },
    body: body.join('\n'),
  };
}

/** @returns HTML that asks nothing of a network, the same for the same page. */
export function writeShopPage(page: ShopPage): string {
  const { root, body } = shopDocument(page);
  const marks = Object.entries(root).map(([name, value]) => `${name}="${escapeHtml(value)}"`);
  return [
    '<!doctype html>',
    `<html lang="en" ${marks.join(' ')}>`,
    ...shopHead(page.title, POLICY),
    `<style>${STYLE}</style></head>`,
    '<body>',
    body,
    `<script>${SCRIPT}</script>`,
    '</body></html>',
    '',
  ].join('\n');
}

/** Up to its look. */
export function shopHead(title: string, policy: string): readonly string[] {
  return [
    '<head><meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${policy}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escapeHtml(title)}</title>`,
  ];
}

const screenId = (at: number): string => `s${at + 1}`;

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
function allScreens(screens: readonly Screen[], words: string, base: string): string {
  const rows = screens.map(({ title, ticks, done }, at) => {
    const id = screenId(at);
    const state = ticks === 0 ? '' : `${done} of ${ticks} done`;
    return `<li><a href="#${escapeHtml(base)}${id}"><span>${escapeHtml(title)}</span><span class="note" data-of="${id}">${state}</span></a></li>`;
  });
  const none =
    screens.length === 0 ? paragraph('Nothing is left to be cut: every run is done.') : '';
  return section(
    'all',
    'All that is to be done',
    `${none}<ul class="all">${rows.join('')}</ul>${paragraph(words)}` +
      '<p class="script"><button type="button" id="untick">Take all ticks off</button></p>' +
      '<p id="awake" class="script note"></p>',
  );
}
