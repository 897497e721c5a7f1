/**
 * npm run catalogue: writes src/functions/catalogue.ts and the list of functions in README.md from
 * the functions' own comments. With --check it writes nothing, says what is out of date, and ends
 * with 1. The build takes functions.json and functions.html from here too.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import metadata from 'custom-functions-metadata';
import ts from 'typescript';
import { describePage } from './functions-page.mjs';

export const NAMESPACE = 'COVE';
const root = join(import.meta.dirname, '..');
const folder = join(root, 'src', 'functions', 'worksheet');
const cataloguePath = join(root, 'src', 'functions', 'catalogue.ts');
const readmePath = join(root, 'README.md');
const BEGIN = '<!-- functions: made by npm run catalogue -->';
const END = '<!-- /functions -->';
const LINE_WIDTH = 100;

/** The metadata of every function with its file, its JavaScript name and its example, by name. */
export async function readFunctions() {
  const files = readdirSync(folder).filter((name) => name.endsWith('.ts'));
  const found = [];
  for (const file of files) {
    const path = join(folder, file);
    const { metadataJson, associate, errors } =
      await metadata.generateCustomFunctionsMetadata(path);
    if (errors.length > 0) throw new Error(`${file}: ${errors.join(' ')}`);
    if (associate.length !== 1) {
      throw new Error(
        `${file} has ${associate.length} functions with @customfunction; 1 is wanted.`,
      );
    }
    const [made] = JSON.parse(metadataJson).functions;
    const { functionName } = associate[0];
    const example = exampleOf(readFileSync(path, 'utf8'), functionName);
    if (example === '') throw new Error(`${file}: ${functionName} has no @example.`);
    found.push({ ...oneLine(made), file, functionName, example });
  }
  return found.sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** functions.json, with the addresses of its help at `origin` (https://…, no slash at its end). */
export async function makeFunctionsJson({ origin }) {
  const functions = await readFunctions();
  return {
    allowCustomDataForDataTypeAny: true,
    // One error cell in a range spoils its own row, not the whole call.
    allowErrorForDataTypeAny: true,
    functions: functions.map(({ id, name, description, helpUrl, parameters, result, options }) => ({
      id,
      name,
      description,
      helpUrl: `${origin}/${helpUrl}`,
      parameters,
      result: { type: 'any', ...result },
      ...(options === undefined ? {} : { options }),
    })),
  };
}

/** functions.html: the help that functions.json points to. Needs the build of src/sheets. */
export async function makeFunctionsPage({ support } = {}) {
  const built = join(root, 'build', 'sheets', 'words', 'standing-cautions.js');
  const { standingCautions } = await import(pathToFileURL(built).href);
  return describePage(await readFunctions(), {
    namespace: NAMESPACE,
    cautions: standingCautions(),
    support,
  });
}

/** What a function is called with: COVE.APPROACH(width, depth, [offCenter]). */
export function signatureOf({ name, parameters }) {
  const said = parameters.map((one) => (one.optional === true ? `[${one.name}]` : one.name));
  return `${NAMESPACE}.${name}(${said.join(', ')})`;
}

/** The text of catalogue.ts. */
export function describeCatalogue(functions) {
  const imports = functions.map(
    ({ functionName, file }) => `import { ${functionName} } from './worksheet/${file}';`,
  );
  const entries = functions.map((made) =>
    [
      '  {',
      `    id: ${quote(made.id)},`,
      `    name: ${quote(`${NAMESPACE}.${made.name}`)},`,
      `    description: ${quote(made.description)},`,
      '    parameters: [',
      ...made.parameters.map(
        ({ name, description, optional }) =>
          `      { name: ${quote(name)}, optional: ${optional === true}, description: ${quote(description)} },`,
      ),
      '    ],',
      `    example: ${quote(made.example)},`,
      `    call: ${made.functionName},`,
      '  },',
    ].join('\n'),
  );
  return [
    "/** Made by npm run catalogue from the functions' own comments: change those, not this. */",
    "import type { CatalogueEntry } from './catalogue-entry.ts';",
    ...imports,
    '',
    '// A line an argument, so that a change reads as one.',
    '// prettier-ignore',
    'export const CATALOGUE: readonly CatalogueEntry[] = [',
    ...entries,
    '];',
    '',
  ].join('\n');
}

/** README.md with the list of functions between its markers; undefined where it has none. */
export function describeReadme(readme, functions) {
  const begin = readme.indexOf(BEGIN);
  const end = readme.indexOf(END, begin);
  if (begin < 0 || end < 0) return undefined;
  const list = functions.map((made) => wrap(`\`${signatureOf(made)}\`: ${made.description}`));
  return `${readme.slice(0, begin + BEGIN.length)}\n\n${list.join('\n')}\n\n${readme.slice(end)}`;
}

function exampleOf(source, functionName) {
  const file = ts.createSourceFile('function.ts', source, ts.ScriptTarget.Latest, true);
  const made = file.statements.find(
    (one) => ts.isFunctionDeclaration(one) && one.name?.text === functionName,
  );
  const tag = made && ts.getJSDocTags(made).find((one) => one.tagName.text === 'example');
  return (ts.getTextOfJSDocComment(tag?.comment) ?? '').trim();
}

/** Comments are broken into lines for their file; what is made of them isn't. */
function oneLine(made) {
  const join = (text = '') => text.replace(/\s*\n\s*/gu, ' ').trim();
  return {
    ...made,
    description: join(made.description),
    parameters: made.parameters.map((one) => ({ ...one, description: join(one.description) })),
  };
}

function quote(text) {
  const escaped = text.replaceAll('\\', '\\\\');
  return escaped.includes("'") && !escaped.includes('"')
    ? `"${escaped}"`
    : `'${escaped.replaceAll("'", "\\'")}'`;
}

/** A list item in lines of at most LINE_WIDTH; what stands in backquotes is never broken. */
function wrap(item) {
  const [first, ...words] = item.match(/`[^`]*`\S*|\S+/gu) ?? [];
  const lines = [`- ${first}`];
  for (const word of words) {
    const longer = `${lines.at(-1)} ${word}`;
    if (longer.length > LINE_WIDTH) lines.push(`  ${word}`);
    else lines[lines.length - 1] = longer;
  }
  return lines.join('\n');
}

/** What is out of date, by file; each with the text that it should have. */
export async function findStale() {
  const functions = await readFunctions();
  const readme = readFileSync(readmePath, 'utf8');
  const wantedReadme = describeReadme(readme, functions);
  let catalogue = '';
  try {
    catalogue = readFileSync(cataloguePath, 'utf8');
  } catch (missing) {
    if (missing.code !== 'ENOENT') throw missing;
  }
  const wantedCatalogue = describeCatalogue(functions);
  return {
    noMarkers: wantedReadme === undefined,
    stale: [
      {
        path: cataloguePath,
        name: 'src/functions/catalogue.ts',
        old: catalogue,
        text: wantedCatalogue,
      },
      { path: readmePath, name: 'README.md', old: readme, text: wantedReadme ?? readme },
    ].filter(({ old, text }) => old !== text),
  };
}

const HEADINGS_BEGIN = '<!-- headings: made by npm run catalogue -->';
const HEADINGS_END = '<!-- /headings -->';

/** README.md with the input tables' headings between their markers, out of the built planning layer. */
async function withHeadings(readme) {
  const built = join(root, 'build', 'planning', 'input', 'headings', 'say-headings.js');
  const { describeHeadings } = await import(pathToFileURL(built).href);
  const begin = readme.indexOf(HEADINGS_BEGIN);
  const end = readme.indexOf(HEADINGS_END, begin);
  if (begin < 0 || end < 0) throw new Error(`README.md lacks the line ${HEADINGS_BEGIN}.`);
  const list = describeHeadings(LINE_WIDTH);
  return `${readme.slice(0, begin + HEADINGS_BEGIN.length)}\n\n${list}\n\n${readme.slice(end)}`;
}

async function main(check) {
  const { noMarkers, stale } = await findStale();
  if (noMarkers)
    console.error(
      `README.md lacks the lines ${BEGIN} and ${END}: its list of functions is not made.`,
    );
  for (const { path, name, text } of stale) {
    if (check) console.error(`${name} is out of date: npm run catalogue.`);
    else writeFileSync(path, text);
  }
  const readme = readFileSync(readmePath, 'utf8');
  const wanted = await withHeadings(readme);
  if (!check && wanted !== readme) writeFileSync(readmePath, wanted);
  if (!check)
    console.log(
      stale.length === 0
        ? 'All is up to date.'
        : `Written: ${stale.map(({ name }) => name).join(', ')}.`,
    );
  process.exitCode = (check && stale.length > 0) || noMarkers ? 1 : 0;
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  await main(process.argv.includes('--check'));
}
