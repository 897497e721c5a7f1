/** Signs and letters of money, and when two of them mean the same. */

/** What is written beside a sum, and the codes of ISO 4217 that it may stand for. */
const WRITTEN: Readonly<Record<string, readonly string[]>> = {
  $: ['usd', 'cad', 'aud', 'nzd', 'mxn', 'sgd', 'hkd'],
  us$: ['usd'],
  c$: ['cad'],
  ca$: ['cad'],
  can$: ['cad'],
  a$: ['aud'],
  au$: ['aud'],
  nz$: ['nzd'],
  mx$: ['mxn'],
  s$: ['sgd'],
  hk$: ['hkd'],
  '€': ['eur'],
  euro: ['eur'],
  euros: ['eur'],
  '£': ['gbp'],
  '¥': ['jpy', 'cny'],
  rmb: ['cny'],
  kr: ['sek', 'nok', 'dkk', 'isk'],
  fr: ['chf'],
  sfr: ['chf'],
  zł: ['pln'],
  zl: ['pln'],
  kč: ['czk'],
  r$: ['brl'],
  '₹': ['inr'],
  rs: ['inr'],
  '₺': ['try'],
  '₽': ['rub'],
  '₴': ['uah'],
  '₪': ['ils'],
  '₩': ['krw'],
};
const CODES = new Set([...Object.values(WRITTEN).flat(), 'huf', 'ron', 'zar', 'bgn', 'rsd']);
/** Codes that are words too: money only where the shop counts in them. */
const WORDS = new Set(['try']);

function key(text: string): string {
  return text.normalize('NFC').toLowerCase().replaceAll(' ', '').replace(/\.$/u, '');
}

function codesOf(text: string): readonly string[] {
  const own = key(text);
  return WRITTEN[own] ?? [own];
}

/** Whether a text beside a number is money's, to anybody. */
export function isCurrency(text: string): boolean {
  const own = key(text);
  return /^\p{Sc}$/u.test(own) || own in WRITTEN || (CODES.has(own) && !WORDS.has(own));
}

/** As it is printed: codes in capitals, signs and names as they were typed. */
export function writeCurrency(typed: string): string {
  return CODES.has(key(typed)) ? typed.toUpperCase() : typed;
}

/** `$` may be `USD` or `CAD`, which aren't the same; what isn't listed is the same as itself alone. */
export function isSameCurrency(one: string, other: string): boolean {
  const codes = codesOf(one);
  return codesOf(other).some((code) => codes.includes(code));
}
