/** Names and roles for what the grid's library draws without any: a screen reader would hear "button" alone. */

/** What is null is taken away. */
type Attributes = Readonly<Record<string, string | null>>;

/** By how the library marks its parts; one that is no part any more is passed over. */
const PARTS: readonly (readonly [selector: string, attributes: Attributes])[] = [
  ['[contenteditable="true"]', { role: 'textbox', 'aria-label': 'Cell' }],
  // They would come before all else in the order of the Tab key.
  ['canvas', { tabindex: '-1', 'aria-hidden': 'true' }],
  [
    '[data-u-comp="defined-name"] input',
    { 'aria-label': 'Chosen cells; type an address to go there' },
  ],
  ['[data-u-comp="defined-name"] a', { role: 'button', 'aria-label': 'Names in the workbook' }],
  ['[data-u-comp="formula-bar"] button', { 'aria-label': 'Close' }],
  [
    'footer [data-slot="dropdown-menu-trigger"]:not(button)',
    { 'aria-haspopup': null, 'aria-expanded': null },
  ],
  ['footer [data-slot="dropdown-menu-trigger"] > button', { 'aria-label': 'All sheets' }],
  [
    'footer div > button[data-u-comp="sheet-bar-append-button"]:first-child:not(:only-child):not(:has(+ button))',
    { 'aria-label': 'New sheet' },
  ],
  [
    'footer button[data-u-comp="sheet-bar-append-button"]:has(+ button)',
    { 'aria-label': 'Tabs to the left' },
  ],
  [
    'footer button + button[data-u-comp="sheet-bar-append-button"]',
    { 'aria-label': 'Tabs to the right' },
  ],
  ['[data-u-command="sheet.command.toggle-gridlines"]', { 'aria-label': 'Lines between cells' }],
  ['footer section button[data-u-comp="button"]:first-child', { 'aria-label': 'Smaller' }],
  ['footer section div + button[data-u-comp="button"]', { 'aria-label': 'Larger' }],
];
/** Over the page: two places for notices of one name. */
const NOTICES = 'section[data-react-aria-top-layer]';

/** From now on, whatever comes up in the place. */
export function nameParts(place: HTMLElement): void {
  const name = (): void => {
    for (const [selector, attributes] of PARTS) {
      for (const part of place.querySelectorAll(selector)) setAll(part, attributes);
    }
    document.querySelectorAll(NOTICES).forEach((section, at) => {
      const words = `Notices of the sheet${at === 0 ? '' : ` ${at + 1}`}`;
      setAll(section, { 'aria-label': words });
    });
  };
  let waits = false;
  const observer = new MutationObserver(() => {
    if (waits) return;
    waits = true;
    requestAnimationFrame(() => {
      waits = false;
      name();
    });
  });
  observer.observe(place, { childList: true, subtree: true });
  observer.observe(document.body, { childList: true });
  name();
}

/** What stands so already is left alone, or the library and this would go on for ever. */
function setAll(part: Element, attributes: Attributes): void {
  for (const [key, value] of Object.entries(attributes)) {
    if (part.getAttribute(key) === value) continue;
    if (value === null) part.removeAttribute(key);
    else part.setAttribute(key, value);
  }
}
