import type { WorkbookHost } from '../../hosts/host.ts';
import type { PaneState } from './pane-state.ts';

/** The workbook that the pane stands beside, or the file that is open in its place. */
export function openHostOf({ workbook }: PaneState): WorkbookHost | undefined {
  return workbook.kind === 'open' ? workbook.host : undefined;
}
