/** Angles: degrees at the edges of the program, radians inside. The brands keep them apart. */
declare const unit: unique symbol;
export type Degrees = number & { readonly [unit]: 'degrees' };
export type Radians = number & { readonly [unit]: 'radians' };

export const degrees = (value: number): Degrees => value as Degrees;
export const radians = (value: number): Radians => value as Radians;

export const QUARTER_TURN = radians(Math.PI / 2);

const DEGREES_PER_RADIAN = 180 / Math.PI;

export function toRadians(angle: Degrees): Radians {
  return radians(angle / DEGREES_PER_RADIAN);
}

export function toDegrees(angle: Radians): Degrees {
  return degrees(angle * DEGREES_PER_RADIAN);
}
