/** A plan for other programs: drawings as SVG, outlines as DXF, lists as CSV. */
import type { LengthReading } from '../core/units/length.ts';
import type { JobPlan } from '../planning/job-plan.ts';
import { describePlan } from '../sheets/describe-plan.ts';
import { printExact } from '../sheets/words/print-length.ts';
import { standingCautions } from '../sheets/words/standing-cautions.ts';
import { sayStamp, type Stamp } from '../sheets/stamp.ts';
import { writeList } from './csv-list.ts';
import { drawingFiles } from './drawing-files.ts';
import type { ExportFile } from './export-file.ts';
import { outlineFiles } from './outline-files.ts';
import { listAllPieces, listCuts, listOffcuts } from './piece-lists.ts';
import { listKeptStock } from './kept-stock-list.ts';
import { listAllLabels } from './label-list.ts';
import { listCautions, listCutAways, listProfiles, listRooms, listStock } from './plan-lists.ts';
import { listPasses, listRailMarks, listSetUps } from './set-up-lists.ts';

const LISTS = [
  listAllPieces,
  listCutAways,
  listCuts,
  listOffcuts,
  listKeptStock,
  listAllLabels,
  listStock,
  listRooms,
  listProfiles,
  listSetUps,
  listPasses,
  listRailMarks,
  listCautions,
];

/**
 * Every drawing of the plan's sheets, every outline, every list, and the cautions that go with them.
 *
 * @param plan A plan that was made; see checkJobPlan.
 * @param stamp What is told of its making, under the cautions; absent, nothing.
 * @returns Files, no path twice, the same for the same plan.
 */
export function exportPlan(plan: JobPlan, stamp?: Stamp): ExportFile[] {
  const { shop } = plan.job;
  const cautionsFor = (reading: LengthReading): readonly string[] =>
    standingCautions(printExact(shop.leastBlankLength, reading));
  return [
    cautionsFile(cautionsFor(shop), stamp === undefined ? [] : [sayStamp(stamp, shop.decimalSign)]),
    ...LISTS.map((list) => writeList(list(plan), shop.decimalSign)),
    ...drawingFiles(describePlan(plan)),
    // A DXF has points, whatever the shop's sign: in its comments too.
    ...outlineFiles(plan, cautionsFor({ unit: shop.unit, decimalSign: '.' })),
  ];
}

/** Whoever unpacks the numbers finds these first. */
function cautionsFile(cautions: readonly string[], made: readonly string[]): ExportFile {
  const numbered = [...cautions.map((line, at) => `${at + 1}. ${line}`), ...made];
  return { path: 'READ FIRST.txt', text: `${numbered.join('\r\n')}\r\n` };
}
