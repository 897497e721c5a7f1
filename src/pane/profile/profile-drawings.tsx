/** The section in the blank and the table from above, to scale. */
import { makeStyles, mergeClasses } from '@fluentui/react-components';
import type { ReactNode } from 'react';
import { bladeOf } from '../../core/cove/cove-sizes.ts';
import { drawSection } from '../../drawings/section.ts';
import { drawTable } from '../../drawings/table.ts';
import { DrawingFigure } from '../style/drawing-figure.tsx';
import { Section } from '../style/section.tsx';
import { useSharedStyles } from '../style/shared-styles.ts';
import { coveBlankOf } from '../../planning/plan-setup.ts';
import { tableSizeOf } from '../../planning/table-size.ts';
import type { ProfileAnswer } from './answer-profile.ts';

const useStyles = makeStyles({
  drawings: {
    display: 'grid',
    gridTemplateColumns: 'repeat(auto-fit, minmax(min(246px, 100%), 1fr))',
    columnGap: '10px',
  },
  behind: { opacity: 0.35 },
});

/** @param props.isBehind Of sizes before those that are being typed, which can't be read. */
export function ProfileDrawings(props: {
  readonly answer: ProfileAnswer;
  readonly isBehind: boolean;
}): ReactNode {
  const shared = useSharedStyles();
  const styles = useStyles();
  const { profile, shop, setting, setUp } = props.answer;
  if (profile === undefined || setting === undefined) return null;
  const blade = bladeOf(shop);
  const blank = coveBlankOf(profile);
  const { tiltSide, unit, decimalSign } = shop;
  const table = tableSizeOf(shop);
  return (
    <Section title="Drawings" hiddenTitle>
      {props.isBehind ? (
        <p className={shared.text}>Drawn as it was before: a size above can’t be read yet.</p>
      ) : null}
      <div className={mergeClasses(styles.drawings, props.isBehind && styles.behind)}>
        <DrawingFigure
          name="The section"
          draw={(width) =>
            drawSection({ blade, setting, blank, tiltSide, unit, decimalSign, width })
          }
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
      </div>
    </Section>
  );
}
