/** What of a build is loaded when: its parts, how large each may be, and what is kept for use without a network. */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

/**
 * The one table of budgets: kilobytes (1000 bytes, gzip) of all files that a part loads which the parts named
 * under `after` haven't loaded before; a twentieth above what was measured. Raise one only with its reason.
 *
 * - `entry`: a file of webpack's entries; `asks`: what is imported when it is first wanted
 */
export const PARTS = {
  first: { entry: 'page', pages: ['index.html'], budget: 10, why: 'the bar, at once' },
  sheet: {
    asks: './open-page.ts',
    after: ['first'],
    budget: 1965,
    why: 'the grid, its engine and the functions in its cells',
  },
  pane: {
    asks: './start-page-pane.ts',
    after: ['first', 'sheet'],
    budget: 158,
    why: 'React, its look, the pane with its totals and its print view',
  },
  planner: {
    asks: './load-planner.ts',
    after: ['first', 'sheet', 'pane'],
    budget: 60,
    why: 'a job read, judged and planned: wanted by every visit',
  },
  writer: {
    asks: './load-writer.ts',
    after: ['first', 'sheet', 'pane', 'planner'],
    budget: 106,
    why: 'sheets and files of a plan: wanted once one is written',
  },
  worker: { worker: 'plan-worker', budget: 1380, why: 'the stick planner, and HiGHS as wasm' },
  functions: {
    entry: 'main',
    budget: 80,
    why: 'what Excel waits for before a cell answers: matching, reach and the trial cut among it',
  },
  saw: { entry: 'saw', pages: ['saw.html'], budget: 60, why: 'one set-up on a phone' },
  offline: { entry: 'offline', budget: 7.2, why: 'keeps the files of all this' },
};

/** Excel loads these anew each time, or the browser by itself: no worker of ours answers for them. */
export const NEVER_KEPT = ['pane.html', 'functions.json', 'manifest.xml', 'main.js', 'offline.js'];
/** Pictures of the page; the others are Excel's. */
const KEPT_PICTURES = ['icon-32.png'];
const SAW_FILES = ['saw.html', 'saw.js', ...KEPT_PICTURES];

/** Files of each part of PARTS, sorted. */
export function partsOf(compilation) {
  const parts = {};
  for (const [name, { entry, asks, worker, pages = [], after = [] }] of Object.entries(PARTS)) {
    const groups =
      entry !== undefined
        ? [compilation.entrypoints.get(entry)]
        : worker !== undefined
          ? compilation.asyncEntrypoints.filter(({ name: of }) => of === worker)
          : compilation.chunkGroups.filter(({ origins }) =>
              origins.some(({ request }) => request === asks),
            );
    if (groups.length === 0 || groups.includes(undefined)) {
      throw new Error(`The build has no part “${name}” any more: see PARTS.`);
    }
    // A worker has its solver with it, whenever it comes.
    const files = new Set([
      ...pages,
      ...groups.flatMap((group) =>
        (worker === undefined ? [group] : withChildren(group)).flatMap(filesOf),
      ),
    ]);
    for (const before of after) for (const file of parts[before]) files.delete(file);
    parts[name] = [...files].sort();
  }
  return parts;
}

/**
 * What is too large, in sentences; nothing where all is within its budget.
 *
 * @param bytesOf of a file by its name, packed
 */
export function overBudget(parts, bytesOf, budgets = PARTS) {
  return Object.entries(parts).flatMap(([name, files]) => {
    const { budget } = budgets[name];
    const sizes = files.map((file) => [file, bytesOf(file) / 1000]);
    const kilobytes = sizes.reduce((sum, [, size]) => sum + size, 0);
    if (kilobytes <= budget) return [];
    const each = sizes.map(([file, size]) => `${file} ${size.toFixed(1)}`).join(', ');
    return [
      `The part “${name}” of the build is ${kilobytes.toFixed(1)} kB (gzip), above its budget of ${budget} kB: ${each}. Take out what it need not load, or raise it in scripts/bundle-parts.mjs with the reason.`,
    ];
  });
}

export const packedBytes = (folder) => (file) => gzipSync(readFileSync(join(folder, file))).length;

/** The lists that the service worker keeps, with what tells a file from an older one of its name. */
export function offlineFiles(compilation, folder, pages) {
  const ofPage = ['page', 'saw'].flatMap((entry) =>
    withChildren(compilation.entrypoints.get(entry)).flatMap(filesOf),
  );
  const listed = (files) =>
    [...new Set(files)]
      .filter((file) => !NEVER_KEPT.includes(file))
      .sort()
      .map((url) => ({
        url,
        revision: /\.[\da-f]{8}\.\w+$/u.test(url) ? null : hashOf(join(folder, url)),
      }));
  return {
    page: listed([...ofPage, ...pages, ...KEPT_PICTURES]),
    saw: listed(SAW_FILES),
  };
}

const hashOf = (path) => createHash('sha256').update(readFileSync(path)).digest('hex').slice(0, 16);

/** A group, what it asks for later, and the workers that it starts. */
function withChildren(group, seen = new Set()) {
  if (seen.has(group)) return [];
  seen.add(group);
  const next = [...group.childrenIterable, ...group.asyncEntrypointsIterable];
  return [group, ...next.flatMap((one) => withChildren(one, seen))];
}

function filesOf(group) {
  return group.chunks.flatMap((chunk) => [...chunk.files, ...chunk.auxiliaryFiles]);
}
