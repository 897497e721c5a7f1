/** Has the page kept for use without a network, and says when a newer version of it waits. */
import { keepOffline } from '../../browser/offline/keep-offline.ts';
import { showNotice } from './notices.ts';

const NOTICE = 'version';

/** @param keepWork Whether the work is kept, once it was tried; the page is loaded again only then. */
export function keepPageOffline(keepWork: () => Promise<boolean>): void {
  void keepOffline('page', {
    onWaiting: (load) =>
      showNotice(NOTICE, {
        kind: 'caution',
        says: [
          'A newer version of this page waits. It is taken when you load it: your work is kept first.',
        ],
        choices: [{ name: 'load', label: 'Load it now' }],
        onChoose: () => {
          void keepWork().then((isKept) => {
            if (isKept) load();
            else sayUnkept();
          });
        },
      }),
    onReplaced: () =>
      showNotice(NOTICE, {
        kind: 'caution',
        says: [
          'A newer version of this page was loaded in another tab. Load this one again before you go on: parts of the older version may be missing.',
        ],
        choices: [{ name: 'load', label: 'Load again' }],
        onChoose: () => {
          void keepWork().then((isKept) => {
            if (isKept) window.location.reload();
            else sayUnkept();
          });
        },
      }),
  });
}

function sayUnkept(): void {
  showNotice(`${NOTICE} unkept`, {
    kind: 'problem',
    says: [
      'The newer version was not loaded, since your work can’t be kept in this browser. Download the workbook, then load the page again.',
    ],
  });
}
