/** Catches what a part of the page throws while it draws, so that the rest, and the plan, stay at hand. */
import { Component, type ReactNode } from 'react';

interface ErrorBoundaryProps {
  readonly fallback: (message: string, tryAgain: () => void) => ReactNode;
  readonly children: ReactNode;
}

export class ErrorBoundary extends Component<ErrorBoundaryProps, { readonly message: string | undefined }> {
  override state = { message: undefined };

  static getDerivedStateFromError(error: unknown): { readonly message: string } {
    return { message: error instanceof Error ? error.message : String(error) };
  }

  override render(): ReactNode {
    const { message } = this.state;
    if (message === undefined) return this.props.children;
    return this.props.fallback(message, () => this.setState({ message: undefined }));
  }
}
