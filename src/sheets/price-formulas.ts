/** What prices are worked out by, as formulas that several sheets share. */

import type { AllowanceOf } from '../core/lumber/offcut-allowance.ts';

/** An amount with its offcut allowance, a cell of percent. */
export function allowanceFormula(net: string, percent: string, of: AllowanceOf): string {
  return of === 'net' ? `${net}*(1+${percent}/100)` : `${net}/(1-${percent}/100)`;
}

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

/** A cell of each rate of the shop that lines of money go by. */
export type PriceRates = Readonly<
  Record<'overhead' | 'contingency' | 'materialMarkup' | 'laborMarkup' | 'margin', string>
>;

/** The price of lumber less credit and labor, each line rounded to the cent as Production has them. */
export function priceFormula(material: string, labor: string, rates: PriceRates): string {
  const spent = `${material}+${labor}`;
  const cost = `${spent}+ROUND((${spent})*${rates.overhead}/100,2)`;
  const contingency = `ROUND((${cost})*${rates.contingency}/100,2)`;
  const markup = `ROUND((${material}*${rates.materialMarkup}+${labor}*${rates.laborMarkup})/100,2)`;
  return `ROUND((${cost}+${contingency}+${markup})/(1-${rates.margin}/100),2)`;
}
