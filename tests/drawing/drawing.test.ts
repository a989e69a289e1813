import { describe, expect, it } from 'vitest';
import {
  boundsOfDrawing,
  boundsOfItems,
  cornersOfText,
  makeLayer,
  makePath,
  makeRectangle,
  makeText,
  measureText,
  pageFromUpright,
  translateItem,
} from '../../src/core/drawing/index.ts';

describe('bounds', () => {
  it('spans paths on all layers', () => {
    const drawing = {
      width: 500,
      height: 500,
      title: '',
      layers: [
        makeLayer('cut', [makeRectangle(10, 20, 100, 50)]),
        makeLayer('mark', [makePath([-5, 30, 20, 90])]),
      ],
    };
    expect(boundsOfDrawing(drawing)).toEqual({ minX: -5, minY: 20, maxX: 110, maxY: 90 });
  });

  it('is null for nothing', () => {
    expect(boundsOfItems([])).toBeNull();
    expect(boundsOfItems([makePath([])])).toBeNull();
  });

  it('counts text turned by a quarter', () => {
    const bounds = boundsOfItems([makeText(100, 100, 'MMMM', 10, { angle: Math.PI / 2 })]);
    // A quarter turn clockwise on the page: the line runs down from its start, its top is to the right.
    expect(bounds?.minY).toBeCloseTo(100, 9);
    expect(bounds!.maxY - bounds!.minY).toBeCloseTo(measureText('MMMM', 10), 9);
    expect(bounds!.maxX).toBeGreaterThan(bounds!.minX);
    expect(bounds!.maxX - 100).toBeGreaterThan(100 - bounds!.minX);
  });
});

describe('text', () => {
  // Advance widths of Helvetica, thousandths of an em: Adobe Core 14 font metrics (AFM), from memory.
  const HELVETICA = {
    ...{ '0': 556, A: 667, M: 833, W: 944, a: 556, i: 222, m: 833, ' ': 278 },
    ...{ ä: 556, ö: 556, ü: 556, Ä: 667, Ö: 778, Ü: 722, ß: 611 },
    ...{ é: 556, è: 556, à: 556, ç: 500, ù: 556, œ: 944, '«': 556, '»': 556, '\u00a0': 278 },
    ...{ É: 667, À: 667, Ç: 722, Ô: 778, Œ: 1000 },
  };

  it.each(Object.entries(HELVETICA))(
    'bounds the width of "%s" from above, not by far',
    (character, advance) => {
      const width = measureText(character.repeat(10), 4) / 10;
      expect(width).toBeGreaterThanOrEqual((advance / 1000) * 4 - 1e-9);
      expect(width).toBeLessThanOrEqual((advance / 1000) * 4 * 1.3);
    },
  );

  it('moves the box with the anchor', () => {
    const width = measureText('hem', 5);
    expect(cornersOfText(makeText(50, 10, 'hem', 5))[0]).toBe(50);
    expect(cornersOfText(makeText(50, 10, 'hem', 5, { anchor: 'middle' }))[0]).toBeCloseTo(
      50 - width / 2,
      12,
    );
    expect(cornersOfText(makeText(50, 10, 'hem', 5, { anchor: 'end' }))[0]).toBeCloseTo(50 - width, 12);
  });
});

describe('moving', () => {
  it('translates copies', () => {
    const path = makePath([1, 2, 3, 4], { id: 'a' });
    expect([...translateItem(path, 10, -2).points]).toEqual([11, 0, 13, 2]);
    expect([...path.points]).toEqual([1, 2, 3, 4]);
    expect(translateItem(makeText(1, 2, 'x', 3), 5, 6)).toMatchObject({ x: 6, y: 8 });
  });

  it('turns y over about the given origin', () => {
    expect([...pageFromUpright(Float64Array.of(0, 0, 3, 5), 10, 20)]).toEqual([10, 20, 13, 15]);
  });
});
