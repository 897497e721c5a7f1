/** What the pane is given: the workbook beside it or an opened file, the planner, the demo. */
import { CATALOGUE } from '../functions/catalogue.ts';
import { openExcelHost } from '../hosts/excel/open-excel-host.ts';
import type { Beside, PaneServices } from '../pane/services.ts';
import type { RawTable } from '../planning/input/raw-table.ts';
import { paintInBrowser } from './paint-in-browser.ts';
import type { Surroundings } from './wait-for-office.ts';

const XLSX = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';
/** Long enough for any browser to have begun saving. */
const KEEP_ADDRESS_MS = 60_000;

export function makeServices(surroundings: Promise<Surroundings>): PaneServices {
  return {
    host: surroundings.then(hostIn),
    openFile: async (name, bytes) => {
      const { openFileHost } = await import('../hosts/xlsx/open-file-host.ts');
      return openFileHost({ name, bytes, paint: paintInBrowser });
    },
    makeFile: async (description) => {
      const { writeWorkbook } = await import('../hosts/xlsx/write-workbook.ts');
      return writeWorkbook(description, { paint: paintInBrowser });
    },
    makeZip: async (files) => {
      const { writeZip } = await import('../hosts/zip/write-zip.ts');
      return writeZip(files);
    },
    saveFile,
    loadPlanner: async () => (await import('./load-planner.ts')).planner,
    loadDemo: async () => {
      const response = await fetch('demo.json');
      if (!response.ok) throw new Error(`demo.json: ${response.status}`);
      return (await response.json()) as RawTable[];
    },
    functions: CATALOGUE,
    darkTheme: surroundings.then(darkThemeIn),
    preferences: { get: getPreference, set: setPreference },
  };
}

function hostIn({ kind }: Surroundings): Beside {
  return kind === 'excel'
    ? { host: openExcelHost({ excel: Excel, office: Office, paint: paintInBrowser }) }
    : { why: kind };
}

function saveFile(name: string, bytes: Uint8Array): void {
  const address = URL.createObjectURL(new Blob([Uint8Array.from(bytes)], { type: XLSX }));
  const link = Object.assign(document.createElement('a'), { href: address, download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), KEEP_ADDRESS_MS);
}

function darkThemeIn({ kind }: Surroundings): boolean | undefined {
  // The theme came later than the context, so an older program leaves it out.
  const { officeTheme } = kind === 'excel' ? (Office.context as Partial<Office.Context>) : {};
  return officeTheme?.isDarkTheme;
}

/** In a browser that parts storage by site, Office hands each of its places a key of its own. */
function preferenceKey(key: string): string {
  const part =
    typeof Office === 'undefined' ? undefined : (Office as Partial<typeof Office>).context;
  return `${part?.partitionKey ?? ''}coveledger.${key}`;
}

function getPreference(key: string): string | undefined {
  try {
    return localStorage.getItem(preferenceKey(key)) ?? undefined;
  } catch {
    return undefined;
  }
}

/** Where storage is turned off the preference is lost, which harms nothing. */
function setPreference(key: string, value: string): void {
  try {
    localStorage.setItem(preferenceKey(key), value);
  } catch {
    return;
  }
}
