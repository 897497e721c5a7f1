/** How long was looked at most for a cheaper plan, beyond the quick plans; no seconds are those alone. */
export type SearchEffort = { readonly seconds: number } | { readonly steps: number };
