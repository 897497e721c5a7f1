/** The page for the saw over all of this page, made from the plan: the same file that goes to a phone. */
import { byId, make } from './element.ts';

/** In the browser's history, so that its own Back leads to the sheet again. */
const STATE = { view: 'at the saw' } as const;

/** @param html As writeShopView makes it; its ticks are kept for this address, as for its file. */
export function showSawView(html: string): void {
  const before = document.activeElement;
  const address = URL.createObjectURL(new Blob([html], { type: 'text/html' }));
  const frame = make('iframe', { src: address, title: 'At the saw' });
  const leave = make('button', { type: 'button' }, 'Back to the sheet');
  const bar = make('div', { className: 'saw-bar' }, leave);
  const dialog = make('dialog', { className: 'saw-view' }, bar, frame);
  dialog.setAttribute('aria-label', 'At the saw');
  const close = (): void => {
    window.removeEventListener('popstate', onBack);
    dialog.close();
    dialog.remove();
    URL.revokeObjectURL(address);
    if (before instanceof HTMLElement && before.isConnected) before.focus();
    else byId('pane').focus();
  };
  const onBack = (): void => {
    if (!isShown()) close();
  };
  const goBack = (): void => {
    close();
    if (isShown()) history.back();
  };
  leave.addEventListener('click', goBack);
  dialog.addEventListener('cancel', (event) => {
    event.preventDefault();
    goBack();
  });
  // Keys are for what is in view.
  for (const type of ['keydown', 'keyup'] as const) {
    dialog.addEventListener(type, (event) => event.stopPropagation());
  }
  window.addEventListener('popstate', onBack);
  history.pushState(STATE, '');
  document.body.append(dialog);
  dialog.showModal();
}

function isShown(): boolean {
  return (history.state as { view?: unknown } | null)?.view === STATE.view;
}
