/** The greatest whole number that divides both; the other where one is 0. */
export function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b);
}
