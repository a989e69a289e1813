import { describe, expect, it } from 'vitest';
import { isMarkOf, isTapeLit, markId } from '../../src/app/store/index.ts';

describe('what is lit', () => {
  it('lights both sides of a tape by its name, one side only by its own', () => {
    const both = { kind: 'tape', id: 'shoulderLength' } as const;
    const left = { kind: 'tape', id: 'shoulderLength.left' } as const;
    expect(isTapeLit(both, 'shoulderLength.left')).toBe(true);
    expect(isTapeLit(left, 'shoulderLength')).toBe(true);
    expect(isTapeLit(left, 'shoulderLength.right')).toBe(false);
    expect(isTapeLit(left, 'shoulderDrop')).toBe(false);
    expect(isTapeLit({ kind: 'seam', id: 'shoulderLength' }, 'shoulderLength')).toBe(false);
  });

  it('knows the seam of a mark, and not a seam whose name only begins alike', () => {
    const mark = { kind: 'mark', id: markId('side', 3) } as const;
    expect(isMarkOf(mark, 'side')).toBe(true);
    expect(isMarkOf(mark, 'sid')).toBe(false);
    expect(isMarkOf(mark, 'sideFront')).toBe(false);
  });
});
