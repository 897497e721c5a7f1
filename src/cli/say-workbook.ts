/** What a workbook holds, sheet by sheet. */
import type { WorkbookDescription } from '../sheets/grammar/description.ts';
import type { SHEET_NAMES } from '../sheets/plan-anchors.ts';

type PlanSheet = (typeof SHEET_NAMES)[keyof typeof SHEET_NAMES];

/** No sheet of a plan goes without: it would not compile. */
const CONTENTS: Readonly<Record<PlanSheet, string> & Partial<Record<string, string>>> = {
  Production: 'what to make, from what, in which order',
  Labor: 'what the hours are: each kind of work, how many of it, minutes to change',
  Office: 'prices to quote from: by length, opening, room and joint; what more of a molding costs',
  Pieces: 'every piece, to sort and filter',
  'Set-ups': 'a page for each cove: angle, tilt, rail marks, heights of the passes',
  Outlines: 'each cove at full size, to trace',
  Cutting: 'every stick and what is cut from it',
  Labels: 'a label for each piece to cut and each offcut to keep: print at 100 %',
  Rooms:
    'a page for each room of Walls: its plan, its pieces in the order they go up; doors and windows',
  Yard: 'what to buy and what is spent there; a tally of the boards that come',
  Client: 'rooms and prices, for the client',
  Changes: 'two plans against each other: runs, moldings, rooms, money, what is cut already',
  'Set-up formulas': 'the set-up numbers, live',
  'Formula steps': 'what they are worked out by',
  'How to': 'how the sheets are filled in',
  Runs: 'one row a run of molding',
  Walls: 'one row a wall, room by room: typed once, for all that runs along it',
  Trim: 'what runs along the walls: makes runs of them',
  Openings: 'doors and windows, which become casing',
  Profiles: 'one row a profile',
  Shop: 'saw, limits, rates; usual values stand in for what is blank',
  Stock: 'what lumber comes in, its price, how many',
  Work: 'what work is in the price, and the minutes it takes; usual ones stand in',
  Options: 'what may be added or made otherwise, each at a price of its own',
  Job: 'what names the job on every page, and its terms',
  Hours: 'what the job took in truth: rates of work are learned from it, and no price changes',
};

export function sayWorkbook(
  path: string,
  { sheets }: Pick<WorkbookDescription, 'sheets'>,
): string[] {
  return [`Written: ${path}`, ...sayContents(sheets.map(({ name }) => name))];
}

/** A line a sheet, or a line a file where `nameOf` gives the file of a sheet. */
export function sayContents(
  sheets: readonly string[],
  nameOf: (sheet: string) => string = (sheet) => sheet,
): string[] {
  const widest = Math.max(...sheets.map((sheet) => nameOf(sheet).length));
  return sheets.map((sheet) =>
    `  ${nameOf(sheet).padEnd(widest)}  ${CONTENTS[sheet] ?? ''}`.trimEnd(),
  );
}
