/** Answers without a number format of their own are shown rounded: the cell's edge would cut them off somewhere. */
import {
  InterceptorEffectEnum,
  type ICellData,
  type Injector,
  type Nullable,
} from '@univerjs/core';
import { INTERCEPTOR_POINT, SheetInterceptorService } from '@univerjs/sheets';

const DECIMALS = 5;

/** For show alone: what is read, saved and reckoned with keeps its last bit. */
export function showRounded(services: Injector): void {
  services.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    effect: InterceptorEffectEnum.Value,
    handler: (cell, { rawData }, next) => {
      const shown = next(cell);
      const value = shown?.v;
      // A formatted number is a text by now, and what was typed stays as it was typed.
      if (typeof value !== 'number' || Number.isInteger(value) || isTyped(rawData)) return shown;
      return { ...shown, v: rounded(value) };
    },
  });
}

function isTyped(cell: Nullable<ICellData>): boolean {
  return (cell?.f ?? cell?.si ?? '') === '' && (cell?.v ?? null) !== null;
}

export function rounded(value: number): number {
  const fixed = Number(value.toFixed(DECIMALS));
  return fixed === 0 ? Number(value.toPrecision(DECIMALS)) : fixed;
}
