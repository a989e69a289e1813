import { describe, expect, it } from 'vitest';
import {
  cornersOfText,
  makeLayer,
  makeText,
  strokeLetters,
  strokesOfText,
} from '../../src/core/drawing/index.ts';

describe('letters of single strokes', () => {
  it('stay in the box the text was given, at every anchor and turn', () => {
    for (const text of ['Illi!', 'WWMM', 'pole sleeve, Q9g', 'Maren Østley · 94.0 cm (37 in)'])
      for (const anchor of ['start', 'middle', 'end'] as const)
        for (const angle of [0, 0.7, -Math.PI / 2]) {
          const item = makeText(10, 20, text, 5, { anchor, angle });
          const box = cornersOfText(item);
          const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
          const along = (x: number, y: number) => x * ux + y * uy;
          const down = (x: number, y: number) => y * ux - x * uy;
          const { paths, missing } = strokesOfText(item);
          expect(missing).toEqual([]);
          for (const { points } of paths)
            for (let i = 0; i < points.length; i += 2) {
              const [x, y] = [points[i], points[i + 1]];
              expect(along(x, y)).toBeGreaterThan(along(box[0], box[1]) - 1e-9);
              expect(along(x, y)).toBeLessThan(along(box[2], box[3]) + 1e-9);
              expect(down(x, y)).toBeGreaterThan(down(box[0], box[1]) - 1e-9);
              expect(down(x, y)).toBeLessThan(down(box[4], box[5]) + 0.011 * 5);
            }
        }
  });

  it('draw every sign of ASCII, each unlike the others', () => {
    const shapes = new Set<string>();
    for (let code = 33; code < 127; code++) {
      const { paths, missing } = strokesOfText(makeText(0, 0, String.fromCharCode(code), 100));
      expect(missing, String.fromCharCode(code)).toEqual([]);
      shapes.add(paths.map(({ points }) => [...points].map(Math.round).join(' ')).join('|'));
    }
    expect(shapes.size).toBe(94);
  });

  it('fold accents and say which characters they lack', () => {
    const strokes = (text: string) =>
      strokesOfText(makeText(0, 0, text, 5)).paths.map(({ points }) => points.length);
    expect(strokes('Édith Mühl')).toEqual(strokes('Edith Muhl'));
    expect(strokes('«\u00a0œuf\u00a0»')).toEqual(strokes('" oeuf "'));
    const drawing = {
      width: 9,
      height: 9,
      title: '',
      layers: [makeLayer('text', [makeText(0, 0, 'שלום Я', 5)])],
    };
    const { missing, drawing: stroked } = strokeLetters(drawing);
    expect(missing.join('')).toBe('שלוםЯ');
    expect(stroked.layers[0].items.every(({ kind }) => kind === 'path')).toBe(true);
  });
});
