/** The build that the browser tests open: what a person would upload to their host. */
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..', '..');

/**
 * The folder of the build: dist, or PAGES of the environment, which is taken as it is.
 * @throws Error where there is no build, or one older than the sources.
 */
export function builtPages(): string {
  const given = process.env['PAGES'];
  if (given !== undefined) return given;
  const folder = join(root, 'dist');
  const built = join(folder, 'demo.json');
  const newest = Math.max(
    ...readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' }).map(
      (name) => statSync(join(root, 'src', name)).mtimeMs,
    ),
  );
  if (!existsSync(built) || statSync(built).mtimeMs < newest) {
    throw new Error('dist/ is missing or older than src/. Run npm run build first.');
  }
  return folder;
}
