import { describe, expect, it } from 'vitest';
import { draftPiece, type PieceInput } from '../../src/core/pattern/index.ts';
import { inEnglish } from '../in-english.ts';
import { curve, edge, LABEL, piece, straight } from './synthetic-panels.ts';

/** A block 200 mm wide whose top edge is an arc of a circle of radius R over a chord of 120 mm: hollow or domed. */
function block(
  radius: number,
  isHollow: boolean,
  bodyHalf: 'front' | 'back' | 'centre-back' = 'front',
): PieceInput {
  const half = Math.asin(60 / radius);
  const sign = isHollow ? -1 : 1;
  const base = 200 - sign * radius * Math.cos(half);
  const arc = curve((t) => {
    const angle = half - 2 * half * t;
    return [radius * Math.sin(angle), base + sign * radius * Math.cos(angle)];
  }, 40);
  const marks = [{ kind: 'balance' as const, index: 20, number: 1 }];
  return piece('block', 'Block', [
    edge(
      'bottom',
      '',
      straight([
        [-100, 0],
        [100, 0],
      ]),
    ),
    edge(
      'right',
      'R',
      straight([
        [100, 0],
        [100, 200],
      ]),
    ),
    edge(
      'step',
      'S',
      straight([
        [100, 200],
        [60, 200],
      ]),
    ),
    { ...edge('top', 'T', arc, marks), bodyHalf },
    edge(
      'pets',
      'P',
      straight([
        [-60, 200],
        [-100, 200],
      ]),
    ),
    edge(
      'left',
      'L',
      straight([
        [-100, 200],
        [-100, 0],
      ]),
    ),
  ]);
}

function draft(input: PieceInput, allowance: number) {
  const made = draftPiece(input, LABEL, { allowance });
  if (!made.ok) throw new Error(inEnglish(made.issues[0].message));
  return made.value;
}

describe('clips', () => {
  it('stand where the allowance would have to stretch by more than 5 %: allowance ÷ radius, on hollow edges alone', () => {
    // 10/150 = 6.7 %, 10/250 = 4 %, 15/250 = 6 %.
    expect(draft(block(150, true), 10).clips?.length).toBeGreaterThan(3);
    expect(draft(block(250, true), 10).clips).toBeUndefined();
    expect(draft(block(250, true), 15).clips?.length).toBeGreaterThan(3);
    expect(draft(block(150, false), 10).clips).toBeUndefined();
  });

  it('end 4 mm short of the stitches, run to the cut edge and point at the circle’s centre', () => {
    const radius = 150;
    const { clips = [] } = draft(block(radius, true), 10);
    const centre = 200 + radius * Math.cos(Math.asin(60 / radius));
    for (const { points } of clips) {
      const [inner, outer] = [0, 2].map((i) => radius - Math.hypot(points[i], points[i + 1] - centre));
      expect(inner).toBeCloseTo(4, 1);
      expect(outer).toBeCloseTo(10, 1);
      expect(Math.hypot(points[2] - points[0], points[3] - points[1])).toBeCloseTo(6, 6);
    }
  });

  it('keep off notches, and are left out where the allowance is too narrow to clip', () => {
    const made = draft(block(150, true), 10);
    const [{ points: slit }] = made.notches;
    for (const { points } of made.clips ?? []) expect(Math.abs(points[2] - slit[0])).toBeGreaterThan(6);
    expect(draft(block(60.5, true), 6).clips).toBeUndefined();
  });
});

it('tells front, back and centre back by one, two and three slits', () => {
  const counts = (['front', 'back', 'centre-back'] as const).map(
    (half) => draft(block(250, true, half), 10).notches.length,
  );
  expect(counts).toEqual([1, 2, 3]);
});

it('prints the revision on the label', () => {
  const made = draftPiece(block(250, true), { ...LABEL, revision: '7K3ZQ0' });
  if (!made.ok) throw new Error(inEnglish(made.issues[0].message));
  expect(made.value.texts.some(({ text }) => text.includes('rev 7K3ZQ0'))).toBe(true);
});
