/** What the fake knows of validations and conditional formats. */
import { writeBox } from './address.ts';
import { denyWriting, only, type Area } from './areas.ts';
import { lineStyle, readColor } from './format-members.ts';
import { readFormula } from './formula-text.ts';
import type { ClassMembers, Env, ValueMember } from './members.ts';
import { invalid } from './office-error.ts';
import type { FakeHighlight, FakeValidation } from './workbook-model.ts';

export function validationOf({ sheet, boxes }: Area): FakeValidation {
  const box = only({ sheet, boxes, deleted: false });
  let found = sheet.validations.find((one) => writeBox(one.box) === writeBox(box));
  if (found === undefined) {
    found = { box, rule: null, source: null, alert: null, ignoreBlanks: true };
    sheet.validations.push(found);
  }
  return found;
}

const VALIDATION: ClassMembers = {
  values: {
    errorAlert: {
      since: 8,
      set: (one: FakeValidation, alert: Excel.DataValidationErrorAlert) => {
        if (alert.title.length > 32 || alert.message.length > 255) throw invalid('a long alert');
        one.alert = alert;
      },
    },
    ignoreBlanks: {
      since: 8,
      set: (one: FakeValidation, ignore: boolean) => {
        one.ignoreBlanks = ignore;
      },
    },
    rule: {
      since: 8,
      set: (one: FakeValidation, rule: Excel.DataValidationRule, { workbook }) => {
        const source = rule.list?.source;
        if (typeof source === 'string' && source.startsWith('=')) {
          one.source = readFormula(source, workbook);
        } else if (typeof source === 'string' && source.length > 255) throw invalid('a long list');
        one.rule = rule;
      },
    },
  },
};

const mark = (apply: (one: FakeHighlight, value: never) => void): ValueMember => ({
  since: 6,
  set: apply,
});

export interface HighlightLine {
  readonly of: FakeHighlight;
  readonly side: string;
  readonly deleted: boolean;
}
const highlightLine = (side: string) => ({
  since: 6,
  gives: 'ConditionalRangeBorder',
  of: (of: FakeHighlight): HighlightLine => ({ of, side, deleted: false }),
});

export const RULE_CLASSES = {
  DataValidation: VALIDATION,
  ConditionalFormatCollection: {
    methods: {
      add: {
        since: 6,
        gives: 'ConditionalFormat',
        run: (area: Area, [type]: string[]): FakeHighlight => {
          denyWriting(area);
          if (type !== 'Custom') throw invalid(`the fake knows no ${String(type)}`);
          const shown = { bold: false, italic: false, color: null, fill: null, border: {} };
          const made: FakeHighlight = { box: only(area), formula: null, ...shown };
          // "Adds a new conditional format to the collection at the first/top priority."
          area.sheet.highlights.unshift(made);
          return made;
        },
      },
    },
  },
  ConditionalFormat: { parts: { custom: { since: 6, gives: 'CustomConditionalFormat' } } },
  CustomConditionalFormat: {
    parts: {
      format: { since: 6, gives: 'ConditionalRangeFormat' },
      rule: { since: 6, gives: 'ConditionalFormatRule' },
    },
  },
  ConditionalFormatRule: {
    values: {
      formula: {
        since: 6,
        set: (one: FakeHighlight, formula: string, { workbook }: Env) => {
          one.formula = readFormula(formula, workbook);
        },
      },
    },
  },
  ConditionalRangeFormat: {
    parts: {
      borders: { since: 6, gives: 'ConditionalRangeBorderCollection' },
      fill: { since: 6, gives: 'ConditionalRangeFill' },
      font: { since: 6, gives: 'ConditionalRangeFont' },
    },
  },
  ConditionalRangeFont: {
    values: {
      bold: mark((one, value: boolean) => {
        one.bold = value;
      }),
      italic: mark((one, value: boolean) => {
        one.italic = value;
      }),
      color: mark((one, value: string) => {
        one.color = readColor(value);
      }),
    },
  },
  ConditionalRangeFill: {
    values: {
      color: mark((one, value: string) => {
        one.fill = readColor(value);
      }),
    },
  },
  ConditionalRangeBorderCollection: {
    parts: {
      top: highlightLine('top'),
      bottom: highlightLine('bottom'),
      left: highlightLine('left'),
      right: highlightLine('right'),
    },
  },
  ConditionalRangeBorder: {
    values: {
      color: { since: 6, set: (_: HighlightLine, color: string) => void readColor(color) },
      style: {
        since: 6,
        set: ({ of, side }: HighlightLine, style: string) => {
          of.border[side] = lineStyle(style);
        },
      },
    },
  },
} as const satisfies Readonly<Record<string, ClassMembers>>;
