/** The plain text of a cell whose style changes along the text, or which has several lines. */
import type { IDocumentData } from '@univerjs/core';

/** Lines end in a carriage return there, the whole in one more and a newline. */
export function cellText({ body }: IDocumentData): string {
  return (body?.dataStream ?? '').replace(/\r?\n?$/u, '').replaceAll('\r', '\n');
}
