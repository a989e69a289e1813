import { describe, expect, it } from 'vitest';
import { verbatim } from '../../src/core/base/index.ts';
import { checkOpenings } from '../../src/core/inside/check-openings.ts';
import type { DesignedBrace } from '../../src/core/inside/index.ts';
import { type Passage, placeOpenings } from '../../src/core/inside/web-openings.ts';
import { inEnglish } from '../in-english.ts';

/** An upright web of the given width and height, a rung every 10 mm, levels named at some heights. */
function webOf(width: number, height: number, levels: Readonly<Record<string, number>>) {
  const heights = Array.from({ length: height / 10 + 1 }, (_, k) => 10 * k);
  const line = { id: 'line', name: verbatim('line'), side: 'right', half: 'front', seams: [] } as const;
  const brace: DesignedBrace = {
    id: 'web-right',
    name: verbatim('right web'),
    nameOnSleeve: verbatim('right web'),
    kind: 'web',
    side: 'right',
    from: line,
    to: line,
    rungs: heights.map((y) => {
      const levelId = Object.keys(levels).find((id) => levels[id] === y);
      const [from, to] = [
        [0, 0, y],
        [0, width, y],
      ] as [[number, number, number], [number, number, number]];
      return { v: y, z: y, from, to, length: width, ...(levelId === undefined ? {} : { levelId }) };
    }),
  };
  const strip = {
    left: Float64Array.from(heights.flatMap((y) => [0, y])),
    right: Float64Array.from(heights.flatMap((y) => [width, y])),
  };
  const open = (...passages: readonly Passage[]) => {
    const openings = placeOpenings(brace, strip, passages);
    return { openings, issues: checkOpenings(brace, strip, openings) };
  };
  return { open };
}

const at = (levelId: string, share: number): Passage => ({ levelId, from: share, to: share });
const boxOf = (points: Float64Array) => {
  const [xs, ys] = [0, 1].map((axis) => points.filter((_, i) => i % 2 === axis));
  return [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)].map((x) => Math.round(x));
};

// A slot has 12 mm beside its strap and 32 mm over and under it; two with less than 18 mm between become one (our own).
describe('slots where straps pass a web', () => {
  it('stay apart with 18 mm of cloth between, and become one with less', () => {
    // 200 mm wide: straps at 60 and 102 mm have slots 48–72 and 90–114, 18 mm between.
    const apart = webOf(200, 400, { bust: 200 }).open(at('bust', 0.3), at('bust', 0.51));
    const slots = apart.openings.filter(({ passage }) => passage);
    expect(slots.map(({ outline }) => boxOf(outline))).toEqual([
      [48, 72, 168, 232],
      [90, 114, 168, 232],
    ]);
    // At 60 and 84 mm one slot from 48 to 96.
    const one = webOf(200, 400, { bust: 200 }).open(at('bust', 0.3), at('bust', 0.42));
    const merged = one.openings.filter(({ passage }) => passage);
    expect(merged.map(({ outline }) => boxOf(outline))).toEqual([[48, 96, 168, 232]]);
    expect([...apart.issues, ...one.issues]).toEqual([]);
  });

  it('become one all three when the last lies between two that were apart', () => {
    const { openings } = webOf(200, 400, { bust: 200 }).open(
      at('bust', 0.2),
      at('bust', 0.5),
      at('bust', 0.35),
    );
    const slots = openings.filter(({ passage }) => passage);
    expect(slots.map(({ outline }) => boxOf(outline))).toEqual([[28, 112, 168, 232]]);
  });

  it('are named with the cloth that is left when they come too near the edge', () => {
    // A strap 20 mm from the edge of a web 200 mm wide: 20 − 12 = 8 mm are left.
    const near = webOf(200, 400, { bust: 200 }).open(at('bust', 0.1)).issues;
    expect(near).toHaveLength(1);
    expect(near[0]).toMatchObject({
      code: 'web-cut-through',
      path: 'straps',
      severity: 'warning',
      limit: 10,
    });
    expect(near[0].measured).toBeCloseTo(8, 1);
    expect(inEnglish(near[0].message)).toMatch(
      /^Only 0\.8 cm \(5\/16 in\) of cloth .* right web; 1 cm are needed\. Back this web/,
    );
    // Two that share a slot, 10 and 44 mm from the edge: it would begin 2 mm outside.
    const through = webOf(200, 400, { bust: 200 }).open(at('bust', 0.05), at('bust', 0.22)).issues;
    expect(through[0]).toMatchObject({ severity: 'error' });
    expect(through[0].measured).toBeCloseTo(-2, 1);
    expect(inEnglish(through[0].message)).toMatch(/^No cloth is left between the slot several straps share/);
  });

  it('are named when they open a short web over too much of its height: 2 × 64 of 200 mm are 64 %', () => {
    const { issues } = webOf(200, 200, { waist: 60, bust: 140 }).open(at('waist', 0.5), at('bust', 0.5));
    const open = issues.find(({ message }) => inEnglish(message).includes('of its height'));
    expect(open).toMatchObject({ code: 'web-cut-through', limit: 0.6 });
    expect(open!.measured).toBeCloseTo(0.64, 9);
    expect(inEnglish(open!.message)).toContain('open over 64 % of its height; 60 % is the most');
  });
});

it('openings for fill leave a web two fifths of its height', () => {
  // Stretches of 80 mm ask for an opening of 54 mm each: 67.5 % of 400 mm; 240 mm are cut instead of 270.
  const { openings, issues } = webOf(200, 400, { hip: 80, highHip: 160, waist: 240, bust: 320 }).open();
  const heights = openings.map(({ outline }) => boxOf(outline)).map(([, , low, high]) => high - low);
  expect(heights).toEqual([48, 48, 48, 48, 48]);
  expect(issues).toEqual([]);
});
