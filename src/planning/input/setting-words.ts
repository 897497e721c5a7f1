/** Words about a setting: its own unit as people write it, and names that say a price is meant. */
import { wordsOf } from '../../core/words/near-words.ts';
import type { SettingDefinition } from '../settings/setting.ts';

/** What may stand in the Unit column, by the unit that the setting is kept in. Common practice [C]. */
const WRITTEN: Readonly<Record<string, RegExp>> = {
  degrees: /^(?:°|deg|degs?\.?|degrees?)$/u,
  '%': /^(?:%|percent|per cent|pct\.?)$/u,
  s: /^(?:s|secs?\.?|seconds?)$/u,
  'ft/min': /^(?:ft\/min|feet a minute)$/u,
  'min/sq ft': /^(?:min\.?|mins\.?|minutes?|min\/(?:sq\.? ?ft|ft²))$/u,
  min: /^(?:min\.?|mins\.?|minutes?)$/u,
  days: /^(?:d|days?)$/u,
  // $/h, USD per hour, an hour
  'an hour': /^(?:\p{Sc}|\p{L}{1,3}\p{Sc}?)? ?(?:\/|per|an?)? ?(?:h|hr|hrs|hours?)\.?$/u,
  'a job': /^(?:\p{Sc}|\p{L}{1,3}\p{Sc}?)?(?: ?(?:\/|per|an?)? ?job)?$/u,
};

/**
 * Whether a unit is the setting's own. Any other would be passed over with its number read as it stands:
 * 45 min as 45 s.
 */
export function isUnitOf({ unit }: SettingDefinition, said: string): boolean {
  const plain = said.trim().toLowerCase();
  return plain === '' || plain === unit || WRITTEN[unit] === undefined || WRITTEN[unit].test(plain);
}

/** By words like these a setting adds to a price or takes from it. Common practice [C]. */
const MONEY_WORDS: ReadonlySet<string> = new Set([
  ...['markup', 'mark', 'profit', 'discount', 'rebate', 'surcharge', 'fee', 'charge', 'minimum'],
  ...['contingency', 'delivery', 'freight', 'shipping', 'vat', 'gst', 'tax', 'rate', 'wage'],
  ...['price', 'cost', 'labor', 'labour', 'waste', 'wastage'],
]);

/** Whether a setting that is not one of ours would change a price by its name. */
export function mayBeMoney(name: string): boolean {
  return wordsOf(name).some((word) => MONEY_WORDS.has(word));
}
