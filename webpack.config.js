import { copyFileSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

import Styles from 'mini-css-extract-plugin';
import Minimizer from 'terser-webpack-plugin';

import { OFFICE_ADDRESS, readAddresses } from './scripts/addresses.mjs';
import { offlineFiles, overBudget, packedBytes, partsOf } from './scripts/bundle-parts.mjs';
import { saySideload } from './scripts/say-sideload.mjs';
import {
  bundledFiles,
  LICENSES_FILE,
  packagesOf,
  sayLicenses,
} from './scripts/third-party-licenses.mjs';

const root = import.meta.dirname;

/** For development without internet: the dev server hands out the npm package's copy under it. */
const LOCAL_OFFICE_FOLDER = 'office-js';
const LOCAL_OFFICE = join(root, 'node_modules', '@microsoft', 'office-js', 'dist');

const SOLVER = join(root, 'node_modules', 'highs');

/** Beside the scripts go the page, icons, manifest, functions' metadata, their help and the demo. */
class MakePages {
  constructor(addresses, output) {
    this.addresses = addresses;
    this.output = output;
  }

  apply(compiler) {
    const { addresses, output } = this;
    compiler.hooks.afterEmit.tapPromise('MakePages', async (compilation) => {
      mkdirSync(output, { recursive: true });
      // Loaded here, since it needs what the compiler makes of src.
      const { makePages } = await import('./scripts/make-pages.mjs');
      const pages = await makePages(addresses);
      for (const [name, content] of Object.entries(pages)) {
        writeFileSync(join(output, name), content);
      }
      // They ask to go along with what is made of them.
      const packages = packagesOf([
        ...bundledFiles(compilation),
        join(SOLVER, 'build', 'highs.wasm'),
        // Its runtime loads the chunks.
        join(root, 'node_modules', 'webpack', 'lib', 'index.js'),
      ]);
      writeFileSync(join(output, LICENSES_FILE), sayLicenses(packages));
      for (const name of readdirSync(join(root, 'assets'))) {
        if (/\.(?:png|svg)$/u.test(name))
          copyFileSync(join(root, 'assets', name), join(output, name));
      }
      const kept = JSON.stringify(offlineFiles(compilation, output, Object.keys(pages)));
      const worker = join(output, 'offline.js');
      writeFileSync(worker, `self.OFFLINE_FILES=${kept};\n${readFileSync(worker, 'utf8')}`);
      const tooLarge = overBudget(partsOf(compilation), packedBytes(output));
      // While somebody works on it, it is said; a build for a host, and npm test, stop.
      const say = compiler.watchMode ? compilation.warnings : compilation.errors;
      for (const words of tooLarge) say.push(new Error(words));
    });
  }
}

export default async (env = {}) => {
  const office = env.office === 'local' ? `${LOCAL_OFFICE_FOLDER}/office.js` : OFFICE_ADDRESS;
  const addresses = { ...readAddresses(env), office };
  const output = resolve(root, env.folder ?? 'dist');
  return {
    mode: 'production',
    target: ['web', 'es2022'],
    entry: {
      main: join(root, 'src', 'addin', 'main.ts'),
      page: join(root, 'src', 'page', 'main.ts'),
      saw: join(root, 'src', 'browser', 'saw', 'main.ts'),
      offline: join(root, 'src', 'browser', 'offline', 'worker.ts'),
    },
    output: {
      path: output,
      filename: '[name].js',
      chunkFilename: '[name].[contenthash:8].js',
      assetModuleFilename: '[name].[contenthash:8][ext]',
      clean: true,
    },
    resolve: {
      extensions: ['.ts', '.tsx', '.js'],
      // The solver as a script: as a module it would be built with its path on this machine in it.
      alias: { highs$: join(SOLVER, 'build', 'highs.js') },
    },
    // It asks for these where Node runs it, which is never here.
    externals: { 'node:fs': 'var {}', 'node:path': 'var {}', 'node:crypto': 'var {}' },
    module: {
      rules: [
        {
          test: /\.tsx?$/,
          use: {
            loader: 'swc-loader',
            options: {
              jsc: {
                parser: { syntax: 'typescript', tsx: true },
                target: 'es2022',
                transform: { react: { runtime: 'automatic' } },
              },
            },
          },
        },
        { test: /\.css$/, use: [Styles.loader, 'css-loader'] },
        // The grid's packages leave out the endings of what they import.
        { test: /\.m?js$/, include: /@univerjs/, resolve: { fullySpecified: false } },
      ],
    },
    optimization: {
      minimizer: [new Minimizer({ minify: Minimizer.swcMinify, extractComments: false })],
    },
    cache: { type: 'filesystem' },
    performance: { hints: false },
    plugins: [
      new MakePages(addresses, output),
      new Styles({ filename: '[name].css', chunkFilename: '[name].[contenthash:8].css' }),
    ],
    devServer: env.WEBPACK_SERVE === true ? await devServer(env, output) : undefined,
  };
};

/** https with this machine's own development certificate: Excel loads an add-in from nothing else. */
async function devServer(env, output) {
  const { origin } = readAddresses(env);
  const { port } = new URL(origin);
  const local = { directory: LOCAL_OFFICE, publicPath: `/${LOCAL_OFFICE_FOLDER}`, watch: false };
  return {
    // This machine alone.
    host: 'localhost',
    port,
    server: { type: 'https', options: await developmentCertificate() },
    headers: { 'Access-Control-Allow-Origin': '*' },
    static: [{ directory: output, watch: false }, ...(env.office === 'local' ? [local] : [])],
    devMiddleware: { writeToDisk: true },
    client: false,
    hot: false,
    liveReload: false,
    onListening: () => console.log(saySideload(origin, join(output, 'manifest.xml'))),
  };
}

/** Where the machine doesn't take the certificate as trusted, it is used all the same, and said so. */
async function developmentCertificate() {
  const { getHttpsServerOptions, certificateDirectory } = {
    ...(await import('office-addin-dev-certs')).default,
    ...(await import('office-addin-dev-certs/lib/defaults.js')).default,
  };
  try {
    return await getHttpsServerOptions();
  } catch (error) {
    const part = (name) => readFileSync(join(certificateDirectory, name));
    console.warn(
      `${error.message.trim()}\nThe certificate in ${certificateDirectory} is used untrusted: open the ` +
        `address in the browser once and accept it. Excel for Windows and Mac need it trusted.`,
    );
    return { ca: part('ca.crt'), cert: part('localhost.crt'), key: part('localhost.key') };
  }
}
