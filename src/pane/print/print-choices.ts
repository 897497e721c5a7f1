/** What of a plan can be printed by itself: a profile's set-up, a room, a sheet. */
import { isCovePlan, type JobPlan } from '../../planning/job-plan.ts';
import { nameKey } from '../../planning/job.ts';
import type { SheetDescription, WorkbookDescription } from '../../sheets/grammar/description.ts';
import { SHEET_NAMES } from '../../sheets/plan-anchors.ts';

export interface PrintChoice {
  readonly key: string;
  readonly label: string;
  readonly group: 'One set-up' | 'One room' | 'One sheet';
  readonly sheet: SheetDescription;
  /** What its pages are headed with; absent, all of the sheet is printed. */
  readonly heading?: string;
}

/** Set-ups and rooms by their names, as the pages of their sheets are headed; then the sheets whole. */
export function listPrintChoices(plan: JobPlan, { sheets }: WorkbookDescription): PrintChoice[] {
  const partsOf = (
    name: string,
    group: PrintChoice['group'],
    headings: readonly string[],
  ): PrintChoice[] => {
    const sheet = sheets.find((one) => one.name === name);
    if (sheet === undefined) return [];
    return headings.map((heading) => {
      const key = `${name}: ${heading}`;
      return { key, label: heading, group, sheet, heading };
    });
  };
  const rooms = new Map(plan.job.walls.map(({ room }) => [nameKey(room), room] as const).reverse());
  const coves = plan.profiles.filter(isCovePlan).map(({ profile }) => profile.name);
  return [
    ...partsOf(SHEET_NAMES.setUps, 'One set-up', coves),
    ...partsOf(SHEET_NAMES.rooms, 'One room', [...rooms.values()].reverse()),
    ...sheets.map((sheet): PrintChoice => {
      return { key: sheet.name, label: sheet.name, group: 'One sheet', sheet };
    }),
  ];
}

/** Whether a block of a sheet's pages, by the text it begins with, is of this choice. */
export function isPageOf({ heading }: PrintChoice, text: string): boolean {
  return (
    heading === undefined ||
    text.replace(/, (?:continued|overleaf|its corners)$/u, '') === heading ||
    text === heading
  );
}
