/** The help page of the worksheet functions: plain HTML with an anchor for each. */

import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describePlainPage, escapeHtml } from './plain-page.mjs';

const built = (...path) =>
  pathToFileURL(join(import.meta.dirname, '..', 'build', 'drawings', ...path)).href;

/** What a function is about, drawn; it follows the page's colors. */
async function readPictures(functions) {
  const { EXPLAINED } = await import(built('explain', 'explain.js'));
  const { toSvg } = await import(built('to-svg.js'));
  const { PAGE_PALETTE } = await import(built('palette.js'));
  return new Map(
    functions.map(({ id }) => {
      const draw = EXPLAINED[id];
      if (draw === undefined) throw new Error(`${id} has no picture in src/drawings/explain.`);
      const drawing = draw();
      return [
        id,
        `<figure>\n${toSvg(drawing, PAGE_PALETTE)}\n<figcaption>${escapeHtml(drawing.title)}</figcaption>\n</figure>`,
      ];
    }),
  );
}

function describeFunction(made, namespace, picture) {
  const name = `${namespace}.${made.name}`;
  const said = made.parameters.map((one) => (one.optional === true ? `[${one.name}]` : one.name));
  const list = made.parameters.map(
    ({ name: argument, optional, description }) =>
      `<dt><code>${escapeHtml(argument)}</code>${optional === true ? ' (may be left out)' : ''}</dt>\n<dd>${escapeHtml(description)}</dd>`,
  );
  return `<section id="${anchorOf(made)}">
<h2>${escapeHtml(name)}</h2>
<p><code>${escapeHtml(`${name}(${said.join(', ')})`)}</code></p>
<p>${escapeHtml(made.description)}</p>
${picture}
<dl>
${list.join('\n')}
</dl>
<p>Example: <code>${escapeHtml(made.example)}</code></p>
</section>`;
}

const anchorOf = ({ helpUrl }) => helpUrl.slice(helpUrl.indexOf('#') + 1);

/** The whole page: the cautions, how arguments are read, then every function. */
export async function describePage(functions, { namespace, cautions, support }) {
  const pictures = await readPictures(functions);
  // Where nothing else is given, this page is the place of support itself.
  const elsewhere = support !== undefined && !support.endsWith('/functions.html');
  const help = elsewhere
    ? `<p>Questions: <a href="${escapeHtml(support)}">${escapeHtml(support)}</a></p>\n`
    : '';
  const links = functions.map(
    (made) =>
      `<li><a href="#${anchorOf(made)}">${escapeHtml(`${namespace}.${made.name}`)}</a></li>`,
  );
  const body = `<div class="caution" role="note">
<h2>Before any number here goes to a saw</h2>
<ul>
${cautions.map((line) => `<li>${escapeHtml(line)}</li>`).join('\n')}
</ul>
</div>
<h2>What all of them share</h2>
<ul>
<li>A length is a number of inches, or a text as people write it: 3 1/2, 3-1/2", 7' 4 3/8", 90 mm, 2.29 m.</li>
<li>An argument left out and a blank cell are the same: the value that the argument's description names stands in, or the function asks for it.</li>
<li>Most take ranges: cells side by side go together, and a single cell goes with all of them.</li>
<li>#VALUE! means that an argument can't be used, #N/A that there is no such cove, set-up or plan. The error's own message says which argument, what was given and what would do; <a href="#reason">${namespace}.REASON</a> and the last column of <a href="#setup">${namespace}.SETUP</a> say it as text.</li>
<li>Every angle says from what it is measured. An approach angle from the table's front edge is 90 less the one from the blade line: never mix the two.</li>
<li>Where no saw is given, the blade tilts to 45 degrees at most, and rises to its radius less 1 3/16 in for flange and arbor.</li>
<li>A sheet for others should hold values: without this add-in a recalculation turns these formulas into #NAME?.</li>
</ul>
<nav aria-label="Functions" class="codes">
<ul class="list">
${links.join('\n')}
</ul>
</nav>
${functions.map((made) => describeFunction(made, namespace, pictures.get(made.id))).join('\n')}
${help}`;
  return describePlainPage({ own: 'functions.html', title: 'Worksheet functions', body });
}
