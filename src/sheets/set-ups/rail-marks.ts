/** Where the two rails go, as marks for a tape on the edges of the table. */
import type { Rail, RailLayout, TableSize } from '../../core/cove/rails.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { leftHalves, leftRow, leftText, type Part } from './set-up-columns.ts';
import { cell } from '../grammar/sheet-draft.ts';
import {
  OFF_TABLE,
  RAIL_NAMES,
  RAIL_PLACES,
  sayAlong,
  sayWay,
  type RailName,
} from '../words/say-marks.ts';

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
    ...marksOf('near', near, reading),
    ...marksOf('far', far, reading),
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
function marksOf(which: RailName, rail: Rail, reading: LengthReading): Part[] {
  const name = `${RAIL_NAMES[which]} (${RAIL_PLACES[which]})`;
  const ends = (['front', 'back'] as const).map((edge) => {
    const { fromBlade, fromSlot, onTable } = rail[edge];
    const label = cell(`${name}, ${edge} edge`, 'rowStrong');
    if (!onTable) return leftHalves(label, cell(OFF_TABLE, 'row'));
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
