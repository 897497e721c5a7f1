/** Whether two rows of Stock, of two readings of a job, are of the same wood. */
import { stretchKey } from './clear-stretches.ts';
import { nameKey, type StockItem } from './job.ts';

/** What tells a row of Stock from others, its price aside. */
export type RowOfStock = Pick<
  StockItem,
  'for' | 'kind' | 'thicknessClass' | 'grade' | 'width' | 'length'
> & {
  /** See `stretchKey`; absent for a whole board or stick. */
  readonly stretchOf?: string;
};

export function rowOfStock(item: StockItem): RowOfStock {
  const { for: name, kind, thicknessClass, grade, width, length } = item;
  const stretchOf = stretchKey(item);
  return {
    for: name,
    kind,
    thicknessClass,
    ...(grade === undefined ? {} : { grade }),
    ...(width === undefined ? {} : { width }),
    length,
    ...(stretchOf === '' ? {} : { stretchOf }),
  };
}

export function isSameRow(one: RowOfStock, other: RowOfStock): boolean {
  return (
    nameKey(one.for) === nameKey(other.for) &&
    one.kind === other.kind &&
    nameKey(one.thicknessClass) === nameKey(other.thicknessClass) &&
    nameKey(one.grade ?? '') === nameKey(other.grade ?? '') &&
    one.length.equals(other.length) &&
    one.width?.toFraction() === other.width?.toFraction() &&
    (one.stretchOf ?? '') === (other.stretchOf ?? '')
  );
}
