/** Labels to be printed, one job on every layout, and where their bars must be found on the paper. */
import type { PathShape } from '../../src/drawings/drawing.ts';
import { boxAround } from '../../src/drawings/compose.ts';
import type { SheetDescription } from '../../src/sheets/grammar/description.ts';
import { describeLabels } from '../../src/sheets/labels/labels-sheet.ts';
import { LABEL_SHEETS } from '../../src/planning/label-sheets.ts';
import { darkStretches } from '../hosts/page-marks.ts';
import type { PageRaster } from '../hosts/printed-pages.ts';
import { planOf } from '../planning/make-job.ts';
import { withLabels } from './label-measures.ts';

const LAYOUTS = LABEL_SHEETS.filter((one) => one !== 'none');
const keyOf = (layout: string): string => `labels-${layout.replaceAll(' ', '')}`;
export const PRINTED_LABELS = LAYOUTS.map(keyOf);

/** Square ends: the bar of each label is as wide as its room. */
const FORTY = 'Room,Profile,Length,Quantity\nHall,Base,30,40';
const NEAR_MM = 1;

export async function describePrintedLabels(): Promise<Record<string, SheetDescription>> {
  const sheets: Record<string, SheetDescription> = {};
  for (const layout of LAYOUTS) {
    const plan = await planOf(withLabels({ runs: FORTY }, layout));
    sheets[keyOf(layout)] = describeLabels(plan)!;
  }
  return sheets;
}

/** The upper edges of bars that aren't found on a page within 1 mm of where they are described. */
export function labelsMissed(
  sheet: SheetDescription,
  page: number,
  raster: PageRaster,
  dpi: number,
): string[] {
  const { left, top } = sheet.print.start!;
  const pixels = (millimetres: number): number => (millimetres / 25.4) * dpi;
  const bars = sheet.drawings![page]!.drawing.shapes.filter(
    (shape): shape is PathShape =>
      shape.kind === 'path' && (shape.fill === 'wood' || shape.fill === 'rail'),
  );
  if (bars.length === 0) throw new Error('The page has no label.');
  return bars.flatMap(({ points }, at) => {
    const box = boxAround(points);
    const [from, to] = [pixels(left * 25.4 + box.left), pixels(left * 25.4 + box.right)];
    const row = pixels(top * 25.4 + box.top);
    const near = pixels(NEAR_MM);
    for (let y = Math.ceil(row - near); y <= row + near; y++) {
      const isHere = darkStretches(raster, y).some(
        (dark) => Math.abs(dark.from - from) <= near && Math.abs(dark.to - to) <= near,
      );
      if (isHere) return [];
    }
    return [`label ${at + 1} of page ${page + 1}`];
  });
}
