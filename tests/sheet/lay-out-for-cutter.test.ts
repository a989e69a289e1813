import { DOMParser } from '@xmldom/xmldom';
import { describe, expect, it } from 'vitest';
import { verbatim } from '../../src/core/base/index.ts';
import type { Drawing, DrawingPath } from '../../src/core/drawing/index.ts';
import { CUTTER_COLOURS, writeSvg } from '../../src/core/export/index.ts';
import type { Piece } from '../../src/core/pattern/index.ts';
import { layOutForCutter, MATS } from '../../src/core/sheet/index.ts';
import { inEnglish } from '../in-english.ts';
import { measurePolygonArea } from '../oracles/polygon-area.ts';
import { samplePieces } from './sample-pieces.ts';

function cuts(drawing: Drawing): DrawingPath[] {
  const items = drawing.layers.find(({ name }) => name === 'cut')!.items;
  return items.filter((item): item is DrawingPath => item.kind === 'path');
}

function areaOf(points: Float64Array): number {
  return Math.abs(measurePolygonArea(pairs(points)));
}

function pairs(points: Float64Array): [number, number][] {
  return Array.from({ length: points.length / 2 }, (_, i) => [points[2 * i], points[2 * i + 1]]);
}

function sheetsOf(pieces: readonly Piece[], options = {}) {
  const made = layOutForCutter(pieces, { say: inEnglish, title: 't', divides: true, ...options });
  if (!made.ok) throw new Error(inEnglish(made.issues[0].message));
  return made.value;
}

const SQUARE: Piece = {
  id: 'square',
  name: verbatim('Square'),
  side: 'centre',
  material: 'card',
  cutLine: Float64Array.of(0, 0, 100, 0, 100, 100, 0, 100),
  sewLines: [],
  notches: [{ id: 'A1', name: 'A1', points: Float64Array.of(50, 0, 50, 3) }],
  levelLines: [],
  grainLine: new Float64Array(0),
  texts: [],
};

describe('a 100 mm square', () => {
  it('is cut half a kerf outside its line: 100.3 mm for a kerf of 0.3', () => {
    const [{ drawing }] = sheetsOf([SQUARE], { kerf: 0.3 });
    const outline = cuts(drawing).find(({ closed }) => closed)!;
    const xs = outline.points.filter((_, i) => i % 2 === 0);
    const ys = outline.points.filter((_, i) => i % 2 === 1);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(100.3, 3);
    expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(100.3, 3);
    expect(areaOf(outline.points)).toBeCloseTo(100.3 ** 2, 1);
  });

  it('has its slit cut before its outline', () => {
    const [{ drawing }] = sheetsOf([SQUARE]);
    expect(cuts(drawing).map(({ closed }) => closed)).toEqual([false, true]);
  });
});

describe('pieces larger than the mat', () => {
  const pieces = samplePieces();
  const mat = { width: 304.8, height: 304.8 };
  const sheets = sheetsOf(pieces, { mat });

  it('lose no cloth: the parts of every piece have its area together', () => {
    for (const { id, cutLine } of pieces) {
      const parts = sheets.flatMap(({ drawing }) =>
        cuts(drawing).filter((path) => path.closed && path.id?.startsWith(`${id}/cut`)),
      );
      expect(parts.reduce((sum, { points }) => sum + areaOf(points), 0) / areaOf(cutLine)).toBeCloseTo(1, 6);
    }
    expect(sheets.length).toBeGreaterThan(pieces.length);
  });

  it('stay on the mat', () => {
    for (const { drawing } of sheets) {
      expect([drawing.width, drawing.height]).toEqual([mat.width, mat.height]);
      for (const { points } of cuts(drawing)) {
        for (const [x, y] of pairs(points)) {
          expect(Math.min(x, y)).toBeGreaterThanOrEqual(6 - 1e-3);
          expect(Math.max(x, y)).toBeLessThanOrEqual(304.8 - 6 + 1e-3);
        }
      }
    }
  });

  it('carry two half diamonds on each side of a division, on the piece itself', () => {
    let seen = 0;
    for (const { drawing } of sheets) {
      const outlines = cuts(drawing).filter(({ closed }) => closed);
      for (const item of drawing.layers.find(({ name }) => name === 'join')!.items) {
        if (item.kind !== 'path') continue;
        const box = pairs(item.points).map(([x, y]) =>
          outlines.some(({ points }) => isNear(pairs(points), x, y)),
        );
        expect(box.every(Boolean), item.id).toBe(true);
        seen++;
      }
    }
    expect(seen).toBeGreaterThan(10);
  });
});

/** Inside by the crossing rule, or within 0.01 mm of a side. */
function isNear(corners: readonly [number, number][], x: number, y: number): boolean {
  let isInside = false;
  for (const [i, [x1, y1]] of corners.entries()) {
    const [x0, y0] = corners[(i + corners.length - 1) % corners.length];
    if (y0 > y !== y1 > y && x < x0 + ((y - y0) / (y1 - y0)) * (x1 - x0)) isInside = !isInside;
    const t = Math.min(
      1,
      Math.max(0, ((x - x0) * (x1 - x0) + (y - y0) * (y1 - y0)) / ((x1 - x0) ** 2 + (y1 - y0) ** 2)),
    );
    if (Math.hypot(x0 + t * (x1 - x0) - x, y0 + t * (y1 - y0) - y) < 0.01) return true;
  }
  return isInside;
}

describe('the file for the machine', () => {
  const [{ drawing }] = sheetsOf(samplePieces());
  const svg = writeSvg(drawing, {
    say: inEnglish,
    colours: { ...CUTTER_COLOURS, sew: 'none', mark: '#123456' },
    hairline: 0.025,
  });
  const root = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement!;
  const groups = Array.from(root.getElementsByTagName('g'));

  it('tells layers apart by the colours given, hairlines all, without dashes', () => {
    expect(groups.map((group) => [group.getAttribute('id'), group.getAttribute('stroke')])).toEqual([
      ['cut', '#ff0000'],
      ['mark', '#123456'],
      ['text', '#000000'],
    ]);
    expect(groups.every((group) => group.getAttribute('stroke-width') === '0.025')).toBe(true);
    expect(svg).not.toMatch(/dasharray/);
  });

  it('is in plain millimetres: no clip paths, only texts are turned', () => {
    expect(root.getAttribute('width')).toBe(`${drawing.width}mm`);
    expect(root.getAttribute('viewBox')).toBe(`0 0 ${drawing.width} ${drawing.height}`);
    expect(svg).not.toMatch(/clip|matrix|scale\(|translate\(/i);
    expect(svg.length).toBeLessThan(1_000_000);
  });
});

it.each([
  [{ kerf: -1 }, 'kerf-out-of-range'],
  [{ kerf: 5 }, 'kerf-out-of-range'],
  [{ mat: { width: 100, height: 600 } }, 'mat-too-small'],
  [{ mat: { width: 304.8, height: 304.8 } }, 'would-divide'],
])('%o is an issue', (options, code) => {
  const made = layOutForCutter(samplePieces(), { say: inEnglish, title: 't', ...options });
  expect(made.ok).toBe(false);
  expect(made.issues.map((issue) => issue.code)).toEqual([code]);
});

it('names the cloth it would divide, and a mat that holds it whole', () => {
  const pieces = samplePieces();
  const ask = (mat: { width: number; height: number }) =>
    layOutForCutter(pieces, { say: inEnglish, title: 't', mat });
  const [width, height] = /A mat of ([\d.]+) cm[^×]*× ([\d.]+) cm/
    .exec(inEnglish(ask({ width: 304.8, height: 304.8 }).issues[0].message))!
    .slice(1)
    .map((centimetres) => 10 * Number(centimetres));
  expect(ask({ width: width + 1, height: height + 1 }).ok).toBe(true);
  expect(ask({ width: width + 1, height: height - 5 }).ok).toBe(false);
});

it('divides card, and tells how its parts are joined', () => {
  const cutLine = Float64Array.of(0, 0, 400, 0, 400, 100, 0, 100);
  const made = layOutForCutter([{ ...SQUARE, cutLine }], {
    say: inEnglish,
    title: 't',
    mat: { width: 304.8, height: 304.8 },
  });
  expect(made.ok && made.value.length).toBe(2);
  expect(made.issues.map(({ code }) => code)).toEqual(['divided-boards']);
});

it('knows mats in whole inches', () => {
  for (const { width, height } of MATS) {
    expect((width / 25.4) % 6).toBeCloseTo(0, 9);
    expect((height! / 25.4) % 6).toBeCloseTo(0, 9);
  }
});
