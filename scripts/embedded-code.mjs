/**
 * Code of others within a package's own files: what builds a package may copy another into it, without the
 * other's notice. It is known by a mark in the code, or by who holds its copyright.
 */
import { existsSync, readFileSync } from 'node:fs';
import { BSD_3, MIT, ZLIB } from './license-texts.mjs';

/**
 * Known by `mark`, a piece of code that minifying or porting keeps; what is compiled has none, and names the
 * package that it is in (`of`). HiGHS's own list is its THIRD_PARTY_NOTICES.md: of that, the solver here has
 * pdqsort alone (tests/addin/licenses.test.ts looks for signs of the rest).
 */
export const EMBEDDED = [
  {
    name: 'buffer',
    mark: /INSPECT_MAX_BYTES/u,
    notice: MIT('Feross Aboukhadijeh, and other contributors.'),
  },
  {
    name: 'base64-js',
    mark: /Length must be a multiple of 4/u,
    notice: MIT('2014 Jameson Little'),
  },
  {
    name: 'ieee754',
    mark: /eMax\s*=\s*\(1\s*<<\s*eLen\)/u,
    notice: BSD_3('2008, Fair Oaks Labs, Inc.'),
  },
  {
    name: 'lodash',
    mark: /reIsDeepProp|reIsNative/u,
    notice: MIT(
      'OpenJS Foundation and other contributors <https://openjsf.org/>. Based on Underscore.js, copyright Jeremy Ashkenas, DocumentCloud and Investigative Reporters & Editors <http://underscorejs.org/>',
    ),
  },
  {
    name: 'process',
    mark: /setTimeout has not been defined/u,
    notice: MIT('2013 Roman Shtylman <shtylman@gmail.com>'),
  },
  {
    name: 'events',
    mark: /Possible EventEmitter memory leak/u,
    notice: MIT('Joyent, Inc. and other Node contributors.'),
  },
  { name: 'lie', mark: /handlers\.(?:resolve|reject)\s*=/u, notice: MIT('2014 Calvin Metcalf') },
  {
    name: 'immediate',
    mark: /scheduleDrain/u,
    notice: MIT('2012 Barnesandnoble.com, llc, Donavon West, Domenic Denicola, Brian Cavalier'),
  },
  {
    name: 'base64-arraybuffer',
    mark: /niklasvh\/base64-arraybuffer/u,
    notice: MIT('2012 Niklas von Hertzen'),
  },
  {
    name: 'clsx',
    mark: /github\.com\/lukeed\/clsx/u,
    notice: MIT('Luke Edwards <luke.edwards05@gmail.com> (lukeed.com)'),
  },
  {
    name: 'tiny-inflate, unicode-trie, linebreak',
    mark: /TINF_DATA_ERROR/u,
    notice: MIT('2015-present Devon Govett'),
  },
  {
    name: '@oxc-project/runtime, after @babel/helpers',
    mark: /@oxc-project\+runtime/u,
    notice: MIT(
      '2024-present VoidZero Inc. & Contributors; 2014-present Sebastian McKenzie and other contributors',
    ),
  },
  {
    name: 'diff-match-patch',
    mark: /Copyright 2006 Google Inc\./u,
    notice: 'Copyright 2006 Google Inc.\n\nUnder the Apache License, Version 2.0, as above.',
  },
  { name: 'pdqsort', of: 'highs', notice: ZLIB('2021 Orson Peters') },
  { name: 'cuPDLP-C', of: 'highs', notice: MIT('2023 COPT-Public') },
  { name: 'IPX and BASICLU', of: 'highs', notice: MIT('2016-2018 ERGO-Code') },
  {
    name: 'Emscripten, its runtime',
    of: 'highs',
    notice: `${MIT('2010-2014 Emscripten authors, see AUTHORS file.')}\n\nParts of its handling of paths are Node.js's: Copyright Joyent, Inc. and other Node contributors, under the same license.`,
  },
  { name: 'musl', of: 'highs', notice: MIT('2005-2020 Rich Felker, et al.') },
];

/** A line of a comment that names who holds the copyright. */
const CLAIM = /\b[Cc]opyright:?\s+(?:\([Cc]\)|©|\d{4}|\p{Lu})|\([Cc]\)\s*\d{4}|©\s*\d{4}/u;
const COMMENT = /\/\*[\s\S]*?\*\/|\/\/[^\n]*/gu;
const SCRIPT = /\.[cm]?js$/u;

/** What of others is in a package's bundled files. */
export function embeddedIn({ name, files }) {
  const texts = scriptsOf(files);
  return EMBEDDED.filter((one) => {
    if (one.of !== undefined) return one.of === name;
    // A package is not embedded in itself.
    return !isItself(one.name, name) && texts.some((text) => one.mark.test(text));
  });
}

const isItself = (known, name) => known.split(', ').includes(name.replace(/-es$/u, ''));

/**
 * Who claims a copyright in a package's bundled files and is not in what is told of it.
 *
 * @param told all that is told of the package
 * @returns the lines that claim it
 */
export function untoldClaims({ files }, told) {
  const known = plain(told);
  const claims = scriptsOf(files).flatMap((text) =>
    [...text.matchAll(COMMENT)].flatMap(([comment]) =>
      comment.split('\n').filter((line) => CLAIM.test(line)),
    ),
  );
  return [...new Set(claims)].filter((line) => !known.includes(holderIn(line)));
}

/** Two words of whoever holds it: without signs, years and what stands around. */
function holderIn(line) {
  const after = plain(line.replace(/^.*(?:copyright|\(c\)|©)/iu, ''));
  return after
    .replace(/\b(?:\d{4}|present|all rights reserved|c)\b/gu, ' ')
    .trim()
    .split(/\s+/u)
    .slice(0, 2)
    .join(' ');
}

const plain = (text) => text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, ' ');

function scriptsOf(files) {
  return files
    .filter((file) => SCRIPT.test(file) && existsSync(file))
    .map((file) => readFileSync(file, 'utf8'));
}
