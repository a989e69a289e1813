import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { makeLayer, makePath, makeText } from '../../src/core/drawing/index.ts';
import { findLackingLetters } from '../../src/core/export/index.ts';

const FONT = readFileSync('node_modules/dejavu-fonts-ttf/ttf/DejaVuSans.ttf');

/** The font's own table of coverage says: Latin, Greek, Cyrillic, Hebrew, Arabic, none of Han (dejavu-fonts-ttf/unicover.txt). */
it('names what the font cannot show, once each, and nothing else', async () => {
  const page = (...texts: string[]) => ({
    width: 100,
    height: 100,
    title: '',
    layers: [makeLayer('text', [makePath([0, 0, 1, 1]), ...texts.map((text) => makeText(0, 0, text, 4))])],
  });
  const pages = [
    page('Größe ½ – “wide”', 'Αθήνα Москва שלום عربية'),
    page('日本 日'),
    page('a\u00a0b\u200fc\n'),
  ];
  expect(await findLackingLetters(pages, FONT)).toEqual(['日', '本']);
  expect(await findLackingLetters(pages.slice(0, 1), FONT)).toEqual([]);
});
