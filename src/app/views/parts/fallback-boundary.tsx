import { Component, type ReactNode } from 'react';

interface FallbackBoundaryProps {
  readonly children: ReactNode;
  readonly fallback: ReactNode;
}

/** Shows `fallback` when what is inside fails: the graphics context is refused, or a part of the program not loaded. */
export class FallbackBoundary extends Component<FallbackBoundaryProps, { hasFailed: boolean }> {
  override state = { hasFailed: false };

  static getDerivedStateFromError() {
    return { hasFailed: true };
  }

  override render(): ReactNode {
    return this.state.hasFailed ? this.props.fallback : this.props.children;
  }
}
