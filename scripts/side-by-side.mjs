/** Runs scripts of package.json at the same time, each one's words kept together; fails where one does. */
import { spawn } from 'node:child_process';

function run(name) {
  return new Promise((resolve) => {
    // npm is a batch file on Windows, which only a shell runs.
    const child = spawn(`npm run -s ${name}`, { shell: true, stdio: ['ignore', 'pipe', 'pipe'] });
    const said = [];
    child.stdout.on('data', (chunk) => said.push(chunk));
    child.stderr.on('data', (chunk) => said.push(chunk));
    child.on('close', (status) => {
      console.log(`${name}: ${status === 0 ? 'done' : 'FAILED'}`);
      process.stdout.write(Buffer.concat(said));
      resolve(status === 0);
    });
  });
}

const results = await Promise.all(process.argv.slice(2).map(run));
process.exitCode = results.every(Boolean) ? 0 : 1;
