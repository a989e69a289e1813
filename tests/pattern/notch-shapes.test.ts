import { describe, expect, it } from 'vitest';
import { draftPiece, NOTCH_SHAPES, type Piece } from '../../src/core/pattern/index.ts';
import { inEnglish } from '../in-english.ts';
import { LABEL, samplePanels } from './synthetic-panels.ts';

const INPUTS = samplePanels();

function draft(options: Parameters<typeof draftPiece>[2]): Piece[] {
  return INPUTS.map((input) => {
    const piece = draftPiece(input, LABEL, options);
    if (!piece.ok)
      throw new Error(
        piece.issues
          .map(({ message }) => message)
          .map(inEnglish)
          .join(),
      );
    return piece.value;
  });
}

/** Least distance from a point to a closed ring, by brute force. */
function distanceTo(ring: Float64Array, x: number, y: number): number {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < ring.length; i += 2) {
    const j = (i + 2) % ring.length;
    const [ex, ey] = [ring[j] - ring[i], ring[j + 1] - ring[i + 1]];
    const t = Math.min(
      1,
      Math.max(0, ((x - ring[i]) * ex + (y - ring[i + 1]) * ey) / (ex * ex + ey * ey || 1)),
    );
    best = Math.min(best, Math.hypot(ring[i] + t * ex - x, ring[i + 1] + t * ey - y));
  }
  return best;
}

/** Twice the signed area by the shoelace formula. */
function area(ring: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < ring.length; i += 2) {
    const j = (i + 2) % ring.length;
    sum += ring[i] * ring[j + 1] - ring[j] * ring[i + 1];
  }
  return sum / 2;
}

const slits = draft({});

describe('notch shapes', () => {
  it('are three', () => expect([...NOTCH_SHAPES]).toEqual(['slit', 't', 'outward']));

  it('T: every slit has a bar across its inner end, none deeper than a third of the allowance', () => {
    for (const allowance of [6, 10, 15]) {
      for (const [i, piece] of draft({ allowance, notchShape: 't' }).entries()) {
        const plain = slits[i].notches.length;
        expect(piece.notches.length).toBe(2 * plain);
        for (const { id, points } of piece.notches) {
          for (let k = 0; k < points.length; k += 2)
            expect(distanceTo(piece.cutLine, points[k], points[k + 1]), id).toBeLessThan(
              allowance / 3 + 0.15,
            );
          if (!id.endsWith('/bar')) continue;
          const stem = piece.notches.find((other) => `${other.id}/bar` === id)!.points;
          const middle = [(points[0] + points[2]) / 2, (points[1] + points[3]) / 2];
          expect(Math.hypot(middle[0] - stem[2], middle[1] - stem[3])).toBeLessThan(1e-9);
          const dot =
            (points[2] - points[0]) * (stem[2] - stem[0]) + (points[3] - points[1]) * (stem[3] - stem[1]);
          expect(Math.abs(dot)).toBeLessThan(1e-9);
        }
      }
    }
  });

  it('outward: as many points as there were slits, each adding a triangle of 6 by 4 mm; nothing is cut in', () => {
    let points = 0;
    for (const [i, piece] of draft({ notchShape: 'outward' }).entries()) {
      expect(piece.notches).toEqual([]);
      const count = slits[i].notches.length;
      const added = area(piece.cutLine) - area(slits[i].cutLine);
      // Base × height ÷ 2; a base on a curve is a little off.
      expect(Math.abs(added - count * 12)).toBeLessThan(0.5 * Math.max(1, count));
      points += count;
      // Never inside the plain cut line, and out of it by 4 mm exactly where a slit would start.
      for (const { points: slit } of slits[i].notches.filter(({ id }) => !id.includes('/')))
        expect(distanceTo(piece.cutLine, slit[0], slit[1])).toBeGreaterThan(1);
    }
    expect(points).toBeGreaterThan(20);
  });
});

describe('allowances by kind and material', () => {
  const widest = (piece: Piece, sew: Float64Array): number => {
    const middle = 2 * ((sew.length / 2) >> 1);
    return distanceTo(piece.cutLine, sew[middle], sew[middle + 1]);
  };
  it('take the most particular wish: edge, kind, material, all', () => {
    const [input] = INPUTS;
    const [first, second] = input.edges.map(({ id }) => id);
    const options = {
      allowance: 8,
      allowanceByMaterial: { [input.material]: 9 },
      allowanceByKind: { seam: 11 },
      allowanceByEdge: { [first]: 14 },
    };
    const pieceOf = (wishes: Parameters<typeof draftPiece>[2]): Piece => {
      const piece = draftPiece(input, LABEL, wishes);
      if (!piece.ok) throw new Error(first);
      return piece.value;
    };
    const sewOf = (id: string) => input.edges.find((edge) => edge.id === id)!.points;
    expect(widest(pieceOf(options), sewOf(first))).toBeCloseTo(14, 2);
    expect(widest(pieceOf(options), sewOf(second))).toBeCloseTo(11, 2);
    const { allowanceByKind: _kind, ...byMaterial } = options;
    expect(widest(pieceOf(byMaterial), sewOf(second))).toBeCloseTo(9, 2);
    expect(widest(pieceOf({ allowance: 8 }), sewOf(second))).toBeCloseTo(8, 2);
  });

  it('name their own field when they cannot be used', () => {
    const [input] = INPUTS;
    for (const [wish, path] of [
      [{ allowanceByKind: { seam: 1 } }, 'allowanceByKind.seam'],
      [{ allowanceByMaterial: { [input.material]: 200 } }, `allowanceByMaterial.${input.material}`],
    ] as const) {
      const piece = draftPiece(input, LABEL, wish);
      expect(piece.ok).toBe(false);
      expect(piece.issues.map((issue) => issue.path)).toContain(path);
    }
  });
});
