import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../src/core/base/index.ts';
import { type Placement, placePoints } from '../../src/core/drawing/index.ts';
import { packPages } from '../../src/core/pattern/index.ts';

const [WIDTH, HEIGHT, GAP] = [180, 259, 3];

function rectangle(width: number, height: number): Float64Array {
  return Float64Array.of(0, 0, width, 0, width, height, 0, height);
}

/** A blob with a hollow or two, 60 points. */
function blob(random: () => number): Float64Array {
  const [a, b, lobes, depth] = [
    20 + 70 * random(),
    20 + 70 * random(),
    2 + Math.floor(4 * random()),
    0.4 * random(),
  ];
  return Float64Array.from({ length: 120 }, (_, i) => {
    const angle = (2 * Math.PI * Math.floor(i / 2)) / 60;
    const radius = 1 - depth * (1 + Math.cos(lobes * angle)) * 0.5;
    return i % 2 === 0 ? a * radius * Math.cos(angle) : b * radius * Math.sin(angle);
  });
}

/** Crossing number (school geometry), not the code's own test. */
function isWithin(ring: Float64Array, x: number, y: number): boolean {
  let inside = false;
  for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
    if (ring[i + 1] > y === ring[j + 1] > y) continue;
    const at = ring[i] + ((ring[j] - ring[i]) * (y - ring[i + 1])) / (ring[j + 1] - ring[i + 1]);
    if (x < at) inside = !inside;
  }
  return inside;
}

function leastDistance(a: Float64Array, b: Float64Array): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < a.length; i += 2) {
    if (isWithin(b, a[i], a[i + 1])) return 0;
    for (let j = 0; j < b.length; j += 2)
      least = Math.min(least, Math.hypot(a[i] - b[j], a[i + 1] - b[j + 1]));
  }
  return least;
}

describe('sixty outlines of any shape', () => {
  const random = seededRandom(5);
  const outlines = Array.from({ length: 60 }, () => blob(random));
  const { pages, tooLarge } = packPages(outlines, WIDTH, HEIGHT, GAP);
  const put = ({ index, place }: { index: number; place: Placement }) => placePoints(outlines[index], place);

  it('are all on a page, once', () => {
    const all = [...pages.flatMap((page) => page.map(({ index }) => index)), ...tooLarge];
    expect(all.sort((a, b) => a - b)).toEqual(outlines.map((_, i) => i));
    expect(tooLarge).toEqual([]);
  });

  it('keep their distance from each other and from the edges', () => {
    for (const page of pages) {
      const rings = page.map(put);
      for (const [i, ring] of rings.entries()) {
        for (let k = 0; k < ring.length; k += 2) {
          expect(ring[k]).toBeGreaterThan(GAP - 1e-6);
          expect(ring[k]).toBeLessThan(WIDTH - GAP + 1e-6);
          expect(ring[k + 1]).toBeGreaterThan(GAP - 1e-6);
          expect(ring[k + 1]).toBeLessThan(HEIGHT - GAP + 1e-6);
        }
        for (const other of rings.slice(0, i)) {
          expect(leastDistance(ring, other)).toBeGreaterThan(GAP - 1e-6);
          expect(leastDistance(other, ring)).toBeGreaterThan(GAP - 1e-6);
        }
      }
    }
  });

  it('need few pages: by area at most twice the fewest there could be', () => {
    let area = 0;
    for (const ring of outlines)
      for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2)
        area += (ring[j] * ring[i + 1] - ring[i] * ring[j + 1]) / 2;
    expect(pages.length).toBeLessThanOrEqual(Math.ceil((2 * area) / (WIDTH * HEIGHT)));
  });
});

it('turns a strip that is too long across, unless its grain must stay upright', () => {
  const strip = [rectangle(240, 60)];
  const [[{ place }]] = packPages(strip, WIDTH, HEIGHT, GAP).pages;
  expect(Math.abs(place.angle ?? 0)).toBeCloseTo(Math.PI / 2, 9);
  expect(packPages(strip, WIDTH, HEIGHT, GAP, true)).toEqual({ added: [], pages: [], tooLarge: [0] });
});

it('leaves what fits upright as it is, in the middle of a page of its own', () => {
  const [[{ place }]] = packPages([rectangle(100, 200)], WIDTH, HEIGHT, GAP).pages;
  expect(place).toEqual({ dx: 40, dy: 29.5, angle: 0 });
});

it('names what fits on no page', () => {
  expect(packPages([rectangle(50, 50), rectangle(300, 300)], WIDTH, HEIGHT, GAP).tooLarge).toEqual([1]);
});
