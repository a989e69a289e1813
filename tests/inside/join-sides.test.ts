import { describe, expect, it } from 'vitest';
import { type Issue, type Phrase, verbatim } from '../../src/core/base/index.ts';
import { joinSides } from '../../src/core/inside/join-sides.ts';
import { phrase } from '../../src/core/inside/phrases.ts';
import { inEnglish } from '../in-english.ts';

const issue = (message: Phrase): Issue => ({ code: 'peg-near-cut', path: '', message, severity: 'error' });
const peg = (side: 'right' | 'left', toEdge: number): Issue => {
  return issue(phrase('inside.peg-near-edge', { side, peg: 12, toEdge, least: 8, most: 10 }));
};

describe('issues of both sides', () => {
  it('are told once where they say the same, as far as it is told (a tenth of a millimetre)', () => {
    const joined = joinSides([peg('right', 5.8), peg('left', 5.8 + 1e-9)]);
    expect(joined).toHaveLength(1);
    expect(inEnglish(joined[0].message)).toMatch(
      /^The peg of the right and left arm, 1\.2 cm \(1\/2 in\), leaves 0\.58 cm /,
    );
  });

  it('stay two where they differ', () => {
    expect(joinSides([peg('right', 5.8), peg('left', 4.2)])).toHaveLength(2);
    expect(joinSides([peg('right', 5.8), { ...peg('left', 5.8), code: 'other' }])).toHaveLength(2);
  });

  it('stay as they are without a side, or with another remedy', () => {
    const web = (side: 'right' | 'left', remedy: string): Issue => {
      return issue(phrase('inside.webs-near-pole', { side, nearest: 9, room: 17, remedy: verbatim(remedy) }));
    };
    expect(joinSides([web('right', 'a'), web('left', 'b')])).toHaveLength(2);
    expect(joinSides([web('right', 'a'), web('left', 'a')])).toHaveLength(1);
    const one = issue(phrase('test-tube.growth-twice', { growth: 0.01 }));
    expect(joinSides([one, one])).toEqual([one, one]);
  });

  it('are told of plates too', () => {
    const gone = (side: 'right' | 'left'): Issue => {
      return issue(phrase('inside.plate-vanishes', { plate: 'wrist', side, layers: 3, cloth: 9, most: 4.1 }));
    };
    const [both, ...rest] = joinSides([gone('right'), gone('left')]);
    expect(rest).toEqual([]);
    expect(inEnglish(both.message)).toMatch(
      /^Nothing would be left of the right and left wrist plate: 3 layers/,
    );
  });
});
