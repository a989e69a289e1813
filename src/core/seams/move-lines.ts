import { CHART_RADIUS } from './fair-curve.ts';
import type { SeamAnchor, SeamLayout, SeamLine } from './types.ts';

/** What names a control point: its line and which anchor of it; −1 moves a whole level line, by its height. */
export interface ControlPointName {
  readonly lineId: string;
  readonly anchor: number;
}

/** mm round an armhole, nominal: turns a move into a share of the loop. */
const ARMHOLE_ROUND = 420;
/** mm along a shoulder or another stretch between two landmarks, nominal. */
const BETWEEN_LANDMARKS = 140;

/**
 * What of a layout can be moved: anchors of upright lines off the centre (not those that end in a landmark on another
 * line's corner), and the height of level lines that follow no level.
 */
export function listMovablePoints(layout: SeamLayout): ControlPointName[] {
  return layout.lines.flatMap((line): ControlPointName[] => {
    if (line.alongHeight !== undefined) return [{ lineId: line.id, anchor: -1 }];
    if (line.side === 'centre' || line.alongLevel !== undefined) return [];
    return line.through.flatMap((anchor, i) =>
      isFixed(line, anchor) ? [] : [{ lineId: line.id, anchor: i }],
    );
  });
}

/** The shoulder runs from corner to corner; moved, it would miss the tape's landmarks. */
function isFixed(line: SeamLine, anchor: SeamAnchor): boolean {
  const isEndOnOther = anchor.onLine !== undefined && anchor.toward === undefined;
  return line.id === 'shoulder' || line.id === 'side' || isEndOnOther;
}

/**
 * The layout with one point moved by about `mm`: anchors towards the centre front (round the body), anchors on a shoulder
 * towards the neck, anchors on an armhole onwards from the armpit over the front; level lines up.
 */
export function movePointBy(layout: SeamLayout, point: ControlPointName, mm: number): SeamLayout {
  return {
    ...layout,
    lines: layout.lines.map((line) => {
      if (line.id !== point.lineId) return line;
      if (point.anchor < 0) {
        const height = line.alongHeight ?? {};
        return { ...line, alongHeight: { ...height, v: (height.v ?? 0) + mm } };
      }
      return {
        ...line,
        through: line.through.map((anchor, i) => (i === point.anchor ? moveAnchor(anchor, mm) : anchor)),
      };
    }),
  };
}

function moveAnchor(anchor: SeamAnchor, mm: number): SeamAnchor {
  if (anchor.armhole !== undefined) return { ...anchor, armhole: anchor.armhole + mm / ARMHOLE_ROUND };
  if (anchor.onLine !== undefined && anchor.toward !== undefined) {
    const { landmark, fraction } = anchor.toward;
    return { ...anchor, toward: { landmark, fraction: fraction + mm / BETWEEN_LANDMARKS } };
  }
  if (anchor.toward !== undefined) {
    // `u` counts before the way to the other landmark is shortened; the way is a quarter turn from the centre.
    const { landmark, fraction } = anchor.toward;
    const away = anchor.landmark?.endsWith('Back') ? 1 : -1;
    return {
      ...anchor,
      toward: { landmark, fraction: fraction + (away * mm) / (CHART_RADIUS * (Math.PI / 2)) },
    };
  }
  return { ...anchor, u: (anchor.u ?? 0) + mm / CHART_RADIUS };
}
