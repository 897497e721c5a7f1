/**
 * npm run bench: speed as ratios within one run, on seeded problems. Times are of this machine;
 * the ratios are what to watch. `npm run bench -- coves` runs one part.
 */
const PARTS = ['coves', 'match', 'cutting', 'rooms', 'jobs', 'functions', 'pages'];
const asked = process.argv.slice(2);
const unknown = asked.filter((part) => !PARTS.includes(part));
if (unknown.length > 0) {
  console.error(`No bench is called ${unknown.join(', ')}. There are: ${PARTS.join(', ')}.`);
  process.exit(2);
}
for (const part of asked.length > 0 ? asked : PARTS) {
  const { bench } = await import(`./bench-${part}.mjs`);
  console.log(`\n${part}`);
  console.table(await bench());
}
