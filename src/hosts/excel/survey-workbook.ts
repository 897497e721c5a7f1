/** What the workbook holds that could be of use: places for tables, and sheets. */
import { cellName } from '../../core/cells/cell-range.ts';
import type { SurveyedSheet, TablePlace, WorkbookSurvey } from '../host.ts';
import { tablePlaceOf, locatePlaces, type PlaceKey } from './places.ts';
import { readPlaces } from './rows-of-places.ts';
import { readAreas, type Area } from './read-areas.ts';
import { pointsAt, takeInventory, type FoundSheet, type Inventory } from './inventory.ts';

/** Cells of one place that are looked at; rows beyond them count, blank or not. */
const MOST_LOOKED_AT = 300_000;
/** Cells of one sheet in which formulas that point into ours are looked for. */
const MOST_SEARCHED = 300_000;
/** Cells named of those that point into a sheet of ours. */
const MOST_NAMED = 10;

export async function surveyWorkbook(context: Excel.RequestContext): Promise<WorkbookSurvey> {
  const found = await takeInventory(context);
  const places = await findPlaces(context, found);
  return { name: found.workbook, places, sheets: await surveySheets(context, found) };
}

async function findPlaces(
  context: Excel.RequestContext,
  inventory: Inventory,
): Promise<TablePlace[]> {
  const theirs = inventory.sheets.filter((sheet) => !sheet.ours && !sheet.leftover);
  const headed = (sheet: FoundSheet) => sheet.tables.filter((table) => table.headed);
  const wanted = [
    ...theirs.flatMap((sheet) =>
      headed(sheet).map((table) => ({
        key: { kind: 'table', id: table.id } satisfies PlaceKey,
        sheet: sheet.id,
        names: { sheet: sheet.name, table: table.name },
      })),
    ),
    ...theirs
      .filter((sheet) => headed(sheet).length === 0)
      .map((sheet) => ({
        key: { kind: 'sheet', id: sheet.id } satisfies PlaceKey,
        sheet: sheet.id,
        names: { sheet: sheet.name },
      })),
  ];
  const located = await locatePlaces(context, wanted);
  const clipped = located.map(({ area, ...one }) => ({
    ...one,
    area: clipRows(area, MOST_LOOKED_AT),
  }));
  const found = await readPlaces(context, clipped);
  return located.flatMap((place, index) => {
    const names = wanted.find(({ key }) => key === place.key)?.names;
    const more = place.area.bottom - (clipped[index]?.area.bottom ?? place.area.bottom);
    const described = names && tablePlaceOf(place, names, found[index]?.rows ?? [], more);
    return described === undefined ? [] : [described];
  });
}

async function surveySheets(
  context: Excel.RequestContext,
  found: Inventory,
): Promise<SurveyedSheet[]> {
  const sheets = found.sheets.filter((sheet) => !sheet.leftover);
  const ours = sheets.filter((sheet) => sheet.ours);
  const pointing = ours.length === 0 ? new Map() : await findPointing(context, sheets, ours);
  return sheets.map(({ id, name, ours: isOurs }) => ({
    name,
    ours: isOurs,
    pointedAtBy: (pointing.get(id) as string[] | undefined) ?? [],
  }));
}

/** Cells of the person's sheets whose formulas name one of ours, by the id of ours. */
async function findPointing(
  context: Excel.RequestContext,
  sheets: readonly FoundSheet[],
  ours: readonly FoundSheet[],
): Promise<Map<string, string[]>> {
  const searched = sheets
    .filter((sheet) => !sheet.ours)
    .map((sheet) => ({ key: { kind: 'sheet', id: sheet.id } as const, sheet: sheet.id }));
  const located = await locatePlaces(context, searched);
  const areas = located.map(({ area }) => clipRows(area, MOST_SEARCHED));
  const read = await readAreas(context, areas, ['formulas']);
  const pointing = new Map(ours.map(({ id }) => [id, [] as string[]]));
  areas.forEach((area, index) => {
    const from = sheets.find(({ id }) => id === area.sheet)?.name ?? '';
    read[index]?.formulas.forEach((row, r) =>
      row.forEach((formula, c) => {
        if (typeof formula !== 'string' || !/^=.*[![]/su.test(formula)) return;
        for (const one of ours) {
          const cells = pointing.get(one.id);
          if (cells === undefined || cells.length >= MOST_NAMED || !pointsAt(formula, [one]))
            continue;
          cells.push(`${from}!${cellName(area.top + r, area.left + c)}`);
        }
      }),
    );
  });
  return pointing;
}

function clipRows(area: Area, mostCells: number): Area {
  const rows = Math.max(1, Math.floor(mostCells / (area.right - area.left + 1)));
  return { ...area, bottom: Math.min(area.bottom, area.top + rows - 1) };
}
