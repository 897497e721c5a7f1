/**
 * Runs scripts of package.json at the same time; fails where one does. The last one speaks as it runs;
 * what the others say is kept together and comes after it.
 */
import { spawn } from 'node:child_process';

function run(name, isLoud) {
  const started = performance.now();
  return new Promise((resolve) => {
    // npm is a batch file on Windows, which only a shell runs.
    const child = spawn(`npm run -s ${name}`, {
      shell: true,
      stdio: ['ignore', isLoud ? 'inherit' : 'pipe', isLoud ? 'inherit' : 'pipe'],
    });
    const said = [];
    child.stdout?.on('data', (chunk) => said.push(chunk));
    child.stderr?.on('data', (chunk) => said.push(chunk));
    child.on('close', (status) => {
      const seconds = Math.round((performance.now() - started) / 1000);
      resolve({ name, isGood: status === 0, said: Buffer.concat(said), seconds });
    });
  });
}

const names = process.argv.slice(2);
const results = await Promise.all(names.map((name, at) => run(name, at === names.length - 1)));
for (const { name, isGood, said, seconds } of results) {
  process.stdout.write(said);
  console.log(`${name}: ${isGood ? 'done' : 'FAILED'} after ${seconds} s`);
}
process.exitCode = results.every(({ isGood }) => isGood) ? 0 : 1;
