/** A look into a workbook's parts, by no library that writes or reads workbooks. */
import { readFileSync } from 'node:fs';
import { strFromU8, unzipSync } from 'fflate';

export interface Parts {
  readonly sheetNames: readonly string[];
  /** Of all sheets. */
  readonly formulas: readonly string[];
  readonly texts: ReadonlySet<string>;
}

export function partsOf(path: string): Parts {
  const files = unzipSync(readFileSync(path));
  const read = (wanted: RegExp): string[] =>
    Object.entries(files).flatMap(([name, bytes]) => (wanted.test(name) ? [strFromU8(bytes)] : []));
  const sheets = read(/^xl\/worksheets\/[^/]+\.xml$/);
  const shared = read(/^xl\/sharedStrings\.xml$/);
  return {
    sheetNames: read(/^xl\/workbook\.xml$/).flatMap((xml) =>
      all(xml, /<sheet [^>]*?name="([^"]*)"/g),
    ),
    formulas: sheets.flatMap((xml) => all(xml, /<f[^>]*>([^<]*)<\/f>/g)),
    texts: new Set([...shared, ...sheets].flatMap((xml) => all(xml, /<t[^>]*>([^<]*)<\/t>/g))),
  };
}

function all(xml: string, pattern: RegExp): string[] {
  return [...xml.matchAll(pattern)].map(([, found = '']) =>
    found
      .replaceAll('&lt;', '<')
      .replaceAll('&gt;', '>')
      .replaceAll('&quot;', '"')
      .replaceAll('&apos;', "'")
      .replaceAll('&#39;', "'")
      .replaceAll('&amp;', '&'),
  );
}
