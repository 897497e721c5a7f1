import { Component, type ReactNode } from 'react';
import { sayError } from '../core/faults/say-error.ts';
import { BugNotice } from './bug-notice.tsx';

interface Props {
  readonly children: ReactNode;
}

interface State {
  readonly what: string | undefined;
}

/** Catches what a part of the pane throws: a bug of ours, which the person is told of. */
export class ErrorBoundary extends Component<Props, State> {
  override state: State = { what: undefined };

  static getDerivedStateFromError(error: unknown): State {
    return { what: sayError(error) };
  }

  override render(): ReactNode {
    const { what } = this.state;
    return what === undefined ? this.props.children : <BugNotice what={what} />;
  }
}
