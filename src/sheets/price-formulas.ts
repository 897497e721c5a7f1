/** What comes on the price of the moldings, as formulas that Production and Client share. */

/** What brings an amount up to the next whole step, both in the currency; worked in whole cents. */
export function roundingFormula(amount: string, step: string): string {
  const stepCents = `ROUND(${step}*100,0)`;
  // Whole cents, moved by just under half a step, round to the next one up.
  const moved = `(ROUND((${amount})*100,0)+(${stepCents}-1)/2)/${stepCents}`;
  const up = `ROUND(${moved},0)*${stepCents}/100`;
  return `ROUND(${up}-(${amount}),2)`;
}

/** What brings an amount up to a least one. */
export function toMinimumFormula(amount: string, least: string): string {
  return `IF(${amount}<${least},ROUND(${least}-(${amount}),2),0)`;
}
