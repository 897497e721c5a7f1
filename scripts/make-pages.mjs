/** The pages and data of the add-in that are no script: each file's name with its content. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

import { writeSawPage } from '../build/exports/shop-view/saw-page.js';
import { readDemoTables } from '../build/cli/demo-job.js';
import { DEVELOPMENT_ORIGIN, OFFICE_ADDRESS } from './addresses.mjs';
import { makeHelpPage } from './help-page.mjs';
import { makeFunctionsJson, makeFunctionsPage } from './make-catalogue.mjs';
import { HELP_POLICY, PAGE_POLICY, panePolicy, withPolicy } from './page-policy.mjs';

const root = join(import.meta.dirname, '..');

/** `office` is where the page takes Microsoft's library from; its own address where absent. */
export async function makePages({ origin, support, office = OFFICE_ADDRESS }) {
  const demo = await readDemoTables();
  if (!demo.ok) throw new Error(demo.faults.map((fault) => fault.message).join('\n'));
  const read = (...path) => readFileSync(join(root, ...path), 'utf8');
  const supportUrl = /(<SupportUrl DefaultValue=")[^"]*"/u;
  return {
    'pane.html': withPolicy(
      read('src', 'pane', 'pane.html').replaceAll(OFFICE_ADDRESS, office),
      panePolicy(office),
    ),
    'index.html': withPolicy(read('src', 'page', 'index.html'), PAGE_POLICY),
    'saw.html': writeSawPage('saw.js'),
    'manifest.xml': read('manifest.xml')
      .replaceAll(DEVELOPMENT_ORIGIN, origin)
      .replace(supportUrl, (_, before) => `${before}${support}"`),
    'functions.json': JSON.stringify(await makeFunctionsJson({ origin }), null, 2),
    'functions.html': withPolicy(await makeFunctionsPage({ support }), HELP_POLICY),
    'help.html': withPolicy(await makeHelpPage(), HELP_POLICY),
    'demo.json': JSON.stringify(demo.value),
  };
}
