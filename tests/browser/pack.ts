/** Plain data as text, for pages: much sooner there than value by value. */

/** Numbers that JSON can't hold stand under this name. */
const NUMBER = 'a number';

export function pack(values: readonly unknown[]): string {
  return JSON.stringify(values, (_, value: unknown) =>
    typeof value === 'number' && !Number.isFinite(value) ? { [NUMBER]: String(value) } : value,
  );
}

export function unpack(text: string): unknown[] {
  return JSON.parse(text, (_, value: unknown) =>
    typeof value === 'object' && value !== null && NUMBER in value ? Number(value[NUMBER]) : value,
  ) as unknown[];
}
