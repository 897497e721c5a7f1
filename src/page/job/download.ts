/** The workbook as a file to keep. */
import { saveFile } from '../../browser/save-file.ts';
import { gridSpills } from '../../hosts/grid/to-file/grid-spills.ts';
import type { Desk } from './desk.ts';

const LONGEST_NAME = 120;

/** @throws Error where what writes files doesn't come over the network */
export async function download(desk: Desk): Promise<void> {
  const { gridToFile } = await import('../../hosts/grid/to-file/grid-to-file.ts');
  const { data, name } = desk.take();
  const bytes = await gridToFile(data, gridSpills(desk.grid.services, data.id));
  saveFile(`${fileName(name)}.xlsx`, bytes);
  desk.saved();
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
