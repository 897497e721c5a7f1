/** help.html: every fault and caution with its code as anchor, out of the built help; each example is run. */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describePlainPage, escapeHtml } from './plain-page.mjs';

const built = (name) =>
  pathToFileURL(join(import.meta.dirname, '..', 'build', 'cli', 'fault-help', name)).href;

/** What the beginning of a code is about, in the order of the page. */
const SUBJECTS = {
  length: 'Lengths',
  number: 'Numbers',
  word: 'Words',
  angle: 'Angles',
  text: 'Names and texts',
  table: 'Tables, headings and rows',
  job: 'The job: runs, profiles, shop, stock, work, options',
  room: 'Rooms and walls',
  cove: 'Coves',
  rails: 'Rails',
  match: 'Matching an old molding',
  trial: 'Trial cuts',
  'saw-code': 'Codes on Set-ups',
  address: 'Addresses',
  crown: 'Crown',
  bid: 'Low, likely, high',
  rates: 'Rates from hours',
  lumber: 'Lumber',
  cutting: 'Cutting',
  plan: 'Plans that were kept',
  compare: 'Comparing',
  copy: 'A client’s copy that came back',
  function: 'Worksheet functions',
  file: 'Files',
  host: 'The workbook',
  grid: 'The grid on the page',
  pane: 'The pane',
  page: 'The page',
  day: 'Days',
  output: 'Output',
  call: 'Calls',
};

let made;

/** Made once: its examples are planned. */
export function makeHelpPage() {
  made ??= describeHelp();
  return made;
}

async function describeHelp() {
  const { FAULT_HELP } = await import(built('fault-help.js'));
  const { messageOf } = await import(built('raise.js'));
  const { wordsOfExample } = await import(built('say-fault-help.js'));
  const bySubject = new Map(Object.keys(SUBJECTS).map((subject) => [subject, []]));
  for (const [code, [means, example, instead]] of Object.entries(FAULT_HELP)) {
    const [subject] = code.split('.');
    if (!bySubject.has(subject)) throw new Error(`help.html has no part for ${code}.`);
    const message = await messageOf(code, example);
    bySubject
      .get(subject)
      .push(describeCode(code, means, message, wordsOfExample(example), instead));
  }
  const parts = [...bySubject].map(
    ([subject, entries]) =>
      `<section id="${subject}">\n<h2>${SUBJECTS[subject]}</h2>\n${entries.join('\n')}\n</section>`,
  );
  const links = Object.entries(SUBJECTS).map(
    ([subject, says]) => `<li><a href="#${subject}">${says}</a></li>`,
  );
  return describePlainPage({
    own: 'help.html',
    title: 'What a message means',
    body: `<p>Each message has a code: <code>--json</code> tells it, and “Why?” beside a message in the pane leads here.
<code>coveledger help CODE</code> says the same in a terminal. Examples are cut out of a small sound job; only the table that is shown is changed.</p>
<nav aria-label="Subjects" class="codes">
<ul class="list">
${links.join('\n')}
</ul>
</nav>
${parts.join('\n')}`,
  });
}

function describeCode(code, means, message, { where, given, mended }, instead) {
  const lines = (some) => `<pre>${escapeHtml(some.join('\n'))}</pre>`;
  return `<section id="${code}">
<h3><code>${code}</code></h3>
<p>${escapeHtml(means)}</p>
${given === undefined ? '' : `<p>${escapeHtml(where)}:</p>\n${lines(given)}\n`}<p>${given === undefined ? 'It says, for example:' : 'It says:'}</p>
<blockquote>${escapeHtml(message)}</blockquote>
${mended === undefined ? '' : `<p>Type instead:</p>\n${lines(mended)}\n`}${instead === undefined ? '' : `<p>What to do: ${escapeHtml(instead)}</p>\n`}</section>`;
}
