/** A worksheet function as catalogue.ts lists it. */
import type { Range, Results } from './cell.ts';

export interface CatalogueEntry {
  readonly id: string;
  /** As a person types it: COVE.APPROACH. */
  readonly name: string;
  readonly description: string;
  readonly parameters: readonly {
    readonly name: string;
    readonly optional: boolean;
    readonly description: string;
  }[];
  /** A formula in English, with commas and its equals sign. */
  readonly example: string;
  call(...given: Range[]): Results;
}
