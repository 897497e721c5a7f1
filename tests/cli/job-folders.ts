/** Jobs as folders of CSV files: the demo, and a small one of a few lines. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { folderWith, once, ROOT, run, type Ran } from './program.ts';

export const DEMO = join(ROOT, 'assets', 'demo');

/** As far as a plan is looked for where its looks are not the point: some profiles proven, some not. */
export const QUICK = ['--steps', '20'] as const;

/** The demo planned, in JSON, and the input workbook of it. */
export const demoPlan = once((): Promise<Ran> => run(ROOT, ['plan', DEMO, '--json', ...QUICK]));
export const demoWorkbook = once(async (): Promise<Uint8Array> => {
  const folder = folderWith({});
  await run(folder, ['new', 'demo.xlsx', '--demo']);
  return readFileSync(join(folder, 'demo.xlsx'));
});
export const demoWorkbookPlan = once(async (): Promise<Ran> => {
  const folder = folderWith({ 'demo.xlsx': await demoWorkbook() });
  return run(folder, ['plan', 'demo.xlsx', '--json', ...QUICK]);
});

export type Files = Readonly<Record<string, string>>;

export function demoFiles(): Files {
  const names = readdirSync(DEMO).filter((name) => name.endsWith('.csv'));
  return Object.fromEntries(names.map((name) => [name, readFileSync(join(DEMO, name), 'utf8')]));
}

/** A cove cut here and a bought base in one room; invented. */
export const SMALL: Files = {
  'runs.csv':
    'Room,Run,Profile,Length,Quantity,Note\nHall,north,Cove,90 1/2,1,\nHall,south,Base,"7\' 4""",2,\n',
  'profiles.csv':
    'Profile,Make,Cove width,Cove depth,Blank width,Blank thickness,Species\nCove,cove,2,1/2,3,1,Poplar\nBase,buy,,,,,\n',
  'stock.csv': "For,Length,Price\nCove,12',20\nBase,16',24.50\n",
  'shop.csv': 'Setting,Value\nhourly rate,60\n',
};
