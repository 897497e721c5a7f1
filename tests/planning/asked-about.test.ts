/** What would change a price or a length without a word: refused, or said where it may well be meant. */
import { describe, expect, test } from '@jest/globals';
import { planOf, readTables } from './make-job.ts';

describe('A setting', () => {
  test.each(['profit %', 'Profit', 'discount %', 'surcharge', 'labor cost', 'VAT %'])(
    '%s is refused where it has a value, since it would change a price',
    (name) => {
      const { faults } = readTables({ shop: `Setting,Value\n${name},9` });
      expect(faults.map(({ code, where }) => [code, where])).toEqual([
        ['job.setting-unread', { file: 'shop.csv', line: 2, column: 1 }],
      ]);
      expect(readTables({ shop: `Setting,Value\n${name},` }).faults).toEqual([]);
      expect(readTables({ shop: `Setting,Value\n${name} (not used),9` }).faults).toEqual([]);
    },
  );

  test.each([
    ['crosscut seconds', 'min'],
    ['set-up minutes', 'h'],
    ['hourly rate', 'a minute'],
    ['tax %', '25'],
    ['tilt stop', 'rad'],
    ['price holds days', 'weeks'],
  ])('%s in %s is refused at the unit: its number would be read as it stands', (name, unit) => {
    const { faults } = readTables({ shop: `Setting,Value,Unit\n${name},8,${unit}` });
    expect(faults.filter(({ code }) => code === 'word.unknown').map(({ where }) => where)).toEqual([
      { file: 'shop.csv', line: 2, column: 3 },
    ]);
  });

  test.each([
    ['crosscut seconds', 'sec'],
    ['crosscut seconds', ''],
    ['set-up minutes', 'Minutes'],
    ['hourly rate', '$/h'],
    ['hourly rate', 'USD per hour'],
    ['tax %', 'percent'],
    ['tilt stop', '°'],
    ['price holds days', 'day'],
    ['feed', 'ft/min'],
  ])('%s may have its own unit as people write it: %s', (name, unit) => {
    expect(readTables({ shop: `Setting,Value,Unit\n${name},40,${unit}` }).faults).toEqual([]);
  });

  test.each([
    ['end trim', '25', '25 mm'],
    ['kerf', '3', '3 mm'],
    ['crosscut kerf', '3.2', '3.2 mm'],
    ['length precision', '5', '5 mm'],
  ])('%s of a bare %s is asked about, and not of %s', (name, bare, said) => {
    const codes = (value: string) =>
      readTables({ shop: `Setting,Value\n${name},${value}` }).faults.map(({ code }) => code);
    expect(codes(bare)).toEqual(['length.asked-about']);
    expect(codes(said)).toEqual([]);
  });
});

describe('Stock', () => {
  test('priced by the M is refused: a thousand board feet to a yard, a metre to nobody', () => {
    const stock = (per: string) =>
      `For,Kind,Class,Width,Length,Price,Per\nPoplar,board,4/4,10,12',900,${per}`;
    const { faults } = readTables({ stock: stock('M') });
    expect(faults.map(({ code, where }) => [code, where])).toEqual([
      ['word.unknown', { file: 'stock.csv', line: 2, column: 7 }],
    ]);
    expect(readTables({ stock: stock('m') }).job?.stock[0]?.per).toBe('metre');
  });

  test('in the dollars of two countries is refused, though either may be the shop’s $', () => {
    const stock = (one: string, other: string) =>
      `For,Kind,Length,Price,Per\nBase,stick,16',${one},piece\nBase,stick,12',${other},piece`;
    expect(readTables({ stock: stock('US$20', 'C$20') }).faults.map(({ code }) => code)).toEqual([
      'cutting.currency-differs',
    ]);
    expect(readTables({ stock: stock('US$20', '$20') }).faults).toEqual([]);
    expect(readTables({ stock: stock('C$20', '20') }).faults).toEqual([]);
  });

  test('says when a board’s price is of the whole board for want of a word', () => {
    const codes = (per: string, kind = 'board') =>
      readTables({
        stock: `For,Kind,Class,Width,Length,Price,Per\nPoplar,${kind},4/4,10,12',5.4,${per}`,
      }).cautions.filter(({ code }) => code === 'job.board-price');
    expect(codes('').map(({ where }) => where)).toEqual([
      { file: 'stock.csv', line: 2, column: 7 },
    ]);
    expect([...codes('piece'), ...codes('board foot'), ...codes('', 'stick')]).toEqual([]);
  });

  test('listed twice at two prices is said, unless one of them ends', () => {
    const codes = (first: string, second: string) =>
      readTables({ stock: `For,Kind,Length,Price,Per,Have,Buy\n${first}\n${second}` })
        .cautions.filter(({ code }) => code === 'job.stock-two-prices')
        .map(({ where }) => where);
    const dear = "base ,stick,16',25,piece,,";
    expect(codes("Base,stick,16',20,piece,,", dear)).toEqual([
      { file: 'stock.csv', line: 3, column: 4 },
    ]);
    expect(codes("Base,stick,16',20,piece,,4", dear)).toEqual([]);
    expect(codes("Base,stick,12',20,piece,,", dear)).toEqual([]);
    expect(codes("Base,stick,16',25,piece,2,", dear)).toEqual([]);
  });

  test('is no molding’s to buy for want of a Make, where the sizes of a cove stand', () => {
    const profiles = (make: string) =>
      `Profile,Make,Cove width,Cove depth,Blank width,Blank thickness\nBase,${make},3,1/2,4 1/2,1`;
    const { faults } = readTables({ profiles: profiles('') });
    expect(faults.map(({ code, where }) => [code, where])).toEqual([
      ['job.make-missing', { file: 'profiles.csv', line: 2, column: 2 }],
    ]);
    expect(readTables({ profiles: profiles('buy') }).faults).toEqual([]);
  });
});

describe('A point or comma before three digits', () => {
  const codes = (length: string, quantity: string, unit = 'mm', sign = '.') =>
    readTables({
      runs: `Room,Profile,Length,Quantity\nHall,Base,"${length}","${quantity}"`,
      shop: `Setting,Value\nunit,${unit}\ndecimal sign,"${sign}"`,
    }).faults.map(({ code, argument }) => [code, argument]);
  const LENGTH = [['number.two-readings', 'length']];
  const COUNT = [['number.two-readings', 'quantity']];

  test('in a run’s millimetres may part thousands: refused with either sign', () => {
    expect(codes('2.540', '1')).toEqual(LENGTH);
    expect(codes('12.540 mm', '1', 'in')).toEqual(LENGTH);
    expect(codes('2,540', '1', 'mm', ',')).toEqual(LENGTH);
    expect(codes('2540.000', '1')).toEqual([]);
    expect(codes('914.400', '1')).toEqual([]);
    expect(codes('96.125', '1', 'in')).toEqual([]);
    expect(codes('2.540 m', '1')).toEqual([]);
    expect(codes('2540.5', '1')).toEqual([]);
  });

  test('in a count may part thousands too', () => {
    expect(codes('2540', '1.000')).toEqual(COUNT);
    expect(codes('2540', '2.000 pcs')).toEqual(COUNT);
    expect(codes('2540', '1,000', 'mm', ',')).toEqual(COUNT);
    expect(codes('2540', '1.0')).toEqual([]);
  });

  test('is plain in the small sizes of a shop', () => {
    const { faults } = readTables({ shop: 'Setting,Value\nkerf,3.175 mm\ncrosscut kerf,3.175 mm' });
    expect(faults).toEqual([]);
  });
});

describe('A profile’s name', () => {
  test.each(['Cafe\u0301', 'CAF\u00c9', ' Caf\u00e9\u200b '])(
    'is the same however its signs are stored: %j',
    async (name) => {
      const plan = await planOf({
        runs: `Room,Run,Profile,Length\nHall,north,${name},90`,
        profiles: 'Profile,Make,Blank width,Blank thickness\nCaf\u00e9,buy,5,3/4',
        stock: "For,Kind,Length,Price,Per\nCaf\u00e9,stick,16',20,piece",
      });
      expect(plan.pieces.map(({ cutLength }) => Number(cutLength))).toEqual([90]);
    },
  );
});
