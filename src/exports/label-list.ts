/** The labels of a job as a list: a row a label, in the order in which they are printed. */
import type { JobPlan } from '../planning/job-plan.ts';
import type { Shop } from '../planning/shop.ts';
import type { EndShape } from '../drawings/stick-view.ts';
import { listLabels, type Label } from '../sheets/labels/list-labels.ts';
import { numberIn, printExact, sayOtherWay } from '../sheets/words/print-length.ts';
import type { List, ListValue } from './csv-list.ts';

/** Whether or not Shop asks for a sheet of them. */
export function listAllLabels(plan: JobPlan): List {
  const { shop } = plan.job;
  const { unit } = shop;
  return {
    name: 'labels',
    headings: [
      'Mark',
      'What',
      'Room',
      'Run',
      'Piece',
      'Part',
      'Profile',
      'Length',
      'Length the other way',
      `Length (${unit})`,
      'Left end',
      'Left runs long',
      'Right end',
      'Right runs long',
      'Arrow points to',
      'From',
    ],
    rows: listLabels(plan).map((label) => row(label, shop)),
  };
}

function row(label: Label, shop: Shop): ListValue[] {
  const { length } = label;
  const lengths = [
    printExact(length, shop),
    sayOtherWay(length, shop),
    numberIn(length, shop.unit),
  ];
  if (label.kind === 'offcut') {
    const { kept } = label;
    const none = ['', '', '', '', ''];
    return [kept.label, kept.what, '', '', '', '', kept.of, ...lengths, ...none, kept.from];
  }
  const { piece, part, left, right, arrow, stick } = label;
  return [
    piece.mark,
    piece.kind === 'return' ? 'return' : 'piece',
    piece.room,
    piece.run,
    piece.id,
    part,
    piece.profile,
    ...lengths,
    left.end,
    LONG[left.shape],
    right.end,
    LONG[right.shape],
    arrow,
    stick,
  ];
}

const LONG: Readonly<Record<EndShape, string>> = {
  square: '',
  'long behind': 'behind, or at the outer edge',
  'long in front': 'in front',
};
