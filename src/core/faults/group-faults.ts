/** Faults that say the same of many cells, said once with all of them. */
import { sayWhere, type Fault, type FaultCode, type Where } from './fault.ts';

export interface FaultGroup {
  readonly code: FaultCode;
  readonly message: string;
  /** In the order in which they came; empty for what stands in no cell. */
  readonly places: readonly Where[];
}

/** Each message once, where it first comes. */
export function groupFaults(faults: readonly Fault[]): readonly FaultGroup[] {
  const groups = new Map<string, { readonly code: FaultCode; readonly places: Where[] }>();
  for (const { code, message, where } of faults) {
    const group = groups.get(message) ?? { code, places: [] };
    groups.set(message, group);
    const { places } = group;
    const isNew = where !== undefined && !places.some((one) => sayWhere(one) === sayWhere(where));
    if (isNew) places.push(where);
  }
  return [...groups].map(([message, { code, places }]) => ({ code, message, places }));
}

/** `Runs!C2, C5; Openings!H3`, or `runs.csv, line 2, column 3; line 5, column 3`. */
export function sayPlaces(places: readonly Where[]): string {
  const said = places.map((place, at) => {
    const before = places[at - 1];
    const isSame = before !== undefined && nameOf(before) === nameOf(place);
    if ('sheet' in place) {
      if (isSame) return `, ${place.cell}`;
    } else if (isSame) return `; line ${place.line}, column ${place.column}`;
    return `${at === 0 ? '' : '; '}${sayWhere(place)}`;
  });
  return said.join('');
}

/** The sheet or the file. */
function nameOf(where: Where): string {
  return 'sheet' in where ? where.sheet : where.file;
}

/** One line for a person: the places first, then the message. */
export function sayGroup({ message, places }: FaultGroup): string {
  return places.length === 0 ? message : `${sayPlaces(places)}: ${message}`;
}
