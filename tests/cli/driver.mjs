/** Runs calls of the built program one after the other: a process for each would take most of the time. */
import { runProgram } from '../../build/cli/run-program.js';

process.on('message', ({ folder, args }) => {
  process.chdir(folder);
  runProgram(args).then(
    ({ exit, output, errors }) => process.send({ exit, out: output, err: errors }),
    (error) => process.send({ exit: 'thrown', out: '', err: String(error) }),
  );
});
