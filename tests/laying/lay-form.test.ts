import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Form } from '../../src/core/form/index.ts';
import {
  type LayPlan,
  layAll,
  layPieces,
  layTask,
  type Stock,
  type UseId,
} from '../../src/core/laying/index.ts';
import type { Piece } from '../../src/core/pattern/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';
import { sharedPipeline } from '../shared-pipeline.ts';
import { largestOverlap, outlinesOf, placed } from './judge-plan.ts';

/** mm² of two outlines that only touch: a cut line has no width, its points are rounded to a micrometre. */
const TOUCH = 0.5;
const BUDGET = 60_000;

let form: Form;
let pieces: readonly Piece[];

beforeAll(() => {
  const project = parseProject(readFileSync('shared/demos/average.loftseam.json', 'utf8'));
  if (!project.ok) throw new Error('no demo');
  const made = sharedPipeline.makeForm(project.value, { speaker: ENGLISH, targetTriangles: 4000 });
  if (!made.ok) throw new Error(inEnglish(made.issues[0].message));
  form = made.value;
  pieces = [...form.pieces, ...(form.inside?.pieces ?? [])];
});

function lay(use: UseId, stock: Stock, budget = BUDGET) {
  return layAll(layTask({ ...form, pieces }, use, stock, budget));
}

function planOf(use: UseId, stock: Stock, budget = BUDGET): LayPlan {
  const made = lay(use, stock, budget);
  if (!made.ok) throw new Error(inEnglish(made.issues[0].message));
  return made.value;
}

/** Every piece once, none over another, none outside of the usable cloth. */
function expectSound(plan: LayPlan, own: readonly Piece[]): void {
  expect(plan.placed.map(({ piece }) => piece).toSorted()).toEqual(own.map(({ id }) => id).toSorted());
  expect(largestOverlap(plan, pieces)).toBeLessThan(TOUCH);
  const all = outlinesOf(plan, pieces).flat();
  const { usableFrom, usableWidth } = plan.ground;
  expect(Math.min(...all.map(({ y }) => y))).toBeGreaterThan(usableFrom - 0.01);
  expect(Math.max(...all.map(({ y }) => y))).toBeLessThan(usableFrom + usableWidth + 0.01);
  expect(Math.min(...all.map(({ x }) => x))).toBeGreaterThan(-0.01);
  expect(Math.max(...all.map(({ x }) => x))).toBeLessThan(plan.length + 0.01);
}

describe('the pieces of a form on cloth', () => {
  it('lie apart, inside, with their grain along the cloth', () => {
    for (const use of ['shell', 'webs', 'covers'] as const) {
      const plan = planOf(use, {});
      const own = pieces.filter(({ material }) => material === use);
      expectSound(plan, own);
      for (const { piece, angle } of plan.placed) {
        const [x0, y0, x1, y1] = own.find(({ id }) => id === piece)?.grainLine ?? [];
        const direction = Math.atan2(y1 - y0, x1 - x0) + angle;
        // Along x one way or the other, to 0.1°.
        expect(Math.abs(Math.sin(direction))).toBeLessThan((0.1 * Math.PI) / 180);
      }
    }
  });

  it('point one way where that is asked', () => {
    const plan = planOf('shell', { ways: 'one' });
    for (const { angle } of plan.placed) expect(Math.sin(angle)).toBeCloseTo(-1, 12);
    expectSound(plan, form.pieces);
  });

  it('take no less than their area and their longest piece ask for', () => {
    const plan = planOf('shell', { selvedge: 0 });
    const longest = Math.max(
      ...form.pieces.map(({ cutLine }) => {
        const ys = cutLine.filter((_, i) => i % 2 === 1);
        return Math.max(...ys) - Math.min(...ys);
      }),
    );
    expect(plan.length).toBeGreaterThan(longest - 0.01);
    expect(plan.length * 1140).toBeGreaterThan(plan.area);
    expect(plan.bound).toBeGreaterThan(longest - 0.01);
  });

  it('keep a gap and a tolerance off the grain', () => {
    const plan = planOf('shell', { leastGap: 10, grainTolerance: (3 * Math.PI) / 180 });
    expectSound(plan, form.pieces);
    const outlines = outlinesOf(plan, pieces);
    let nearest = Infinity;
    for (let i = 0; i < outlines.length; i++)
      for (let j = 0; j < i; j++)
        for (const p of outlines[i])
          for (const q of outlines[j]) nearest = Math.min(nearest, Math.hypot(p.x - q.x, p.y - q.y));
    expect(nearest).toBeGreaterThan(9.99);
  });

  it('lie the same for the same budget', () => {
    expect(planOf('shell', {}, 20_000)).toEqual(planOf('shell', {}, 20_000));
  });

  it('can be had before the search ends', () => {
    const search = layPieces(layTask({ ...form, pieces }, 'shell', {}, 10_000_000));
    for (let step = search.next(); !step.done; step = search.next()) {
      if (!step.value.plan) continue;
      expectSound(step.value.plan, form.pieces);
      expect(step.value.share).toBeLessThan(0.5);
      return;
    }
    throw new Error('no plan came before the end');
  });

  it('stay where they are held', () => {
    const before = planOf('shell', {}, 20_000);
    const kept = before.placed[2];
    const placedBefore = [{ ...kept, x: kept.x + 40, isHeld: true }];
    const after = planOf('shell', { placed: placedBefore });
    const found = after.placed.find(({ piece }) => piece === kept.piece);
    expect(found).toMatchObject({ x: kept.x + 40, y: kept.y, angle: kept.angle, isHeld: true });
    expect(largestOverlap(after, pieces)).toBeLessThan(TOUCH);
  });
});

describe('a print', () => {
  /** Where a piece's level line ends on a seam, on the cloth, for both sides of every seam. */
  function pairsAt(level: string, plan: LayPlan): { seam: string; ends: [number, number][] }[] {
    const ends = new Map<string, [number, number][]>();
    for (const laid of plan.placed) {
      const piece = form.pieces.find(({ id }) => id === laid.piece);
      const line = piece?.levelLines.find(({ id }) => id === level)?.points;
      if (!piece || !line) continue;
      for (const [x, y] of [line.subarray(0, 2), line.subarray(-2)]) {
        // The sew line that runs through there, by its nearest point.
        const nearest = piece.sewLines
          .map(({ name, points }) => ({ name, gap: gapTo(points, x, y) }))
          .reduce((a, b) => (b.gap < a.gap ? b : a));
        ends.set(nearest.name, [...(ends.get(nearest.name) ?? []), placed([x, y], laid)]);
      }
    }
    return [...ends].map(([seam, places]) => ({ seam, ends: places }));
  }

  function gapTo(points: Float64Array, x: number, y: number): number {
    let gap = Infinity;
    for (let i = 0; i < points.length; i += 2)
      gap = Math.min(gap, Math.hypot(points[i] - x, points[i + 1] - y));
    return gap;
  }

  const offRepeat = (length: number, repeat: number): number =>
    Math.abs(length - repeat * Math.round(length / repeat));

  it('goes on at the level over every seam to half a millimetre', () => {
    for (const level of ['waist', 'hip'] as const) {
      const plan = planOf('shell', { print: { kind: 'stripesAcross', along: 64, level } });
      const pairs = pairsAt(level, plan).filter(({ ends }) => ends.length === 2);
      expect(pairs.length).toBe(8);
      for (const { ends, seam } of pairs)
        expect(offRepeat(ends[0][0] - ends[1][0], 64), seam).toBeLessThan(0.5);
      expectSound(plan, form.pieces);
    }
  });

  it('with a repeat as long as a panel leaves no piece off the cloth', () => {
    const plan = planOf('shell', { print: { kind: 'photo', along: 640, firstAlong: 100 } });
    expectSound(plan, form.pieces);
    for (const { angle } of plan.placed) expect(Math.sin(angle)).toBeCloseTo(-1, 12);
  });

  it('of checks meets both ways but where the ring closes, and says by how much not', () => {
    const made = lay('shell', { print: { kind: 'checks', along: 40, across: 40 } });
    if (!made.ok) throw new Error('not laid');
    const off = pairsAt('waist', made.value).map(({ seam, ends: [a, b] }) => ({
      seam,
      across: offRepeat(a[1] - b[1], 40),
      along: offRepeat(a[0] - b[0], 40),
    }));
    const apart = off.filter(({ across, along }) => Math.max(across, along) > 0.5);
    expect(apart.length).toBe(1);
    const told = made.issues.filter(({ code }) => code === 'print-does-not-meet');
    expect(told.map(({ message }) => message.values.seam)).toEqual([apart[0].seam]);
    expect(told[0].measured).toBeCloseTo(Math.hypot(apart[0].across, apart[0].along), 6);
  });

  it('has the middle of a motif at the centre front', () => {
    const print = { kind: 'dots', along: 300, across: 200, firstAlong: 30, firstAcross: 50 } as const;
    const plan = planOf('shell', { print: { ...print, shiftUp: 20 } });
    const front = plan.placed.find(({ piece }) => piece === 'centreFrontRight');
    const piece = form.pieces.find(({ id }) => id === 'centreFrontRight');
    const line = piece?.levelLines.find(({ id }) => id === 'waist')?.points;
    if (!front || !line) throw new Error('no centre front');
    // The wearer's right panel lies at smaller x from her own front, so its centre edge is where x is largest.
    const ends = [line.subarray(0, 2), line.subarray(-2)].map(([x, y]): [number, number] => [x, y]);
    const places = ends.map((end) => placed(end, front));
    // A motif, at 30 along and every 300, lies 20 over the point: farther along the cloth, towards the tops.
    const best = Math.min(
      ...places.map(([x, y]) => Math.hypot(offRepeat(x + 20 - 30, 300), offRepeat(y - 50, 200))),
    );
    expect(best).toBeLessThan(1);
  });
});

describe('cloth that will not do', () => {
  it('is told with the width that would', () => {
    const made = lay('webs', { stockWidth: 250, ways: 'one' });
    expect(made.ok).toBe(false);
    const [issue] = made.issues;
    expect(issue.code).toBe('stock-too-narrow');
    expect(issue.path).toBe('webs.stockWidth');
    const widest = Math.max(
      ...pieces
        .filter(({ material }) => material === 'webs')
        .map(({ cutLine }) => {
          const xs = cutLine.filter((_, i) => i % 2 === 0);
          return Math.max(...xs) - Math.min(...xs);
        }),
    );
    expect(issue.limit).toBeCloseTo(widest + 2 * 10, 6);
  });

  it('is told when it has no room, with the pieces and the least they take', () => {
    const outline = [
      [0, 0],
      [450, 0],
      [450, 420],
      [0, 420],
    ] as const;
    const made = lay('covers', { pieces: [{ outline }] });
    if (!made.ok) throw new Error('not laid');
    const { left, placed: laid } = made.value;
    const own = pieces.filter(({ material }) => material === 'covers');
    expect(laid.length + left.length).toBe(own.length);
    expect(left.length).toBeGreaterThan(0);
    const told = made.issues.find(({ code }) => code === 'no-room');
    expect(told?.message.values.pieces).toHaveLength(left.length);
    expect(largestOverlap(made.value, pieces)).toBeLessThan(TOUCH);
  });

  it('is told when none of it holds a piece, with the room that one takes', () => {
    const outline = [
      [0, 0],
      [300, 0],
      [300, 300],
    ] as const;
    const made = lay('covers', { pieces: [{ outline }] });
    expect(made.ok).toBe(false);
    expect(made.issues.map(({ code }) => code)).toEqual(['item-too-large']);
    expect(inEnglish(made.issues[0].message)).toMatch(/base plate cover.*26\.\d cm.*38\.\d cm/);
  });

  it('is told when its outline crosses itself', () => {
    const bow = [
      [0, 0],
      [900, 900],
      [900, 0],
      [0, 900],
    ] as const;
    const made = lay('covers', { pieces: [{ outline: bow }] });
    expect(made.issues.map(({ code }) => code)).toEqual(['stock-crosses-itself']);
    expect(made.ok).toBe(false);
  });
});
