import { copyFileSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const root = import.meta.dirname;
const output = join(root, 'dist');
/** The address that manifest.xml is written for; --env origin=https://… rewrites it. */
const DEVELOPMENT_ORIGIN = 'https://localhost:3000';

/** Beside the scripts go the page, the icons and the manifest, for any static host. */
class CopyAssets {
  constructor(origin) {
    this.origin = origin;
  }

  apply(compiler) {
    compiler.hooks.afterEmit.tap('CopyAssets', () => {
      mkdirSync(output, { recursive: true });
      copyFileSync(join(root, 'src', 'pane', 'pane.html'), join(output, 'pane.html'));
      for (const name of readdirSync(join(root, 'assets'))) {
        if (name.endsWith('.png')) copyFileSync(join(root, 'assets', name), join(output, name));
      }
      const manifest = readFileSync(join(root, 'manifest.xml'), 'utf8');
      const placed = manifest.replaceAll(DEVELOPMENT_ORIGIN, this.origin);
      writeFileSync(join(output, 'manifest.xml'), placed);
    });
  }
}

export default (env = {}) => {
  const origin =
    typeof env.origin === 'string' ? env.origin.replace(/\/$/, '') : DEVELOPMENT_ORIGIN;
  if (!origin.startsWith('https://')) {
    throw new Error(
      `--env origin=${origin}: an add-in is served from an address that begins with https://`,
    );
  }
  return {
    mode: 'production',
    target: ['web', 'es2022'],
    entry: { pane: join(root, 'src', 'pane', 'pane.ts') },
    output: { path: output, filename: '[name].js', clean: true },
    resolve: { extensions: ['.ts', '.js'] },
    module: {
      rules: [
        {
          test: /\.ts$/,
          use: {
            loader: 'swc-loader',
            options: { jsc: { parser: { syntax: 'typescript' }, target: 'es2022' } },
          },
        },
      ],
    },
    cache: { type: 'filesystem' },
    plugins: [new CopyAssets(origin)],
  };
};
