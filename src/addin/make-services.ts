/** What the pane is given: the workbook beside it or an opened file, the planner, the demo. */
import { CATALOGUE } from '../functions/catalogue.ts';
import { openExcelHost } from '../hosts/excel/open-excel-host.ts';
import type { Beside, PaneServices } from '../pane/services.ts';
import { browserServices } from '../browser/browser-services.ts';
import { paintInBrowser } from '../browser/paint-in-browser.ts';
import type { Surroundings } from './wait-for-office.ts';

export function makeServices(surroundings: Promise<Surroundings>): PaneServices {
  return {
    ...browserServices(storagePart),
    host: surroundings.then(hostIn),
    functions: CATALOGUE,
    darkTheme: surroundings.then(darkThemeIn),
  };
}

function hostIn({ kind }: Surroundings): Beside {
  return kind === 'excel'
    ? { host: openExcelHost({ excel: Excel, office: Office, paint: paintInBrowser }) }
    : { why: kind };
}

function darkThemeIn({ kind }: Surroundings): boolean | undefined {
  // The theme came later than the context, so an older program leaves it out.
  const { officeTheme } = kind === 'excel' ? (Office.context as Partial<Office.Context>) : {};
  return officeTheme?.isDarkTheme;
}

/** In a browser that parts storage by site, Office hands each of its places a key of its own. */
function storagePart(): string {
  const { context } = typeof Office === 'undefined' ? {} : (Office as Partial<typeof Office>);
  return context?.partitionKey ?? '';
}
