/** The section in the blank and the table from above, to scale. */
import type { ReactNode } from 'react';
import { bladeOf } from '../../core/cove/cove-sizes.ts';
import { drawSection } from '../../drawings/section.ts';
import { drawTable } from '../../drawings/table.ts';
import { DrawingFigure } from '../style/drawing-figure.tsx';
import { Section } from '../style/section.tsx';
import { coveBlankOf } from '../../planning/plan-setup.ts';
import { tableSizeOf } from '../../planning/table-size.ts';
import type { ProfileAnswer } from './answer-profile.ts';

export function ProfileDrawings({ answer }: { readonly answer: ProfileAnswer }): ReactNode {
  const { profile, shop, setting, setUp } = answer;
  if (profile === undefined || setting === undefined) return null;
  const blade = bladeOf(shop);
  const blank = coveBlankOf(profile);
  const { tiltSide, unit, decimalSign } = shop;
  const table = tableSizeOf(shop);
  return (
    <Section title="Drawings" hiddenTitle>
      <DrawingFigure
        name="The section"
        draw={(width) => drawSection({ blade, setting, blank, tiltSide, unit, decimalSign, width })}
      />
      {/* No rails for a cove that can't be made: nobody is to set up by them. */}
      {setUp === undefined ? null : (
        <DrawingFigure
          name="The table from above"
          draw={(width) =>
            drawTable({
              blade,
              setting,
              flats: setUp.flats,
              ...(table === undefined ? {} : { table }),
              tiltSide,
              unit,
              decimalSign,
              width,
            })
          }
        />
      )}
    </Section>
  );
}
