import { describe, expect, test } from '@jest/globals';
import { listPieces } from '../../src/planning/pieces/list-pieces.ts';
import { planToJson } from '../../src/planning/plan-json.ts';
import { jobOf, planOf, readTables, type Tables } from './make-job.ts';
import {
  BASE,
  CASING,
  codesOf,
  COVE,
  CROWN,
  cutsOf,
  DOOR,
  lengthsOf,
  list,
  placeOf,
  rail,
  SILL,
  tablesOf,
  wallRuns,
} from './opening-tables.ts';

describe('one wall, one name for base, chair rail, cove and crown', () => {
  const all = [BASE, rail('32'), CASING, COVE, CROWN];
  const runs = wallRuns('Base', 'Chair rail', 'Ceiling cove', 'Crown');
  // By hand: a 36 in door with 3 in casing and a reveal of 3/16 takes 42 3/8 out of 144, from 44 13/16 on.
  const PARTS = ['44 13/16', '56 13/16'];

  test('a door cuts the base, and the rail that it spans; nothing at the ceiling', () => {
    const listed = list({ profiles: all, runs });
    expect(lengthsOf(listed, 'Base')).toEqual(PARTS);
    expect(lengthsOf(listed, 'Chair rail')).toEqual(PARTS);
    expect(lengthsOf(listed, 'Ceiling cove')).toEqual(['144']);
    expect(lengthsOf(listed, 'Crown')).toEqual(['144']);
    expect(cutsOf(listed)).toEqual([
      ['Hall', 'North', 'Base', 'door', 42.375],
      ['Hall', 'North', 'Chair rail', 'door', 42.375],
    ]);
    expect(codesOf(listed)).toEqual([]);
  });

  test('a picture rail over the door is left whole, to the head of its casing exactly', () => {
    const over = (height: string) =>
      lengthsOf(
        list({ profiles: [BASE, rail(height), CASING], runs: wallRuns('Chair rail') }),
        'Chair rail',
      );
    // The door's casing ends at 80 + 3/16 + 3.
    expect(over('83 3/16')).toEqual(['144']);
    expect(over('83 1/8')).toEqual(PARTS);
    expect(over('0')).toEqual(PARTS);
  });

  test('and every cut-away stands in JSON, in inches', async () => {
    const tables = tablesOf({ profiles: all, runs: wallRuns('Base', 'Chair rail') });
    const stock =
      "For,Kind,Length,Price,Per\nBase,stick,14',14,piece\nChair rail,stick,14',14,piece\nCasing,stick,14',14,piece";
    const plan = await planOf({ ...tables, stock });
    expect(planToJson(plan).cutAways).toEqual(
      ['Base', 'Chair rail'].map((profile) => ({
        room: 'Hall',
        wall: 'North',
        run: 'North',
        profile,
        opening: 'door',
        taken: 42.375,
      })),
    );
  });

  test('without a Position the door comes off as a whole, which is said of each', () => {
    const listed = list({
      profiles: all,
      runs,
      openings: ['Hall,North,door,36,80,1,,Casing,,,,1,,,,,'],
    });
    expect(lengthsOf(listed, 'Base')).toEqual(['101 5/8']);
    expect(lengthsOf(listed, 'Chair rail')).toEqual(['101 5/8']);
    expect(cutsOf(listed).map((one) => one[4])).toEqual([42.375, 42.375]);
    expect(codesOf(listed)).toEqual(['job.opening-by-total', 'job.opening-by-total']);
    const position = { file: 'openings.csv', line: 2, column: 11 };
    expect(placeOf(listed, 'job.opening-by-total')).toEqual([position, position]);
  });

  test('several doors of one row come off together', () => {
    const listed = list({ openings: ['Hall,North,door,30,80,1,,Casing,,,20,2,,,,,'] });
    expect(cutsOf(listed)).toEqual([['Hall', 'North', 'Base', 'door', 72.75]]);
    expect(lengthsOf(listed, 'Base')).toEqual(['71 1/4']);
  });
});

describe('two openings on one wall', () => {
  test('are numbered by kind, as their casings are, and each takes its own', () => {
    const openings = [
      'Hall,North,door,30,80,1,,Casing,,,10,1,,,,,',
      'Hall,North,cased opening,20,80,1,,,,,60,1,,,,,',
      'Hall,North,door,24,80,1,,Casing,,,100,1,,,,,',
    ];
    const listed = list({ openings });
    expect(cutsOf(listed)).toEqual([
      ['Hall', 'North', 'Base', 'door', 36.375],
      ['Hall', 'North', 'Base', 'cased opening', 20],
      ['Hall', 'North', 'Base', 'door 2', 30.375],
    ]);
    expect(lengthsOf(listed, 'Base')).toEqual(['6 13/16', '16 13/16', '16 13/16', '16 13/16']);
    const casings = listed.pieces.filter((one) => one.run.endsWith('head')).map((one) => one.run);
    expect(casings).toEqual(['North door, head', 'North door 2, head']);
  });

  test('at the corner takes only what the wall has', () => {
    const listed = list({ openings: ['Hall,North,door,36,80,1,,Casing,,,2,1,,,,,'] });
    // From 0 to 2 + 36 + 3 3/16.
    expect(cutsOf(listed)).toEqual([['Hall', 'North', 'Base', 'door', 41.1875]]);
    expect(lengthsOf(listed, 'Base')).toEqual(['102 13/16']);
  });
});

describe('a window', () => {
  const window = (sill: string, more = ',,') =>
    `Hall,North,window,30,50,1,,Casing,${more}48,1,${sill},,,,`;
  const cutsRail = (height: string, opening: string, ...more: string[]) => {
    const profiles = [BASE, rail(height), CASING, SILL, ...more];
    const listed = list({ profiles, runs: wallRuns('Base', 'Chair rail'), openings: [opening] });
    expect(lengthsOf(listed, 'Base')).toEqual(['144']);
    return { taken: cutsOf(listed).map((one) => one[4]), codes: codesOf(listed) };
  };

  test('cased all round cuts a rail from the foot of its casing to its head', () => {
    // Sill 30, casing and reveal 3 3/16: from 26 13/16 to 83 3/16; 36 3/8 wide.
    expect(cutsRail('26 13/16', window('30'))).toEqual({ taken: [36.375], codes: [] });
    expect(cutsRail('83 1/8', window('30'))).toEqual({ taken: [36.375], codes: [] });
    expect(cutsRail('83 3/16', window('30'))).toEqual({ taken: [], codes: [] });
    expect(cutsRail('20', window('30'))).toEqual({ taken: [], codes: [] });
  });

  test('on its stool over an apron cuts a rail down to the apron’s lower edge', () => {
    // Sill 30, stool 1 thick, apron 3 wide: from 26.
    const opening = window('30', 'Casing,Sill stock,');
    expect(cutsRail('26', opening)).toEqual({ taken: [36.375], codes: [] });
    expect(cutsRail('22', opening)).toEqual({ taken: [], codes: [] });
  });

  test('that reaches into a rail without holding its lower edge cuts nothing, which is said', () => {
    expect(cutsRail('26', window('30'))).toEqual({ taken: [], codes: ['job.opening-laps-rail'] });
  });

  test('that reaches into the base is asked about: it may be an opening to the floor', () => {
    const listed = list({ openings: [window('6')] });
    expect(codesOf(listed)).toEqual(['job.window-laps-floor']);
    expect(lengthsOf(listed, 'Base')).toEqual(['144']);
    expect(codesOf(list({ openings: [window('9')] }))).toEqual([]);
  });

  test('without a Sill cuts nothing, and that is said once, at its row, where a rail is on its wall', () => {
    const runs = wallRuns('Base', 'Chair rail', 'Chair rail');
    const profiles = [BASE, rail('32'), CASING];
    const listed = list({ profiles, runs, openings: [window('')] });
    expect(cutsOf(listed)).toEqual([]);
    expect(placeOf(listed, 'job.window-cuts-unknown')).toEqual([
      { file: 'openings.csv', line: 2, column: 13 },
    ]);
    expect(codesOf(list({ openings: [window('')] }))).toEqual([]);
  });

  test('without a width of its apron cuts nothing, and says where to fill it in', () => {
    const profiles = [BASE, rail('28'), CASING, 'Thin,buy,,3/4,,,,,'];
    const listed = list({
      profiles,
      runs: wallRuns('Chair rail'),
      openings: [window('30', 'Thin,,')],
    });
    expect(cutsOf(listed)).toEqual([]);
    expect(placeOf(listed, 'job.window-cuts-unknown')).toEqual([
      { file: 'profiles.csv', line: 5, column: 3 },
    ]);
  });
});

describe('a rail', () => {
  const twoDoors = [DOOR, 'Hall,North,door,30,80,1,,Casing,,,100,1,,,,,'];

  test('without a Height is left whole, and that is said once, at its row', () => {
    const listed = list({
      profiles: [BASE, rail('', 'height'), CASING],
      runs: wallRuns('Base', 'Chair rail'),
      openings: twoDoors,
    });
    expect(lengthsOf(listed, 'Chair rail')).toEqual(['144']);
    expect(placeOf(listed, 'job.cuts-unknown')).toEqual([
      { file: 'profiles.csv', line: 3, column: 9 },
    ]);
  });

  test('that counts as on the floor since nothing is said is cut like base, and asked about once', () => {
    const listed = list({
      profiles: [BASE, rail(), CASING],
      runs: wallRuns('Base', 'Chair rail'),
      openings: twoDoors,
    });
    expect(cutsOf(listed)).toHaveLength(4);
    expect(codesOf(listed)).toEqual(['job.several-on-floor']);
    expect(listed.cautions[0]!.message).toContain('(Base, Chair rail)');
    expect(placeOf(listed, 'job.several-on-floor')).toEqual([
      { file: 'profiles.csv', line: 3, column: 8 },
    ]);
  });

  test('is on the floor where Profiles says so, like a shoe before its base, and nothing is asked', () => {
    const profiles = ['Base,buy,5,3/4,,,,floor,', rail('', 'floor'), CASING];
    const listed = list({ profiles, runs: wallRuns('Base', 'Chair rail') });
    expect(cutsOf(listed)).toHaveLength(2);
    expect(codesOf(listed)).toEqual([]);
  });
});

describe('Where of a profile', () => {
  const placesOf = (profiles: readonly string[], openings: readonly string[] = [DOOR]) =>
    jobOf(tablesOf({ profiles, openings })).profiles.map(({ place }) => place.at);

  test('left blank is opening for what Openings names, ceiling for coves and crowns, else floor', () => {
    const crownCove = 'Made crown,crown cove,5,1,38,2,1/2,,';
    expect(placesOf([BASE, CASING, COVE, CROWN, crownCove])).toEqual([
      'floor',
      'opening',
      'ceiling',
      'ceiling',
      'ceiling',
    ]);
    const window = 'Hall,North,window,30,50,1,,Casing,Base,SILL  stock,48,1,,,,,';
    expect(placesOf([BASE, CASING, SILL], [window])).toEqual(['opening', 'opening', 'opening']);
  });

  test('left blank beside a Height is height', () => {
    expect(placesOf([BASE, CASING, rail('32')])).toEqual(['floor', 'opening', 'height']);
  });

  test('said, stands over the usual: a cove on a wall is cut like any rail', () => {
    const cove = 'Ceiling cove,cove,4,1,,3,5/8,height,32';
    const listed = list({ profiles: [BASE, CASING, cove], runs: wallRuns('Base', 'Ceiling cove') });
    expect(cutsOf(listed).map((one) => one[2])).toEqual(['Base', 'Ceiling cove']);
  });

  test.each([
    ['beside another Where', rail('32', 'floor'), 'job.height-elsewhere', 9],
    ['beside a crown', 'Rail,buy,4,3/4,38,,,,84', 'job.height-needs-where', 8],
    ['beside a cove', 'Rail,cove,4,1,,3,5/8,,84', 'job.height-needs-where', 8],
    ['beside a casing', 'Casing,buy,3,3/4,,,,,5', 'job.height-needs-where', 8],
  ])('a Height %s is refused at its cell', (_, row, code, column) => {
    const profiles = row.startsWith('Casing') ? [BASE, row] : [BASE, CASING, row];
    const { faults } = readTables(tablesOf({ profiles }));
    expect(faults.map((one) => [one.code, one.where])).toEqual([
      [code, { file: 'profiles.csv', line: profiles.length + 1, column }],
    ]);
  });

  test('that no one knows is one fault, whatever Height stands beside it', () => {
    const { faults } = readTables(tablesOf({ profiles: [BASE, CASING, rail('32', 'wall')] }));
    expect(faults.map((one) => [one.code, one.where])).toEqual([
      ['word.unknown', { file: 'profiles.csv', line: 4, column: 8 }],
    ]);
  });

  test('made as a cove and called a rail counts as at the ceiling, which is said until Where says it', () => {
    const made = (where: string, height = '', name = 'Chair rail'): string =>
      `${name},cove,4,1,,3,5/8,${where},${height}`;
    const runs = wallRuns('Base', 'Chair rail');
    const listed = list({ profiles: [BASE, CASING, made('')], runs });
    expect(lengthsOf(listed, 'Chair rail')).toEqual(['144']);
    expect(codesOf(listed)).toEqual(['job.taken-for-ceiling']);
    expect(placeOf(listed, 'job.taken-for-ceiling')).toEqual([
      { file: 'profiles.csv', line: 4, column: 8 },
    ]);
    const isSaid = list({ profiles: [BASE, CASING, made('ceiling')], runs });
    expect(codesOf(isSaid)).toEqual([]);
    const isRail = list({ profiles: [BASE, CASING, made('height', '32')], runs });
    expect(lengthsOf(isRail, 'Chair rail')).toEqual(['44 13/16', '56 13/16']);
    expect(codesOf(isRail)).toEqual([]);
    const plain = { profiles: [BASE, CASING, made('', '', 'Trail cove')] };
    expect(codesOf(list({ ...plain, runs: wallRuns('Base', 'Trail cove') }))).toEqual([]);
  });

  test('taken for casing since Openings names it leaves its runs on walls whole, which is said', () => {
    const openings = [DOOR, 'Hall,,window,30,50,1,,Casing,,Base,,1,,,,,'];
    const listed = list({ openings });
    expect(cutsOf(listed)).toEqual([]);
    expect(codesOf(listed)).toContain('job.taken-for-casing');
    const said = ['Base,buy,5,3/4,,,,floor,', CASING];
    expect(cutsOf(list({ openings, profiles: said }))).toHaveLength(1);
  });
});

describe('a wall', () => {
  test('whose runs have the room’s name, but none on the floor, is asked about', () => {
    const runs = "Room,Run,Profile,Length\nHall,North base,Base,12'\nHall,North,Ceiling cove,12'";
    const listed = list({ profiles: [BASE, CASING, COVE], runs });
    expect(cutsOf(listed)).toEqual([]);
    expect(placeOf(listed, 'job.wall-without-base')).toEqual([
      { file: 'openings.csv', line: 2, column: 2 },
    ]);
    // Where the job has no base in that room nothing is missing.
    const ceiling = list({ profiles: [BASE, CASING, COVE], runs: wallRuns('Ceiling cove') });
    expect(codesOf(ceiling)).toEqual([]);
  });

  test('of several runs of one profile loses the door out of each, which is said', () => {
    const runs = 'Room,Run,Profile,Length\nHall,North,Base,100\nHall,North,Base,90';
    const listed = list({ runs });
    expect(cutsOf(listed)).toHaveLength(2);
    expect(placeOf(listed, 'job.opening-in-several')).toEqual([
      { file: 'runs.csv', line: 3, column: 4 },
    ]);
  });
});

test('old tables without the new columns plan as they did, but for what was wrong', () => {
  const tables: Tables = {
    runs: "Room,Run,Profile,Length\nHall,North,Base,12'",
    profiles: 'Profile,Blank width,Blank thickness\nBase,5,3/4\nCasing,3,3/4',
    openings: 'Room,Wall,Kind,Width,Height,Casing,Position\nHall,North,door,36,80,Casing,48',
    shop: 'Setting,Value\nend allowance,0',
  };
  const listed = listPieces(jobOf(tables));
  expect(lengthsOf(listed, 'Base')).toEqual(['44 13/16', '56 13/16']);
  expect(codesOf(listed)).toEqual([]);
});
