/** A client's copy that came back, in words: quantities, what they come to, and where they are to be changed. */
import type { Shop } from '../planning/shop.ts';
import {
  COUNTS_NOTE,
  sayAccepted,
  sayChanged,
  sayOtherwise,
  sayTaken,
  sayRowsOfLine,
} from '../sheets/words/say-copy.ts';
import { changedLines, type ReturnedCopy } from '../planning/compare/returned-copy.ts';
import type { ComparedPlans } from '../sheets/changes/changes-sheet.ts';
import { printExact } from '../sheets/words/print-length.ts';
import type { Paragraph } from './report.ts';
import { arrow } from './say-comparison.ts';
import { drawTable } from './text-table.ts';

const LINES = [
  { heading: 'Room' },
  { heading: 'Molding' },
  { heading: 'Length', align: 'right' },
  { heading: 'Quantity', align: 'right' },
  { heading: 'Price', align: 'right' },
  { heading: 'Difference', align: 'right' },
] as const;

/** @param say money in words */
export function sayCopy(
  copy: ReturnedCopy,
  files: ComparedPlans,
  shop: Shop,
  say: (cents: number) => string,
): Paragraph[] {
  const changed = changedLines(copy);
  const { quoted, now } = copy.price;
  const [otherwise, taken] = [sayOtherwise(copy), sayTaken(copy)];
  const signed = (cents: number): string => `${cents > 0 ? '+' : ''}${say(cents)}`;
  const money = (what: string, from: number, to: number): string =>
    `  ${what} ${arrow(say(from), say(to))}, ${signed(to - from)}`;
  return [
    [`Plan: ${files.before}`, `Client's copy: ${files.after}`],
    sayChanged(copy),
    ...(changed.length === 0
      ? []
      : [
          drawTable(
            LINES,
            changed.map(({ room, molding, length, quantity, now: is, priceCents, nowCents }) => [
              room,
              molding,
              printExact(length, shop),
              arrow(String(quantity), String(is)),
              arrow(say(priceCents), say(nowCents)),
              signed(nowCents - priceCents),
            ]),
          ),
          [
            'Where to change it:',
            ...changed.map(
              (line) =>
                `  ${line.room}, ${line.molding}, ${printExact(line.length, shop)}: ${sayRowsOfLine(line)}`,
            ),
            COUNTS_NOTE,
          ],
        ]),
    ...(taken === undefined ? [] : [taken]),
    [
      'In all:',
      `  pieces ${arrow(String(quoted.pieces), String(now.pieces))}`,
      money('price', quoted.priceCents, now.priceCents),
      money('to pay', quoted.toPayCents, now.toPayCents),
    ],
    sayAccepted(copy),
    ...(otherwise === undefined ? [] : [otherwise]),
  ];
}
