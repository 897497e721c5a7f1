/** The workbook as a file to keep. */
import { saveFile } from '../../browser/save-file.ts';
import { gridSpills } from '../../hosts/grid/to-file/grid-spills.ts';
import { ask } from '../shell/ask.ts';
import type { SheetsBehind } from '../../pane/start-pane.tsx';
import { readCustomData, toCustomData } from '../../hosts/grid/sheet-metadata.ts';
import type { IWorkbookData } from '@univerjs/core';
import type { Desk } from './desk.ts';

const LONGEST_NAME = 120;

/** @throws Error where what writes files doesn't come over the network */
export async function download(
  desk: Desk,
  findBehind: () => Promise<SheetsBehind | undefined>,
): Promise<void> {
  const behind = await findBehind();
  if (behind !== undefined && !(await mayDownload(behind))) return;
  const { gridToFile } = await import('../../hosts/grid/to-file/grid-to-file.ts');
  const { data, name } = desk.take();
  const marked = behind === undefined ? data : withMark(data, behind.mark);
  const bytes = await gridToFile(
    marked,
    gridSpills(desk.grid.services, data.id),
    new Date().toISOString(),
  );
  saveFile(`${fileName(name)}.xlsx`, bytes);
  desk.saved();
}

async function mayDownload({ says }: SheetsBehind): Promise<boolean> {
  const answer = await ask({
    title: 'Download sheets that are behind?',
    says: [says, 'As they are, each of their pages says so when it is printed from the file.'],
    choices: [
      { name: 'cancel', label: 'Go back', first: true },
      { name: 'download', label: 'Download all the same' },
    ],
  });
  return answer === 'download';
}

/** The pages of the sheets written here bear the mark; the workbook in the grid is left as it is. */
function withMark(data: IWorkbookData, header: string): IWorkbookData {
  const sheets = Object.entries(data.sheets).map(([id, sheet]) => {
    const kept = readCustomData(sheet.custom);
    if (kept?.owner !== 'tool') return [id, sheet] as const;
    const { file = {} } = kept;
    const custom = toCustomData({
      ...kept,
      print: { ...kept.print, header },
      // One that came out of a file goes back with what the file said.
      ...(kept.file === undefined
        ? {}
        : { file: { ...file, headerFooter: { ...file.headerFooter, oddHeader: `&C${header}` } } }),
    });
    return [id, { ...sheet, custom }] as const;
  });
  return { ...data, sheets: Object.fromEntries(sheets) };
}

/** What no system's files may be called by is left out. */
function fileName(name: string): string {
  // eslint-disable-next-line no-control-regex -- control characters are what is looked for
  const plain = name.replace(/[\\/:*?"<>|\u0000-\u001f]+/gu, ' ').replace(/\s+/gu, ' ');
  return (
    plain
      .trim()
      .replace(/[. ]+$/u, '')
      .slice(0, LONGEST_NAME) || 'Workbook'
  );
}
