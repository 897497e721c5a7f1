/** The Job input sheet: what names the job on every page and in both copies. */
import { sayArgument } from '../../core/faults/argument.ts';
import type { RawTable } from '../../planning/input/raw-table.ts';
import { TITLE_ROWS, type TitleRow } from '../../planning/title-block.ts';
import type { SheetDescription } from '../grammar/description.ts';
import { columns, left } from '../grammar/columns.ts';
import type { InputLook } from './input-sheet.ts';
import { describeSettings } from './settings-sheet.ts';

const TITLE = columns({
  setting: left(sayArgument('setting')),
  value: left(sayArgument('value')),
  note: left(sayArgument('note')),
});
const GRID = [{ width: 20 }, { width: 48, style: 'inputText' }, { width: 62 }] as const;

/** Blank: every row there is, to be filled. With a given table, as Shop's: its rows, then those left out. */
export function describeTitleSheet(given: RawTable | undefined, look: InputLook): SheetDescription {
  const rows = Object.values<TitleRow>(TITLE_ROWS).map(({ name, note }) => ({
    name,
    row: () => ({
      cells: [
        { value: name, style: 'label' as const },
        { value: '', style: 'inputText' as const },
        { value: note, style: 'note' as const },
      ],
    }),
  }));
  return describeSettings({ name: 'Job', table: TITLE, grid: GRID, rows }, given, look);
}
