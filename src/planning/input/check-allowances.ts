/** Whether the offcut allowances are such as can be. */
import { fault, placeFault, type Fault } from '../../core/faults/fault.ts';
import type { Job } from '../job.ts';

/** Where they are of what is bought, one of 100 % would leave nothing: a fault at each that says so. */
export function checkAllowances({ shop, shopCells, profiles }: Job): Fault[] {
  if (shop.allowanceOf !== 'bought') return [];
  const ofShop = fault('job.allowance-takes-all', 'setting.offcutAllowance', shop.offcutAllowance);
  const at = shopCells.offcutAllowance;
  const faults: Fault[] =
    shop.offcutAllowance < 100 ? [] : [at === undefined ? ofShop : placeFault(ofShop, at)];
  for (const { offcutAllowancePercent: percent = 0, cells } of profiles) {
    if (percent < 100) continue;
    const one = fault('job.allowance-takes-all', 'offcutAllowance', percent);
    faults.push(placeFault(one, cells.offcutAllowance));
  }
  return faults;
}
