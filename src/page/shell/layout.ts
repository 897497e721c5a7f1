/** Sheet and pane side by side, or one at a time on a narrow screen; F6 goes from part to part. */
import { byId } from './element.ts';

type View = 'sheet' | 'pane';
type Part = 'bar' | View;

/** As page.css has it: below, one of the two is shown at a time. */
export const NARROW = '(max-width: 760px)';
const PARTS: readonly Part[] = ['bar', 'sheet', 'pane'];
/** Where the grid takes its keys. */
const GRID_KEYS = '#grid-place [contenteditable="true"]';

const SHEET_TAB = '#grid-place [data-u-comp="slide-tab-item"]';

/** From the page's first moment on. */
export function startLayout(): void {
  for (const button of viewButtons()) {
    button.addEventListener('click', () =>
      show(button.dataset['view'] === 'pane' ? 'pane' : 'sheet'),
    );
  }
  byId('toggle-pane').addEventListener('click', () => setPane(isPaneHidden()));
  document.addEventListener('click', leaveTab);
  // Before the grid, which keeps most keys for itself.
  window.addEventListener(
    'keydown',
    (event) => {
      if (event.key !== 'F6' || event.ctrlKey || event.altKey || event.metaKey) return;
      if (document.querySelector('dialog[open]') !== null) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      goTo(nextPart(event.shiftKey ? -1 : 1));
    },
    true,
  );
}

/**
 * A sheet that was clicked on is there to be typed in; its tab would keep the keys. Whoever goes along
 * the tabs by keyboard stays there, and a second click is for the name.
 */
function leaveTab({ target, detail }: MouseEvent): void {
  if (detail !== 1 || !(target instanceof Element) || target.closest(SHEET_TAB) === null) return;
  setTimeout(() => {
    if ((document.activeElement?.closest('[contenteditable="true"]') ?? null) === null)
      focusSheet();
  });
}

/** Brings the sheet into view where the pane covers it; the keyboard goes along where it is asked to. */
export function showSheet(withKeyboard = false): void {
  show('sheet');
  if (withKeyboard) focusSheet();
}

/** Brings the pane into view where the sheet covers it. */
export function showPane(): void {
  if (!isNarrow()) setPane(true);
  show('pane');
}

function show(view: View): void {
  byId('work').dataset['view'] = view;
  for (const button of viewButtons()) {
    button.setAttribute('aria-pressed', String(button.dataset['view'] === view));
  }
}

function setPane(isShown: boolean): void {
  byId('work').classList.toggle('without-pane', !isShown);
  const button = byId('toggle-pane');
  button.textContent = isShown ? 'Hide pane' : 'Show pane';
  button.setAttribute('aria-expanded', String(isShown));
}

function nextPart(step: 1 | -1): Part {
  const parts = PARTS.filter((part) => part !== 'pane' || isNarrow() || !isPaneHidden());
  const at = parts.indexOf(partOf(document.activeElement));
  return parts[(at + step + parts.length) % parts.length] ?? 'bar';
}

/** What floats over the page (the grid's menus) is the sheet's. */
function partOf(element: Element | null): Part {
  if (element === null || element === document.body) return 'pane';
  if (byId('bar').contains(element) || byId('notices').contains(element)) return 'bar';
  return byId('pane').contains(element) ? 'pane' : 'sheet';
}

function goTo(part: Part): void {
  if (part === 'bar') {
    document.querySelector<HTMLElement>('#bar button')?.focus();
    return;
  }
  show(part);
  const pane = byId('pane');
  const tab = pane.querySelector<HTMLElement>('[role="tab"][aria-selected="true"]');
  if (part === 'pane') (tab ?? pane).focus({ preventScroll: true });
  else focusSheet();
}

export function focusSheet(): void {
  document.querySelector<HTMLElement>(GRID_KEYS)?.focus({ preventScroll: true });
}

function isPaneHidden(): boolean {
  return byId('work').classList.contains('without-pane');
}

function isNarrow(): boolean {
  return window.matchMedia(NARROW).matches;
}

function viewButtons(): readonly HTMLButtonElement[] {
  return [...document.querySelectorAll<HTMLButtonElement>('#views button')];
}
