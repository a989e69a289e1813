import type { Search } from './search.ts';

/** Swaps two large bodies of unlike shape, each into the middle of where the other lay. */
export function disrupt({ layout, random }: Search): void {
  const large = largeBodies(layout);
  if (large.length === 0) return;
  const pick = (): number => large[Math.floor(random() * large.length)];
  const a = pick();
  let b = pick();
  const shapeOf = (body: number) => layout.shapes[layout.bodies[body].stances[0].shape].of;
  for (let k = 0; k < 20 && shapeOf(a) === shapeOf(b); k++) b = pick();
  const snapshot = layout.snapshot();
  if (shapeOf(a) === shapeOf(b)) throwAnywhere(layout, a, random, snapshot);
  else {
    [snapshot.x[a], snapshot.x[b]] = [snapshot.x[b], snapshot.x[a]];
    [snapshot.y[a], snapshot.y[b]] = [snapshot.y[b], snapshot.y[a]];
  }
  layout.restore(snapshot);
}

function throwAnywhere(
  layout: Search['layout'],
  body: number,
  random: () => number,
  snapshot: ReturnType<Search['layout']['snapshot']>,
): void {
  snapshot.x[body] = layout.zones[0].left + random() * (layout.limit - layout.zones[0].left);
  const { bottom, top } = layout.zones[layout.zoneAt(snapshot.x[body])];
  snapshot.y[body] = bottom + random() * (top - bottom);
}

/** The largest, which together make three quarters of the area of those that move. */
function largeBodies(layout: Search['layout']): number[] {
  const areaOf = (body: number): number => layout.shapes[layout.bodies[body].stances[0].shape].of.hullArea;
  const moving = [...layout.bodies.keys()]
    .filter((body) => layout.bodies[body].moves && layout.isLaid[body])
    .sort((a, b) => areaOf(b) - areaOf(a));
  let rest = 0.75 * moving.reduce((sum, body) => sum + areaOf(body), 0);
  return moving.filter((body) => {
    rest -= areaOf(body);
    return rest > -areaOf(body);
  });
}
