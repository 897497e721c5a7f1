/** Makes one script of a file beside this one, for a page to run. */
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type Webpack from 'webpack';

/** Imported, it would warn of each of its old names. */
const webpack = createRequire(import.meta.url)('webpack') as typeof Webpack;

const FILE = 'script.js';
const jsc = { parser: { syntax: 'typescript' }, target: 'es2022' };

/** @param name of the file, without its ending */
export async function bundleScript(name: string): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'coveledger-script-'));
  try {
    await new Promise<void>((resolve, reject) => {
      webpack(
        {
          // What ships, and half the time of React made for finding faults; readable where it fails.
          mode: 'production',
          devtool: false,
          target: ['web', 'es2022'],
          entry: join(import.meta.dirname, `${name}.ts`),
          output: { path: folder, filename: FILE },
          resolve: { extensions: ['.ts', '.js'] },
          module: {
            rules: [
              { test: /\.ts$/u, loader: 'swc-loader', options: { jsc } },
              { test: /\.css$/u, type: 'asset/source' },
              // The grid's packages leave out the endings of what they import.
              { test: /\.m?js$/u, include: /@univerjs/u, resolve: { fullySpecified: false } },
            ],
          },
          // One script, also of what it would load later.
          optimization: { splitChunks: false, minimize: false, concatenateModules: false },
          plugins: [new webpack.optimize.LimitChunkCountPlugin({ maxChunks: 1 })],
        },
        (error, stats) => {
          if (error !== null) reject(error);
          else if (stats?.hasErrors() === true) reject(new Error(stats.toString('errors-only')));
          else resolve();
        },
      );
    });
    return await readFile(join(folder, FILE), 'utf8');
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
