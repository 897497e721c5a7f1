/** The two drawings of a set-up: the board's end on the saw, and the saw from above. */
import type { Drawing } from '../../drawings/drawing.ts';
import { drawSection } from '../../drawings/section.ts';
import { drawTable } from '../../drawings/table.ts';
import type { SetUp } from '../../planning/plan-setup.ts';
import type { SawShop } from '../../planning/shop.ts';
import { tableSizeOf } from '../../planning/table-size.ts';

/** The section on the saw, then the table from above. */
export function drawSetUp(
  { blade, setting, blank, flats }: SetUp,
  shop: SawShop,
  sectionWidth: number,
  tableWidth = sectionWidth,
): [section: Drawing, table: Drawing] {
  const { tiltSide, unit, decimalSign } = shop;
  const table = tableSizeOf(shop);
  const drawn = { blade, setting, tiltSide, unit, decimalSign };
  const onTable = drawTable({
    ...drawn,
    width: tableWidth,
    flats,
    ...(table === undefined ? {} : { table }),
  });
  return [drawSection({ ...drawn, width: sectionWidth, blank }), onTable];
}
