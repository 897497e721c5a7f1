/** A function's example and call as the person would type them. */
import type { FunctionReference } from '../services.ts';

/**
 * The example with the person's separator of arguments; what stands within quotes stays. A separator
 * other than the comma means that the comma is the decimal sign, so numbers have it too.
 */
export function showExample(example: string, separator: string): string {
  return example
    .split('"')
    .map((part, index) => (index % 2 === 1 ? part : withSeparator(part, separator)))
    .join('"');
}

function withSeparator(unquoted: string, separator: string): string {
  if (separator === ',') return unquoted;
  return unquoted.replaceAll(',', separator).replace(/(?<=\d)\.(?=\d)/gu, ',');
}

/** What a function is for, in its description's first words. */
export function gistOf(description: string): string {
  return /^[^,:;(.]+/u.exec(description)?.[0].trim() ?? description;
}

/** `COVE.TILT(width; depth; [kerf])`: what may be left out stands in brackets. */
export function showCall({ name, parameters }: FunctionReference, separator: string): string {
  const shown = parameters.map((one) => (one.optional ? `[${one.name}]` : one.name));
  return `${name}(${shown.join(`${separator} `)})`;
}

/** Functions in which every word of the search occurs, in their names, words or arguments. */
export function searchFunctions(
  functions: readonly FunctionReference[],
  search: string,
): readonly FunctionReference[] {
  const words = search
    .toLowerCase()
    .split(/\s+/u)
    .filter((word) => word !== '');
  return functions.filter(({ name, description, parameters }) => {
    const text = [name, description, ...parameters.flatMap((one) => [one.name, one.description])]
      .join(' ')
      .toLowerCase();
    return words.every((word) => text.includes(word));
  });
}
