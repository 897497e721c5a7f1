/** The bar at the top: its buttons, and the list behind More. */
import { byId } from './element.ts';

export const DEEDS = [
  'open',
  'download',
  'print',
  'start over',
  'demo',
  'blank',
  'metric',
] as const;
export type Deed = (typeof DEEDS)[number];

/** @param deeds What each button does, once there is something to do it with. */
export type Deeds = Readonly<Record<Deed, () => void>>;

let deeds: Deeds | undefined;

/** From the page's first moment on: More opens, the other buttons wait. */
export function startBar(): void {
  const more = byId('more');
  const list = byId('more-list');
  const toggle = (open: boolean): void => {
    list.hidden = !open;
    more.setAttribute('aria-expanded', String(open));
  };
  more.addEventListener('click', () => toggle(list.hidden !== false));
  byId('more-place').addEventListener('keydown', (event) => {
    if (event.key !== 'Escape' || list.hidden) return;
    event.stopPropagation();
    toggle(false);
    more.focus();
  });
  const leave = ({ target }: Event): void => {
    if (target instanceof Node && !byId('more-place').contains(target)) toggle(false);
  };
  document.addEventListener('pointerdown', leave, true);
  document.addEventListener('focusin', leave);
  for (const button of dealingButtons()) {
    button.addEventListener('click', () => {
      const deed = DEEDS.find((one) => one === button.dataset['do']);
      if (deed === undefined || deeds === undefined) return;
      if (list.contains(button)) {
        toggle(false);
        more.focus();
      }
      deeds[deed]();
    });
  }
}

export function readyBar(given: Deeds): void {
  deeds = given;
  for (const button of dealingButtons()) button.removeAttribute('aria-disabled');
}

export function nameBook(name: string): void {
  byId('book-name').textContent = name;
  document.title = name === '' ? 'Coveledger' : `${name} – Coveledger`;
}

/** Whether the work is kept, in a few words. */
export function sayKept(words: string): void {
  byId('kept').textContent = words;
}

function dealingButtons(): readonly HTMLButtonElement[] {
  return [...document.querySelectorAll<HTMLButtonElement>('#bar button[data-do]')];
}
