/** The license texts of every package whose code is in the bundle: they go along with it, in one file. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { embeddedIn, untoldClaims } from './embedded-code.mjs';
import { MIT } from './license-texts.mjs';

export const LICENSES_FILE = 'third-party-licenses.txt';

/** What a bundle may hold without opening its own source; anything else stops the build. */
const PERMISSIVE = new Set([
  ...['MIT', 'MIT-0', 'ISC', 'BSD-2-Clause', 'BSD-3-Clause', '0BSD', 'Apache-2.0'],
  ...['BlueOak-1.0.0', 'CC0-1.0', 'Unlicense', 'Zlib', 'Python-2.0'],
]);
const TEXT_FILE = /^(?:licen[cs]e|copying|notice)(?:$|[.-](?!.*\.(?:js|ts|json)$))/iu;
const SEPARATOR = '='.repeat(80);

/**
 * The files that a compilation put into its chunks, those that were joined into one module among them.
 *
 * @returns absolute paths
 */
export function bundledFiles({ modules, chunkGraph }) {
  const files = new Set();
  const add = (module) => {
    const file = module.nameForCondition?.();
    if (typeof file === 'string') files.add(file);
    for (const inner of module.modules ?? []) add(inner);
  };
  for (const module of modules) {
    if (chunkGraph.getNumberOfModuleChunks(module) > 0) add(module);
  }
  return [...files];
}

/**
 * The packages that files come from.
 *
 * @returns folder, name, version, license and those files of each, by name
 */
export function packagesOf(files) {
  const found = new Map();
  for (const file of files) {
    if (!/[\\/]node_modules[\\/]/u.test(file)) continue;
    const one = packageAbove(dirname(file));
    const key = `${one.name}@${one.version}`;
    found.set(key, { ...one, files: [...(found.get(key)?.files ?? []), file] });
  }
  return [...found.values()].sort((a, b) =>
    `${a.name}@${a.version}` < `${b.name}@${b.version}` ? -1 : 1,
  );
}

/** Some packages have a package.json without a name in a folder of theirs. */
function packageAbove(folder) {
  const path = join(folder, 'package.json');
  if (existsSync(path)) {
    const { name, version, license, author, repository } = JSON.parse(readFileSync(path, 'utf8'));
    if (name !== undefined && version !== undefined) {
      return { folder, name, version, license, author, repository };
    }
  }
  if (dirname(folder) === folder) throw new Error(`No package holds ${folder}.`);
  return packageAbove(dirname(folder));
}

/**
 * One file for all of them, code of others that they embed included.
 *
 * @throws Error naming each package whose license isn't known to be permissive, and whoever claims a
 *   copyright in one and isn't told of
 */
export function sayLicenses(packages) {
  const wrong = packages.filter((one) => !isPermissive(licenseOf(one)));
  if (wrong.length > 0) {
    const said = wrong.map((one) => `${one.name} ${one.version} (${licenseOf(one) ?? 'none'})`);
    throw new Error(`No license that a bundle may hold: ${said.join(', ')}.`);
  }
  const parts = packages.map((one) => {
    const head = `${one.name} ${one.version}\nLicense: ${licenseOf(one)}`;
    const told = [textOf(one, packages).trim(), ...embeddedIn(one).map(sayEmbedded)].join('\n\n');
    const untold = untoldClaims(one, `${holderOf(one)} ${told}`);
    if (untold.length > 0) {
      throw new Error(
        `${one.name} ${one.version} holds code whose notice is missing (add it in embedded-code.mjs): ${untold.join(' | ')}`,
      );
    }
    return `${head}\n\n${told}\n`;
  });
  const intro = `These pages hold code of ${packages.length} packages, under the licenses below.\n`;
  return [intro, ...parts].join(`\n${SEPARATOR}\n`).replace(/\r\n?/gu, '\n');
}

/** As the package declares it, or as its text begins where it declares nothing. */
export function licenseOf(one) {
  if (typeof one.license === 'string') return one.license;
  const text = textsIn(one.folder).join('\n');
  if (/^\s*Apache License\s+Version 2\.0/u.test(text)) return 'Apache-2.0';
  return /^\s*(?:The )?MIT License/u.test(text) ? 'MIT' : undefined;
}

/** A choice is permissive where one of its licenses is, a sum where all are. */
export function isPermissive(license) {
  if (license === undefined) return false;
  const bare = license.replace(/[()]/gu, '');
  if (bare.includes(' AND ') && bare.includes(' OR ')) return false;
  if (bare.includes(' OR ')) return bare.split(' OR ').some((one) => PERMISSIVE.has(one.trim()));
  return bare.split(' AND ').every((one) => PERMISSIVE.has(one.trim()));
}

function textsIn(folder) {
  return readdirSync(folder)
    .filter((name) => TEXT_FILE.test(name))
    .sort()
    .map((name) => readFileSync(join(folder, name), 'utf8'));
}

function sayEmbedded({ name, notice }) {
  return `Holds code of ${name}:\n\n${notice}`;
}

/** Its own; where it has none, that of its license. */
function textOf(one, all) {
  const own = textsIn(one.folder);
  if (own.length > 0) return own.join('\n\n');
  const license = licenseOf(one);
  // It asks for its text and the notice; some of its packages publish neither.
  if (license === 'MIT') return MIT(holderOf(one));
  // The text of Apache-2.0 is the same for all; its notice names whoever holds the rights.
  const same = all.find(
    (other) => licenseOf(other) === license && textsIn(other.folder).length > 0,
  );
  if (same === undefined) throw new Error(`${one.name} has no text of its license, ${license}.`);
  return `Copyright ${holderOf(one)}\n\n${textsIn(same.folder).join('\n\n')}`;
}

function holderOf({ name, author }) {
  const said = typeof author === 'string' ? author : author?.name;
  return said?.replace(/\s*<[^>]*>/u, '') ?? `the authors of ${name}`;
}
