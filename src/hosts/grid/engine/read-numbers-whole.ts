/** Takes a number in a formula for one, however it is spelled. */
import { ValueNodeFactory } from '@univerjs/engine-formula';

const MENDED = Symbol('mended');

/**
 * The engine takes 0.50, 1.0 and 1E-9 in a formula for texts, since it would spell them 0.5, 1 and 1e-9;
 * what is typed is respelled first, what comes from a file or a sheet's description is not. Seen with
 * version 0.25.1; does nothing where it was called before.
 */
export function readNumbersWhole(): void {
  const factory = ValueNodeFactory.prototype as ValueNodeFactory & { [MENDED]?: true };
  if (factory[MENDED] === true) return;
  factory[MENDED] = true;
  const create = factory.create.bind(factory);
  factory.create = (token) => create(asSpelled(token));
}

function asSpelled(token: string): string {
  const number = Number(token);
  return token.trim() !== '' && Number.isFinite(number) ? String(number) : token;
}
