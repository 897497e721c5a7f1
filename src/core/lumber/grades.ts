/** Hardwood grades, and which share of a board's face print gives for them. */

export interface Grade {
  readonly name: string;
  /** Other ways to write it, see `gradeKey`. */
  readonly also: readonly string[];
  /**
   * The least share of its poorer face that the rules promise as clear cuttings, as it is said. [P] American
   * Hardwood Export Council, guide to the NHLA grading rules; 3A is a third.
   */
  readonly leastClear?: string;
  /** Of yellow-poplar 4/4 in a molding mill, ripped: percent. [P] West Virginia University, thesis 8857. */
  readonly ripYieldPercent?: number;
}

export const GRADES: readonly Grade[] = [
  { name: 'FAS', also: [], leastClear: '83 1/3' },
  { name: 'FAS1F', also: ['f1f', 'fasoneface'], ripYieldPercent: 85 },
  {
    name: 'No. 1 Common',
    also: ['1', '1c', '1com', '1common'],
    leastClear: '66 2/3',
    ripYieldPercent: 69,
  },
  {
    name: 'No. 2A Common',
    also: ['2a', '2ac', '2acom', '2acommon'],
    leastClear: '50',
    ripYieldPercent: 70,
  },
  {
    name: 'No. 2B Common',
    also: ['2b', '2bc', '2bcom', '2bcommon'],
    ripYieldPercent: 70,
  },
  {
    name: 'No. 3A Common',
    also: ['3a', '3ac', '3acom', '3acommon'],
    leastClear: '33 1/3',
  },
];

/** Without spaces, points, signs and the word for number, in small letters. */
function gradeKey(name: string): string {
  const plain = name.toLowerCase().replace(/[\s.#&_-]/gu, '');
  return plain.replace(/^(?:number|no|nr)(?=\d)/u, '');
}

/** The grade that a person names, such as `FAS`, `#1 Common` or `2A`; undefined for any that isn't printed here. */
export function findGrade(name: string): Grade | undefined {
  const key = gradeKey(name);
  return GRADES.find((one) => gradeKey(one.name) === key || one.also.includes(key));
}
