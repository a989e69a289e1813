import { describe, expect, it } from 'vitest';
import { formPictures } from '../../src/cli/form-pictures.ts';
import type { Drawing, DrawingPath } from '../../src/core/drawing/index.ts';
import { writeSvg } from '../../src/core/export/index.ts';
import { cutLevel, layFlat, orderPanels, stackBoards } from '../../src/core/picture/index.ts';
import { inEnglish } from '../in-english.ts';
import { linesOf } from './read-lines.ts';
import { sampleForm } from './sample-form.ts';

const form = sampleForm('average', 2000);
const { shell, pieces } = form;
const title = 'picture';
const say = inEnglish;

/** Area of a closed outline by Gauss's formula. */
function areaOf(points: ArrayLike<number>): number {
  let twice = 0;
  for (let i = 0; i < points.length; i += 2) {
    const j = (i + 2) % points.length;
    twice += points[i] * points[j + 1] - points[j] * points[i + 1];
  }
  return twice / 2;
}

function lengthOf(points: ArrayLike<number>, closed = false): number {
  let length = 0;
  const count = points.length;
  for (let i = closed ? 0 : 2; i < count; i += 2) {
    const before = (i + count - 2) % count;
    length += Math.hypot(points[i] - points[before], points[i + 1] - points[before + 1]);
  }
  return length;
}

function paths(drawing: Drawing, layer: string): DrawingPath[] {
  return drawing.layers
    .filter(({ name }) => name === layer)
    .flatMap(({ items }) => items)
    .filter((item): item is DrawingPath => item.kind === 'path');
}

describe('pieces laid flat', () => {
  const [seam] = shell.seams.filter(({ lineId }) => lineId === 'princessFront');
  const ids = orderPanels(shell, seam.panels);
  const own = ids.map((id) => pieces.find((piece) => piece.id === id)!);
  const drawing = layFlat(own, [seam.letter], { title });
  const cloth = paths(drawing, 'fill');

  it('are the pieces, a tenth of true size, turned over', () => {
    expect(cloth).toHaveLength(2);
    own.forEach(({ cutLine }, k) => {
      // A tenth of the size is a hundredth of the area; on the page, where y runs down, a piece turned over keeps the sign of its area.
      expect(areaOf(cloth[k].points) / (areaOf(cutLine) / 100)).toBeCloseTo(1, 2);
    });
  });

  it('have the seam bold on both, as long as it is sewn', () => {
    const bold = linesOf(drawing, 'bold');
    expect(bold).toHaveLength(2);
    const sewn = form.report.seams.find(({ id }) => id === seam.id)!.lengthsFlat;
    const lengths = bold.map(({ points }) => 10 * lengthOf(points));
    // Its points are thinned within 0.06 mm of paper.
    for (const [k, length] of lengths.toSorted().entries())
      expect(Math.abs(length / sewn.toSorted()[k] - 1)).toBeLessThan(0.003);
  });

  it('are tied from notch to notch, and at both ends', () => {
    const dotted = linesOf(drawing, 'seam', true);
    const inner = seam.marks.filter(({ kind }) => kind !== 'end').length;
    expect(dotted).toHaveLength(inner + 2);
    const bold = linesOf(drawing, 'bold').map(({ points }) => points);
    for (const { points } of dotted) {
      const ends = [points.slice(0, 2), points.slice(2)];
      const offs = ends.map(([x, y]) => bold.map((line) => distanceToLine(line, x, y)));
      expect(Math.min(...offs[0])).toBeLessThan(0.05);
      expect(Math.min(...offs[1])).toBeLessThan(0.05);
      // They do not cross one piece: each end is on a partner of its own.
      expect(offs[0].indexOf(Math.min(...offs[0]))).not.toBe(offs[1].indexOf(Math.min(...offs[1])));
    }
  });

  it('do not lie on each other, and face each other with the edges that are sewn', () => {
    const boxes = cloth.map(({ points }) => {
      const xs = [...points].filter((_, i) => i % 2 === 0);
      return (Math.min(...xs) + Math.max(...xs)) / 2;
    });
    const [left, right] = linesOf(drawing, 'bold')
      .map(({ points }) => points[0])
      .toSorted((a, b) => a - b);
    expect(boxes[0]).toBeLessThan(left);
    expect(right).toBeLessThan(boxes[1]);
  });

  it('are laced close together once they are sewn', () => {
    const joined = layFlat(own, [], { title, joined: [seam.letter] });
    expect(joined.width).toBeLessThan(drawing.width - 5);
    expect(linesOf(joined, 'outline')).toHaveLength(2);
    expect(linesOf(joined, 'thin').length).toBeGreaterThan(10);
  });
});

function distanceToLine(line: ArrayLike<number>, x: number, y: number): number {
  let least = Infinity;
  for (let i = 2; i < line.length; i += 2) {
    const [ax, ay, bx, by] = [line[i - 2], line[i - 1], line[i], line[i + 1]];
    const square = (bx - ax) ** 2 + (by - ay) ** 2;
    const t = Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / square));
    least = Math.min(least, Math.hypot(ax + t * (bx - ax) - x, ay + t * (by - ay) - y));
  }
  return least;
}

describe('a level cut', () => {
  const level = shell.levels.find(({ id }) => id === 'waist')!;

  it('is as long round as the level, a sixth of true size, and the braces cross it', () => {
    const drawing = cutLevel(shell, form.inside?.shape, 'waist', { title, say });
    const [outline] = linesOf(drawing, 'outline');
    expect(6 * lengthOf(outline.points, true)).toBeCloseTo(level.length3d, 0);
    const atWaist = form.inside!.shape.braces.filter(({ rungs }) =>
      rungs.some(({ levelId }) => levelId === 'waist'),
    );
    const braces = paths(drawing, 'fill').filter(({ style }) => style?.strokeWidth === 0.55);
    expect(braces.map(({ points }) => Math.round(6 * lengthOf(points))).toSorted()).toEqual(
      atWaist
        .map(({ rungs }) => Math.round(spanOf(rungs.find(({ levelId }) => levelId === 'waist')!)))
        .toSorted(),
    );
  });

  function spanOf({ from, to }: { from: readonly number[]; to: readonly number[] }): number {
    return Math.hypot(from[0] - to[0], from[1] - to[1]);
  }

  it('shows allowances pressed to the front in front of their seams', () => {
    const draw = (pressed: 'open' | 'to-front' | 'to-back') => {
      return linesOf(cutLevel(shell, undefined, 'waist', { title, say, pressed }), 'seam');
    };
    // The front is down the page; a seam's allowances begin on it, at their first point.
    const sides = (pressed: 'open' | 'to-front' | 'to-back'): number[] => {
      const lines = draw(pressed).filter(({ points }) => points.length === 6);
      const xs = lines.map(({ points }) => points[0]);
      const right = lines.filter(({ points }) => points[0] === Math.min(...xs));
      return right.map(({ points }) => Math.sign(points[5] - points[1]));
    };
    expect(sides('to-front')).toEqual([1, 1]);
    expect(sides('to-back')).toEqual([-1, -1]);
    expect(sides('open').toSorted()).toEqual([-1, 1]);
  });

  it('is open where a seam is', () => {
    const open = shell.seams.filter(({ lineId }) => lineId === 'centreBack').map(({ id }) => id);
    const drawing = cutLevel(shell, undefined, 'waist', { title, say, open });
    const [outline] = linesOf(drawing, 'outline');
    expect(outline.closed).toBe(false);
    const gap = lengthOf([...outline.points.slice(0, 2), ...outline.points.slice(-2)]);
    expect(gap).toBeGreaterThan(2);
    expect(lengthOf(outline.points) + gap).toBeGreaterThan(0.97 * (level.length3d / 6));
  });
});

describe('boards pulled apart', () => {
  it('lie with their magnets over each other, opposite poles facing', () => {
    const ids = ['armhole-plate-right-1', 'arm-plate-right-1'];
    const own = ids.map((id) => form.inside!.pieces.find((piece) => piece.id === id)!);
    const drawing = stackBoards(own, title, say);
    const letters = drawing.layers.flatMap(({ items }) =>
      items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])),
    );
    expect(letters.filter((text) => text === 'N')).toHaveLength(2);
    expect(letters.filter((text) => text === 'S')).toHaveLength(2);
  });
});

describe('all pictures of a form', () => {
  const drawn = formPictures(form, say);
  const files = drawn.map(({ name, drawing }) => ({
    name,
    svg: writeSvg(drawing, { say, isCompact: true }),
  }));

  it('come out the same, byte by byte', () => {
    const again = formPictures(form, say).map(({ drawing }) => writeSvg(drawing, { say, isCompact: true }));
    expect(again).toEqual(files.map(({ svg }) => svg));
  });

  it('take less than 18 kB each', () => {
    expect(files.length).toBeGreaterThan(30);
    expect(files.filter(({ svg }) => svg.length >= 18_000).map(({ name }) => name)).toEqual([]);
  });

  it('have no letters under 8 points', () => {
    const sizes = drawn.flatMap(({ drawing: { layers } }) =>
      layers.flatMap(({ items }) => items.flatMap((item) => (item.kind === 'text' ? [item.size] : []))),
    );
    expect(sizes.length).toBeGreaterThan(50);
    // A point is 25.4/72 mm.
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual((8 * 25.4) / 72);
  });

  it('draw only in black and three greys', () => {
    const colours = new Set(files.flatMap(({ svg }) => svg.match(/#[0-9a-f]{6}/g) ?? []));
    const allowed = ['#000000', '#ffffff', '#f3f3f3', '#dcdcdc', '#bdbdbd'];
    // What a layer would draw in, were anything in it without a colour of its own.
    const layers = ['#d8d8d8', '#5a6b5d', '#333333', '#222222'];
    expect([...colours].filter((colour) => ![...allowed, ...layers].includes(colour))).toEqual([]);
  });
});
