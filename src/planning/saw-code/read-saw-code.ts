/** Reads a set-up out of the fragment of an address: all of it holds, or none of it is given. */
import {
  failed,
  fault,
  ok,
  type FaultCode,
  type Outcome,
  type Where,
} from '../../core/faults/fault.ts';
import type { Cove } from '../../core/cove/cove.ts';
import { degrees } from '../../core/units/angle.ts';
import { PROFILE_CELLS, type CoveProfile, type ProfileCell } from '../job.ts';
import { planSetUp } from '../plan-setup.ts';
import type { SawShop } from '../shop.ts';
import {
  CHECK_DIGITS,
  checkOf,
  CODE_FORM,
  definitionOf,
  exactOf,
  LIST_SIGN,
  MOST_CODE_SIGNS,
  PART_SIGN,
  SAW_KEYS,
  writeSawCode,
  type CodedSetUp,
} from './saw-code.ts';

const NUMBER = /^(?:\d{1,6}(?:\.\d{1,20})?|\.\d{1,20})m?$/u;
const COUNT = /^\d{1,6}$/u;
const FLAGS = /^[im][pc][db][fc][no]$/u;
const CODE = new RegExp(`^(\\d{1,4})_([\\da-f]{${CHECK_DIGITS}})_(.*)$`, 'u');
const COVE_PARTS = 8;

/** Nothing here stands in a cell. */
const NOWHERE: Where = { sheet: '', cell: '' };

/**
 * @param fragment Of an address, without its `#`.
 * @returns The set-up, worked out again and the same as printed to the last sign; else saw-code.none, damaged,
 * older, newer or other-numbers.
 */
export function readSawCode(fragment: string): Outcome<CodedSetUp> {
  const refuse = (code: FaultCode, given = ''): Outcome<CodedSetUp> =>
    failed(fault(code, 'sawCode', given));
  if (fragment === '') return refuse('saw-code.none');
  const [, form, check, body = ''] = CODE.exec(fragment) ?? [];
  if (form !== undefined && Number(form) > CODE_FORM) return refuse('saw-code.newer');
  if (form !== undefined && Number(form) < CODE_FORM) return refuse('saw-code.older');
  if (check !== checkOf(body) || fragment.length > MOST_CODE_SIGNS) {
    return refuse('saw-code.damaged');
  }
  const parts = body.split(PART_SIGN);
  const [flags = '', saw = '', cove = '', , name = '', species = ''] = parts;
  const shop = shopOf(flags, saw);
  const profile = profileOf(flags, cove, signsToText(name), signsToText(species));
  if (shop === undefined || profile === undefined) return refuse('saw-code.damaged');
  const { setUp } = planSetUp(profile, shop);
  if (setUp === undefined) return refuse('saw-code.other-numbers', profile.name);
  const blanks = Number(cove.split(LIST_SIGN).at(-1));
  const coded = { profile, setUp, shop, blanks, hasNote: flags.endsWith('n') };
  return writeSawCode(coded) === fragment
    ? ok(coded)
    : refuse('saw-code.other-numbers', profile.name);
}

function shopOf(flags: string, saw: string): SawShop | undefined {
  const values = saw.split(LIST_SIGN);
  if (!FLAGS.test(flags) || values.length !== SAW_KEYS.length) return undefined;
  const shop: Record<string, unknown> = {
    unit: flags.startsWith('m') ? 'mm' : 'in',
    decimalSign: flags[1] === 'c' ? ',' : '.',
  };
  for (const [at, key] of SAW_KEYS.entries()) {
    const { usual, allowed, kind } = definitionOf(key);
    const signs = values[at] ?? '';
    if (signs !== '' && !NUMBER.test(signs)) return undefined;
    if (signs === '' && usual === undefined) continue;
    if (kind === 'word') shop[key] = signs === '' ? usual : allowed?.[Number(signs)];
    else {
      const exact = exactOf(signs === '' ? (usual ?? '') : signs);
      shop[key] = kind === 'length' ? exact : Number(exact);
    }
    if (shop[key] === undefined) return undefined;
  }
  return shop as unknown as SawShop;
}

function profileOf(
  flags: string,
  signs: string,
  name: string | undefined,
  species: string | undefined,
): CoveProfile | undefined {
  const parts = signs.split(LIST_SIGN);
  const [width = '', depth = '', offCenter = '', wide = '', thick = '', near = '', spring = ''] =
    parts;
  const isSound =
    parts.length === COVE_PARTS &&
    [width, depth, offCenter, wide, thick].every((one) => NUMBER.test(one)) &&
    [near, spring].every((one) => one === '' || NUMBER.test(one)) &&
    COUNT.test(parts.at(-1) ?? '');
  if (!isSound || name === undefined || species === undefined) return undefined;
  const cove: Cove = {
    width: Number(exactOf(width)),
    depth: Number(exactOf(depth)),
    offCenter: Number(exactOf(offCenter)),
    ...(flags[2] === 'b' ? { offCenterTo: 'blade middle' as const } : {}),
  };
  const given = {
    name,
    species,
    thicknessClass: '',
    note: '',
    place: { at: 'floor', isSaid: false, cell: NOWHERE } as const,
    where: NOWHERE,
    cells: Object.fromEntries(PROFILE_CELLS.map((one) => [one, NOWHERE])) as Record<
      ProfileCell,
      Where
    >,
    cove,
    blankWidth: exactOf(wide),
    blankThickness: exactOf(thick),
    ...(near === '' ? {} : { nearFlat: exactOf(near) }),
  };
  const leaning = spring === '' ? undefined : degrees(Number(exactOf(spring)));
  if (flags[3] === 'f') {
    return { ...given, make: 'cove', ...(leaning === undefined ? {} : { spring: leaning }) };
  }
  return leaning === undefined ? undefined : { ...given, make: 'crown cove', spring: leaning };
}

/** Undefined for what is no text. */
function signsToText(signs: string): string | undefined {
  try {
    return decodeURIComponent(signs.replaceAll('+', ' '));
  } catch {
    return undefined;
  }
}
