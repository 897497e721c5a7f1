/**
 * The add-in's entry: registers the worksheet functions as soon as Excel's library runs, then shows
 * the pane beside the workbook it finds. The pane, its look and the planner are chunks of their own.
 */
import { registerFunctions } from '../functions/register.ts';
import { waitForOffice, whenLibraryRuns } from './wait-for-office.ts';

performance.mark('script start');
const script = document.getElementById('office');

whenLibraryRuns(script, () => {
  registerFunctions(CustomFunctions);
  performance.mark('functions registered');
});

async function showPane(): Promise<void> {
  const pane = document.getElementById('pane');
  if (pane === null) return;
  const surroundings = waitForOffice(script);
  const { startPane } = await import('../pane/start-pane.tsx');
  const { makeServices } = await import('./make-services.ts');
  startPane(pane, makeServices(surroundings));
}

void showPane();
