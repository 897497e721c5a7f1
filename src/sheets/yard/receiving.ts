/** A tally of the boards that came, by their own sizes, and the invoice against it. */
import type { Shop } from '../../planning/shop.ts';
import type { YardLine } from '../../planning/yard-order.ts';
import { findThicknessClass } from '../../core/lumber/thickness-class.ts';
import { cell, sum, type DraftCell, type SheetDraft } from '../grammar/sheet-draft.ts';
import { VOLUME } from '../words/lumber-volume.ts';
import { numberIn } from '../words/print-length.ts';
import { CAME, INVOICE } from './yard-columns.ts';
import { COMES, INVOICE_LINES, invoiceSays, SECTIONS, TALLIES } from './yard-words.ts';

/** A truck brings some more than were asked for; of very many only the first are tallied here. */
const SPARE_ROWS = 4;
const MOST_ROWS = 60;
/** Widths are taken to a 64th: in 64ths of an inch times whole feet, a half foot of face is 384 in 768. */
const FINEST = 64;
const FOOT_OF_FACE = 12 * FINEST;

/** The cell of all that came: board feet by surface measure, or m³. */
export function addTally(draft: SheetDraft, shop: Shop, boards: readonly YardLine[]): string {
  draft.spread(SECTIONS.came, 'section');
  draft.spread(`${COMES} ${TALLIES[shop.unit]}`, 'note');
  draft.put(CAME.headings(shop));
  const wanted = boards.flatMap((line) => Array.from({ length: line.toBuy }, () => line));
  const rows: readonly (YardLine | undefined)[] = [
    ...wanted,
    ...Array.from({ length: SPARE_ROWS }, () => undefined),
  ].slice(0, MOST_ROWS);
  const first = draft.next;
  rows.forEach((line, at) => {
    const row = draft.next;
    draft.put(
      CAME.row({
        number: cell(at + 1, 'rowWhole'),
        of:
          line === undefined
            ? cell(null, 'input')
            : cell([line.item.for, line.item.grade ?? ''].join(' ').trim(), 'row'),
        note: cell(null, 'input'),
        thick: cell(line === undefined ? null : soldThickness(line, shop), 'input'),
        wide: cell(null, 'input'),
        long: cell(null, 'input'),
        ...(shop.unit === 'mm' ? metricCells(row) : inchCells(row, first)),
      }),
    );
  });
  const last = draft.next - 1;
  const sumOf = (column: 'face' | 'bySurface' | 'plain', style: 'totalNumber' | 'total') =>
    sum(CAME.sum(column, first, last), 0, style);
  const cells = {
    of: cell('Together', 'totalLabel'),
    face: sumOf('face', 'totalNumber'),
    bySurface: sumOf('bySurface', 'total'),
    plain: sumOf('plain', 'total'),
  };
  const together = draft.put(CAME.loose(cells, cell(null, 'totalLabel')));
  return CAME.at('bySurface', together);
}

/** By its class; as Stock says nothing else, what a board is sold by is left to be typed. */
function soldThickness({ item }: YardLine, shop: Shop): number | null {
  const found = item.thicknessClass === '' ? undefined : findThicknessClass(item.thicknessClass);
  return found?.ok === true ? numberIn(found.value.rough, shop.unit) : null;
}

type Results = Readonly<Record<'face' | 'isHalf' | 'bySurface' | 'plain', DraftCell>>;

function inchCells(row: number, first: number): Results {
  const [thick, wide, long] = (['thick', 'wide', 'long'] as const).map((one) => CAME.at(one, row));
  const isTyped = `COUNT(${thick},${wide},${long})=3`;
  const face = `ROUND(${wide}*${FINEST},0)*INT(${long})`;
  const halves = `SUM(${CAME.fixed('isHalf', first)}:${CAME.at('isHalf', row)})`;
  const upOrDown = `INT(${face}/${FOOT_OF_FACE})+MOD(${halves},2)`;
  const measured = `IF(${CAME.at('isHalf', row)}=1,${upOrDown},ROUND(${face}/${FOOT_OF_FACE},0))`;
  const sold = `MAX(1,${thick})`;
  return {
    face: sum(`IF(${isTyped},${measured},"")`, '', 'rowWhole'),
    isHalf: sum(
      `IF(${isTyped},IF(MOD(${face},${FOOT_OF_FACE})=${FOOT_OF_FACE / 2},1,0),0)`,
      0,
      'rowWhole',
    ),
    bySurface: sum(`IF(${isTyped},${CAME.at('face', row)}*${sold},"")`, '', 'rowDecimal'),
    plain: sum(`IF(${isTyped},${sold}*${wide}*${long}/12,"")`, '', 'rowDecimal'),
  };
}

function metricCells(row: number): Results {
  const [thick, wide, long] = (['thick', 'wide', 'long'] as const).map((one) => CAME.at(one, row));
  const isTyped = `COUNT(${thick},${wide},${long})=3`;
  const cubic = `${thick}*${wide}*${long}/1000000`;
  return {
    face: sum(`IF(${isTyped},${wide}*${long}/1000,"")`, '', 'rowDecimal'),
    isHalf: cell(null, 'row'),
    bySurface: sum(`IF(${isTyped},${cubic},"")`, '', 'rowVolume'),
    plain: cell(null, 'row'),
  };
}

/** What should be billed for the tally, and by how much the invoice is off. */
export function addInvoice(draft: SheetDraft, { currency, unit }: Shop, tally: string): void {
  draft.spread(SECTIONS.invoice, 'section');
  const put = (line: keyof typeof INVOICE_LINES, figure: DraftCell, says = ''): string => {
    const row = draft.put(
      INVOICE.row({
        label: cell(INVOICE_LINES[line]),
        figure,
        says: cell(says === '' ? invoiceSays(unit)[line] : says, 'quietLabel'),
      }),
    );
    return INVOICE.at('figure', row);
  };
  const came = put('tally', sum(tally, 0, VOLUME[unit].styles.plain));
  const dried = put('dried', cell(0, 'input'));
  const straight = put('straight', cell(0, 'input'));
  const due = put('due', sum(`${came}/(1-${dried}/100)*(1+${straight}/100)`, 0, 'total'));
  const billed = put('billed', cell(null, 'input'));
  const unlessBlank = (formula: string): string => `IF(ISNUMBER(${billed}),${formula},"")`;
  const over = put('over', sum(unlessBlank(`${billed}-${due}`), '', 'total'));
  const price = put('price', cell(null, 'input'));
  const owed = `IF(ISNUMBER(${price}),ROUND(${over}*${price},2),"")`;
  put('money', sum(unlessBlank(owed), '', 'total'), `in ${currency}`);
}
