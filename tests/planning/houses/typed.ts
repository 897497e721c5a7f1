/** Lengths as people write them down. */
import type { Chance } from './chance.ts';

export const MM = 25.4;

/** A length that the tape shows, in one of several ways; any other as a laser shows it. */
export function typed(inches: number, isMetric: boolean, chance: Chance): string {
  if (isMetric) {
    const millimetres = inches * MM;
    const whole = Math.round(millimetres);
    if (Math.abs(millimetres - whole) > 1e-9) return millimetres.toFixed(6);
    return chance.one([`${whole}`, `${whole} mm`, `${whole / 10} cm`, `${whole / 1000} m`]);
  }
  const parts = inches * 32;
  if (Math.abs(parts - Math.round(parts)) > 1e-9) return inches.toFixed(8);
  const exact = Math.round(parts);
  const fraction = (count: number): string => {
    const whole = Math.floor(count / 32);
    const rest = count % 32;
    return rest === 0 ? `${whole}` : `${whole === 0 ? '' : `${whole} `}${lowest(rest)}`;
  };
  const feet = Math.floor(exact / 384);
  return chance.one([
    fraction(exact),
    `${fraction(exact)}""`,
    String(exact / 32),
    feet === 0 ? fraction(exact) : `${feet}' ${fraction(exact % 384)}""`,
  ]);
}

function lowest(thirtySeconds: number): string {
  let [top, bottom] = [thirtySeconds, 32];
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return `${top}/${bottom}`;
}

/** One cell of a CSV file; a doubled inch mark is already written as in one. */
export function csvCell(text: string): string {
  return /[",]/u.test(text) ? `"${text}"` : text;
}

export function csv(headings: readonly string[], rows: readonly (readonly string[])[]): string {
  return [headings, ...rows].map((row) => row.map(csvCell).join(',')).join('\n');
}
