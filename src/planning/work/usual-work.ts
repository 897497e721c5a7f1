/**
 * The usual kinds of work, and what each takes where nobody says otherwise. All minutes are common practice
 * [C], but installing: a printed cost handbook has 20 ft an hour for coped crown up to 2 1/4 in [P]. Those
 * with a setting of Shop have always been in the price; the others are in it where Work says so.
 */
import { sameName } from '../job.ts';
import { usualNumber } from '../settings/setting.ts';
import { SETTINGS, type Shop } from '../shop.ts';
import { perUnitIn } from './per-units.ts';
import type { WorkPer, WorkRow } from './work-row.ts';

/** Settings of Shop that are minutes of a kind of work, with how they say so many minutes. */
export const WORK_SETTINGS = {
  setUpMinutes: (minutes) => minutes,
  handlingPerPass: (minutes) => minutes * 60,
  feed: (minutes) => 1 / minutes,
  smoothingMinutes: (minutes) => minutes,
  crosscutSeconds: (minutes) => minutes * 60,
  jointMinutes: (minutes) => minutes,
} as const satisfies Readonly<Partial<Record<keyof Shop, (minutes: number) => number>>>;
export type WorkSetting = keyof typeof WORK_SETTINGS;

export interface UsualWork {
  readonly work: string;
  readonly per: WorkPer;
  /** As Shop has them; or those that are usual. */
  readonly minutes: number | ((shop: Pick<Shop, WorkSetting>) => number);
  /** In a shop that counts in metres, for one of those: round, as it is typed there. */
  readonly metric?: number;
  /** By which setting of Shop it is known; its work is in the price. */
  readonly setting?: WorkSetting;
  /** The client sees whether it is done or not: so it is listed where it is not in the price. */
  readonly isService?: true;
}

export const USUAL_WORK: readonly UsualWork[] = [
  { work: 'pull and check lumber', per: 'board', minutes: 2 },
  { work: 'joint and plane', per: 'board foot', minutes: 1.5, metric: 640 },
  { work: 'rip boards', per: 'board', minutes: 2 },
  { work: 'rip along', per: 'foot a rip', minutes: 0.1, metric: 0.3 },
  {
    work: 'set up a cove',
    per: 'set-up',
    setting: 'setUpMinutes',
    minutes: (shop) => shop.setUpMinutes,
  },
  {
    work: 'feed over the blade',
    per: 'foot a pass',
    setting: 'feed',
    minutes: (shop) => 1 / shop.feed,
  },
  {
    work: 'carry round',
    per: 'pass',
    setting: 'handlingPerPass',
    minutes: (shop) => shop.handlingPerPass / 60,
  },
  { work: 'back bevel', per: 'foot a cut', minutes: 0.25, metric: 0.8 },
  {
    work: 'smooth',
    per: 'square foot',
    setting: 'smoothingMinutes',
    minutes: (shop) => shop.smoothingMinutes,
  },
  {
    work: 'crosscut',
    per: 'crosscut',
    setting: 'crosscutSeconds',
    minutes: (shop) => shop.crosscutSeconds / 60,
  },
  { work: 'miter', per: 'miter', minutes: 1 },
  { work: 'compound miter', per: 'compound miter', minutes: 2 },
  { work: 'cope', per: 'cope', minutes: 6 },
  { work: 'return', per: 'return', minutes: 4 },
  { work: 'join', per: 'joint', setting: 'jointMinutes', minutes: (shop) => shop.jointMinutes },
  {
    work: 'prime or finish',
    per: 'square foot a coat',
    minutes: 1.5,
    metric: 16,
    isService: true,
  },
  { work: 'label and bundle', per: 'piece', minutes: 1 },
  { work: 'load and deliver', per: 'job', minutes: 60, isService: true },
  { work: 'install', per: 'foot', minutes: 3, metric: 10, isService: true },
  { work: 'install at height', per: 'factor', minutes: 1.25 },
];

/** As Shop has them, or as they are usual; for one of `per`, which is a foot where a metre could be meant. */
export function minutesOf(
  { per, minutes, metric }: UsualWork,
  shop: Pick<Shop, WorkSetting | 'unit'>,
): number {
  if (typeof minutes !== 'number') return minutes(shop);
  const isMetric = shop.unit === 'mm' && metric !== undefined;
  return isMetric ? metric / perUnitIn('mm', per).holds : minutes;
}

/** They as rows, in the price where Shop has a setting for them. */
export function usualRows(shop: Shop): WorkRow[] {
  return USUAL_WORK.map((usual) => ({
    work: usual.work,
    per: usual.per,
    minutes: minutesOf(usual, shop),
    money: 0,
    isOurs: usual.setting !== undefined,
  }));
}

/** Shops as they are where nobody fills them in. */
const USUAL_SHOPS = (['in', 'mm'] as const).map((unit) => ({
  ...(Object.fromEntries(
    (Object.keys(WORK_SETTINGS) as WorkSetting[]).map((key) => [
      key,
      usualNumber(SETTINGS[key], unit),
    ]),
  ) as Readonly<Record<WorkSetting, number>>),
  unit,
}));
/** What is typed has few digits. */
const SAME_SHARE = 1e-6;

export function usualWorkOf({ work, per }: Pick<WorkRow, 'work' | 'per'>): UsualWork | undefined {
  return USUAL_WORK.find((one) => sameName(one.work, work) && one.per === per);
}

/** Whether its minutes are those that stand in where nobody says otherwise, so that they are of no shop in particular. */
export function isUsualRate(row: WorkRow): boolean {
  const usual = usualWorkOf(row);
  if (usual === undefined) return false;
  return USUAL_SHOPS.some((shop) => {
    const minutes = minutesOf(usual, shop);
    return Math.abs(row.minutes - minutes) <= SAME_SHARE * minutes;
  });
}
