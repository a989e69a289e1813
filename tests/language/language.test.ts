import { describe, expect, it } from 'vitest';
import { words as english } from '../../src/language/english/app.ts';
import { words as german } from '../../src/language/german/app.ts';

type Called = { readonly path: string; readonly english: string; readonly german: string };

/** Words of both languages side by side; functions are called with each of `values` for their parameters. */
function pairs(a: unknown, b: unknown, values: readonly unknown[], path = ''): Called[] {
  if (typeof a === 'string') return [{ path, english: a, german: String(b) }];
  if (typeof a === 'function' && typeof b === 'function') {
    const said = (f: typeof a) => {
      try {
        return String(f(...values.slice(0, f.length)));
      } catch {
        // Takes names, not numbers.
        return '';
      }
    };
    return [{ path, english: said(a), german: said(b) }];
  }
  return Object.entries(a as object).flatMap(([key, value]) =>
    pairs(value, (b as Record<string, unknown>)[key], values, path === '' ? key : `${path}.${key}`),
  );
}

// What the core says is judged by itself; a list of lengths is no plain value.
const plain = ({ core: _, ...words }: typeof english) => ({
  ...words,
  making: { ...words.making, range: 'a to b' },
});
const [mine, theirs] = [plain(english), { ...plain(german) }];
const MARKS = ['‹a›', '‹b›', '‹c›', '‹d›'];

/** Said alike in both languages: words both share, and order of parts only. */
const ALIKE = [
  'bench.choice',
  'inside.ballast',
  'inside.parts.named',
  'laying.cloth.degrees',
  'laying.print.atLevel',
  'making.pageKinds.a5',
  'making.range',
  'ownLines.joint',
  'walk.pause',
];

describe('the German words', () => {
  const keysOf = (words: object, path = ''): string[] =>
    Object.entries(words).flatMap(([key, value]) =>
      typeof value === 'object' ? keysOf(value, `${path}.${key}`) : [`${path}.${key}`],
    );

  it('are as many as the English ones', () => {
    expect(keysOf(german).sort()).toEqual(keysOf(english).sort());
    expect(pairs(mine, theirs, MARKS).length).toBeGreaterThan(450);
  });

  it('differ from the English ones but for a few', () => {
    const same = pairs(mine, theirs, MARKS).filter((pair) => pair.english === pair.german);
    expect(same.map(({ path }) => path).sort()).toEqual(ALIKE);
  });

  it('hold what they are given, as the English ones do', () => {
    const marksIn = (text: string) => MARKS.filter((mark) => text.includes(mark));
    for (const { path, english: a, german: b } of pairs(mine, theirs, MARKS)) {
      expect(marksIn(b), path).toEqual(marksIn(a));
    }
  });

  it('tell one from several', () => {
    const one = pairs(mine, theirs, [1, 9, 9, 9]);
    const several = pairs(mine, theirs, [5, 9, 9, 9]);
    const changing = one.filter(({ english: text }, i) => text.replace('1', '5') !== several[i]?.english);
    expect(changing.length).toBeGreaterThan(2);
    for (const { path, german: text } of changing) {
      const other = several.find((pair) => pair.path === path)?.german;
      // “Passzeichen” is the same for one and several.
      if (path !== 'making.marks') expect(text.replace('1', '5'), path).not.toBe(other);
    }
  });
});
