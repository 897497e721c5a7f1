/** How far a molding at a spring angle reaches: as Profiles says, else as its width and spring give. */
import { sayArgument } from '../core/faults/argument.ts';
import { fault, type Fault } from '../core/faults/fault.ts';
import { computeCrownSize, type CrownSize } from '../core/crown/crown-size.ts';
import { toRadians } from '../core/units/angle.ts';
import type { Profile } from './job.ts';

/** Labels round a size to 1/16 in: a drop and a projection may ask for that much more face. */
const LABEL_TOLERANCE_INCHES = 1 / 16;

/** Inches; what is neither said nor known is left out. Nothing for a molding without a spring angle. */
export function crownSizeOf(profile: Profile): Partial<CrownSize> {
  const { spring, blankWidth, drop, projection } = profile;
  if (spring === undefined) return {};
  const computed =
    blankWidth === undefined
      ? undefined
      : computeCrownSize({ faceWidth: Number(blankWidth), spring: toRadians(spring) });
  return {
    ...(computed?.ok === true ? computed.value : {}),
    ...(drop === undefined ? {} : { drop: Number(drop) }),
    ...(projection === undefined ? {} : { projection: Number(projection) }),
  };
}

/** The heading at fault with what is wrong, where drop and projection contradict the other sizes. */
export function checkCrownSize(
  profile: Profile,
): readonly { readonly heading: 'drop' | 'projection'; readonly fault: Fault }[] {
  const { spring, blankWidth, drop, projection } = profile;
  const given = [
    ['drop', drop, projection],
    ['projection', projection, drop],
  ] as const;
  for (const [heading, inches, other] of given) {
    if (inches === undefined) continue;
    const said = { inches: Number(inches) };
    if (spring === undefined) {
      return [{ heading, fault: fault('crown.size-without-spring', heading, said) }];
    }
    if (blankWidth === undefined) continue;
    const asked = Math.hypot(Number(inches), Number(other ?? 0));
    if (asked <= Number(blankWidth) + LABEL_TOLERANCE_INCHES) continue;
    const details = {
      asked: { inches: asked },
      ...(other === undefined
        ? {}
        : {
            otherName: sayArgument(heading === 'drop' ? 'projection' : 'drop'),
            other: { inches: Number(other) },
          }),
    };
    const limit = { inches: Number(blankWidth) };
    return [{ heading, fault: fault('crown.size-beyond-face', heading, said, { limit, details }) }];
  }
  return [];
}
