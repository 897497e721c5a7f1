/** Tells from a number format whether its cell shows a date or a time. */
import { formatSections, LONGEST_FORMAT } from './format-sections.ts';

/** Whether a number format (in English, as Excel gives it) shows a date or a time in any section. */
export function isDateFormat(format: string): boolean {
  return format.length <= LONGEST_FORMAT && formatSections(format).some(({ isDate }) => isDate);
}
