/** What the fake knows of the workbook's own properties (Office.js, DocumentProperties). */
import type { ClassMembers } from './members.ts';
import { OfficeError } from './office-error.ts';
import type { FakeProperty, FakeWorkbook } from './workbook-model.ts';

/** Excel trims longer keys and texts, but in a browser. */
const LONGEST = 255;

const find = ({ properties }: FakeWorkbook, key: string): FakeProperty | undefined =>
  properties.find((one) => one.key.toLowerCase() === key.toLowerCase());

const CUSTOM: ClassMembers = {
  items: { gives: 'CustomProperty', of: ({ properties }: FakeWorkbook) => properties },
  methods: {
    add: {
      since: 7,
      gives: 'CustomProperty',
      run: (workbook: FakeWorkbook, [key = '', value]: string[]) => {
        if (key.trim() === '') throw new OfficeError('InvalidArgument', 'a property without a key');
        const text: unknown = value;
        const held = typeof text === 'string' ? text.slice(0, LONGEST) : text;
        const there = find(workbook, key.slice(0, LONGEST));
        if (there !== undefined) {
          there.value = held;
          return there;
        }
        const made: FakeProperty = { key: key.slice(0, LONGEST), value: held, deleted: false };
        workbook.properties.push(made);
        return made;
      },
    },
    getItem: {
      since: 7,
      gives: 'CustomProperty',
      run: (workbook: FakeWorkbook, [key = '']: string[]) => find(workbook, key) ?? null,
    },
  },
};

const PROPERTY: ClassMembers = {
  values: {
    key: { since: 7, get: ({ key }: FakeProperty) => key },
    value: { since: 7, get: ({ value }: FakeProperty) => value },
  },
  methods: {
    delete: {
      since: 7,
      run: (property: FakeProperty, _, { workbook }) => {
        property.deleted = true;
        workbook.properties.splice(workbook.properties.indexOf(property), 1);
      },
    },
  },
};

export const PROPERTY_CLASSES = {
  DocumentProperties: {
    parts: { custom: { since: 7, gives: 'CustomPropertyCollection' } },
  },
  CustomPropertyCollection: CUSTOM,
  CustomProperty: PROPERTY,
} as const satisfies Readonly<Record<string, ClassMembers>>;
