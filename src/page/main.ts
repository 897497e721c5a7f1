/** The page's entry: its bar at once, then the grid, then the pane beside it; each in chunks of its own. */
import { sayError } from '../core/faults/say-error.ts';
import './shell/page.css';
import { startBar } from './shell/bar.ts';
import { startLayout } from './shell/layout.ts';
import { showNotice } from './shell/notices.ts';

performance.mark('script start');
startBar();
startLayout();

async function showPage(): Promise<void> {
  try {
    const { openPage } = await import('./open-page.ts');
    await openPage();
  } catch (error) {
    const what = sayError(error);
    showNotice('start', {
      kind: 'problem',
      says: [
        `The sheet could not be shown (${what}). Check the connection, then load the page again. What was kept from your last visit is as it was.`,
      ],
      choices: [{ name: 'again', label: 'Load again', first: true }],
      onChoose: () => window.location.reload(),
      stays: true,
    });
  }
}

void showPage();
