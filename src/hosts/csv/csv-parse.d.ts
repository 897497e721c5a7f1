/**
 * What is used of csv-parse in a browser; tsconfig.json puts it in the place of the package's own
 * types. Those are of Node's streams: with them Buffer and node:fs would compile in all of the hosts.
 */
export class CsvError extends Error {
  readonly code: string;
}

export function parse(
  bytes: Uint8Array,
  options: {
    readonly delimiter: string;
    readonly record_delimiter: string;
    readonly relax_column_count: boolean;
    readonly relax_quotes: boolean;
    /** In bytes. */
    readonly max_record_size: number;
    /** A record for which it returns null is not kept. @param about The line that it ends on. */
    readonly on_record: (cells: string[], about: { readonly lines: number }) => null;
  },
): void;
