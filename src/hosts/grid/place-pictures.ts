/** Drawings on a sheet of the grid, as pictures at their true size. */
import { DrawingTypeEnum, generateRandomId, ImageSourceType } from '@univerjs/core';
import type { IDrawingJsonUndo1 } from '@univerjs/drawing';
import { convertPositionCellToSheetOverGrid, SheetSkeletonService } from '@univerjs/sheets';
import {
  DrawingApplyType,
  ISheetDrawingService,
  SetDrawingApplyMutation,
  SheetDrawingAnchorType,
  type ISheetDrawing,
  type ISheetImage,
} from '@univerjs/sheets-drawing';
import { soundRange } from '../../core/cells/cell-range.ts';
import type { OneChange } from './one-change.ts';
import type { PaintedDrawing } from './paint-drawings.ts';
import type { Grid } from './grid.ts';

/** What the grid shows at the scale of 100 % as an inch. */
const PIXELS_PER_MM = 96 / 25.4;

/** A picture that keeps its words, for who can't see it, as a file does. */
interface NamedImage extends ISheetImage {
  readonly title: string;
  readonly description: string;
}

/** @param sheet The id of a sheet that is there already. */
export function placePictures(
  grid: Grid,
  sheet: string,
  drawings: readonly PaintedDrawing[],
  change: OneChange,
): void {
  if (drawings.length === 0) return;
  const book = grid.book().getId();
  // It puts each of them below those before it.
  const pictures = drawings.map((one) => pictureAt(grid, book, sheet, one)).reverse();
  const op = grid.services.get(ISheetDrawingService).getBatchAddOp(pictures);
  const { redo, undo, objects } = op as IDrawingJsonUndo1;
  const both = { unitId: book, subUnitId: sheet, objects };
  change.make(
    apply({ ...both, op: redo, type: DrawingApplyType.INSERT }),
    apply({ ...both, op: undo, type: DrawingApplyType.REMOVE }),
    () => picturesOn(grid, sheet).length > 0,
  );
}

/** Takes away all pictures of a sheet, before the sheet itself goes. */
export function removePictures(grid: Grid, sheet: string, change: OneChange): void {
  const book = grid.book().getId();
  const there = picturesOn(grid, sheet);
  if (there.length === 0) return;
  const op = grid.services.get(ISheetDrawingService).getBatchRemoveOp(there);
  const { redo, undo, objects } = op as IDrawingJsonUndo1;
  const both = { unitId: book, subUnitId: sheet, objects };
  change.make(
    apply({ ...both, op: redo, type: DrawingApplyType.REMOVE }),
    apply({ ...both, op: undo, type: DrawingApplyType.INSERT }),
    () => picturesOn(grid, sheet).length === 0,
  );
}

/** The lowest first. */
function picturesOn(grid: Grid, sheet: string): ISheetDrawing[] {
  const book = grid.book().getId();
  const drawings = grid.services.get(ISheetDrawingService);
  const found: Readonly<Record<string, ISheetDrawing>> = drawings.getDrawingData(book, sheet);
  return drawings.getDrawingOrder(book, sheet).flatMap((id) => found[id] ?? []);
}

function apply(params: object): { id: string; params: object } {
  return { id: SetDrawingApplyMutation.id, params };
}

function pictureAt(
  grid: Grid,
  unitId: string,
  subUnitId: string,
  { placed: { at, drawing }, source }: PaintedDrawing,
): NamedImage {
  const skeleton = grid.services.get(SheetSkeletonService).ensureSkeleton(unitId, subUnitId);
  if (skeleton === undefined) throw new Error(subUnitId);
  const { top: row, left: column } = soundRange(at);
  const { sheetTransform, transform } = convertPositionCellToSheetOverGrid(
    unitId,
    subUnitId,
    { row, column, rowOffset: 0, columnOffset: 0 },
    drawing.width * PIXELS_PER_MM,
    drawing.height * PIXELS_PER_MM,
    skeleton,
  );
  return {
    unitId,
    subUnitId,
    drawingId: generateRandomId(6),
    drawingType: DrawingTypeEnum.DRAWING_IMAGE,
    imageSourceType: ImageSourceType.BASE64,
    source,
    title: drawing.title,
    description: drawing.alt,
    anchorType: SheetDrawingAnchorType.Position,
    transform,
    sheetTransform,
    axisAlignSheetTransform: sheetTransform,
  };
}
