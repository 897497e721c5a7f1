#!/usr/bin/env node
/** The program. Everything but the process itself is in run-program.ts. */
import { sayError } from '../core/faults/say-error.ts';
import { BUG_EXIT } from './command.ts';
import { runProgram } from './run-program.ts';
import { hearWriteFailures, onOneLine, writeErrors, writeOutput } from './terminal.ts';

hearWriteFailures();
try {
  const { exit, output, errors } = await runProgram(process.argv.slice(2));
  // Before it is written: an output that fails has the last word.
  process.exitCode = exit;
  writeOutput(output);
  writeErrors(errors);
} catch (error) {
  const what = sayError(error);
  process.exitCode = BUG_EXIT;
  writeErrors(`This is a bug in coveledger: ${onOneLine(what)}\n`);
}
