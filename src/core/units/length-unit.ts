/** The units a shop measures in. */
export type LengthUnit = 'in' | 'mm';

export const MM_PER_INCH = 25.4;
