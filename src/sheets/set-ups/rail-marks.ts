/** Where the two rails go, as marks for a tape on the edges of the table. */
import type { Rail, RailLayout, TableSize } from '../../core/cove/rails.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { leftHalves, leftMark, leftMarks, leftText, type Part } from './set-up-columns.ts';
import { cell } from '../grammar/sheet-draft.ts';
import { OFF_TABLE, pointAlong, sayDepth, sayWay, type RailName } from '../words/say-marks.ts';

/** `Near, front`, under the heading of rail and edge. */
const SHORT_NAMES: Readonly<Record<RailName, string>> = { near: 'Near', far: 'Far' };

/** A row a mark: front and back edge, from the blade line and, where it is given, from the left miter slot. */
export function railMarks(
  { near, far }: RailLayout,
  table: TableSize,
  reading: LengthReading,
): Part[] {
  const edge = cell('Rail, edge', 'heading');
  const blade = cell('from blade line', 'heading');
  const slot = cell('from left miter slot', 'heading');
  const isOff = [near, far].some(({ front, back }) => !(front.onTable && back.onTable));
  return [
    table.slotToBlade === undefined ? leftMark(edge, blade) : leftMarks(edge, blade, slot),
    ...marksOf('near', near, reading),
    ...marksOf('far', far, reading),
    ...(isOff && table.width === undefined
      ? [
          leftText(
            'No marks for the sides: Shop does not say how wide the table is (table width).',
            'small',
          ),
        ]
      : []),
  ];
}

/** A rail that leaves the table at its side is marked there. */
function marksOf(which: RailName, rail: Rail, reading: LengthReading): Part[] {
  const name = SHORT_NAMES[which];
  const say = (toTheRight: number): string => pointAlong(toTheRight, sayWay(toTheRight, reading));
  const ends = (['front', 'back'] as const).map((edge) => {
    const { fromBlade, fromSlot, onTable } = rail[edge];
    const label = cell(`${name}, ${edge}`, 'rowStrong');
    if (!onTable) return leftMark(label, cell(OFF_TABLE, 'row'));
    const mark = cell(say(fromBlade), 'figure');
    return fromSlot === undefined
      ? leftMark(label, mark)
      : leftMarks(label, mark, cell(say(fromSlot), 'figure'));
  });
  if (rail.front.onTable && rail.back.onTable) return ends;
  const sides = (['left', 'right'] as const).flatMap((side) => {
    const along = rail[side];
    if (along === undefined) return [];
    const label = cell(`${name}, ${side}, from the blade's middle`, 'rowStrong');
    return [leftHalves(label, cell(sayDepth(along, reading), 'figure'))];
  });
  return [...ends, ...sides];
}
