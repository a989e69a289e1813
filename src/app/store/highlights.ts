import type { Highlight } from './types.ts';

/** Name of a mark everywhere: its seam and its number from the seam's beginning, from 1. */
export function markId(seamId: string, number: number): string {
  return `${seamId}#${number}`;
}

export function isMarkOf(highlight: Highlight | null, seamId: string): boolean {
  return highlight?.kind === 'mark' && highlight.id.startsWith(`${seamId}#`);
}

/** Whether a tape, or either side of it, is the one pointed at. */
export function isTapeLit(highlight: Highlight | null, tapeId: string): boolean {
  if (highlight?.kind !== 'tape') return false;
  const [own, lit] = [tapeId.split('.'), highlight.id.split('.')];
  return own[0] === lit[0] && (own[1] === undefined || lit[1] === undefined || own[1] === lit[1]);
}
