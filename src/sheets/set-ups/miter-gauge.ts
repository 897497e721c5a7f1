/** How the miter gauge shows the rails' direction, to check the marks by. */
import { readMiterGauge } from '../../core/cove/miter-gauge.ts';
import { feedFor } from '../../core/cove/rails.ts';
import { toDegrees } from '../../core/units/angle.ts';
import { formatDegrees } from '../../core/units/format-mark.ts';
import type { SetUp } from '../../planning/plan-setup.ts';
import type { Shop } from '../../planning/shop.ts';
import { cell } from '../grammar/sheet-draft.ts';
import { leftMark, leftText, type Part } from './set-up-columns.ts';

export function miterGauge({ tiltSide, decimalSign }: Shop, { setting }: SetUp): Part[] {
  const { turn, way, along } = readMiterGauge(setting.approach, feedFor(tiltSide));
  const degrees = toDegrees(turn);
  const scale = `A scale with 90 square across then says ${formatDegrees(90 - degrees, decimalSign)}`;
  const what =
    along === 'square'
      ? 'Hold a framing square to its face: the other leg lies along the rails'
      : "The head's own face lies along the rails, no square needed";
  return [
    leftMark(
      cell('Miter gauge, from square', 'small'),
      cell(`${formatDegrees(degrees, decimalSign)} ${way}`, 'figure'),
    ),
    leftText(`Seen from above. ${scale}. ${what}.`, 'finePrint'),
  ];
}
