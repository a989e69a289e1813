/** Lines are named in files by words that are keys: files of every age must be said as they were, and in other languages. */
import { describe, expect, it } from 'vitest';
import { verbatim } from '../../src/core/base/index.ts';
import {
  cutIntoPanels,
  findLayout,
  keyOfLevelLine,
  keyOfOwnLine,
  LAYOUTS,
  nameOfLine,
  nameWithoutSide,
  splitPanel,
} from '../../src/core/seams/index.ts';
import { catalogue as germanCore } from '../../src/language/german/core.ts';
import { createSpeaker } from '../../src/language/index.ts';
import { inEnglish } from '../in-english.ts';
import { torso } from './sample-forms.ts';

const inGerman = createSpeaker(germanCore);

describe('the name of a line', () => {
  // Words of files written before lines had other languages.
  const known = [
    'centre front',
    'centre back',
    'side',
    'shoulder',
    'neck base',
    'princess front',
    'princess back',
    'outer front',
    'outer back',
    'inner front',
    'inner back',
    'back yoke',
    'bust level',
    'lower chest level, front only',
    'high hip level',
    'own line 12',
    'middle of side front',
    'middle of middle front',
    'middle of lower middle back 2',
    'middle of middle 1 centre front',
    'middle of upper front',
    'middle of back neck band',
    'middle of neck band',
  ];

  it.each(known)('“%s” is said in English as the file has it, and in German otherwise', (key) => {
    const name = nameOfLine(key);
    expect(name.id).not.toBe('verbatim');
    expect(inEnglish(name)).toBe(key);
    expect(inGerman(name)).not.toBe(key);
  });

  it.each([
    ['princess front', 'Wiener Naht vorn'],
    ['chest level', 'Brustnaht'],
    ['own line 3', 'eigene Linie 3'],
    ['middle of lower side back', 'Teilungsnaht: Seitenteil hinten unten'],
  ])('“%s” is “%s” in German', (key, german) => {
    expect(inGerman(nameOfLine(key))).toBe(german);
  });

  it.each(['Side', 'my dart', 'own line 03', 'eigene Linie 2', 'ankle level', 'middle of nowhere', ''])(
    '“%s” is the maker’s own and stays',
    (own) => {
      expect(nameOfLine(own)).toEqual(verbatim(own));
      expect(inGerman(nameOfLine(own))).toBe(own);
    },
  );

  it('is known of every line of every layout, and of every line the program adds', () => {
    const keys = [
      ...LAYOUTS.flatMap(({ lines }) => lines.map(({ name }) => name)),
      ...torso.form.levels.flatMap(({ id }) =>
        [true, false].flatMap((isOnChest) => [
          keyOfLevelLine(id, { isOnChest }),
          keyOfLevelLine(id, { isOnChest, isFrontOnly: true }),
        ]),
      ),
      keyOfOwnLine(1),
    ];
    expect(keys.filter((key) => nameOfLine(key).id === 'verbatim')).toEqual([]);
    expect(keyOfLevelLine('underbust', { isOnChest: true })).toBe('lower chest level');
  });
});

describe('the name of a panel', () => {
  const cut = (id: string) => {
    const layout = findLayout(id)!;
    const made = cutIntoPanels(torso.surface, torso.form, layout, { targetTriangles: 3000 });
    if (!made.ok) throw new Error(inEnglish(made.issues[0].message));
    return { layout, shell: made.value };
  };

  it('is its id in words, with and without its side', () => {
    const { shell } = cut('upright12Bust');
    for (const { id, name, side } of shell.panels) {
      const words = inEnglish(name);
      expect(words.replace(/ (\w)/g, (_, letter: string) => letter.toUpperCase())).toBe(id);
      const bare = side === 'centre' ? words : words.slice(0, -side.length - 1);
      expect(inEnglish(nameWithoutSide(name))).toBe(bare);
    }
    const germans = shell.panels.map(({ name }) => inGerman(name));
    expect(new Set(germans).size).toBe(germans.length);
    expect(germans).toContain('Seitenteil vorn unten links');
  });

  it('names the line that divides it, without its side', () => {
    const { layout, shell } = cut('upright8Bust');
    const lineOf = (seam: string) => shell.seams.find(({ id }) => id === seam)?.lineId;
    const panel = shell.panels.find(({ id }) => id === 'sideBackRight')!;
    const split = splitPanel(layout, panel, lineOf, torso.form);
    if (!split.ok) throw new Error(inEnglish(split.issues[0].message));
    expect(split.value.line.name).toBe('middle of side back');
  });

  it('of other things keeps what they are called', () => {
    expect(nameWithoutSide(verbatim('the right'))).toEqual(verbatim('the right'));
  });
});
