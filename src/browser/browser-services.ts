/** What the pane is given in any browser, whatever stands beside it. */
import type { Outcome } from '../core/faults/fault.ts';
import type { WorkbookHost } from '../hosts/host.ts';
import type { PaneServices } from '../pane/services.ts';
import type { RawTable } from '../planning/input/raw-table.ts';
import { pageAddressOf } from '../planning/saw-code/page-address.ts';
import type { WorkbookDescription } from '../sheets/grammar/description.ts';
import { paintInBrowser } from './paint-in-browser.ts';
import { saveFile } from './save-file.ts';

type Given = Pick<
  PaneServices,
  | 'openFile'
  | 'readOther'
  | 'makeFile'
  | 'makeZip'
  | 'layPages'
  | 'saveFile'
  | 'clock'
  | 'loadPlanner'
  | 'loadDemo'
  | 'preferences'
  | 'visit'
  | 'pageAddress'
>;

/** @param part Of the browser's storage, where it is parted: before each preference's key. */
export function browserServices(part: () => string = () => ''): Given {
  const pageAddress = pageAddressOf(document.baseURI.replace(/[?#].*$/su, ''));
  const keyOf = (key: string): string => `${part()}coveledger.${key}`;
  return {
    openFile: async (name: string, bytes: Uint8Array): Promise<Outcome<WorkbookHost>> => {
      const { openFileHost } = await import('../hosts/xlsx/open-file-host.ts');
      return openFileHost({ name, bytes, paint: paintInBrowser });
    },
    readOther: async (name: string, bytes: Uint8Array) => {
      const { readOtherFile } = await import('../hosts/xlsx/read-other-file.ts');
      return readOtherFile(bytes, name);
    },
    makeFile: async (description: WorkbookDescription) => {
      const { writeWorkbook } = await import('../hosts/xlsx/write-workbook.ts');
      return writeWorkbook(description, { paint: paintInBrowser });
    },
    layPages: async (...given) => {
      const { printDocument } = await import('./print/print-document.ts');
      return printDocument(...given);
    },
    makeZip: async (files) => {
      const { writeZip } = await import('../hosts/zip/write-zip.ts');
      return writeZip(files);
    },
    saveFile,
    ...(pageAddress === undefined ? {} : { pageAddress }),
    clock: () => new Date(),
    loadPlanner: async () => (await import('./load-planner.ts')).planner,
    loadDemo,
    preferences: {
      get: (key) => getNote(() => localStorage, keyOf(key)),
      set: (key, value) => setNote(() => localStorage, keyOf(key), value),
    },
    visit: {
      get: (key) => getNote(() => sessionStorage, keyOf(key)),
      set: (key, value) => setNote(() => sessionStorage, keyOf(key), value),
    },
  };
}

/** @throws Error where it doesn't come over the network */
export async function loadDemo(): Promise<readonly RawTable[]> {
  const response = await fetch('demo.json');
  if (!response.ok) throw new Error(`demo.json: ${response.status}`);
  return (await response.json()) as RawTable[];
}

function getNote(place: () => Storage, key: string): string | undefined {
  try {
    return place().getItem(key) ?? undefined;
  } catch {
    return undefined;
  }
}

/** Where storage is turned off the note is lost, which harms nothing. */
function setNote(place: () => Storage, key: string, value: string): void {
  try {
    place().setItem(key, value);
  } catch {
    return;
  }
}
