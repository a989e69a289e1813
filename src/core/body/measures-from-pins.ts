/**
 * The girth that is left when so much was pinned off a trial shell round the whole level: both layers of every fold, all places
 * together. mm.
 */
export function measuresFromPins({
  girth,
  takenIn,
}: {
  readonly girth: number;
  readonly takenIn: number;
}): number {
  return girth - takenIn;
}
