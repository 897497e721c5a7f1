/** Names of ranges as the grid keeps them, among its resources. */
import type { IResources } from '@univerjs/core';
import type { PlainName } from '../workbook/plain-workbook.ts';

const RESOURCE = 'SHEET_DEFINED_NAME_PLUGIN';
/** In the place of a sheet's id, for a name known in all of them. */
const WHOLE_WORKBOOK = 'AllDefaultWorkbook';

interface GridName {
  readonly id: string;
  readonly name: string;
  readonly formulaOrRefString: string;
  readonly localSheetId?: string;
}

/** Ranges stand there as they are written, any other formula after an equals sign. */
const RANGES = /^(?:(?:'(?:[^']|'')+'|[^'!(),=]+)!\$?[A-Z]*\$?\d*(?::\$?[A-Z]*\$?\d*)?,?)+$/iu;

/** @param idOf A sheet's id by its name. */
export function nameResources(
  names: readonly PlainName[],
  idOf: (sheet: string) => string | undefined,
): IResources {
  const kept = names.map(({ name, refersTo, sheet }, index): [string, GridName] => {
    const id = `name-${index + 1}`;
    const formulaOrRefString = RANGES.test(refersTo) ? refersTo : `=${refersTo}`;
    const localSheetId = (sheet === undefined ? undefined : idOf(sheet)) ?? WHOLE_WORKBOOK;
    return [id, { id, name, formulaOrRefString, localSheetId }];
  });
  return kept.length === 0
    ? []
    : [{ name: RESOURCE, data: JSON.stringify(Object.fromEntries(kept)) }];
}

/** @param nameOf A sheet's name by its id. */
export function namesOfResources(
  resources: IResources | undefined,
  nameOf: (id: string) => string | undefined,
): PlainName[] {
  return Object.values(resourceOf<GridName>(resources, RESOURCE)).map(
    ({ name, formulaOrRefString, localSheetId }) => {
      const sheet = localSheetId === undefined ? undefined : nameOf(localSheetId);
      return {
        name,
        refersTo: formulaOrRefString.replace(/^=/u, ''),
        ...(sheet === undefined ? {} : { sheet }),
      };
    },
  );
}

/** What one of the grid's parts keeps, by its own keys. */
export function resourceOf<T>(
  resources: IResources | undefined,
  name: string,
): Readonly<Record<string, T>> {
  const data = resources?.find((one) => one.name === name)?.data ?? '';
  return data === '' ? {} : (JSON.parse(data) as Record<string, T>);
}
