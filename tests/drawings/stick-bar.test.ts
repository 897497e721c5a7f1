import { describe, expect, test } from '@jest/globals';

import type { PathShape, Shape, TextShape, Tone } from '../../src/drawings/drawing.ts';
import { boxesOverlap, textBox } from '../../src/drawings/lettering.ts';
import { drawStick } from '../../src/drawings/stick-bar.ts';
import { BAR, EDGE, type BarPiece, type StickView } from '../../src/drawings/stick-view.ts';
import { seededNumbers } from '../seeded-numbers.ts';

const piece = (length: number, more: Partial<BarPiece> = {}): BarPiece => ({
  label: 'Reading room / north',
  length,
  said: `${length}"`,
  left: 'square',
  right: 'square',
  ...more,
});

/** A stick of 12 feet, trimmed by 1 in at either end, with cuts of 1/8 in. */
function view(pieces: readonly BarPiece[], more: Partial<StickView> = {}): StickView {
  const base = {
    id: 'Cove #3',
    length: 144,
    said: "12'",
    longest: 144,
    endTrim: 1,
    endTrimSaid: '1"',
    kerf: 1 / 8,
    kerfSaid: '1/8"',
    width: 280,
    ...more,
  };
  const used = pieces.reduce((sum, { length }) => sum + length + base.kerf, 0);
  const left = Math.max(0, base.length - 2 * base.endTrim - used);
  return {
    ...base,
    pieces,
    offcut: { length: left, said: `${left}" over`, kept: left >= 24 },
    ...more,
  };
}

interface Area {
  readonly from: number;
  readonly to: number;
}

/** Areas of the bar's height in one tone, from the left, in inches of the stick. */
function areasOf(shapes: readonly Shape[], tone: Tone, { longest, width }: StickView): Area[] {
  const inches = (x: number): number => ((x - EDGE) / (width - 2 * EDGE)) * longest;
  return shapes
    .filter((shape): shape is PathShape => shape.kind === 'path' && shape.fill === tone)
    .filter(({ points }) => points.some(([, y]) => y === BAR.top))
    .map(({ points }) => {
      const xs = points.map(([x]) => x);
      return { from: inches(Math.min(...xs)), to: inches(Math.max(...xs)) };
    })
    .sort((one, other) => one.from - other.from);
}

const wide = ({ from, to }: Area): number => to - from;
const textsIn = (shapes: readonly Shape[]): TextShape[] =>
  shapes.filter((shape) => shape.kind === 'text');
const slantsIn = (shapes: readonly Shape[]): PathShape[] =>
  shapes.filter(
    (shape): shape is PathShape =>
      shape.kind === 'path' && !shape.closed && shape.stroke?.tone === 'ink',
  );

const NAMES = [
  'Hall',
  'x'.repeat(300),
  'Reading room of the old library / the long north wall, part 2 of 3',
  '🏠 Stube \u{1F468}\u200D\u{1F469} / 🪚🪚🪚🪚🪚🪚🪚🪚🪚🪚',
  'غرفة الجلوس / الجدار الشمالي الطويل',
  '居間の北側の長い壁 / 二枚目',
  '=SUM(A1:A9)',
  'a\tb\n c',
  '',
];

/** Sticks of every kind: long and short pieces, thin and no cuts, hostile names. */
function randomViews(count: number): StickView[] {
  const next = seededNumbers(2);
  const pick = <T>(of: readonly T[]): T => of[Math.floor(next() * of.length)]!;
  return Array.from({ length: count }, () => {
    const length = pick([84, 96, 144, 192]);
    const kerf = pick([0, 1 / 16, 1 / 8]);
    const endTrim = pick([0, 1 / 2, 1, 2]);
    const pieces: BarPiece[] = [];
    let room = length - 2 * endTrim;
    for (let tries = 0; tries < 14; tries++) {
      const long = Math.ceil(next() * 16 * pick([3, 20, 120])) / 16;
      if (long > room) continue;
      const end = () => pick(['square', 'long behind', 'long in front'] as const);
      pieces.push(piece(long, { label: pick(NAMES), left: end(), right: end() }));
      room -= long + kerf;
    }
    return view(pieces, { length, longest: pick([length, 192]), kerf, endTrim });
  });
}

describe("A stick's bar", () => {
  test('shows trims, pieces, cuts and offcut to scale, one after the other, the whole stick', () => {
    for (const one of randomViews(200)) {
      const { shapes } = drawStick(one);
      const pieces = areasOf(shapes, 'wood', one);
      expect(pieces).toHaveLength(one.pieces.length);
      one.pieces.forEach(({ length }, at) => expect(wide(pieces[at]!)).toBeCloseTo(length, 9));
      const cuts = areasOf(shapes, 'ink', one);
      const kept = areasOf(shapes, 'rail', one);
      expect(kept).toHaveLength(one.offcut.kept && one.offcut.length > 0 ? 1 : 0);
      const all = [...pieces, ...cuts, ...kept, ...areasOf(shapes, 'removed', one)];
      all.sort((a, b) => a.from - b.from || a.to - b.to);
      let at = 0;
      for (const { from, to } of all) {
        expect(from).toBeCloseTo(at, 9);
        at = to;
      }
      expect(at).toBeCloseTo(one.length, 9);
    }
  });

  test('shows a cut after each piece, never thinner than a hair', () => {
    const one = view([piece(40), piece(40), piece(20)]);
    const { shapes } = drawStick(one);
    const cuts = shapes.filter((shape) => shape.kind === 'path' && shape.fill === 'ink');
    expect(cuts.map((cut) => (cut as PathShape).stroke?.width)).toEqual([0.15, 0.15, 0.15]);
    expect(areasOf(shapes, 'ink', one).map(wide)).toEqual(
      [1, 1, 1].map(() => expect.closeTo(1 / 8, 9)),
    );
    const none = view([piece(40)], { kerf: 0 });
    expect(areasOf(drawStick(none).shapes, 'ink', none)).toEqual([]);
  });

  test('shows the last cut no wider than the wood that is left for it', () => {
    const one = view([piece(141.95)]);
    const [cut] = areasOf(drawStick(one).shapes, 'ink', one);
    expect(wide(cut!)).toBeCloseTo(0.05, 9);
    expect(one.offcut.length).toBe(0);
  });

  test('is as long against the others of its scale as its stick is', () => {
    const right = (one: StickView): number =>
      Math.max(
        ...drawStick(one).shapes.flatMap((shape) =>
          shape.kind === 'path' ? shape.points.map(([x]) => x) : [],
        ),
      ) - EDGE;
    const long = right(view([piece(40)], { length: 192, longest: 192 }));
    const short = right(view([piece(40)], { length: 96, longest: 192 }));
    expect(long).toBeCloseTo(280 - 2 * EDGE, 9);
    expect(short / long).toBeCloseTo(0.5, 9);
  });

  test('slants an end that is not square inward from its long side, at its own side of the piece', () => {
    const left = drawStick(view([piece(60, { left: 'long behind' })])).shapes;
    const right = drawStick(view([piece(60, { right: 'long in front' })])).shapes;
    const scale = (280 - 2 * EDGE) / 144;
    const [[from, to]] = slantsIn(left).map(({ points }) => points) as unknown as [
      [number[], number[]],
    ];
    expect(from).toEqual([expect.closeTo(EDGE + scale, 9), BAR.top]);
    expect(to[0]).toBeGreaterThan(from[0]!);
    expect(to[1]).toBe(BAR.bottom);
    const [[start, end]] = slantsIn(right).map(({ points }) => points) as unknown as [
      [number[], number[]],
    ];
    expect(start).toEqual([expect.closeTo(EDGE + 61 * scale, 9), BAR.bottom]);
    expect(end[0]).toBeLessThan(start[0]!);
    expect(end[1]).toBe(BAR.top);
    expect(slantsIn(drawStick(view([piece(60)])).shapes)).toEqual([]);
  });

  test('letters no text over another, past its own piece, or over a slanted end', () => {
    const wrong: string[] = [];
    for (const one of randomViews(300)) {
      const { shapes } = drawStick(one);
      const toMm = (inches: number): number =>
        EDGE + (inches / one.longest) * (one.width - 2 * EDGE);
      const tones: readonly Tone[] = ['wood', 'rail', 'removed'];
      const own = tones.flatMap((tone) => areasOf(shapes, tone, one));
      const slants = slantsIn(shapes).map(({ points }) => points.map(([x]) => x));
      const texts = textsIn(shapes).map((text) => ({ text: text.text, box: textBox(text) }));
      texts.forEach(({ text, box }, at) => {
        const within = (left: number, right: number): boolean =>
          left <= box.left + 1e-9 && box.right <= right + 1e-9;
        if (box.top < BAR.top - 1e-9 || box.bottom > BAR.bottom + 1e-9) wrong.push(`high ${text}`);
        if (!own.some(({ from, to }) => within(toMm(from), toMm(to)))) wrong.push(`wide ${text}`);
        if (texts.slice(at + 1).some((other) => boxesOverlap(box, other.box))) {
          wrong.push(`over another: ${text}`);
        }
        const crossed = slants.some(
          (xs) => Math.min(...xs) < box.right - 1e-9 && box.left + 1e-9 < Math.max(...xs),
        );
        if (crossed) wrong.push(`over a slant: ${text}`);
      });
    }
    expect(wrong).toEqual([]);
  });

  test('says number, room and run and the whole length where there is room', () => {
    const texts = textsIn(drawStick(view([piece(60), piece(40)])).shapes).map(({ text }) => text);
    expect(texts).toEqual([
      'keep',
      '41.75" over',
      '1',
      'Reading room / north',
      '60"',
      '2',
      'Reading room / north',
      '40"',
    ]);
  });

  test('breaks a long label into two lines, then shortens it; a length is whole or left out', () => {
    const label = 'Reading room of the old library / the long north wall';
    const lines = (length: number): string[] =>
      textsIn(drawStick(view([piece(length, { label, said: '123 15/16"' })])).shapes)
        .slice(length >= 117 ? 1 : 0)
        .map(({ text }) => text)
        .filter((text) => !/^(?:keep|waste|\d|.*over)$/u.test(text));
    expect(lines(60)).toEqual([label, '123 15/16"']);
    expect(lines(30)).toEqual([
      'Reading room of the old library',
      'the long north wall',
      '123 15/16"',
    ]);
    expect(lines(20)).toEqual(['Reading room of the…', 'the long north wall', '123 15/16"']);
    const narrow = lines(10);
    expect(narrow[0]).toMatch(/^Read/u);
    expect(narrow.join('')).toContain('…');
    expect(narrow.filter((text) => /\d/u.test(text))).toEqual([]);
  });

  test('gives a short piece its number alone, and one like a hair nothing', () => {
    const one = view([piece(1 / 8), piece(2), piece(60)]);
    const texts = textsIn(drawStick(one).shapes).map(({ text }) => text);
    expect(texts.filter((text) => /^\d$/u.test(text))).toEqual(['2', '3']);
    expect(texts.filter((text) => text.startsWith('Reading'))).toHaveLength(1);
  });

  test('shortens a name of 300 letters with an ellipsis and never within a sign', () => {
    const label = '🪚'.repeat(300);
    const texts = textsIn(drawStick(view([piece(90, { label })])).shapes);
    const named = texts.filter(({ text }) => text.includes('🪚'));
    expect(named).toHaveLength(1);
    expect(named[0]!.text).toMatch(/^(?:🪚)+…$/u);
  });

  test('tells an offcut to keep from waste by word and by lightness', () => {
    const keep = drawStick(view([piece(60)])).shapes;
    const waste = drawStick(view([piece(130)])).shapes;
    expect(textsIn(keep).map(({ text }) => text)).toContain('keep');
    expect(textsIn(waste).map(({ text }) => text)).toContain('waste');
    expect(areasOf(waste, 'rail', view([piece(130)]))).toEqual([]);
  });

  test('says in words every number and piece, its ends and what is left', () => {
    const one = view([piece(60, { left: 'long behind' }), piece(40, { right: 'long in front' })]);
    const { title, alt } = drawStick(one);
    expect(title).toBe("Stick Cove #3, 12'");
    expect(alt).toBe(
      'Stick Cove #3, 12\', as a bar to scale. 1" is trimmed off either end. Each cut takes 1/8". 1: Reading room / north, 60", left end long at the wall or outer edge. 2: Reading room / north, 40", right end long at the face. 41.75" over is left: keep it.',
    );
  });

  test('keeps its words to what can be read out, however many pieces and long names there are', () => {
    const long = view(Array.from({ length: 9 }, () => piece(10, { label: 'y'.repeat(300) })));
    const many = view(
      Array.from({ length: 220 }, () => piece(1 / 2)),
      { id: 'z'.repeat(300) },
    );
    for (const one of [long, many]) {
      const { title, alt } = drawStick(one);
      expect(alt.length).toBeLessThanOrEqual(2_000);
      expect(title.length).toBeLessThanOrEqual(255);
      expect(alt).toContain('9: ');
    }
    expect(drawStick(many).alt).toMatch(/\d+ more pieces are in the list below it\./u);
  });

  test('refuses pieces that do not come to the stick', () => {
    const wrong = view([piece(60)], { offcut: { length: 3, said: '3"', kept: false } });
    expect(() => drawStick(wrong)).toThrow(RangeError);
    expect(() => drawStick(view([piece(60)], { longest: 96 }))).toThrow(RangeError);
    expect(() => drawStick(view([piece(150)]))).toThrow(RangeError);
  });
});
