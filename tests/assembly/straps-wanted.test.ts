import { describe, expect, it } from 'vitest';
import { doesHold, levelForStraps } from '../../src/core/assembly/index.ts';
import type { FilledMeasures } from '../../src/core/filled/index.ts';

const size = { girth: 800, width: 280, depth: 220 };
const name = { id: 'verbatim', values: { text: 'level' } };

/** A filled form whose levels are so much wider than asked, mm. */
function measures(widths: Record<string, number>, rms = 2, within = 0.995, girth = 2.5): FilledMeasures {
  const place = { distance: 0, where: 'centre front', at: [0, 0, 0] } as const;
  return {
    levels: Object.entries(widths).map(([id, wide]) => ({
      id,
      name,
      asked: size,
      found: { girth: size.girth + girth, width: size.width + wide, depth: size.depth },
      worst: place,
    })),
    distance: { rms, within, worst: place, ofPoints: new Float64Array() },
    throat: place,
    pulls: [],
    seams: [],
    boards: [],
  };
}

// Limits of the tape: girth −0/+5, width and depth 3, read to half a millimetre (common practice, no source); 3 mm rms, 99 % (ours).
describe('whether the fewest parts hold', () => {
  it('asks girths, widths, the whole and the share of the area', () => {
    expect(doesHold(measures({ hip: 0, underbust: 3 }))).toBe(true);
    expect(doesHold(measures({ hip: 0, underbust: 4 }))).toBe(false);
    expect(doesHold(measures({ hip: -4, underbust: 0 }))).toBe(false);
    expect(doesHold(measures({ hip: 0 }, 3.1))).toBe(false);
    expect(doesHold(measures({ hip: 0 }, 2, 0.989))).toBe(false);
    expect(doesHold(measures({ hip: 0 }, 2, 0.995, -1))).toBe(false);
    expect(doesHold(measures({ hip: 0 }, 2, 0.995, 6))).toBe(false);
  });

  it('names the level farthest off that has no straps and may have some', () => {
    const off = measures({ hip: 1, waist: -2, underbust: 5, bust: 9, upperChest: 12 });
    const braces = [{ id: 'strap-bust-right' }] as never;
    expect(levelForStraps(off, { braces }, () => true)).toBe('underbust');
    expect(levelForStraps(off, { braces }, (id) => id !== 'underbust')).toBe('waist');
    expect(levelForStraps(off, { braces }, () => false)).toBeUndefined();
  });
});
