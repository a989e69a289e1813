import { describe, expect, it } from 'vitest';
import { boundsOfDrawing, type Drawing, type DrawingPath } from '../../src/core/drawing/index.ts';
import { boundsOfPoints } from '../../src/core/math/index.ts';
import { arrangePieces, draftPiece, type Piece } from '../../src/core/pattern/index.ts';
import { inEnglish } from '../in-english.ts';
import { distanceTo, isInside, lengthOf, sample } from './brute-force.ts';
import { plate } from './plate.ts';
import { LABEL, samplePanels } from './synthetic-panels.ts';

const PIECES: Piece[] = samplePanels().map((input) => {
  const result = draftPiece(input, LABEL);
  if (!result.ok) throw new Error(input.id);
  return result.value;
});

function arrange(pieces: readonly Piece[], options = {}): Drawing {
  const result = arrangePieces(pieces, { say: inEnglish, ...options });
  if (!result.ok) throw new Error(inEnglish(result.issues[0].message));
  return result.value;
}

function paths(drawing: Drawing, layer: string): DrawingPath[] {
  const items = drawing.layers.find(({ name }) => name === layer)?.items ?? [];
  return items.filter((item) => item.kind === 'path');
}

function pathOf(drawing: Drawing, id: string): DrawingPath {
  const found = drawing.layers.flatMap(({ items }) => items).find((item) => item.id === id);
  if (found?.kind !== 'path') throw new Error(`no path ${id}`);
  return found;
}

describe.each([
  [1400, 10],
  [900, 10],
  [620, 3],
])('a sheet %i mm wide, gap %i', (sheetWidth, gap) => {
  const sheet = arrange(PIECES, { sheetWidth, gap });
  const cuts = [...paths(sheet, 'cut').filter(({ closed }) => closed), pathOf(sheet, 'test/square-100')];

  it('keeps pieces and test square apart by the gap', () => {
    expect(cuts).toHaveLength(PIECES.length + 1);
    cuts.forEach((cut, i) => {
      const samples = sample(cut.points, true, 4);
      for (const other of cuts.filter((_, j) => j !== i)) {
        for (const [x, y] of samples) {
          expect(distanceTo(other.points, true, x, y)).toBeGreaterThanOrEqual(gap - 0.01);
          expect(isInside(other.points, x, y)).toBe(false);
        }
      }
    });
  });

  it('keeps everything on the sheet, the cut lines a gap from its edges', () => {
    const bounds = boundsOfDrawing(sheet)!;
    expect(bounds.minX).toBeGreaterThanOrEqual(0);
    expect(bounds.minY).toBeGreaterThanOrEqual(0);
    expect(bounds.maxX).toBeLessThanOrEqual(sheetWidth);
    expect(bounds.maxY).toBeLessThanOrEqual(sheet.height);
    for (const { points } of cuts.slice(0, -1)) {
      const xs = points.filter((_, i) => i % 2 === 0);
      expect(Math.min(...xs)).toBeGreaterThanOrEqual(gap - 1e-9);
      expect(Math.max(...xs)).toBeLessThanOrEqual(sheetWidth - gap + 1e-9);
    }
    expect(sheet.width).toBe(sheetWidth);
  });

  it('turns nothing: every grain line still runs up the sheet', () => {
    for (const { id } of PIECES) {
      const { points } = pathOf(sheet, `${id}/grain`);
      expect(points[0]).toBe(points[2]);
      expect(points[3]).toBeLessThan(points[1]);
    }
  });
});

describe('the sheet', () => {
  const sheet = arrange(PIECES);

  it('has its layers in order', () => {
    expect(sheet.layers.map(({ name }) => name)).toEqual(['cut', 'sew', 'mark', 'text']);
  });

  it('cuts slits before outlines', () => {
    const kinds = paths(sheet, 'cut').map(({ closed }) => closed);
    expect(kinds.indexOf(true)).toBe(kinds.lastIndexOf(false) + 1);
  });

  it('moves pieces without changing a length', () => {
    for (const { id, sewLines, cutLine } of PIECES) {
      for (const { name, points } of sewLines) {
        expect(lengthOf(pathOf(sheet, `${id}/sew/${name}`).points)).toBeCloseTo(lengthOf(points), 9);
      }
      expect(lengthOf(pathOf(sheet, `${id}/cut`).points, true)).toBeCloseTo(lengthOf(cutLine, true), 9);
    }
  });

  it('names its lines', () => {
    const ids = sheet.layers.flatMap(({ items }) => items.flatMap(({ id }) => id ?? []));
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of [
      'front-right/cut',
      'front-right/sew/A',
      'front-right/level/bust',
      'front-right/notch/A1',
    ]) {
      expect(ids).toContain(id);
    }
  });

  it('draws the bars exactly: 100 mm and 4 in (101.6 mm) both ways, a 100 mm square', () => {
    const box = (id: string): number[] => {
      const { points } = pathOf(sheet, id);
      return [Math.abs(points[2] - points[0]), Math.abs(points[3] - points[1])].map((v) =>
        Number(v.toFixed(9)),
      );
    };
    expect(box('test/bar-100-x')).toEqual([100, 0]);
    expect(box('test/bar-4in-x')).toEqual([101.6, 0]);
    expect(box('test/bar-100-y')).toEqual([0, 100]);
    expect(box('test/bar-4in-y')).toEqual([0, 101.6]);
    expect(lengthOf(pathOf(sheet, 'test/square-100').points, true)).toBeCloseTo(400, 9);
  });

  it('says what size it must come out at', () => {
    const words = sheet.layers[3].items.map((item) => (item.kind === 'text' ? item.text : '')).join('\n');
    expect(words).toContain(`1400.0 × ${sheet.height.toFixed(1)} mm`);
    expect(words).toContain(`${(1400 / 25.4).toFixed(2)} × ${(sheet.height / 25.4).toFixed(2)} in`);
  });

  it('stays short: cut pieces cover most of what the layout spans', () => {
    const area = PIECES.reduce((sum, { cutLine }) => {
      let twice = 0;
      for (let i = 0, j = cutLine.length - 2; i < cutLine.length; j = i, i += 2) {
        twice += cutLine[j] * cutLine[i + 1] - cutLine[i] * cutLine[j + 1];
      }
      return sum + twice / 2;
    }, 0);
    const narrow = arrange(PIECES, { sheetWidth: 620 });
    expect(area / (narrow.width * narrow.height)).toBeGreaterThan(0.5);
  });
});

describe('what cannot be laid out', () => {
  it.each([
    [{ sheetWidth: 100 }, 'sheet-width-out-of-range', 'sheetWidth'],
    [{ sheetWidth: Number.NaN }, 'sheet-width-out-of-range', 'sheetWidth'],
    [{ gap: -1 }, 'gap-out-of-range', 'gap'],
  ])('%o', (options, code, path) => {
    const result = arrangePieces(PIECES, { say: inEnglish, ...options });
    expect(result.ok).toBe(false);
    expect(result.issues[0]).toMatchObject({ code, path });
  });

  it('a piece wider than the sheet, with both numbers', () => {
    const result = arrangePieces(PIECES, { say: inEnglish, sheetWidth: 220, gap: 30 });
    expect(result.ok).toBe(false);
    const [issue] = result.issues;
    expect(issue).toMatchObject({ code: 'piece-wider-than-sheet', path: 'sheetWidth', limit: 160 });
    expect(issue.measured).toBeGreaterThan(160);
    expect(inEnglish(issue.message)).toMatch(/^Piece “/);
  });
});

describe('a plate of 700 × 300 mm for paper 580 mm wide', () => {
  const options = { say: inEnglish, sheetWidth: 580, gap: 5 };

  it('lies on its side where it may be turned, and is refused where its grain must run up the sheet', () => {
    expect(arrangePieces([plate(700, 300)], options).ok).toBe(false);
    const sheet = arrange([plate(700, 300)], { ...options, turnsWide: true });
    const { minX, maxX, minY, maxY } = boundsOfPoints([pathOf(sheet, 'plate/cut').points])!;
    expect(maxX - minX).toBeCloseTo(300, 9);
    expect(maxY - minY).toBeCloseTo(700, 9);
    expect(minX).toBeGreaterThanOrEqual(5 - 1e-9);
    expect(maxX).toBeLessThanOrEqual(575 + 1e-9);
  });

  it('stays upright where it fits, and is refused where it fits neither way', () => {
    const sheet = arrange([plate(300, 700)], { ...options, turnsWide: true });
    const { minX, maxX } = boundsOfPoints([pathOf(sheet, 'plate/cut').points])!;
    expect(maxX - minX).toBeCloseTo(300, 9);
    expect(arrangePieces([plate(700, 600)], { ...options, turnsWide: true }).ok).toBe(false);
  });
});
