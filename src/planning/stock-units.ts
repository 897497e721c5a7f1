/** Which stock serves a profile, what a stick of it costs, and how many blanks a board gives. */
import Fraction from 'fraction.js';
import { own, phrase } from '../core/faults/argument.ts';
import { fault, placeFault, type Caution, type Fault } from '../core/faults/fault.ts';
import { computeBoardFeet, toCubicMetres } from '../core/lumber/board-feet.ts';
import { countBlanks } from '../core/lumber/blanks.ts';
import { findThicknessClass } from '../core/lumber/thickness-class.ts';
import { exactDecimal, type ExactInches } from '../core/units/length.ts';
import { boardLengthOf, centsOfStretch } from './clear-stretches.ts';
import { boughtForUsed } from './grade-yield.ts';
import { sameName, type Job, type Profile, type StockCell, type StockItem } from './job.ts';
import type { Shop } from './shop.ts';

/** A row of Stock as it serves one profile. */
export interface StockUnit {
  readonly item: StockItem;
  /** 1 for a stick; for a board the blanks of this profile alone that it rips into. */
  readonly strips: number;
  /** Of one clear stick or board, in whole cents: what is bought for it, where its grade has a yield. */
  readonly priceCents: number;
  /** Of one whole stick or board, clear or not. */
  readonly eachCents: number;
  /** Of one stick or board as it is measured, in a metric shop as thick as it is; undefined where no thickness or width is known. */
  readonly boardFeet?: number;
}

/** What a profile's lumber is by its offcut allowance, see allowed-lumber.ts. */
export interface AllowedLumber {
  /** The row of Stock that it is priced by. */
  readonly unit: StockUnit;
  /** The longest stick of the rows that it could be priced by: what is longer is joined. */
  readonly longestStick: ExactInches;
  /** Boards for what is made here go by the board foot, all else by the foot. */
  readonly per: 'foot' | 'board foot';
  /** Net; with the allowance, a percent of what the shop says. */
  readonly net: number;
  readonly allowancePercent: number;
  /** Net length with the allowance, in inches. */
  readonly inches: number;
  /** So many sticks or blanks of the row: rounded up, a millionth of one over being none. */
  readonly sticks: number;
  /** For one of `per`, unrounded. */
  readonly eachCents: number;
  readonly cents: number;
}

export interface StockReading {
  readonly units: readonly StockUnit[];
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

const INCHES_PER_METRE = new Fraction(5000, 127);

/**
 * Bought profiles are served by rows for the profile alone; coves also by rows for their species,
 * of their class where both name one. What is unfit is left out, each with a caution: a stick no
 * longer than its trims, a board for what is bought, a blank shorter than the shop's least, a board or
 * stick narrower or thinner than the blank.
 */
export function findStock(profile: Profile, job: Job): StockReading {
  const faults: Fault[] = [];
  const cautions: Caution[] = [];
  const made = profile.make !== 'buy';
  const rows = job.stock.filter(
    (item) =>
      sameName(item.for, profile.name) ||
      (made &&
        profile.species !== '' &&
        sameName(item.for, profile.species) &&
        fitsClass(item, profile)),
  );
  const units = rows.flatMap((item) => {
    const caution = whyUnfit(item, profile, job.shop);
    if (caution !== undefined) {
      cautions.push(caution);
      return [];
    }
    const priced = priceUnit(item, profile, job.shop);
    if (!('cents' in priced)) {
      faults.push(priced);
      return [];
    }
    const strips = stripsOf(item, profile, job.shop);
    const { cents, eachCents, boardFeet } = priced;
    const unit = { item, strips, priceCents: cents, eachCents };
    return [boardFeet === undefined ? unit : { ...unit, boardFeet }];
  });
  if (units.length === 0 && faults.length === 0) {
    const species = profile.species === '' ? '' : ` (${profile.species})`;
    const needed = made ? `its species${species}` : '';
    const none = fault('job.no-stock', 'sheet.Stock', profile.name, { details: { needed } });
    const isOfAnother = made && !job.stock.some((item) => sameName(item.for, profile.species));
    faults.push(placeFault(none, isOfAnother ? profile.cells.species : profile.where));
  }
  return { units, faults, cautions };
}

function fitsClass(item: StockItem, profile: Profile): boolean {
  const [one, other] = [item.thicknessClass, profile.thicknessClass];
  return one === '' || other === '' || sameName(one, other);
}

function whyUnfit(item: StockItem, profile: Profile, shop: Shop): Caution | undefined {
  const details = { profile: profile.name };
  const trims = shop.endTrim.mul(2);
  const at = (heading: StockCell, one: Caution): Caution => {
    const isStretch = heading === 'length' && item.stretch !== undefined;
    return placeFault(one, item.cells[isStretch ? 'defects' : heading]);
  };
  const inches = (length: ExactInches): { readonly inches: number } => ({ inches: Number(length) });
  if (item.length.lte(trims)) {
    const argument = phrase('stockFor', { name: own(item.for) });
    const more = { limit: inches(trims) };
    const given = inches(item.length);
    return at('length', fault('cutting.stick-shorter-than-trim', argument, given, more));
  }
  if (profile.make === 'buy') {
    if (item.kind === 'stick') return undefined;
    return at('kind', fault('job.board-for-bought', 'sheet.Stock', profile.name));
  }
  if (item.length.lt(shop.leastBlankLength)) {
    const more = { limit: inches(shop.leastBlankLength) };
    return at(
      'length',
      fault('job.blank-below-least', own(profile.name), inches(item.length), more),
    );
  }
  if (item.width !== undefined && stripsOf(item, profile, shop) < 1) {
    const more = { limit: inches(profile.blankWidth), details };
    return at('width', fault('job.board-too-narrow', 'sheet.Stock', inches(item.width), more));
  }
  const rough = roughThickness(item.thicknessClass);
  if (rough !== undefined && profile.blankThickness.gt(rough)) {
    const more = { limit: inches(profile.blankThickness), details };
    return at('thicknessClass', fault('job.board-too-thin', 'sheet.Stock', inches(rough), more));
  }
  return undefined;
}

function stripsOf(item: StockItem, profile: Profile, shop: Shop): number {
  const { width: boardWidth } = item;
  if (profile.make === 'buy' || boardWidth === undefined) return 1;
  const { blankWidth } = profile;
  if (item.kind === 'stick') return boardWidth.gte(blankWidth) ? 1 : 0;
  const counted = countBlanks({ boardWidth, blankWidth, kerf: shop.kerf });
  return counted.ok ? counted.value : 0;
}

function roughThickness(thicknessClass: string): ExactInches | undefined {
  const found = findThicknessClass(thicknessClass, 'thicknessClass');
  return found.ok ? new Fraction(found.value.rough) : undefined;
}

/**
 * Derived: price times how many of its unit one stick or board is, over its yield, rounded to the cent once,
 * halves up. Board feet count under 1 in as 1, cubic metres a thickness as it is. A clear stretch of a board pays its share of the whole board's price.
 */
function priceUnit(
  item: StockItem,
  profile: Profile,
  { unit }: Pick<Shop, 'unit'>,
): { cents: number; eachCents: number; boardFeet?: number } | Fault {
  const thickness =
    roughThickness(item.thicknessClass) ??
    roughThickness(profile.thicknessClass) ??
    profile.blankThickness;
  const width = item.width ?? profile.blankWidth;
  const { length } = item;
  const wholeLength = boardLengthOf(item);
  const measured =
    thickness === undefined || width === undefined
      ? undefined
      : computeBoardFeet({ thickness, width, length });
  const sold = measured?.ok === true ? measured.value : undefined;
  const asItIs = sold?.mul(thickness?.lt(1) === true ? thickness : 1);
  const boardFeet = unit === 'mm' ? asItIs : sold;
  const ofWhole = wholeLength.div(length);
  const count = {
    piece: new Fraction(1),
    foot: wholeLength.div(12),
    metre: wholeLength.div(INCHES_PER_METRE),
    'board foot': sold?.mul(ofWhole),
    'cubic metre': asItIs === undefined ? undefined : toCubicMetres(asItIs.mul(ofWhole)),
  }[item.per];
  if (count === undefined) {
    const needed = width === undefined ? 'a Width' : 'a Class or the profile’s Blank thickness';
    const one = fault('job.price-per-needs', 'sheet.Stock', item.per, { details: { needed } });
    return placeFault(one, item.cells[width === undefined ? 'width' : 'thicknessClass']);
  }
  const each = exactDecimal(item.price).mul(count).mul(100);
  const whole = (amount: Fraction): number => Number(amount.add(1, 2).floor());
  const eachCents = whole(each);
  const clearCents = whole(each.mul(boughtForUsed(item)));
  const cents = item.stretch === undefined ? clearCents : centsOfStretch(eachCents, item.stretch);
  // A mill sells moldings by the foot or the piece: what is bought ready made has no board feet.
  if (profile.make === 'buy' || boardFeet === undefined) return { cents, eachCents };
  return { cents, eachCents, boardFeet: Number(boardFeet) };
}
