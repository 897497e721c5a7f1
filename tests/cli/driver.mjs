/**
 * Runs calls of the built program one after the other, and hears what each of them writes: a process for
 * each would take most of the time. Only the process itself is missing: see process-suite.ts.
 */
import { Readable } from 'node:stream';
import { runProgram } from '../../build/cli/run-program.js';
import { writeErrors, writeOutput } from '../../build/cli/terminal.js';

const said = { out: '', err: '' };
process.stdout.write = (text) => ((said.out += text), true);
process.stderr.write = (text) => ((said.err += text), true);

async function answer({ folder, args, input }) {
  Object.assign(said, { out: '', err: '' });
  process.chdir(folder);
  const bytes = Readable.from([Buffer.from(input)]);
  Object.defineProperty(process, 'stdin', { value: bytes, configurable: true });
  try {
    const { exit, output, errors } = await runProgram(args);
    writeOutput(output);
    writeErrors(errors);
    return { exit, ...said };
  } catch (error) {
    return { exit: 'thrown', out: '', err: String(error) };
  }
}

process.on('message', (call) => void answer(call).then((ran) => process.send(ran)));
