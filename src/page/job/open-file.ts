/** Opens a person's file in the place of the workbook that is there, which stays until the new one is read. */
import type { IWorkbookData } from '@univerjs/core';
import { own } from '../../core/faults/argument.ts';
import { failed, fault, ok, sayFault, type Fault, type Outcome } from '../../core/faults/fault.ts';
import { sayError } from '../../core/faults/say-error.ts';
import type { Opened } from '../../hosts/grid/from-file/open-into-grid.ts';
import { ask } from '../shell/ask.ts';
import { dropNotice, showNotice } from '../shell/notices.ts';
import type { Desk } from './desk.ts';

/** More are counted, not said. */
const MOST_SAID = 12;
const NOTICE = 'opened';

let turn = 0;

/** Faults and cautions are said above the sheet; a change that stands in no file is asked about. */
export async function openFile(desk: Desk, file: File, save: () => Promise<void>): Promise<void> {
  turn += 1;
  const mine = turn;
  showNotice(NOTICE, { kind: 'caution', says: [`Opening ${file.name}…`], stays: true });
  const opened = await readFile(file);
  // Of two files the one that was chosen last is meant.
  if (mine !== turn) return;
  dropNotice(NOTICE);
  if (!opened.ok) {
    const title = `${file.name} was not opened; the workbook that was here is as it was.`;
    showNotice(NOTICE, { kind: 'problem', title, says: sayFaults(opened.faults) });
    return;
  }
  const { data, cautions } = opened.value;
  const name = nameOf(file.name);
  if (!(await mayReplace(desk, `Open ${file.name}?`, 'Open it', save)) || mine !== turn) return;
  put(desk, { ...data, name });
  if (cautions.length === 0) return;
  const title = `${file.name} is open. To be known of it:`;
  showNotice(NOTICE, { kind: 'caution', title, says: sayFaults(cautions) });
}

/** What a workbook of a pasted list is called, with the ending that its text is read by. */
const PASTED = 'Pasted list.csv';

/** @param text As a spreadsheet or a message gives it: cells parted by tabs, commas or semicolons. */
export async function openPasted(
  desk: Desk,
  text: string,
  save: () => Promise<void>,
): Promise<void> {
  await openFile(desk, new File([text], PASTED), save);
}

/** Says what a put workbook was said before it no longer. */
export function put(desk: Desk, data: IWorkbookData): void {
  dropNotice(NOTICE);
  desk.put(data);
}

/** Whether what is there may go: at once where it stands in a file or was never changed. */
export async function mayReplace(
  desk: Desk,
  title: string,
  label: string,
  save: () => Promise<void>,
): Promise<boolean> {
  if (!desk.touched()) return true;
  const answer = await ask({
    title,
    says: [
      `It takes the place of “${desk.name()}”, which was changed since it was last downloaded. What you typed there, and the sheets written there, then are gone from this browser.`,
    ],
    choices: [
      { name: 'save', label: `Download “${desk.name()}” first`, first: true },
      { name: 'replace', label },
      { name: 'cancel', label: 'Cancel' },
    ],
  });
  if (answer === 'save') await save();
  return answer === 'replace' || (answer === 'save' && !desk.touched());
}

async function readFile(file: File): Promise<Outcome<Opened>> {
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch (error) {
    return failed(fault('pane.file-unreadable', own(file.name), sayError(error)));
  }
  try {
    const { openIntoGrid } = await import('../../hosts/grid/from-file/open-into-grid.ts');
    const opened = await openIntoGrid(bytes, file.name);
    return opened.ok ? ok(opened.value) : failed(...opened.faults);
  } catch (error) {
    return failed(fault('pane.not-loaded', own(file.name), sayError(error)));
  }
}

function sayFaults(faults: readonly Fault[]): string[] {
  const said = faults.slice(0, MOST_SAID).map(sayFault);
  const more = faults.length - said.length;
  return more === 0 ? said : [...said, `and ${more} more`];
}

function nameOf(fileName: string): string {
  return fileName.replace(/\.[^.]*$/u, '') || fileName;
}
