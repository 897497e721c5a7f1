/** Which place of a workbook stands for which table of the job. */
import { recognizeTables, type Place } from './recognize-tables.ts';
import { isNeeded, type JobTableName } from './read-job.ts';
import type { Choices, TableChoice } from './table-choices.ts';

export interface TableMatch<P extends Place = Place> {
  readonly name: JobTableName;
  readonly required: boolean;
  readonly place: P | undefined;
  /** Several places that could be it: the person says which. */
  readonly alike: readonly P[];
  /**
   * What the person said of it. Where its place isn't there any more, nothing else is taken for it:
   * that might be less.
   */
  readonly choice: TableChoice | undefined;
}

/** What the person chose goes first; a chosen place is no other table too. */
export function matchTables<P extends Place>(
  places: readonly P[],
  choices: Choices,
): readonly TableMatch<P>[] {
  const chosen = new Map<string, P | undefined>(
    Object.entries(choices).map(([name, choice]) => [
      name,
      places.find((place) => isPlaceOf(choice, place)),
    ]),
  );
  const taken = new Set(chosen.values());
  const matches = recognizeTables(places.filter((place) => !taken.has(place))).map(
    ({ name, required, chosen: found, alike }): TableMatch<P> => {
      if (!chosen.has(name)) {
        return { name, required, place: found, alike, choice: undefined };
      }
      return { name, required, place: chosen.get(name), alike: [], choice: choices[name] };
    },
  );
  const there = new Set(matches.flatMap(({ name, place }) => (place === undefined ? [] : name)));
  return matches.map((match) => ({
    ...match,
    required: isNeeded(match, (name) => there.has(name)),
  }));
}

/** Whether the place that was chosen isn't there. */
export function isGone({ place, choice }: TableMatch): boolean {
  return place === undefined && choice !== undefined;
}

export function choiceOf(place: Place, columns?: TableChoice['columns']): TableChoice {
  return {
    sheet: place.sheet,
    ...(place.table === undefined ? {} : { table: place.table }),
    ...(columns === undefined ? {} : { columns }),
  };
}

function isPlaceOf(choice: TableChoice, place: Place): boolean {
  return choice.sheet === place.sheet && choice.table === place.table;
}
