/** Letters as wide as Arial's, measured from a font file: Liberation Sans, where it is installed. */
import { existsSync } from 'node:fs';
import { createCanvas, GlobalFonts } from '@napi-rs/canvas';

const FOLDERS = ['/usr/share/fonts/truetype/liberation', '/usr/share/fonts/liberation-sans'];
const FILES = { regular: 'LiberationSans-Regular.ttf', bold: 'LiberationSans-Bold.ttf' } as const;
const EM = 1000;

const folder = FOLDERS.find((one) => existsSync(`${one}/${FILES.regular}`));

export const lettersAreHere = folder !== undefined;
/** Where CI lacks the font the checks run, and fail: a check that can't run there is no check. */
export const lettersMustBeHere = lettersAreHere || process.env['CI'] !== undefined;

const context = createCanvas(1, 1).getContext('2d');
for (const [name, file] of Object.entries(FILES)) {
  if (folder !== undefined) GlobalFonts.registerFromPath(`${folder}/${file}`, `Letters ${name}`);
}

/** Width of text on one line, in ems. */
export function measureEms(text: string, bold = false): number {
  if (!lettersAreHere) throw new Error('Liberation Sans is not installed on this machine.');
  context.font = `${EM}px "Letters ${bold ? 'bold' : 'regular'}"`;
  return context.measureText(text).width / EM;
}
