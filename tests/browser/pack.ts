/** Plain data as text, for pages: much sooner there than value by value. */

/** Numbers that JSON can't hold stand under this name. */
const NUMBER = 'a number';
/** And what is there, and undefined. */
const NOTHING = 'undefined';

export function pack(values: readonly unknown[]): string {
  return JSON.stringify(values, (_, value: unknown) =>
    typeof value === 'number' && !Number.isFinite(value)
      ? { [NUMBER]: String(value) }
      : value === undefined
        ? { [NOTHING]: true }
        : value,
  );
}

export function unpack(text: string): unknown[] {
  return withNothing(
    JSON.parse(text, (_, value: unknown) =>
      typeof value === 'object' && value !== null && NUMBER in value
        ? Number(value[NUMBER])
        : value,
    ),
  ) as unknown[];
}

/** A reviver can only take away what it makes undefined. */
function withNothing(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withNothing);
  if (typeof value !== 'object' || value === null) return value;
  if (NOTHING in value) return undefined;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, withNothing(one)]));
}
