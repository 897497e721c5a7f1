/** The set-up of the profile that is being worked on, or every reason against it. */
import { fault, rewordFault, type Caution, type Fault } from '../../core/faults/fault.ts';
import type { Setting } from '../../core/cove/cove.ts';
import {
  bladeOf,
  COVE_SIZES,
  coveOf,
  isComplete,
  readSizes,
  type SizeKey,
} from '../../core/cove/cove-sizes.ts';
import { checkCove } from '../../core/cove/feasibility.ts';
import { parseLength } from '../../core/units/length.ts';
import { askAboutLength } from '../../core/units/plausible-length.ts';
import { PROFILE_CELLS, type CoveProfile } from '../../planning/job.ts';
import { planSetUp, type SetUp } from '../../planning/plan-setup.ts';
import type { Shop } from '../../planning/shop.ts';
import { COVE_FIELDS, type TypedCove } from './cove-fields.ts';

export interface ProfileAnswer {
  /** Absent where a size can't be read. */
  readonly profile: CoveProfile | undefined;
  /** The shop's settings with this blade. */
  readonly shop: Shop;
  readonly setUp: SetUp | undefined;
  /** For the drawing: there may be one where the saw or the blank forbids the cove. */
  readonly setting: Setting | undefined;
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
  /** Fields that a fault names, with what it says. */
  readonly atFault: Readonly<Partial<Record<SizeKey, string>>>;
}

/** A cove of one's own stands in no cell. */
const NO_CELL = { sheet: '', cell: '' };
const NO_CELLS = Object.fromEntries(
  PROFILE_CELLS.map((heading) => [heading, NO_CELL]),
) as CoveProfile['cells'];

/** A profile of the job on the shop's saw. */
export function answerProfile(profile: CoveProfile, shop: Shop): ProfileAnswer {
  const planned = planSetUp(profile, shop);
  return finish(profile, shop, planned.setUp, planned.faults, planned.cautions);
}

/** A cove as typed. Each field that can't be read is named; near flat and off-center may be blank. */
export function answerTyped(typed: TypedCove, shop: Shop): ProfileAnswer {
  const faults: Fault[] = [];
  const sizes = readSizes(COVE_FIELDS, ({ key, blank, most }, field) => {
    const text = typed[field].trim();
    // The fields of the blade begin with the shop's own: where one is cleared, it is asked for.
    if (text === '' && (blank === 'absent' || blank === 0)) return undefined;
    const parsed = parseLength(text, key, shop);
    if (!parsed.ok) {
      faults.push(...parsed.faults);
      return undefined;
    }
    // The geometry refuses the others itself, by name.
    if (field === 'nearFlat' && parsed.value.compare(0) < 0) {
      faults.push(fault('length.negative', key, { inches: Number(parsed.value) }));
    }
    const asked = askAboutLength(key, text, Number(parsed.value), most);
    if (asked !== undefined) faults.push(asked);
    return parsed.value;
  });
  if (faults.length > 0 || !isComplete(sizes)) {
    return finish(undefined, shop, undefined, faults, []);
  }
  const { blankWidth, blankThickness, nearFlat, bladeDiameter, kerf } = sizes;
  const profile: CoveProfile = {
    name: 'A cove of your own',
    make: 'cove',
    cove: coveOf(sizes),
    blankWidth,
    blankThickness,
    ...(nearFlat === undefined ? {} : { nearFlat }),
    place: { at: 'ceiling', isSaid: false, cell: NO_CELL },
    species: '',
    thicknessClass: '',
    note: '',
    where: NO_CELL,
    cells: NO_CELLS,
  };
  // The shop's heights hold for its own blade, not for the one that is tried here.
  const heightsMeasuredWith = shop.heightsMeasuredWith ?? shop.bladeDiameter;
  return answerProfile(profile, { ...shop, bladeDiameter, kerf, heightsMeasuredWith });
}

function finish(
  profile: CoveProfile | undefined,
  shop: Shop,
  setUp: SetUp | undefined,
  faults: readonly Fault[],
  cautions: readonly Caution[],
): ProfileAnswer {
  const say = (one: Fault): Fault => rewordFault(one, shop.unit, shop.decimalSign);
  const said = distinct(faults.map(say));
  const atFault: Partial<Record<SizeKey, string>> = {};
  for (const { argument, message } of said) {
    const field = COVE_FIELDS.find((one) => COVE_SIZES[one].key === argument);
    if (field !== undefined) atFault[field] ??= message;
  }
  return {
    profile,
    shop,
    setUp,
    setting: setUp?.setting ?? settingOf(profile, shop),
    faults: said,
    cautions: distinct(cautions.map(say)),
    atFault,
  };
}

function settingOf(profile: CoveProfile | undefined, shop: Shop): Setting | undefined {
  return profile === undefined ? undefined : checkCove(profile.cove, bladeOf(shop)).setting;
}

/** Sizes and passes may both refuse one depth: once is enough. */
function distinct(faults: readonly Fault[]): Fault[] {
  return [...new Map(faults.map((one) => [one.message, one])).values()];
}
