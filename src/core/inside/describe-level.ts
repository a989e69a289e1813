import type { Phrase } from '../base/index.ts';
import { boundsOfPolyline, measurePolyline } from '../math/index.ts';
import type { LevelCase } from './balance-level.ts';
import type { LevelDesign } from './design-level.ts';
import { bridgeHollows } from './measure-deviation.ts';
import { phrase } from './phrases.ts';
import { radiusOfFreeSleeve } from './span-arc.ts';
import type { LevelFinding, SectionPlace, SectionSize } from './types.ts';

/** What a level measures on the body, stuffed with nothing inside, and stuffed with its braces. */
export function describeLevel(
  level: { readonly id: string; readonly name: Phrase },
  { target, bridged }: LevelCase,
  design: LevelDesign,
  slack: readonly Phrase[],
): LevelFinding {
  const radius = radiusOfFreeSleeve(target.perimeter);
  const { index, deviation } = design.worst;
  const x = target.outline[2 * index];
  const y = target.outline[2 * index + 1];
  return {
    id: level.id,
    name: level.name,
    z: target.z,
    body: sizeOf(target.outline),
    free: {
      width: 2 * radius,
      depth: 2 * radius,
      girth: target.perimeter,
      deviation: deviationOfCircle(bridged, radius),
    },
    held: { ...sizeOf(design.ring), deviation, where: placeOnSection(x, y, target.outline), x, y },
    slack,
  };
}

function sizeOf(ring: Float64Array): SectionSize {
  const box = boundsOfPolyline(ring);
  return {
    width: box.maxX - box.minX,
    depth: box.maxY - box.minY,
    girth: measurePolyline(bridgeHollows(ring), true),
  };
}

/** Largest gap, either way, between a circle about the middle of the outline's box and the outline, along its radius. */
function deviationOfCircle(outline: Float64Array, radius: number): number {
  const box = boundsOfPolyline(outline);
  const [cx, cy] = [0.5 * (box.minX + box.maxX), 0.5 * (box.minY + box.maxY)];
  let worst = 0;
  for (let i = 0; i < outline.length; i += 2) {
    const gap = radius - Math.hypot(outline[i] - cx, outline[i + 1] - cy);
    if (Math.abs(gap) > Math.abs(worst)) worst = gap;
  }
  return worst;
}

/** Where a point seen from above lies on a section (n × 2), by its share of the section's width. */
export function placeOnSection(x: number, y: number, outline: Float64Array): SectionPlace {
  const box = boundsOfPolyline(outline);
  const share = Math.abs(x) / (0.5 * (box.maxX - box.minX));
  const half = y > 0.5 * (box.minY + box.maxY) ? 'front' : 'back';
  const side = x > 0 ? 'right' : 'left';
  if (share < 0.12) return `centre ${half}`;
  return share > 0.9 ? `${side} side` : `${side} ${half}`;
}

export function nameOfPlace(place: SectionPlace): Phrase {
  return phrase(`section.${place}`);
}
