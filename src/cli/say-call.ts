/** A call of the program as the person can type it: as they called it themselves. */

/** The scripts of package.json by which the program is called from the project folder. */
const SCRIPTS = new Set(['start', 'coveledger']);

export function sayCall(...args: readonly string[]): string {
  const script = process.env['npm_lifecycle_event'] ?? '';
  const program = SCRIPTS.has(script) ? 'npm run -s coveledger --' : 'coveledger';
  return [program, ...args.map((one) => (/\s/u.test(one) ? `"${one}"` : one))].join(' ');
}
