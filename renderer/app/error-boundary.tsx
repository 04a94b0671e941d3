import { Component, type ReactNode } from 'react';
import type { Text } from '../text/index.ts';
import { Button } from '../ui/button.tsx';
import { Notice } from '../ui/notice.tsx';

type Props = { readonly text: Text; readonly children: ReactNode };

/** Catches a screen that fails to draw. The draft lives in the store, outside of any screen, and goes on being saved. */
export class ErrorBoundary extends Component<Props, { readonly failure: Error | null }> {
  override state: { readonly failure: Error | null } = { failure: null };

  static getDerivedStateFromError(failure: unknown): { failure: Error } {
    return { failure: failure instanceof Error ? failure : new Error(String(failure)) };
  }

  override render(): ReactNode {
    const { failure } = this.state;
    const words = this.props.text.shell.broken;
    if (failure === null) return this.props.children;
    return (
      <Notice tone="problem" title={words.title}>
        <p>{words.safe}</p>
        <Button look="main" onClick={() => this.setState({ failure: null })}>{words.again}</Button>
        <details><summary>{words.details}</summary><code>{failure.message}</code></details>
      </Notice>
    );
  }
}
