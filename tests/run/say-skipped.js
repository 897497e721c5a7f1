/** Says at the end of a run what it skipped: green is not the same as checked. */
import { relative } from 'node:path';

export default class SaySkipped {
  constructor({ rootDir, testNamePattern }) {
    this.rootDir = rootDir;
    // Tests that were left out by name are skipped on purpose.
    this.isPart = Boolean(testNamePattern);
  }

  onRunComplete(_, { testResults }) {
    const skipped = testResults
      .filter(({ numPendingTests }) => numPendingTests > 0)
      .map(({ testFilePath, numPendingTests }) => [
        relative(this.rootDir, testFilePath),
        numPendingTests,
      ]);
    if (this.isPart || skipped.length === 0) return;
    const all = skipped.reduce((sum, [, tests]) => sum + tests, 0);
    process.stderr.write(
      [
        '',
        `NOT CHECKED: ${all} tests were skipped for want of a program, a font or published data.`,
        'Without LibreOffice no formula is recalculated: a wrong price in a sheet can pass. Without',
        'Chromium no page is opened. Install what is missing (.ci/run names it) to check them too:',
        ...skipped.map(([file, tests]) => `  ${file}: ${tests}`),
        '',
        '',
      ].join('\n'),
    );
  }
}
