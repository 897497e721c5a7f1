/** The rows of a block that show what its sizes come to, each beside what was planned. */
import type { LengthUnit } from '../../core/units/length-unit.ts';
import { cell, type DraftCell, type SheetDraft } from '../grammar/sheet-draft.ts';
import type { StyleName } from '../grammar/styles.ts';
import {
  absolute,
  both,
  chooseWords,
  either,
  less,
  more,
  number,
  type Condition,
  type Term,
  type Words,
} from '../grammar/term.ts';
import { SAME_AS_PLANNED_OF_A_UNIT } from '../tolerance.ts';
import { OFF_TABLE } from '../words/say-marks.ts';
import { RESULTS } from './formula-columns.ts';

export type PlannedMark = 'nearFront' | 'nearBack' | 'farFront' | 'farBack';

const SAME = SAME_AS_PLANNED_OF_A_UNIT;
const NONE = 'none';

export class BlockResults {
  readonly #draft: SheetDraft;
  readonly #sound: Condition;
  readonly #unit: LengthUnit;
  readonly #apart: Condition[] = [];

  /** @param sound whether there is a set-up; else each row says that there is none */
  constructor(draft: SheetDraft, sound: Condition, unit: LengthUnit) {
    this.#draft = draft;
    this.#sound = sound;
    this.#unit = unit;
  }

  /** Whether any row that has a planned number differs from it; to be asked where all are sound. */
  get differ(): Condition {
    return either(...this.#apart);
  }

  /** @param says words beside it, which follow the sizes too */
  degrees(label: string, term: Term, planned: number, says?: Words): void {
    this.#add(label, term, 'degreesFine', planned, this.#words(says));
  }

  length(label: string, term: Term, planned: number, says?: Words): void {
    const named = `${label} (${this.#unit})`;
    this.#add(named, term, this.#style, planned, this.#words(says));
  }

  whole(label: string, term: Term, planned: number): void {
    this.#add(label, term, 'whole', planned, null);
  }

  /** A distance from the blade line, with its side in words. */
  mark(label: string, toTheRight: Term, planned: number, halfTable: Term): void {
    const side = sideOf(toTheRight, halfTable);
    const row = this.#add(
      `${label} (${this.#unit})`,
      absolute(toTheRight),
      this.#style,
      Math.abs(planned),
      this.#words(side),
    );
    const way = sayWay(planned);
    // Whatever is said of the table after it.
    this.#apart.push({
      formula: `LEFT(${RESULTS.at('note', row)},${way.length})<>"${way}"`,
      value: !side.value.startsWith(way),
    });
  }

  /** What is next to nothing, in more digits. */
  fine(label: string, term: Term): void {
    this.#draft.put(
      RESULTS.sparseRow({
        label: cell(`${label} (${this.#unit})`, 'label'),
        value: result(this.#sound, term, 'quiet'),
        note: cell('next to nothing where a set-up holds', 'wrapped'),
      }),
    );
  }

  /** Shown even where there is no set-up. */
  always(label: string, term: Term): void {
    this.#draft.put(
      RESULTS.sparseRow({
        label: cell(`${label} (${this.#unit})`, 'label'),
        value: result({ formula: 'TRUE', value: true }, term, this.#style),
      }),
    );
  }

  /** Blank where there is no set-up. */
  #words(says?: Words): DraftCell {
    if (says === undefined) return null;
    return {
      formula: `IF(${this.#sound.formula},IFERROR(${says.formula},""),"")`,
      value: this.#sound.value ? says.value : '',
      style: 'wrapped',
    };
  }

  get #style(): StyleName {
    return this.#unit === 'mm' ? 'decimal' : 'inches';
  }

  #add(label: string, term: Term, style: StyleName, planned: number, note: DraftCell): number {
    const row = this.#draft.put(
      RESULTS.sparseRow({
        label: cell(label, 'label'),
        value: result(this.#sound, term, style),
        planned: cell(planned, style),
        note,
      }),
    );
    this.#apart.push({
      formula: `ABS(${RESULTS.at('value', row)}-${RESULTS.at('planned', row)})>=${number(SAME).formula}`,
      value: !(Math.abs(term.value - planned) < SAME),
    });
    return row;
  }
}

const LEFT = 'left of the blade line';
const RIGHT = 'right of the blade line';
const ON_IT = 'on the blade line';

function sayWay(toTheRight: number): string {
  if (Math.abs(toTheRight) < SAME) return ON_IT;
  return toTheRight < 0 ? LEFT : RIGHT;
}

/** `left of the blade line`, and whether that is beyond the table's side. */
function sideOf(toTheRight: Term, halfTable: Term): Words {
  const far = more(absolute(toTheRight), halfTable);
  const off = `, ${OFF_TABLE}`;
  return chooseWords(
    [
      [less(absolute(toTheRight), number(SAME)), ON_IT],
      [both(far, less(toTheRight, number(0))), `${LEFT}${off}`],
      [far, `${RIGHT}${off}`],
      [less(toTheRight, number(0)), LEFT],
    ],
    RIGHT,
  );
}

/** `none` where the sizes have no set-up; no cell ever shows an error. */
function result(sound: Condition, { formula, value }: Term, style: StyleName): DraftCell {
  return {
    formula: `IF(${sound.formula},IFERROR(${formula},"${NONE}"),"${NONE}")`,
    value: sound.value && Number.isFinite(value) ? value : NONE,
    style,
  };
}
