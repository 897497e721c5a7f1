/** The pane beside the grid: the same as in Excel, in a chunk of its own that the grid doesn't wait for. */
import { browserServices } from '../browser/browser-services.ts';
import { CATALOGUE } from '../functions/catalogue.ts';
import type { WorkbookHost } from '../hosts/host.ts';
import { showSawView } from './shell/saw-view.ts';
import type { PageDoors } from '../pane/services.ts';
import { startPane, type StartedPane } from '../pane/start-pane.tsx';

export function startPagePane(
  element: HTMLElement,
  host: WorkbookHost,
  page: PageDoors,
): StartedPane {
  return startPane(element, {
    ...browserServices(),
    page,
    showSawView,
    host: Promise.resolve({ host }),
    functions: CATALOGUE,
    darkTheme: Promise.resolve(undefined),
  });
}
