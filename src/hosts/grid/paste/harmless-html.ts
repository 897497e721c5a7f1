/** HTML that other programs put on the clipboard, before the grid's own paste lays it into the page. */

/** What a table, its text and its looks are made of; anything else goes, with all that is in it. */
const KEPT = new Set(
  'html head body style table caption colgroup col thead tbody tfoot tr td th div p span br font b i u s strong em sub sup'.split(
    ' ',
  ),
);
/** What an element may say of itself; numbers as held (x:num, sdval) among it. */
const SAID =
  /^(?:class|style|align|valign|width|height|colspan|rowspan|span|sd\w+|x:\w+|data-[\w-]+)$/u;
/** A style that loads something. */
const LOADS = /url\s*\(|image\s*\(|image-set\s*\(|@import|expression\s*\(/iu;

/** The same tables and texts, with nothing that runs, loads or leads anywhere. */
export function harmlessHtml(html: string): string {
  const page = new DOMParser().parseFromString(html, 'text/html');
  for (const element of page.querySelectorAll('*')) {
    if (
      !KEPT.has(element.localName) ||
      (element.localName === 'style' && LOADS.test(element.textContent))
    ) {
      element.remove();
      continue;
    }
    for (const { name, value } of [...element.attributes]) {
      if (!SAID.test(name) || (name === 'style' && LOADS.test(value)))
        element.removeAttribute(name);
    }
  }
  return page.documentElement.outerHTML;
}
