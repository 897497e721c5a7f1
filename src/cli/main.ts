#!/usr/bin/env node
/** The program. Everything but the process itself is in run-program.ts. */
import { sayError } from '../core/faults/say-error.ts';
import { BUG_EXIT } from './command.ts';
import { onOneLine } from './report.ts';
import { runProgram } from './run-program.ts';

// Whoever reads the output may stop early (a pager, say): that is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

try {
  const { exit, output, errors } = await runProgram(process.argv.slice(2));
  process.stdout.write(output);
  process.stderr.write(errors);
  process.exitCode = exit;
} catch (error) {
  const what = sayError(error);
  process.stderr.write(`This is a bug in coveledger: ${onOneLine(what)}\n`);
  process.exitCode = BUG_EXIT;
}
