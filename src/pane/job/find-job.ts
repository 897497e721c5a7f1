/** One reading of the workbook: its tables found, read, and judged. */
import { ok, type Outcome } from '../../core/faults/fault.ts';
import type { TablePlace, WorkbookHost, WorkbookSurvey } from '../../hosts/host.ts';
import { findTables, type FoundTables } from '../../planning/input/find-tables.ts';
import { fingerprint } from '../../planning/input/fingerprint.ts';
import type { RawTable } from '../../planning/input/raw-table.ts';
import { readProfiles } from '../../planning/input/read-profiles.ts';
import { readWalls } from '../../planning/input/read-walls.ts';
import { readingOf } from '../../planning/input/find-setting.ts';
import { readShop } from '../../planning/input/read-shop.ts';
import { listRuns } from '../../planning/list-runs.ts';
import { lookAtRooms } from '../../planning/rooms/look-at-rooms.ts';
import { CHOICE_NOTES, readChoices, type Choices } from '../../planning/input/table-choices.ts';
import type { Planner } from '../planner.ts';
import type { JobFound } from './job-found.ts';
import { listSettings } from './shop-settings.ts';
import { readNote } from '../plan/written-note.ts';
import { missingTables } from './say-tables.ts';

/** The inputs' fingerprint when the sheets were last written; what it was called before. */
export const WRITTEN_NOTE = 'Coveledger planned from';
const OLD_WRITTEN_NOTE = 'planned';

/**
 * Looks for the job's tables, reads them and collects every fault; a table that can't be read has
 * its fault among them.
 * @param rest Lets the browser draw and hear a click: ten thousand rows take a while.
 * @returns faults of its own only where the workbook as a whole can't be looked at.
 */
export async function findJob(
  host: WorkbookHost,
  planner: Planner,
  rest: () => Promise<void>,
): Promise<Outcome<JobFound>> {
  const survey = await host.survey();
  if (!survey.ok) return survey;
  const kept = await host.recall([...CHOICE_NOTES, WRITTEN_NOTE, OLD_WRITTEN_NOTE]);
  if (!kept.ok) return kept;
  const notes = kept.value;
  const tables = await findTables({
    places: survey.value.places,
    notes,
    read: (place, name) => host.readTable(place, name),
    rest,
  });
  const writtenFrom = notes[WRITTEN_NOTE] ?? notes[OLD_WRITTEN_NOTE];
  return ok(judge(planner, survey.value, tables, writtenFrom));
}

/** The person's choices as they are kept now, to be changed and kept again. */
export async function recallChoices(host: WorkbookHost): Promise<Outcome<Choices>> {
  const kept = await host.recall(CHOICE_NOTES);
  return kept.ok ? ok(readChoices(kept.value).choices) : kept;
}

function judge(
  planner: Planner,
  survey: WorkbookSurvey,
  { matches, tables: raw, faults: unread, cautions }: FoundTables<TablePlace>,
  writtenNote: string | undefined,
): JobFound {
  const source = survey.name === '' ? 'this workbook' : survey.name;
  const reading = planner.readJob(raw, source);
  const judged = planner.judgeJob(reading);
  // A table that stands nowhere is said where it can be chosen or made, beside the tables' names.
  const faults = [
    ...unread,
    ...reading.faults.filter(({ code }) => code !== 'table.missing'),
    ...judged.faults,
  ];
  const find = (name: string): RawTable | undefined => raw.find((table) => table.name === name);
  const shopTable = find('Shop');
  const lengths = readingOf(shopTable);
  const unheard = { faults: [], cautions: [] };
  const shop = readShop(shopTable, lengths, unheard);
  const profileTable = find('Profiles');
  const profiles = profileTable === undefined ? [] : readProfiles(profileTable, lengths, unheard);
  const wallTable = find('Walls');
  const walls = wallTable === undefined ? undefined : readWalls(wallTable, lengths, unheard);
  const complete = faults.length === 0 && missingTables(matches).length === 0;
  return {
    survey,
    tables: matches,
    job: complete ? reading.job : undefined,
    asRead: reading.asRead,
    runs: listRuns(reading.asRead),
    shop: shop.shop,
    settings: listSettings(shop, shopTable),
    coves: profiles
      .flatMap(({ profile }) => profile ?? [])
      .filter((profile) => profile.make !== 'buy'),
    rooms:
      walls === undefined ? [] : lookAtRooms(walls.walls, walls.unread, reading.asRead.openings),
    faults,
    // The usual values stand among the shop's settings, each with its own; not in one long sentence.
    cautions: [
      ...cautions,
      ...(raw.length === 0
        ? []
        : reading.cautions.filter(({ code }) => code !== 'job.usual-values')),
      ...judged.cautions,
    ],
    fingerprint: fingerprint(raw),
    inputs: raw,
    ...readNote(writtenNote),
  };
}
