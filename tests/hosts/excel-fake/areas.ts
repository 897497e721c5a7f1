/** Ranges of the fake's sheets, and their cells. */
import { readBoxes, type Box } from './address.ts';
import { invalid, OfficeError } from './office-error.ts';
import type { FakeCell, FakeSheet } from './workbook-model.ts';

/** A range, or several: what a Range and a RangeAreas stand for. */
export interface Area {
  readonly sheet: FakeSheet;
  readonly boxes: readonly Box[];
  readonly deleted: boolean;
}

/** Cells that a format may be set on at once; whole rows and columns take sizes alone. */
const MOST_CELLS = 2_000_000;

export function areaOf(sheet: FakeSheet, where: Box | string): Area {
  const boxes = typeof where === 'string' ? readBoxes(where) : [where];
  return {
    sheet,
    boxes,
    get deleted() {
      return sheet.deleted;
    },
  };
}

export function denyWriting({ sheet }: Area): void {
  if (sheet.isProtected) throw new OfficeError('AccessDenied', `${sheet.name} is protected`);
}

export function only({ boxes }: Area): Box {
  const [box] = boxes;
  if (box === undefined) throw invalid('no range');
  return box;
}

export const rowsOf = ({ top, bottom }: Box): number => bottom - top + 1;
export const columnsOf = ({ left, right }: Box): number => right - left + 1;

export function* cellsOf({ sheet, boxes }: Area): Generator<[FakeCell, Box, number, number]> {
  for (const box of boxes) {
    if (rowsOf(box) * columnsOf(box) > MOST_CELLS) throw invalid('too many cells at once');
    for (let row = box.top; row <= box.bottom; row++) {
      for (let column = box.left; column <= box.right; column++) {
        yield [sheet.make(row, column), box, row, column];
      }
    }
  }
}
