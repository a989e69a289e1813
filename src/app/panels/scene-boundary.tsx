import { Component, type ReactNode } from 'react';

interface SceneBoundaryProps {
  readonly children: ReactNode;
  readonly fallback: ReactNode;
}

/** Shows `fallback` when the scene cannot be drawn, for example when the graphics context is refused. */
export class SceneBoundary extends Component<SceneBoundaryProps, { hasFailed: boolean }> {
  override state = { hasFailed: false };

  static getDerivedStateFromError() {
    return { hasFailed: true };
  }

  override render(): ReactNode {
    return this.state.hasFailed ? this.props.fallback : this.props.children;
  }
}
