/** The cautions that every set-up carries, whatever the cove, the saw and the shop. */

/** The line that comes before every set-up, on paper and on the screen. */
export const MANUAL_CAUTION =
  "Read your saw's manual first. If it forbids this cut, or requires guard or riving knife for it, don't make it on that saw.";

/** The line that stands above every number, on sheets for the shop and for the client alike. */
export const JUDGMENT_CAUTION =
  "Local codes and a qualified person's judgment stand above any number here.";

/** The line that stands beside whatever a cove is cut or traced by. */
export const TRIAL_CAUTION =
  'Make a trial cut in scrap first, and measure it before any blank is cut. The rail marks hold at the final height and tilt: a blade that shifts as it rises wanders a little before.';

/** The line over whatever pieces are cut to length by. */
export const CROSSCUT_CAUTION =
  'Read the manual of the saw that cuts to length first. Never hold a short piece by hand: cut it off while the stick is long, or hold it in a clamp or a jig, and let the blade stop before you reach for it. Guard eyes, ears and lungs.';

/**
 * All of them, in the order in which the work is done.
 *
 * @param leastBlank The shop's least length of a blank, as printed; absent where no shop is known.
 */
export function standingCautions(leastBlank?: string): readonly string[] {
  const least = leastBlank === undefined ? '' : ` This shop's least blank is ${leastBlank}.`;
  return [
    MANUAL_CAUTION,
    'Coving exposes the blade: guard and riving knife are in the way of this cut. Where the manual lets them come off, they go back on right after it.',
    'Unplug the saw while you set blade, tilt and rails.',
    'Rails on both sides of the blank, each clamped at both ends.',
    TRIAL_CAUTION,
    'Push blocks: never hands over the blade.',
    'Feed front to back only. Never draw the board back over a turning blade; wait for the blade to stop before you lift the work.',
    'Light passes: never more at once than from one height on the list to the next.',
    `Long blanks, crosscut afterwards: never a short piece alone.${least}`,
    'Guard eyes, ears and lungs: wood dust has legal limits.',
    JUDGMENT_CAUTION,
  ];
}
