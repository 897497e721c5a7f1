/** The end of each cove's board at full size, and each raked profile, as DXF for template makers. */
import { rakedToDxf } from '../drawings/raked.ts';
import { outlineToDxf } from '../drawings/to-dxf.ts';
import { isCovePlan, type JobPlan } from '../planning/job-plan.ts';
import { listRaked } from '../sheets/outlines/raked-outlines.ts';
import type { ExportFile } from './export-file.ts';
import { newFileNames } from './file-names.ts';

/** @param cautions they go along in each file */
export function outlineFiles(
  { job: { shop }, profiles }: JobPlan,
  cautions: readonly string[],
): ExportFile[] {
  const { unit, tiltSide } = shop;
  const nameFile = newFileNames();
  const write = (name: string, text: (notes: readonly string[]) => string): ExportFile => ({
    path: `outlines/${nameFile(name)}.dxf`,
    text: text([name, ...cautions]),
  });
  return profiles.filter(isCovePlan).flatMap((cove) => {
    const { name } = cove.profile;
    const { blade, setting, blank } = cove.setUp;
    const end = { blade, setting, blank, tiltSide, unit };
    return [
      write(name, (notes) => outlineToDxf({ ...end, notes })),
      ...listRaked(cove, shop).map((raked) =>
        write(`${name} ${raked.name}`, (notes) => rakedToDxf({ ...raked.view, unit, notes })),
      ),
    ];
  });
}
