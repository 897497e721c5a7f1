import { mergeClasses } from '@fluentui/react-components';
import { useId, type ReactNode } from 'react';
import { useLook } from './use-look.ts';

/** A part of a tab under a heading of its own, by which it can be found. */
export function Section(props: {
  readonly title: string;
  readonly hiddenTitle?: boolean;
  readonly children: ReactNode;
}): ReactNode {
  const look = useLook();
  const id = useId();
  const { title, hiddenTitle = false, children } = props;
  return (
    <section className={look.section} aria-labelledby={id}>
      <h2 id={id} className={mergeClasses(look.heading, hiddenTitle && look.hidden)}>
        {title}
      </h2>
      {children}
    </section>
  );
}
