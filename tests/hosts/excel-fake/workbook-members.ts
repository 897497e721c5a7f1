/** What the fake knows of the workbook and its sheets. */
import { readBox } from './address.ts';
import { areaOf, type Area } from './areas.ts';
import type { ClassMembers, Env } from './members.ts';
import type { Names } from './name-members.ts';
import { invalid, OfficeError } from './office-error.ts';
import { FakeSheet, type FakeWorkbook } from './workbook-model.ts';

function denyStructure(workbook: FakeWorkbook): void {
  if (workbook.isProtected) throw new OfficeError('AccessDenied', 'the structure is protected');
}

function checkSheetName(name: string, workbook: FakeWorkbook, self?: FakeSheet): void {
  const sound =
    name.trim() !== '' && name.length <= 31 && !/[\\/?*[\]:]|^'|'$|^history$/iu.test(name);
  if (!sound) throw invalid(`a sheet can't be called "${name}"`);
  const same = workbook.sheets.find((one) => one.name.toLowerCase() === name.toLowerCase());
  if (same !== undefined && same !== self) {
    throw new OfficeError('ItemAlreadyExists', `a sheet "${name}"`);
  }
}

const WORKBOOK: ClassMembers = {
  values: { name: { since: 7, get: (workbook: FakeWorkbook) => workbook.name } },
  parts: {
    application: { since: 1, gives: 'Application' },
    customXmlParts: { since: 5, gives: 'CustomXmlPartCollection' },
    names: { since: 1, gives: 'NamedItemCollection', of: (): Names => ({ sheet: null }) },
    properties: { since: 7, gives: 'DocumentProperties' },
    protection: { since: 7, gives: 'WorkbookProtection' },
    settings: { since: 4, gives: 'SettingCollection' },
    tables: { since: 1, gives: 'TableCollection', of: (): Names => ({ sheet: null }) },
    worksheets: { since: 1, gives: 'WorksheetCollection' },
  },
  methods: {
    getActiveCell: {
      since: 7,
      gives: 'Range',
      run: ({ active, activeCell }: FakeWorkbook): Area => {
        if (active === null) throw new OfficeError('ItemNotFound', 'no active sheet');
        const { row, column } = activeCell;
        return areaOf(active, { top: row, bottom: row, left: column, right: column });
      },
    },
  },
};

const APPLICATION: ClassMembers = {
  values: {
    calculationMode: { since: 1, get: (workbook: FakeWorkbook) => workbook.calculationMode },
    calculationState: { since: 9, get: (workbook: FakeWorkbook) => workbook.calculationState },
    decimalSeparator: { since: 11, get: (workbook: FakeWorkbook) => workbook.decimalSeparator },
  },
  methods: {
    suspendScreenUpdatingUntilNextSync: {
      since: 9,
      run: (workbook: FakeWorkbook) => {
        workbook.screenSuspended += 1;
      },
    },
  },
};

const WORKSHEETS: ClassMembers = {
  items: { gives: 'Worksheet', of: (workbook: FakeWorkbook) => workbook.sheets },
  methods: {
    add: {
      since: 1,
      gives: 'Worksheet',
      run: (workbook: FakeWorkbook, [name]: string[]): FakeSheet => {
        denyStructure(workbook);
        checkSheetName(name ?? '', workbook);
        const sheet = new FakeSheet(workbook.newId(), name ?? '');
        workbook.sheets.push(sheet);
        return sheet;
      },
    },
    getItem: {
      since: 1,
      gives: 'Worksheet',
      run: (workbook: FakeWorkbook, [key]: string[]) => workbook.sheet(key ?? '') ?? null,
    },
    getItemOrNullObject: {
      since: 4,
      gives: 'Worksheet',
      run: (workbook: FakeWorkbook, [key]: string[]) => workbook.sheet(key ?? '') ?? null,
    },
  },
  events: { onCalculated: 8, onChanged: 9, onSelectionChanged: 9 },
};

const WORKSHEET: ClassMembers = {
  values: {
    id: { since: 1, get: (sheet: FakeSheet) => sheet.id },
    name: {
      since: 1,
      get: (sheet: FakeSheet) => sheet.name,
      set: (sheet: FakeSheet, name: string, { workbook }) => {
        denyStructure(workbook);
        checkSheetName(name, workbook, sheet);
        sheet.name = name;
      },
    },
  },
  parts: {
    freezePanes: { since: 7, gives: 'WorksheetFreezePanes' },
    horizontalPageBreaks: { since: 9, gives: 'PageBreakCollection' },
    names: { since: 4, gives: 'NamedItemCollection', of: (sheet: FakeSheet): Names => ({ sheet }) },
    pageLayout: { since: 9, gives: 'PageLayout' },
    protection: { since: 2, gives: 'WorksheetProtection' },
    shapes: { since: 9, gives: 'ShapeCollection' },
    tables: { since: 1, gives: 'TableCollection', of: (sheet: FakeSheet): Names => ({ sheet }) },
  },
  methods: {
    activate: {
      since: 1,
      run: (sheet: FakeSheet, _, { workbook }) => {
        if (sheet.visibility !== 'Visible') throw invalid(`${sheet.name} is hidden`);
        workbook.active = sheet;
        workbook.activeCell = { row: 0, column: 0 };
      },
    },
    delete: { since: 1, run: deleteSheet },
    getRange: {
      since: 1,
      gives: 'Range',
      run: (sheet: FakeSheet, [address]: string[]) => areaOf(sheet, readBox(address ?? '')),
    },
    getRangeByIndexes: {
      since: 7,
      gives: 'Range',
      run: (sheet: FakeSheet, [top = 0, left = 0, rows = 0, columns = 0]: number[]) => {
        if (rows < 1 || columns < 1 || top < 0 || left < 0) throw invalid('a range of no cells');
        return areaOf(sheet, { top, left, bottom: top + rows - 1, right: left + columns - 1 });
      },
    },
    getRanges: {
      since: 9,
      gives: 'RangeAreas',
      run: (sheet: FakeSheet, [address]: string[]) => areaOf(sheet, address ?? ''),
    },
    getUsedRangeOrNullObject: {
      since: 4,
      gives: 'Range',
      run: (sheet: FakeSheet, [valuesOnly]: boolean[]) => {
        const box = sheet.used(valuesOnly === true);
        return box === null ? null : areaOf(sheet, box);
      },
    },
  },
};

function deleteSheet(sheet: FakeSheet, _: unknown, { workbook }: Env): void {
  denyStructure(workbook);
  const others = workbook.sheets.filter((one) => one !== sheet);
  if (!others.some((one) => one.visibility === 'Visible')) {
    throw new OfficeError('InvalidOperation', 'the last sheet in sight stays');
  }
  sheet.deleted = true;
  workbook.sheets = others;
  if (workbook.active === sheet) workbook.active = others[0] ?? null;
}

const isProtected: ClassMembers = {
  values: {
    protected: { since: 2, get: ({ isProtected: is }: { isProtected: boolean }) => is },
  },
};

const FREEZE: ClassMembers = {
  methods: {
    freezeAt: {
      since: 7,
      run: (sheet: FakeSheet, [area]: Area[]) => {
        const box = area?.boxes[0];
        if (box?.top !== 0 || box.left !== 0) throw invalid('panes that are not at the corner');
        sheet.freeze = { rows: box.bottom + 1, columns: box.right + 1 };
      },
    },
    freezeRows: {
      since: 7,
      run: (sheet: FakeSheet, [rows = 1]: number[]) => {
        sheet.freeze = { rows, columns: 0 };
      },
    },
    freezeColumns: {
      since: 7,
      run: (sheet: FakeSheet, [columns = 1]: number[]) => {
        sheet.freeze = { rows: 0, columns };
      },
    },
  },
};

export const WORKBOOK_CLASSES = {
  Workbook: WORKBOOK,
  Application: APPLICATION,
  WorkbookProtection: {
    values: {
      protected: { since: 7, get: ({ isProtected: is }: FakeWorkbook) => is },
    },
  },
  WorksheetCollection: WORKSHEETS,
  Worksheet: WORKSHEET,
  WorksheetProtection: isProtected,
  WorksheetFreezePanes: FREEZE,
} as const satisfies Readonly<Record<string, ClassMembers>>;
