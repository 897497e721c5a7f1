/** Runs the fuzz over and over, each time with other draws, until it finds something: `npm run fuzz -- 30` for 30 minutes. */
import { spawnSync } from 'node:child_process';

const minutes = Number(process.argv[2] ?? 10);
if (!(minutes > 0)) {
  process.stderr.write('How many minutes? npm run fuzz -- 30\n');
  process.exit(2);
}
const until = Date.now() + minutes * 60_000;
for (let seed = Date.now() % 1_000_000_000; Date.now() < until; seed += 1) {
  process.stdout.write(`FUZZ_SEED=${seed}\n`);
  const { status } = spawnSync(
    process.execPath,
    [
      '--experimental-vm-modules',
      '--disable-warning=ExperimentalWarning',
      'node_modules/jest/bin/jest.js',
      '--config',
      'jest.deep.config.js',
      'tests/fuzz',
    ],
    { stdio: 'inherit', env: { ...process.env, FUZZ_SEED: String(seed) } },
  );
  if (status !== 0) process.exit(1);
}
