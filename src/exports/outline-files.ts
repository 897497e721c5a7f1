/** The end of each cove's board at full size, as DXF for template makers. */
import { outlineToDxf } from '../drawings/to-dxf.ts';
import { isCovePlan, type JobPlan } from '../planning/job-plan.ts';
import type { ExportFile } from './export-file.ts';
import { newFileNames } from './file-names.ts';

/** @param cautions they go along in each file */
export function outlineFiles(
  { job, profiles }: JobPlan,
  cautions: readonly string[],
): ExportFile[] {
  const { unit, tiltSide } = job.shop;
  const nameFile = newFileNames();
  return profiles.filter(isCovePlan).map(({ profile: { name }, setUp }) => {
    const { blade, setting, blank } = setUp;
    const notes = [name, ...cautions];
    const text = outlineToDxf({ blade, setting, blank, tiltSide, unit, notes });
    return { path: `outlines/${nameFile(name)}.dxf`, text };
  });
}
