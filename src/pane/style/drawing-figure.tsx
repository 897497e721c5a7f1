/** A drawing on the page, as wide as the pane lets it be, its text alternative beside it. */
import { makeStyles, tokens } from '@fluentui/react-components';
import { useLayoutEffect, useRef, useState, type ReactNode } from 'react';
import { MM_PER_INCH } from '../../core/units/length-unit.ts';
import type { Drawing } from '../../drawings/drawing.ts';
import { PAGE_PALETTE } from '../../drawings/palette.ts';
import { toSvg } from '../../drawings/to-svg.ts';
import { Disclosure } from './disclosure.tsx';
import { useSharedStyles } from './shared-styles.ts';

const useStyles = makeStyles({
  figure: { margin: 0, marginBlockEnd: '12px' },
  frame: {
    border: `1px solid ${tokens.colorNeutralStroke2}`,
    borderRadius: tokens.borderRadiusMedium,
    overflow: 'hidden',
    '& svg': { display: 'block', width: '100%', height: 'auto' },
  },
});

/** CSS, Values and Units 4: 96 pixels are an inch. */
const MM_PER_PIXEL = MM_PER_INCH / 96;
const NARROWEST_PX = 246;

export function DrawingFigure(props: {
  readonly name: string;
  /** @param width The drawing's, in millimetres. */
  readonly draw: (width: number) => Drawing;
}): ReactNode {
  const shared = useSharedStyles();
  const styles = useStyles();
  const frame = useRef<HTMLDivElement>(null);
  const [pixels, setPixels] = useState(NARROWEST_PX);
  // Before the first painting, so that nothing jumps.
  useLayoutEffect(() => {
    const element = frame.current;
    if (element === null) return undefined;
    const measure = (): void => setPixels(Math.max(NARROWEST_PX, Math.floor(element.clientWidth)));
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    measure();
    return () => observer.disconnect();
  }, []);
  const drawing = props.draw(pixels * MM_PER_PIXEL);
  return (
    <figure className={styles.figure}>
      <div
        ref={frame}
        className={styles.frame}
        // Made by our own writer, which escapes every text.
        dangerouslySetInnerHTML={{ __html: toSvg(drawing, PAGE_PALETTE) }}
      />
      <figcaption>
        <Disclosure summary={`${props.name} in words`}>
          <p className={shared.text}>{drawing.alt}</p>
        </Disclosure>
      </figcaption>
    </figure>
  );
}
