/** What the help pages share: one look with the rest, by the drawings' own palette, and a way back. */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const built = (...path) =>
  pathToFileURL(join(import.meta.dirname, '..', 'build', 'drawings', ...path)).href;

export const escapeHtml = (text) =>
  text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');

const LOOK = `
* { box-sizing: border-box; }
body { font: 1rem/1.5 'Segoe UI', system-ui, -apple-system, Roboto, 'Helvetica Neue', sans-serif;
  max-width: 46rem; margin: 0 auto; padding: 1rem; color: var(--cl-ink); background: var(--cl-paper); }
a { color: var(--cl-measure); }
a:focus-visible { outline: 3px solid var(--cl-feed); outline-offset: 2px; }
code, pre { font-family: ui-monospace, Consolas, monospace; overflow-wrap: anywhere; }
pre { white-space: pre-wrap; background: var(--cl-removed); padding: 0.5rem 0.75rem; border-radius: 4px; }
section { border-top: 1px solid var(--cl-rail); margin-top: 2rem; }
section:target h2, section:target h3 { text-decoration: underline; }
dt { margin-top: 0.5rem; }
dd { margin-left: 1.5rem; }
figure { margin: 1rem 0; }
figure svg { display: block; max-width: 100%; height: auto; }
figcaption { color: var(--cl-faint); }
blockquote { margin: 0.5rem 0; padding: 0.25rem 0.75rem; border-left: 4px solid var(--cl-feed); }
.caution { border: 2px solid var(--cl-feed); padding: 0 1rem; }
.back { display: flex; flex-wrap: wrap; gap: 0 1.5rem; margin: 0; padding: 0; list-style: none; }
.back a, nav.codes a { display: inline-block; min-height: 44px; line-height: 44px; }
nav ul.list { columns: 12rem; padding-left: 1.25rem; }`;

/** Those that are reached from each other; the tool itself first. */
const PAGES = [
  ['index.html', 'Back to the page with the grid'],
  ['functions.html', 'Worksheet functions'],
  ['help.html', 'What a message means'],
];

/** A whole page; `own` is its file's name. */
export async function describePlainPage({ own, title, body }) {
  const { DARK_PALETTE, LIGHT_PALETTE, paletteCss } = await import(built('palette.js'));
  const links = PAGES.filter(([file]) => file !== own).map(
    ([file, says]) => `<li><a href="${file}">${says}</a></li>`,
  );
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeHtml(title)} – Coveledger</title>
<style>
:root { color-scheme: light dark; ${paletteCss(LIGHT_PALETTE)} }
@media (prefers-color-scheme: dark) { :root { ${paletteCss(DARK_PALETTE)} } }${LOOK}
</style>
</head>
<body>
<nav aria-label="Other pages">
<ul class="back">
${links.join('\n')}
</ul>
</nav>
<main>
<h1>${escapeHtml(title)}</h1>
${body}
</main>
</body>
</html>
`;
}
