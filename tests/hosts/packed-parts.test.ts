import { expect, test } from '@jest/globals';
import { strToU8, unzipSync, zipSync } from 'fflate';
import { packedParts, packPart, zipParts } from '../../src/hosts/zip/packed-parts.ts';

const PARTS = {
  'xl/long.xml': strToU8('<c>again</c>'.repeat(500)),
  'xl/wörter 🏠.xml': strToU8('<t>Stube</t>'),
  'media/picture.png': Uint8Array.from({ length: 300 }, (_, at) => (at * 97) % 251),
  empty: new Uint8Array(),
};

test('parts packed here are read by another program’s reader, byte by byte and under their names', () => {
  const zip = zipParts(Object.entries(PARTS).map(([name, bytes]) => packPart(name, bytes)));
  expect(unzipSync(zip)).toEqual(PARTS);
});

test('parts of another zip go along as they lie in it, stored or deflated, beside a new one', () => {
  const other = zipSync({
    ...PARTS,
    'media/picture.png': [PARTS['media/picture.png'], { level: 0 }],
  });
  const parts = packedParts(other);
  expect([...parts.keys()].sort()).toEqual(Object.keys(PARTS).sort());
  expect(parts.get('media/picture.png')).toMatchObject({ method: 0, size: 300 });
  const more = packPart('xl/long.xml', strToU8('short'));
  const zip = zipParts([...new Map([...parts, ['xl/long.xml', more]]).values()]);
  expect(unzipSync(zip)).toEqual({ ...PARTS, 'xl/long.xml': strToU8('short') });
  // The very same bytes, not packed again.
  const kept = packedParts(zip).get('media/picture.png')!;
  expect(kept.packed).toEqual(parts.get('media/picture.png')!.packed);
});

test('the same parts give the same bytes, and what is no plain zip is refused', () => {
  const zip = (): Uint8Array => zipParts([packPart('a', strToU8('b'))]);
  expect(zip()).toEqual(zip());
  expect(() => packedParts(strToU8('PK, but no zip of any kind'))).toThrow(/no plain zip/u);
});
