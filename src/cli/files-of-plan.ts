/** The files that a plan can be saved as, and what is said of them. */
import { exportPlan } from '../exports/export-plan.ts';
import { writeShopView } from '../exports/shop-view/shop-view.ts';
import { paintPng } from '../hosts/file/paint-png.ts';
import { writeWorkbook } from '../hosts/xlsx/write-workbook.ts';
import { writeZip } from '../hosts/zip/write-zip.ts';
import { isCovePlan, type JobPlan } from '../planning/job-plan.ts';
import { VERSION } from '../core/version.ts';
import { keepPlan } from '../planning/kept/keep-plan.ts';
import { clientRooms } from '../sheets/client/client-rooms.ts';
import { describeClientCopy } from '../sheets/client/client-sheet.ts';
import { describePlan } from '../sheets/describe-plan.ts';
import type { WorkbookDescription } from '../sheets/grammar/description.ts';
import { count } from '../sheets/words/print-length.ts';
import { sayMoney } from '../core/units/say-money.ts';
import { sayDay } from '../core/units/calendar-day.ts';
import { markOf, type Stamp } from '../sheets/stamp.ts';
import type { FileOfPlan } from './plan-to-files.ts';
import { sayWorkbook } from './say-workbook.ts';

/** A file, and the paragraph that says what is in it once it is made. */
export interface SaidFile extends FileOfPlan {
  readonly say: (plan: JobPlan, path: string, stamp: Stamp) => readonly string[];
}

export function shopFile(option: string, keepsFormulas: boolean): SaidFile {
  let sheets: WorkbookDescription['sheets'] = [];
  return {
    option,
    ending: '.xlsx',
    make: (plan, from) => {
      const description = describePlan(plan, { keepsFormulas, stamp: from });
      ({ sheets } = description);
      // So that the client's copy and the exports can be of this very plan.
      const texts = { 'written-plan': keepPlan(from, VERSION) };
      return writeWorkbook(description, { paint: paintPng, texts });
    },
    say: (_plan, path) => sayWorkbook(path, { sheets }),
  };
}

export function clientFile(option: string): SaidFile {
  return {
    option,
    ending: '.xlsx',
    make: (plan, stamp) => writeWorkbook(describeClientCopy(plan, stamp), { paint: paintPng }),
    say: sayClient,
  };
}

/** For the phone or tablet at the saw. */
export function shopViewFile(option: string): SaidFile {
  return {
    option,
    ending: '.html',
    make: (plan, stamp) => Promise.resolve(new TextEncoder().encode(writeShopView(plan, stamp))),
    say: (plan, path) => [
      `Written: ${path}`,
      `  ${count(plan.profiles.filter(isCovePlan).length, 'cove')} and ${count(plan.totals.sticks, 'stick')} to tap off, at the saw`,
      '  It opens in any browser, without a network; its ticks stay on that device.',
    ],
  };
}

/** With the paths in the zip, once it is made. */
export interface ExportedFile extends SaidFile {
  readonly paths: () => readonly string[];
}

export function exportFile(option: string): ExportedFile {
  let paths: readonly string[] = [];
  return {
    option,
    ending: '.zip',
    make: (plan, stamp) => {
      const files = exportPlan(plan, stamp);
      paths = files.map(({ path }) => path);
      return Promise.resolve(writeZip(files));
    },
    say: (_plan, out) => sayFiles(out, paths),
    paths: () => paths,
  };
}

function sayClient(plan: JobPlan, out: string, stamp: Stamp): string[] {
  const { shop } = plan.job;
  const { priceCents, taxCents } = plan.totals;
  const say = (cents: number): string => sayMoney(cents, shop.currency, shop.decimalSign);
  const rooms = clientRooms(plan).filter(({ lines }) => lines.length > 0);
  const lines = rooms.reduce((sum, room) => sum + room.lines.length, 0);
  const what =
    rooms.length === 0
      ? 'nothing to price: every run is marked as done'
      : `${count(rooms.length, 'room')}, ${count(lines, 'line')} with a quantity to change`;
  return [
    `Written: ${out}`,
    `  ${what}`,
    `  to pay ${say(priceCents + taxCents)}, of which tax ${say(taxCents)}`,
    `  number ${markOf(stamp)}, dated ${sayDay(plan.job.titleBlock.date ?? stamp.day)}; holds ${count(shop.priceHoldsDays, 'day')} from its date`,
    "It has nothing of the shop's costs, hours, margin or stock.",
  ];
}

function sayFiles(out: string, paths: readonly string[]): string[] {
  const countOf = (ending: string): number => paths.filter((path) => path.endsWith(ending)).length;
  return [
    `Written: ${out}`,
    `  drawings  ${countOf('.svg')} as SVG`,
    `  outlines  ${countOf('.dxf')} as DXF, at full size`,
    `  lists     ${countOf('.csv')} as CSV`,
  ];
}
