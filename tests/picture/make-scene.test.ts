import { describe, expect, it } from 'vitest';
import { CAMERAS, drawForm, makeScene, type Surface } from '../../src/core/picture/index.ts';
import { inEnglish } from '../in-english.ts';
import { linesOf } from './read-lines.ts';
import { sampleForm } from './sample-form.ts';

const { shell } = sampleForm('average', 2000, true);
const back = shell.seams.filter(({ lineId }) => lineId === 'centreBack').map(({ id }) => id);

/** Loops of edges with one triangle, counted by walking them. */
function countBorders({ triangles }: Surface): number {
  const edges = new Set<string>();
  for (let f = 0; f < triangles.length; f += 3)
    for (let k = 0; k < 3; k++) edges.add(`${triangles[f + k]} ${triangles[f + ((k + 1) % 3)]}`);
  const next = new Map<string, string>();
  for (const edge of edges) {
    const [a, b] = edge.split(' ');
    if (!edges.has(`${b} ${a}`)) next.set(a, b);
  }
  let loops = 0;
  while (next.size > 0) {
    const [start] = next.keys();
    for (let at: string | undefined = start; at !== undefined; ) {
      const to: string | undefined = next.get(at);
      next.delete(at);
      at = to;
    }
    loops++;
  }
  return loops;
}

describe('panels in a scene', () => {
  it('are sewn along every seam, one panel to itself too: base, neck and armholes stay open', () => {
    const [surface] = makeScene({ shell }).surfaces;
    expect(countBorders(surface)).toBe(4);
    const corners = shell.panels.reduce((sum, { mesh }) => sum + mesh.triangles.length, 0);
    expect(surface.triangles).toHaveLength(corners);
  });

  it('are open where a seam is, from base to neck: two openings become one', () => {
    const [surface] = makeScene({ shell }, { open: { seams: back, gape: 0 } }).surfaces;
    expect(countBorders(surface)).toBe(3);
  });

  it('gape: edges of an open seam go apart, the front stays', () => {
    const gape = 80;
    const open = makeScene({ shell }, { open: { seams: back, gape } });
    const edges = open.lines.filter(({ id }) => id === back[0]);
    expect(edges).toHaveLength(2);
    const [one, other] = edges.map(({ points }) => points);
    const apart = Array.from({ length: one.length / 3 }, (_, i) => {
      return Math.hypot(
        one[3 * i] - other[3 * i],
        one[3 * i + 1] - other[3 * i + 1],
        one[3 * i + 2] - other[3 * i + 2],
      );
    });
    // Each goes half the way to its own side.
    for (const width of apart) expect(Math.abs(width - gape)).toBeLessThan(0.05 * gape);
    const closed = makeScene({ shell }).lines.find(({ id }) => id === 'centreFront')!;
    const front = open.lines.find(({ id }) => id === 'centreFront')!;
    expect([...front.points]).toEqual([...closed.points]);
  });
});

describe('a form in a picture', () => {
  const scene = makeScene({ shell });
  const draw = (show: (sheet: { half: string; kind: string }) => 'solid' | 'ghost' | 'none') => {
    return drawForm(scene, CAMERAS.back, { title: 'x', say: inEnglish, show });
  };

  it('shows the wrong side of the front through a back that is left out', () => {
    const wrongSide = (drawing: ReturnType<typeof draw>): number => {
      const items = drawing.layers.find(({ name }) => name === 'fill')!.items;
      return items.filter((item) => item.kind === 'path' && item.style?.fill === '#bdbdbd').length;
    };
    const isBack = (half: string, kind: string) => half === 'back' || kind !== 'panel';
    const without = draw(({ half, kind }) => (isBack(half, kind) ? 'none' : 'solid'));
    expect(wrongSide(without)).toBeGreaterThan(0);
    const ghosted = draw(({ half, kind }) =>
      kind !== 'panel' ? 'none' : half === 'back' ? 'ghost' : 'solid',
    );
    expect(wrongSide(ghosted)).toBe(wrongSide(without));
    // The ghost is dotted, and only it.
    expect(linesOf(without, 'seam', true)).toEqual([]);
    expect(linesOf(ghosted, 'seam', true).length).toBeGreaterThan(0);
    expect(ghosted.width).toBeGreaterThan(without.width);
  });
});
