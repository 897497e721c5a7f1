/** The command serve: the tool in a page of the browser, from this machine for this machine. */
import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { syntax } from '../core/faults/argument.ts';
import { fault, type Fault } from '../core/faults/fault.ts';
import { parseNumber } from '../core/units/number.ts';
import type { Call, Command, Report } from './command.ts';
import { servePages } from './page-server.ts';
import { reportRefusal } from './report.ts';
import { writeOutput } from './terminal.ts';

const USUAL_PORT = 3000;
const HIGHEST_PORT = 65_535;
const BUILT = fileURLToPath(new URL('../../dist', import.meta.url));
const STOPS = ['SIGINT', 'SIGTERM'] as const;

export const SERVE: Command = {
  name: 'serve',
  summary: 'Serves the page with the spreadsheet and the pane to the browser of this machine.',
  arguments: [],
  options: [
    {
      name: '--port',
      value: 'N',
      says: `The port of its address (${USUAL_PORT}); the next free one where it is in use.`,
    },
    { name: '--folder', value: 'FOLDER', says: 'Where the built page is (dist).' },
  ],
  notes: [
    'Open the address that it prints; Ctrl-C stops it. No other machine can reach it. The page is made by npm run build.',
  ],
  examples: ['', '--port 8080'],
  exits: { 0: 'Stopped by Ctrl-C.', 2: "The call is wrong, or the page isn't built." },
  run: runServe,
};

async function runServe({ values }: Call): Promise<Report> {
  const folder = resolve(values.get('--folder') ?? BUILT);
  const faults: Fault[] = [];
  const port = readPort(values.get('--port'), faults);
  if (!existsSync(join(folder, 'index.html'))) faults.push(fault('page.not-built', 'page', folder));
  if (port === undefined || faults.length > 0) return refuse(faults);
  const server = await servePages(folder, port);
  if (server === undefined) return refuse([fault('page.no-port', syntax('--port'), port)]);
  // Heard before the address is said: whoever reads that may stop it at once.
  const stopped = stopSignal();
  const inUse = server.port === port ? '' : `Port ${port} is not free, so another is taken.\n`;
  writeOutput(`${inUse}Coveledger is at http://localhost:${server.port} until Ctrl-C stops it.\n`);
  await stopped;
  await server.close();
  return { exit: 0, output: 'Stopped.\n', errors: '' };
}

function refuse(faults: readonly Fault[]): Report {
  return reportRefusal(2, { faults, cautions: [] }, false);
}

function readPort(typed: string | undefined, faults: Fault[]): number | undefined {
  if (typed === undefined) return USUAL_PORT;
  const name = syntax('--port');
  const parsed = parseNumber(typed, name);
  if (!parsed.ok) {
    faults.push(...parsed.faults);
    return undefined;
  }
  const { value } = parsed;
  if (!Number.isInteger(value)) faults.push(fault('number.not-whole', name, value));
  else if (value < 1) faults.push(fault('number.too-small', name, value, { limit: 1 }));
  else if (value > HIGHEST_PORT) {
    faults.push(fault('number.too-large', name, value, { limit: HIGHEST_PORT }));
  } else return value;
  return undefined;
}

function stopSignal(): Promise<void> {
  return new Promise((resolve) => {
    const stop = (): void => {
      for (const name of STOPS) process.off(name, stop);
      resolve();
    };
    for (const name of STOPS) process.on(name, stop);
  });
}
