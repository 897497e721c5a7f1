import { describe, expect, test } from '@jest/globals';
import { CATALOGUE } from '../../src/functions/catalogue.ts';
import { degreesOf } from '../../src/hosts/grid/degrees-of.ts';
import { gridFunctions } from '../../src/page/grid-functions.ts';

const of = degreesOf(gridFunctions());
const IN_DEGREES = { n: { pattern: '0.0"°"' } };

describe('A formula typed into the grid', () => {
  test.each([
    '=COVE.TILT(3,1,0.5)',
    '=cove.approach( 3 , ABS(-1) )',
    '= COVE.CROWNMITER(38,90)',
    '=COVE.CROWNBEVEL(")",90)',
  ])('%s is shown in degrees, where its cell has no format of its own', (formula) => {
    expect([undefined, '', 'General'].map((format) => of(formula, format))).toEqual([
      IN_DEGREES,
      IN_DEGREES,
      IN_DEGREES,
    ]);
    expect(of(formula, '0.000')).toBeNull();
  });

  test.each([
    '=COVE.TILT(3,1,0.5)+COVE.APPROACH(3,1)',
    '=2*COVE.TILT(3,1,0.5)',
    '=COVE.BOARDFEET(1,6,96)',
    '=SUM(A1:A3)',
    'COVE.TILT(3,1,0.5)',
    null,
  ])('%s is left as it is', (formula) => {
    expect(of(formula, undefined)).toBeNull();
  });

  test('is known to answer an angle where its words begin with one', () => {
    const isAngle = /^(?:Approach angle|Tilt|Bevel|Miter)\b.* degrees/u;
    const angles = CATALOGUE.filter(({ description }) => isAngle.test(description));
    expect(angles.map(({ name }) => name)).toEqual(
      gridFunctions()
        .filter(({ answersDegrees }) => answersDegrees)
        .map(({ name }) => name),
    );
    expect(angles).toHaveLength(7);
  });
});
