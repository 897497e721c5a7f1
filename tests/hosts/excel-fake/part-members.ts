/**
 * What the fake knows of custom XML parts, after Microsoft's reference (ExcelApi 1.5): add takes XML
 * that has a root and gives the part; getXml answers with it; a collection by namespace loads items.
 */
import type { ClassMembers } from './members.ts';
import { invalid } from './office-error.ts';
import type { FakeWorkbook, FakeXmlPart } from './workbook-model.ts';

export interface Scope {
  readonly workbook: FakeWorkbook;
  readonly namespace: string;
}

const ROOT =
  /^\s*(?:<\?xml[^>]*\?>)?\s*<([A-Za-z_][\w.-]*)(?: xmlns="([^"]*)")?[^>]*>[^]*<\/\1>\s*$/u;

/** XML 1.0, 2.2. */
function isNoXml(character: string): boolean {
  return (
    (character < ' ' && !'\t\n\r'.includes(character)) ||
    (character > '\uFFFD' && character.length === 1)
  );
}

export const PART_CLASSES = {
  CustomXmlPartCollection: {
    methods: {
      add: {
        since: 5,
        gives: 'CustomXmlPart',
        run: (workbook: FakeWorkbook, [xml = '']: string[]): FakeXmlPart => {
          const [, root, namespaceUri = ''] = ROOT.exec(xml) ?? [];
          if (root === undefined || Array.from(xml).some(isNoXml)) {
            throw invalid('a custom part that is no XML');
          }
          const part = { id: workbook.newId(), namespaceUri, xml, deleted: false };
          workbook.xmlParts.push(part);
          return part;
        },
      },
      getByNamespace: {
        since: 5,
        gives: 'CustomXmlPartScopedCollection',
        run: (workbook: FakeWorkbook, [namespace = '']: string[]): Scope => ({
          workbook,
          namespace,
        }),
      },
    },
  },
  CustomXmlPartScopedCollection: {
    items: {
      gives: 'CustomXmlPart',
      of: ({ workbook, namespace }: Scope) =>
        workbook.xmlParts.filter(({ namespaceUri }) => namespaceUri === namespace),
    },
  },
  CustomXmlPart: {
    values: { id: { since: 5, get: ({ id }: FakeXmlPart) => id } },
    methods: {
      getXml: { since: 5, answers: true, run: ({ xml }: FakeXmlPart) => xml },
      delete: {
        since: 5,
        run: (part: FakeXmlPart, _: unknown, { workbook }) => {
          part.deleted = true;
          workbook.xmlParts = workbook.xmlParts.filter((one) => one !== part);
        },
      },
    },
  },
} as const satisfies Readonly<Record<string, ClassMembers>>;
