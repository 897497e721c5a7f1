/** The sheet Labels: a page of labels each a drawing at its true size, so that each lies in its place on the paper. */
import { line, LINE } from '../../drawings/compose.ts';
import type { Drawing, Point, Shape } from '../../drawings/drawing.ts';
import { drawLabel, namesWithin, type LabelBox } from '../../drawings/label.ts';
import { textAbout, textWidth } from '../../drawings/lettering.ts';
import { clipWords } from '../../drawings/stick-bar-labels.ts';
import { MM_PER_INCH } from '../../core/units/length-unit.ts';
import type { JobPlan } from '../../planning/job-plan.ts';
import { SHEET_NAMES } from '../plan-anchors.ts';
import type { SheetDescription } from '../grammar/description.ts';
import { columnPoints, POINTS_PER_MM } from '../grammar/page-size.ts';
import { SheetDraft } from '../grammar/sheet-draft.ts';
import { sayStamp, type Stamp } from '../stamp.ts';
import { hasMargins, layoutOf, paperOf, type LabelLayout } from './label-layouts.ts';
import { listLabels, type Label } from './list-labels.ts';
import { viewOfLabel } from './label-views.ts';
import { FOOT, HOW_SHORT, JUDGMENT, sayHead, type LabelPage } from './label-words.ts';

/**
 * Columns as narrow as the least that is free at the paper's right: whatever a program makes of their
 * widths, the last one that a drawing reaches into is on the page.
 */
const NARROW = 1;
/** Programs round each row to pixels of their own: what the rows may lose on the way down. */
const ROUNDING_POINTS = 3;
/** Below the highest that Excel takes (row-height.ts). */
const HIGHEST_ROW = 400;
/** Letters of 2 mm and level lines: as fine as bars are. */
const LABEL_DOTS_PER_INCH = 200;
/** Ink beyond the labels' own room: none but half of a line. */
const EDGE_MM = 0.5;
/** Pages are whole pictures; more of them than a program opens in reasonable time help nobody. */
const MOST_LABELS = 2_000;
const LONGEST_ALT = 1_900;
const LETTERS = 2.4;
/** From the labels to a line over or under them. */
const MARGIN_LINE_MM = 3.5;
/** Nearer to the paper's edge most printers can't. */
const PRINTER_EDGE_MM = 5.5;

/**
 * Describes the sheet Labels: pages printed at 100 % whose drawings begin where the labels do.
 *
 * @param stamp Said over the labels where the paper has room there.
 * @returns undefined where the shop wants none, or nothing is left to be labelled
 */
export function describeLabels(plan: JobPlan, stamp?: Stamp): SheetDescription | undefined {
  const layout = layoutOf(plan.job.shop);
  const all = layout === undefined ? [] : listLabels(plan);
  if (layout === undefined || all.length === 0) return undefined;
  const labels = all.slice(0, MOST_LABELS);
  const room = roomOf(layout);
  const paper = paperOf(layout);
  const columnMm = columnPoints(NARROW) / POINTS_PER_MM;
  const draft = new SheetDraft(
    SHEET_NAMES.labels,
    Array.from({ length: Math.ceil(room.width / columnMm) }, () => ({ width: NARROW })),
    true,
  );
  const pages = pagesOf(labels, layout);
  pages.forEach((page, at) => {
    draft.breakPage();
    const said = sayHead(page, [labels.length, all.length], [at + 1, pages.length]);
    const made = stamp === undefined ? [] : [sayStamp(stamp, plan.job.shop.decimalSign)];
    const drawing = drawPage(plan, layout, room, page, [said, ...made].join(' '));
    draft.draw(draft.next, 0, drawing, drawing.title);
    const points = room.height * POINTS_PER_MM + ROUNDING_POINTS;
    const most = (paper.height - room.top) * POINTS_PER_MM - ROUNDING_POINTS;
    const rows = Math.ceil(points / HIGHEST_ROW);
    for (let row = 0; row < rows; row++) {
      draft.setHeight(draft.add(), Math.min(points, most) / rows);
    }
  });
  return draft.finish({
    paper: layout.paper,
    orientation: 'portrait',
    footer: SHEET_NAMES.labels,
    fitWidth: false,
    start: { left: room.left / MM_PER_INCH, top: room.top / MM_PER_INCH },
  });
}

function pagesOf(labels: readonly Label[], layout: LabelLayout): LabelPage[] {
  const saysOnLabel = !hasMargins(layout);
  const most = layout.across * layout.down - (saysOnLabel ? 1 : 0);
  const pages: LabelPage[] = [];
  for (let at = 0; at < labels.length; at += most) {
    pages.push({ first: at + 1, labels: labels.slice(at, at + most), saysOnLabel });
  }
  return pages;
}

/** The part of the paper that is drawn on, in millimetres. */
function roomOf(layout: LabelLayout): LabelBox {
  const { across, down, width, height, stepAcross, stepDown, padAcross, padDown } = layout;
  // Lines to cut along lie on the labels' edges.
  const [sides, ends] = layout.hasLines ? [0, 0] : [padAcross, padDown];
  const more = hasMargins(layout) ? MARGIN_LINE_MM + LETTERS : 0;
  return {
    left: layout.left + sides - EDGE_MM,
    top: layout.top + (more === 0 ? ends : -more) - EDGE_MM,
    width: (across - 1) * stepAcross + width - 2 * sides + 2 * EDGE_MM,
    height: (down - 1) * stepDown + height + (more === 0 ? -2 * ends : 2 * more) + 2 * EDGE_MM,
  };
}

function drawPage(
  { job: { shop } }: JobPlan,
  layout: LabelLayout,
  room: LabelBox,
  page: LabelPage,
  head: string,
): Drawing {
  const { across, padAcross, padDown } = layout;
  const inner = (place: number): LabelBox => ({
    left: layout.left + (place % across) * layout.stepAcross + padAcross - room.left,
    top: layout.top + Math.floor(place / across) * layout.stepDown + padDown - room.top,
    width: layout.width - 2 * padAcross,
    height: layout.height - 2 * padDown,
  });
  const names = Math.min(3, namesWithin(layout.height - 2 * padDown));
  const views = page.labels.map((label) => viewOfLabel(label, shop, names));
  const shift = page.saysOnLabel ? 1 : 0;
  const title = `Labels ${page.first} to ${page.first + page.labels.length - 1}`;
  const listed = views.map(({ mark, said, lines }) =>
    [mark === 'Keep' ? `${mark} ${lines[0]?.name ?? ''}${lines[0]?.whole ?? ''}` : mark, said].join(
      ' ',
    ),
  );
  return {
    title,
    alt: clipWords(`${title}: ${listed.join('; ')}. ${JUDGMENT}`, LONGEST_ALT),
    width: room.width,
    height: room.height,
    dotsPerInch: LABEL_DOTS_PER_INCH,
    shapes: [
      ...(layout.hasLines ? cutLines(layout, room) : []),
      ...views.flatMap((view, at) => drawLabel(view, inner(at + shift))),
      ...(page.saysOnLabel
        ? wordsOnLabel([head, HOW_SHORT, JUDGMENT], inner(0))
        : wordsInMargins(layout, room, head)),
    ],
  };
}

function wordsInMargins(layout: LabelLayout, room: LabelBox, head: string): Shape[] {
  const left = Math.max(room.left + EDGE_MM, PRINTER_EDGE_MM) - room.left;
  const wide = room.width - 2 * left;
  const first = layout.top - MARGIN_LINE_MM - room.top;
  const last = layout.top + (layout.down - 1) * layout.stepDown + layout.height - room.top;
  const say = (text: string, y: number): Shape => {
    const size = LETTERS * Math.min(1, wide / textWidth(text, LETTERS));
    return textAbout([left, y], text, size, { anchor: 'start', tone: 'ink' });
  };
  return [say(head, first), say(FOOT, last + MARGIN_LINE_MM)];
}

/** In the place of the first label, smaller where it has less room. */
function wordsOnLabel(texts: readonly string[], box: LabelBox): Shape[] {
  const text = texts.join(' ');
  for (let size = LETTERS; ; size *= 0.95) {
    const lines = breakWords(text, size, box.width);
    const step = size * 1.25;
    if (lines.length * step > box.height) continue;
    return lines.map((one, at) =>
      textAbout([box.left, box.top + (at + 0.5) * step], one, size, {
        anchor: 'start',
        tone: 'ink',
      }),
    );
  }
}

function breakWords(text: string, size: number, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const longer = `${lines.at(-1) ?? ''} ${word}`;
    if (lines.length > 0 && textWidth(longer, size) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

function cutLines(layout: LabelLayout, room: LabelBox): Shape[] {
  const { across, down, stepAcross, stepDown } = layout;
  const [left, top] = [layout.left - room.left, layout.top - room.top];
  const [right, bottom] = [left + across * stepAcross, top + down * stepDown];
  const ruled = (points: readonly Point[]): Shape => line(points, 'faint', LINE.thin);
  return [
    ...Array.from({ length: across + 1 }, (_, at) =>
      ruled([
        [left + at * stepAcross, top],
        [left + at * stepAcross, bottom],
      ]),
    ),
    ...Array.from({ length: down + 1 }, (_, at) =>
      ruled([
        [left, top + at * stepDown],
        [right, top + at * stepDown],
      ]),
    ),
  ];
}
