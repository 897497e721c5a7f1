/** Where the two rails go, as marks for a tape on the edges of the table. */
import type { Rail, RailLayout, RailMark, TableSize } from '../../core/cove/rails.ts';
import { formatMark } from '../../core/units/format-mark.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { leftHalves, leftRow, leftText, type Part } from './set-up-columns.ts';
import { cell } from '../grammar/sheet-draft.ts';

/** A row a mark: front and back edge, from the blade line and, where it is given, from the left miter slot. */
export function railMarks(
  { near, far }: RailLayout,
  table: TableSize,
  reading: LengthReading,
): Part[] {
  const heads = [
    cell('Face of the rail, edge of the table', 'heading'),
    cell('from blade line', 'heading'),
    cell('from left miter slot', 'heading'),
  ] as const;
  const [edge, blade] = heads;
  const isOff = [near, far].some(({ front, back }) => !(front.onTable && back.onTable));
  return [
    table.slotToBlade === undefined ? leftHalves(edge, blade) : leftRow(...heads),
    ...marksOf('Near rail (before the blade)', near, reading),
    ...marksOf('Far rail (behind the blade)', far, reading),
    ...(isOff && table.width === undefined
      ? [
          leftText(
            'No marks for the sides: Shop does not say how wide the table is (table width).',
            'note',
          ),
        ]
      : []),
  ];
}

/** A rail that leaves the table at its side is marked there. */
function marksOf(name: string, rail: Rail, reading: LengthReading): Part[] {
  const ends = (['front', 'back'] as const).map((edge) => {
    const { fromBlade, fromSlot, onTable } = rail[edge];
    const label = cell(`${name}, ${edge} edge`, 'rowStrong');
    if (!onTable) return leftHalves(label, cell('off the table at this edge', 'row'));
    const mark = cell(sayWay(fromBlade, reading), 'setting');
    return fromSlot === undefined
      ? leftHalves(label, mark)
      : leftRow(label, mark, cell(sayWay(fromSlot, reading), 'setting'));
  });
  if (rail.front.onTable && rail.back.onTable) return ends;
  const sides = (['left', 'right'] as const).flatMap((side) => {
    const along = rail[side];
    if (along === undefined) return [];
    const label = cell(`${name}, ${side} edge`, 'rowStrong');
    return [leftHalves(label, cell(sayAlong(along, reading), 'row'))];
  });
  return [...ends, ...sides];
}

export function sayMark(
  { fromBlade, fromSlot, onTable }: RailMark,
  reading: LengthReading,
): string {
  if (!onTable) return 'off the table at this edge';
  const blade = saySide(fromBlade, 'the blade line', reading);
  return fromSlot === undefined
    ? blade
    : `${blade}, ${saySide(fromSlot, 'the left miter slot', reading)}`;
}

/** `7 5/32" left of the blade line`; a mark that rounds to nothing is on it. */
export function saySide(toTheRight: number, of: string, reading: LengthReading): string {
  const way = sayWay(toTheRight, reading);
  return way === ON_IT ? `on ${of}` : `${way} of ${of}`;
}

const ON_IT = 'on it';

/** `7 5/32" left`, under a heading that says of what. */
function sayWay(toTheRight: number, reading: LengthReading): string {
  const size = formatMark(Math.abs(toTheRight), reading.unit, reading.decimalSign);
  if (/^0\D*$/u.test(size)) return ON_IT;
  return `${size} ${toTheRight < 0 ? 'left' : 'right'}`;
}

export function sayAlong(towardTheBack: number, reading: LengthReading): string {
  const size = formatMark(Math.abs(towardTheBack), reading.unit, reading.decimalSign);
  if (/^0\D*$/u.test(size)) return 'level with the middle of the blade';
  const way = towardTheBack < 0 ? 'in front of' : 'behind';
  return `${size} ${way} the middle of the blade`;
}
