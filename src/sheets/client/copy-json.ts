/** A copy that came back, for machines: lengths in inches, money in the shop's currency. */
import { faultsToJson } from '../../core/faults/fault-json.ts';
import type { PriceOfLines } from '../../planning/compare/price-of-lines.ts';
import type { CopyFile } from './copy-sheet.ts';
import { rowsOfLine } from '../words/say-copy.ts';
import {
  changedLines,
  type CopyLine,
  type ReturnedCopy,
} from '../../planning/compare/returned-copy.ts';

export function copyToJson({ number, day }: CopyFile, copy: ReturnedCopy) {
  const { quoted, now } = copy.price;
  return {
    number: number ?? null,
    date: day ?? null,
    lines: copy.lines.length,
    changed: changedLines(copy).map(lineToJson),
    options: copy.options.map(({ name, isTaken, priceCents, where }) => ({
      name,
      taken: isTaken,
      price: priceCents / 100,
      where: where ?? null,
    })),
    quoted: priceToJson(quoted),
    now: priceToJson(now),
    difference: {
      pieces: now.pieces - quoted.pieces,
      price: (now.priceCents - quoted.priceCents) / 100,
      tax: (now.taxCents - quoted.taxCents) / 100,
      toPay: (now.toPayCents - quoted.toPayCents) / 100,
    },
    accepted: copy.accepted,
    otherwise: faultsToJson(copy.findings),
  };
}

function lineToJson(line: CopyLine) {
  const { room, molding, length, quantity, now, priceCents, nowCents, where } = line;
  return {
    room,
    molding,
    length: Number(length),
    quoted: quantity,
    now,
    priceQuoted: priceCents / 100,
    priceNow: nowCents / 100,
    difference: (nowCents - priceCents) / 100,
    where: where ?? null,
    rows: rowsOfLine(line),
  };
}

function priceToJson({ pieces, linesCents, priceCents, taxCents, toPayCents }: PriceOfLines) {
  return {
    pieces,
    moldings: linesCents / 100,
    price: priceCents / 100,
    tax: taxCents / 100,
    toPay: toPayCents / 100,
  };
}
