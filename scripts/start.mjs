/**
 * npm start: builds what isn't built yet, plans the demo on the command line, then serves the page.
 * Each step says what it is at, since a build takes a while.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const root = join(import.meta.dirname, '..');
const program = join(root, 'build', 'cli', 'main.js');
const modules = join(root, 'node_modules');

/** What the page is made of. */
const SOURCES = ['src', 'scripts', 'assets', 'webpack.config.js', 'package-lock.json'];

function run(...args) {
  const { status, signal } = spawnSync(process.execPath, args, { cwd: root, stdio: 'inherit' });
  if (status !== 0) process.exit(status ?? (signal === 'SIGINT' ? 130 : 1));
}

function isPageStale() {
  const built = join(root, 'dist', 'index.html');
  if (!existsSync(built)) return true;
  const { mtimeMs } = statSync(built);
  return SOURCES.some((name) => newest(join(root, name)) > mtimeMs);
}

function newest(path) {
  const there = statSync(path);
  if (!there.isDirectory()) return there.mtimeMs;
  return Math.max(...readdirSync(path).map((name) => newest(join(path, name))));
}

run(join(modules, 'typescript', 'bin', 'tsc'), '-b');
console.log('Planning the demo job…');
run(program, 'demo');
if (isPageStale()) {
  console.log('\nBuilding the page, which takes about half a minute the first time…');
  run(join(modules, 'webpack', 'bin', 'webpack.js'), '--stats', 'errors-warnings');
}
console.log();
process.argv.splice(2, Infinity, 'serve', ...process.argv.slice(2));
await import(pathToFileURL(program).href);
