import { mergeClasses } from '@fluentui/react-components';
import { useId, type ReactNode } from 'react';
import { useSharedStyles } from './shared-styles.ts';

/** A part of a tab under a heading of its own, by which it can be found. */
export function Section(props: {
  readonly title: string;
  readonly hiddenTitle?: boolean;
  readonly children: ReactNode;
}): ReactNode {
  const shared = useSharedStyles();
  const id = useId();
  const { title, hiddenTitle = false, children } = props;
  return (
    <section className={shared.section} aria-labelledby={id}>
      <h2 id={id} className={mergeClasses(shared.heading, hiddenTitle && shared.hidden)}>
        {title}
      </h2>
      {children}
    </section>
  );
}
