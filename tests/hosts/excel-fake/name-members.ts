/** What the fake knows of names, tables and settings. */
import { overlap, type Box } from './address.ts';
import { areaOf, only, type Area } from './areas.ts';
import { readFormula } from './formula-text.ts';
import type { ClassMembers, Env } from './members.ts';
import { invalid, MisuseError, OfficeError } from './office-error.ts';
import type { FakeName, FakeSheet, FakeTable, FakeWorkbook } from './workbook-model.ts';

/** Those of a sheet, or of the workbook. */
export interface Names {
  readonly sheet: FakeSheet | null;
}

function deny(sheet: FakeSheet): void {
  if (sheet.isProtected) throw new OfficeError('AccessDenied', `${sheet.name} is protected`);
}

/** Workbook names and tables share one space; a sheet's own names have theirs. */
function checkName(name: string, workbook: FakeWorkbook, sheet: FakeSheet | null): void {
  const sound =
    /^[\p{L}_\\][\p{L}\p{N}_.\\]*$/u.test(name) &&
    name.length <= 255 &&
    !/^(?:[A-Z]{1,3}\d+|R\d*C?\d*|C\d*)$/iu.test(name);
  if (!sound) throw invalid(`nothing can be named "${name}"`);
  const taken = sheet === null ? [...workbook.names, ...workbook.tables] : sheet.names;
  if (taken.some((one) => one.name.toLowerCase() === name.toLowerCase())) {
    throw new OfficeError('ItemAlreadyExists', `the name "${name}"`);
  }
}

const namesOf = ({ sheet }: Names, { workbook }: Env): FakeName[] =>
  sheet === null ? workbook.names : sheet.names;
const nameNamed = (names: Names, [name]: string[], env: Env): FakeName | null =>
  namesOf(names, env).find((one) => one.name.toLowerCase() === name?.toLowerCase()) ?? null;

const NAMES: ClassMembers = {
  items: { gives: 'NamedItem', of: namesOf },
  methods: {
    add: {
      since: 4,
      gives: 'NamedItem',
      run: (names: Names, [name = '', reference = '']: string[], env): FakeName => {
        if (names.sheet !== null) deny(names.sheet);
        checkName(name, env.workbook, names.sheet);
        const formula = readFormula(reference, env.workbook);
        const made: FakeName = { name, sheet: names.sheet, formula, visible: true };
        namesOf(names, env).push(made);
        return made;
      },
    },
    getItem: { since: 1, gives: 'NamedItem', run: nameNamed },
    getItemOrNullObject: { since: 4, gives: 'NamedItem', run: nameNamed },
  },
};

const NAME: ClassMembers = {
  values: {
    formula: {
      since: 7,
      get: (name: FakeName) => `=${name.formula.text}`,
      set: (name: FakeName, formula: string, { workbook }) => {
        name.formula = readFormula(formula, workbook);
      },
    },
    name: { since: 1, get: ({ name }: FakeName) => name },
    visible: {
      since: 1,
      set: (name: FakeName, visible: boolean) => {
        name.visible = visible;
      },
    },
  },
  methods: {
    delete: {
      since: 4,
      run: (name: FakeName, _, { workbook }) => {
        const without = (names: FakeName[]): FakeName[] => names.filter((one) => one !== name);
        if (name.sheet === null) workbook.names = without(workbook.names);
        else name.sheet.names = without(name.sheet.names);
      },
    },
  },
};

const tablesOf = ({ sheet }: Names, { workbook }: Env): FakeTable[] =>
  sheet === null ? workbook.tables : sheet.tables;
const tableKeyed = (tables: Names, [key = '']: string[], env: Env): FakeTable | null =>
  tablesOf(tables, env).find(
    ({ id, name }) => id === key || name.toLowerCase() === key.toLowerCase(),
  ) ?? null;

const TABLES: ClassMembers = {
  items: { gives: 'Table', of: tablesOf },
  methods: {
    add: {
      since: 3,
      gives: 'Table',
      run: ({ sheet }: Names, args: unknown[], { workbook }): FakeTable => {
        const [area, headed] = args as [Area | string, boolean];
        // A bare address would be one of the sheet in view.
        if (sheet === null || typeof area === 'string') throw new MisuseError('which sheet?');
        if (area.sheet !== sheet) throw invalid('a table of another sheet');
        return addTable(workbook, sheet, only(area), headed);
      },
    },
    getItem: { since: 1, gives: 'Table', run: tableKeyed },
    getItemOrNullObject: { since: 4, gives: 'Table', run: tableKeyed },
  },
};

/** Excel makes text of the headings; the fake refuses what would have to be changed. */
export function addTable(
  workbook: FakeWorkbook,
  sheet: FakeSheet,
  box: Box,
  headed: boolean,
): FakeTable {
  deny(sheet);
  if (!headed || box.bottom === box.top) throw invalid('a table without headings or rows');
  const inTheWay = [...sheet.tables.map((table) => table.box), ...sheet.merges];
  if (inTheWay.some((one) => overlap(one, box))) {
    throw new OfficeError('InvalidOperation', 'a table over a table or merged cells');
  }
  const headings = new Set<string>();
  for (let column = box.left; column <= box.right; column++) {
    const heading = sheet.at(box.top, column)?.value;
    if (typeof heading !== 'string' || headings.has(heading.toLowerCase())) {
      throw invalid(`a heading "${String(heading)}" that Excel would change`);
    }
    headings.add(heading.toLowerCase());
  }
  let number = 1;
  const taken = (): boolean => workbook.tables.some(({ name }) => name === `Table${number}`);
  while (taken()) number += 1;
  const more = { style: 'TableStyleMedium2', showHeaders: true, showTotals: false };
  const table = { id: workbook.newId(), name: `Table${number}`, sheet, box, ...more };
  sheet.tables.push(table);
  return table;
}

const TABLE: ClassMembers = {
  values: {
    id: { since: 1, get: ({ id }: FakeTable) => id },
    name: {
      since: 1,
      get: ({ name }: FakeTable) => name,
      set: (table: FakeTable, name: string, { workbook }) => {
        deny(table.sheet);
        if (name.toLowerCase() !== table.name.toLowerCase()) checkName(name, workbook, null);
        table.name = name;
      },
    },
    showHeaders: { since: 1, get: ({ showHeaders }: FakeTable) => showHeaders },
    showTotals: { since: 1, get: ({ showTotals }: FakeTable) => showTotals },
    style: {
      since: 1,
      set: (table: FakeTable, style: string) => {
        table.style = style;
      },
    },
  },
  parts: {
    rows: { since: 1, gives: 'TableRowCollection' },
    worksheet: { since: 2, gives: 'Worksheet', of: ({ sheet }: FakeTable) => sheet },
  },
  methods: {
    getHeaderRowRange: {
      since: 1,
      gives: 'Range',
      run: ({ sheet, box, showHeaders }: FakeTable) => {
        if (!showHeaders) throw new OfficeError('InvalidOperation', 'a table without headings');
        return areaOf(sheet, { ...box, bottom: box.top });
      },
    },
    getDataBodyRange: {
      since: 1,
      gives: 'Range',
      run: ({ sheet, box, showHeaders, showTotals }: FakeTable) =>
        areaOf(sheet, {
          ...box,
          top: box.top + (showHeaders ? 1 : 0),
          bottom: box.bottom - (showTotals ? 1 : 0),
        }),
    },
  },
};

/** A blank row at the table's end: what stands below in its columns moves down, tables do not. */
function addRow(table: FakeTable): FakeTable {
  const { sheet, box, showTotals } = table;
  deny(sheet);
  const top = box.bottom + (showTotals ? 0 : 1);
  const below = { ...box, top: box.bottom + 1, bottom: Infinity };
  const inTheWay = [...sheet.tables.map((one) => one.box), ...sheet.merges];
  if (inTheWay.some((one) => overlap(one, below))) {
    throw new OfficeError('InvalidOperation', 'a table or merged cells would move');
  }
  const moved = [...sheet.all()]
    .filter(([row, column]) => row >= top && column >= box.left && column <= box.right)
    .sort(([one], [other]) => other - one);
  for (const [row, column, cell] of moved) {
    Object.assign(sheet.make(row + 1, column), cell);
    sheet.remove(row, column);
  }
  for (let column = box.left; column <= box.right; column++) {
    const model = top - 1 > box.top ? sheet.at(top - 1, column) : undefined;
    if (model !== undefined) sheet.make(top, column).look = { ...model.look };
  }
  table.box = { ...box, bottom: box.bottom + 1 };
  return table;
}

const TABLE_ROWS: ClassMembers = {
  methods: {
    add: {
      since: 1,
      run: (table: FakeTable, args: unknown[]) => {
        if (args.length > 0) throw new MisuseError('rows with values: not faked');
        addRow(table);
      },
    },
  },
};

export interface FakeSetting {
  readonly key: string;
  readonly value: unknown;
}

const SETTINGS: ClassMembers = {
  methods: {
    add: {
      since: 4,
      gives: 'Setting',
      run: ({ settings }: FakeWorkbook, [key = '', value]: string[]) => {
        settings.set(key, value);
        return { key, value } satisfies FakeSetting;
      },
    },
    getItemOrNullObject: {
      since: 4,
      gives: 'Setting',
      run: ({ settings }: FakeWorkbook, [key = '']: string[]) =>
        settings.has(key) ? ({ key, value: settings.get(key) } satisfies FakeSetting) : null,
    },
  },
};

export const NAME_CLASSES = {
  NamedItemCollection: NAMES,
  NamedItem: NAME,
  TableCollection: TABLES,
  Table: TABLE,
  TableRowCollection: TABLE_ROWS,
  SettingCollection: SETTINGS,
  Setting: {
    values: { value: { since: 4, get: ({ value }: FakeSetting) => value } },
    methods: {
      delete: {
        since: 4,
        run: ({ key }: FakeSetting, _: never[], { workbook }: Env) => {
          workbook.settings.delete(key);
        },
      },
    },
  },
} as const satisfies Readonly<Record<string, ClassMembers>>;
