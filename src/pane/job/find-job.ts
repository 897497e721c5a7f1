/** One reading of the workbook: its tables found, read, and judged. */
import {
  failed,
  fault,
  ok,
  placeFault,
  type Fault,
  type Outcome,
} from '../../core/faults/fault.ts';
import type { WorkbookHost, WorkbookSurvey } from '../../hosts/host.ts';
import { fingerprint } from '../../planning/input/fingerprint.ts';
import { mapColumns, type ColumnMap } from '../../planning/input/map-columns.ts';
import { whereIs, type RawTable } from '../../planning/input/raw-table.ts';
import { readProfiles } from '../../planning/input/read-profiles.ts';
import { readingOf, readShop } from '../../planning/input/read-shop.ts';
import { headingKey } from '../../planning/input/row-reader.ts';
import type { Planner } from '../planner.ts';
import { readChoices, type Choices } from './choices.ts';
import type { JobFound, TableMatch } from './job-found.ts';
import { listSettings } from './shop-settings.ts';
import { missingTables, matchTables } from './match-tables.ts';

export const COLUMNS_NOTE = 'columns';
export const WRITTEN_NOTE = 'planned';

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
  const kept = await host.recall(COLUMNS_NOTE);
  if (!kept.ok) return kept;
  const written = await host.recall(WRITTEN_NOTE);
  if (!written.ok) return written;
  const tables = matchTables(survey.value.places, readChoices(kept.value));
  const faults: Fault[] = [];
  const raw: RawTable[] = [];
  for (const standing of tables) {
    const table = await readStanding(host, standing);
    if (table === undefined) continue;
    if (table.ok) raw.push(table.value);
    else faults.push(...table.faults);
    await rest();
  }
  return ok(judge(planner, survey.value, tables, raw, faults, written.value));
}

/** The person's choices as they are kept now, to be changed and kept again. */
export async function recallChoices(host: WorkbookHost): Promise<Outcome<Choices>> {
  const kept = await host.recall(COLUMNS_NOTE);
  return kept.ok ? ok(readChoices(kept.value)) : kept;
}

async function readStanding(
  host: WorkbookHost,
  { name, place, choice }: TableMatch,
): Promise<Outcome<RawTable> | undefined> {
  if (place === undefined) return undefined;
  const table = await host.readTable(place, name);
  if (!table.ok || choice?.columns === undefined) return table;
  const twice = columnsTwice(table.value, choice.columns);
  return twice.length > 0 ? failed(...twice) : ok(mapColumns(table.value, name, choice.columns));
}

/** Two columns under one chosen heading: nobody can tell which of them is meant. */
function columnsTwice(table: RawTable, columns: ColumnMap): Fault[] {
  const { line, cells } = table.headings;
  const chosen = new Set(Object.values(columns).map(headingKey));
  return cells.flatMap((cell, at) => {
    const key = headingKey(cell);
    const isFirst = cells.findIndex((other) => headingKey(other) === key) === at;
    if (typeof cell !== 'string' || !chosen.has(key) || isFirst) return [];
    const one = fault('table.heading-twice', table.name, cell);
    return [placeFault(one, whereIs(table, line, at))];
  });
}

function judge(
  planner: Planner,
  survey: WorkbookSurvey,
  tables: readonly TableMatch[],
  raw: readonly RawTable[],
  unread: readonly Fault[],
  writtenFrom: string | undefined,
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
  const complete = faults.length === 0 && missingTables(tables).length === 0;
  return {
    survey,
    tables,
    job: complete ? reading.job : undefined,
    shop: shop.shop,
    settings: listSettings(shop, shopTable),
    coves: profiles
      .flatMap(({ profile }) => profile ?? [])
      .filter((profile) => profile.make !== 'buy'),
    faults,
    // The usual values stand among the shop's settings, each with its own; not in one long sentence.
    cautions:
      raw.length === 0
        ? []
        : [
            ...reading.cautions.filter(({ code }) => code !== 'job.usual-values'),
            ...judged.cautions,
          ],
    fingerprint: fingerprint(raw),
    writtenFrom,
  };
}
