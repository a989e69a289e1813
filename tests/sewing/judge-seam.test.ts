import { describe, expect, it } from 'vitest';
import {
  type Foot,
  type LevelRing,
  type WorkBrace,
  type WorkInput,
  wayOfSeam,
  wayOut,
  wayToFreeEdge,
} from '../../src/core/sewing/index.ts';

/**
 * A round shell of radius 100 mm, seams at the centre back (0°), right side (90°), centre front (180°) and left side (270°); two webs
 * from 25° to 155° and from 335° to 205°; a sleeve of 80 mm laid flat with ties of 60 mm to front and back. All figures
 * below are circles and chords worked out by hand, not by the code.
 */
const R = 100;
const foot = (degrees: number): Foot => {
  const a = (degrees * Math.PI) / 180;
  return { at: R * a, x: R * Math.sin(a), y: -R * Math.cos(a) };
};
/** A chord over 130°: 2 R sin 65°. */
const CHORD = 181.262;

const ring: LevelRing = {
  id: 'waist',
  girth: 2 * Math.PI * R,
  seams: { back: foot(0), right: foot(90), front: foot(180), left: foot(270) },
  feet: {
    'web-right/front': foot(155),
    'web-right/back': foot(25),
    'web-left/front': foot(205),
    'web-left/back': foot(335),
    'tie-front/shell': foot(180),
    'tie-back/shell': foot(0),
  },
  widths: { 'web-right': CHORD, 'web-left': CHORD, 'tie-front': 60, 'tie-back': 60, sleeve: 80 },
};

const web = (side: 'right' | 'left'): WorkBrace => ({
  id: `web-${side}`,
  kind: 'web',
  side,
  from: [`web-${side}/front`],
  to: [`web-${side}/back`],
  isOnSleeve: false,
});
const tie = (half: 'front' | 'back'): WorkBrace => ({
  id: `tie-${half}`,
  kind: 'tie',
  side: 'centre',
  from: [`tie-${half}/shell`],
  to: [`tie-${half}/sleeve`],
  isOnSleeve: true,
});

const input: WorkInput = {
  cloth: 0.6,
  pieces: [],
  rings: [ring],
  joints: [],
  braces: [web('right'), web('left'), tie('front'), tie('back')],
  gates: {},
  solids: [],
  regions: [],
};

const webs = ['web-right/front', 'web-right/back', 'web-left/front', 'web-left/back'];
const spine = ['tie-front/shell', 'tie-front/sleeve', 'tie-back/sleeve'];
const joined = (...ids: string[]) => {
  const set = new Set(ids);
  return (id: string) => set.has(id);
};

describe('the way of a seam', () => {
  it('is plain while front and back do not hang together', () => {
    expect(wayOfSeam(input, 'front', joined(...spine)).kind).toBe('plain');
    expect(wayOfSeam(input, 'right', joined('front', 'web-right/front', ...spine)).kind).toBe('plain');
  });

  it('is plain where the ring it closes is empty, or holds what hangs at one end', () => {
    expect(wayOfSeam(input, 'left', joined('front', 'back', 'right')).kind).toBe('plain');
    expect(wayOfSeam(input, 'back', joined('front', 'right', 'left', ...spine)).kind).toBe('plain');
  });

  it('is packed behind, into the tube of front, webs and backs, sides alone in the roll', () => {
    // Round the tube: 2 × 25° at the back, 2 × 25° in front, two chords: 174.53 + 362.52.
    // Rolled: twice 130° of the circle, 453.79 mm of cloth, three times as thick as 0.6: 2 √(π · 816.8).
    const way = wayOfSeam(input, 'back', joined('front', 'right', 'left', ...webs, ...spine));
    expect(way.kind).toBe('packed');
    if (way.kind !== 'packed') return;
    expect(way.mouth).toBeCloseTo(537.06, 1);
    expect(way.pack).toBeCloseTo(101.31, 1);
  });

  it('is packed at a side that a web closes, everything else in the roll', () => {
    // Round the cell: 130° and a chord, 226.89 + 181.26. Rolled: the rest of the ring, 401.43, the other web, sleeve and
    // both ties, 381.26: 782.69 mm of cloth, 2 √(π · 1408.8).
    const way = wayOfSeam(input, 'right', joined('front', 'back', ...webs, ...spine));
    expect(way.kind).toBe('packed');
    if (way.kind !== 'packed') return;
    expect(way.mouth).toBeCloseTo(408.16, 1);
    expect(way.pack).toBeCloseTo(133.06, 1);
  });

  it('leads out through half the tube once both ties hold', () => {
    // Half of 537.06 and the spine, 60 + 40 + 60; rolled: twice 130°, and the other half, 87.27 and a web.
    const all = joined('front', 'back', 'right', 'left', ...webs, ...spine, 'tie-back/shell');
    const way = wayOut(input, ['back'], all);
    expect(way.kind).toBe('packed');
    if (way.kind !== 'packed') return;
    expect(way.mouth).toBeCloseTo(428.53, 1);
    expect(way.pack).toBeCloseTo(2 * Math.sqrt(Math.PI * 1.8 * (453.79 + 87.27 + 181.26)), 1);
  });
});

describe('the way to a free edge', () => {
  it('runs along the cloth, and ends at a web that is held at both ends', () => {
    const open = joined('front', 'right', 'left');
    // 25° of 100 mm.
    expect(wayToFreeEdge(input, 'web-right/back', open)).toBeCloseTo(43.63, 1);
    // Nothing open but the left side, and the left web in between, held: no way round on either side.
    const shut = joined('front', 'back', 'right', 'left', ...webs);
    expect(wayToFreeEdge(input, 'web-right/back', shut)).toBe(Infinity);
    const beyond = joined('front', 'back', 'right', 'web-left/front', 'web-left/back', 'web-right/front');
    expect(wayToFreeEdge(input, 'tie-front/shell', beyond)).toBe(Infinity);
  });
});
