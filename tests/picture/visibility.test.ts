import { describe, expect, it } from 'vitest';
import { CAMERAS, drawForm, makeScene, type Scene } from '../../src/core/picture/index.ts';
import { inEnglish } from '../in-english.ts';
import { castRays } from './cast-rays.ts';
import { linesOf, nearest, sampleLines } from './read-lines.ts';
import { sampleForm } from './sample-form.ts';

const form = sampleForm('average', 3000, true);
const scene = makeScene({ shell: form.shell });
const onlyPanels: Scene = { ...scene, lines: scene.lines.filter(({ kind }) => kind === 'seam') };
const SCALE = 0.1;

/** A camera's own words, worked out anew: right, up and to the viewer. */
function axesOf({ azimuth, elevation }: { azimuth: number; elevation: number }) {
  const [sa, ca, se, ce] = [Math.sin(azimuth), Math.cos(azimuth), Math.sin(elevation), Math.cos(elevation)];
  return { right: [-ca, sa, 0], up: [-sa * se, -ca * se, ce], toViewer: [sa * ce, ca * ce, se] };
}

describe.each(['front', 'back'] as const)('what is seen from the %s', (view) => {
  const camera = CAMERAS[view];
  const { right, up, toViewer } = axesOf(camera);
  const { mesh, seams } = form.shell;
  const rays = castRays(mesh.positions, mesh.triangles, toViewer);
  const show = ({ kind }: { kind: string }) => (kind === 'panel' ? ('solid' as const) : ('none' as const));
  const drawing = drawForm(onlyPanels, camera, { title: view, say: inEnglish, show, hasLevels: false });
  const outlines = sampleLines(linesOf(drawing, 'outline'), 0.3);
  const dot = (a: readonly number[], b: readonly number[]) =>
    a.reduce((sum, value, k) => sum + value * b[k], 0);
  const place = (v: number) => [0, 1, 2].map((k) => mesh.positions[3 * v + k]);
  const pages = Array.from({ length: mesh.positions.length / 3 }, (_, v) => {
    return [SCALE * dot(right, place(v)), -SCALE * dot(up, place(v))];
  });
  // Where the picture was moved to: the outlines' box is the mesh's, to a few tenths of a millimetre.
  const least = (points: readonly number[][], k: number) => Math.min(...points.map((p) => p[k]));
  const shift = [least(outlines, 0) - least(pages, 0), least(outlines, 1) - least(pages, 1)];
  const toPage = (p: readonly number[]) => [SCALE * dot(right, p) + shift[0], -SCALE * dot(up, p) + shift[1]];

  /** Seams sampled, and whether a ray from just off the cloth reaches the viewer. */
  const truth = seams.flatMap(({ points }) =>
    Array.from({ length: 4 * (points.length - 1) }, (_, i) => {
      const [a, b] = [place(points[i >> 2]), place(points[(i >> 2) + 1])];
      const p = a.map((value, k) => value + ((i % 4) / 4) * (b[k] - value));
      return { page: toPage(p), clear: rays.firstHit(p) };
    }),
  );

  it('hides no seam that is seen', () => {
    const drawn = [...sampleLines(linesOf(drawing, 'seam'), 0.3), ...outlines];
    const seen = truth.filter(({ clear }) => clear < 0.01);
    expect(seen.length).toBeGreaterThan(200);
    expect(Math.max(...seen.map(({ page }) => nearest(drawn, page[0], page[1])))).toBeLessThan(1);
  });

  it('shows no seam that is hidden', () => {
    const seen = truth.filter(({ clear }) => clear < 5).map(({ page }) => page);
    const drawn = sampleLines(linesOf(drawing, 'seam'), 0.3);
    const wrong = drawn.filter(([x, y]) => nearest(seen, x, y) > 1);
    expect(wrong.length).toBeLessThanOrEqual(0.01 * drawn.length);
  });

  /** How near the cloth is at a page place, mm; −∞ where there is none. */
  const depthAt = (x: number, y: number): number => {
    const [a, b] = [(x - shift[0]) / SCALE, -(y - shift[1]) / SCALE];
    const p = [0, 1, 2].map((k) => a * right[k] + b * up[k]);
    return rays.firstHit(p);
  };

  it('draws an outline where the cloth ends against what is behind, and nowhere else', () => {
    const { height } = drawing;
    const steps: number[][] = [];
    for (let y = 2.5; y < height - 2; y += 5) {
      let before = -Infinity;
      for (let x = -1; x < drawing.width + 1; x += 0.4) {
        const here = depthAt(x, y);
        // From cloth to nothing, or to cloth far behind.
        if (Number.isFinite(here) !== Number.isFinite(before) || Math.abs(here - before) > 40) {
          if (here !== before) steps.push([x - 0.2, y]);
        }
        before = here;
      }
    }
    expect(steps.length).toBeGreaterThan(20);
    expect(Math.max(...steps.map(([x, y]) => nearest(outlines, x, y)))).toBeLessThan(1);

    const wrong = outlines.filter(([x, y]) => {
      const around = Array.from({ length: 12 }, (_, k) => {
        return depthAt(x + 0.9 * Math.cos((k * Math.PI) / 6), y + 0.9 * Math.sin((k * Math.PI) / 6));
      });
      const jump = Math.max(...around) - Math.min(...around);
      return !(jump > 12);
    });
    expect(wrong.length).toBeLessThanOrEqual(0.01 * outlines.length);
  });
});
