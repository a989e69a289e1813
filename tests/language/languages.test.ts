import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { LANGUAGE_NAMES, LANGUAGES, loadCatalogue } from '../../src/language/index.ts';
import { loadCommandWords } from '../../src/language/load-command-words.ts';
import { loadWardrobeWords } from '../../src/language/load-wardrobe-words.ts';
import { loadWords } from '../../src/language/load-words.ts';
import { readModules } from '../read-imports.ts';

const modules = new Map(
  readModules(path.resolve(import.meta.dirname, '../..'), 'src').map((m) => [m.file, m]),
);

/** All that is loaded with a file, types left out; what is loaded late has no fixed name and is not followed. */
function loadedWith(file: string, seen = new Set<string>()): Set<string> {
  if (seen.has(file)) return seen;
  seen.add(file);
  for (const { target, isTypeOnly } of modules.get(file)?.imports ?? [])
    if (target !== undefined && !isTypeOnly) loadedWith(target, seen);
  return seen;
}

describe('the languages', () => {
  it('have each a name, words of the app and of the command line, and a catalogue', async () => {
    expect(LANGUAGES.length).toBeGreaterThan(1);
    for (const language of LANGUAGES) {
      expect(LANGUAGE_NAMES[language]).toMatch(/^\p{Lu}/u);
      expect((await loadCatalogue(language)).tag).toBe(language);
      expect(Object.keys(await loadWords(language))).toContain('tapeTable');
      expect(Object.keys(await loadWardrobeWords(language))).toContain('archive');
      expect(Object.keys(await loadCommandWords(language))).toContain('refusals');
    }
  });

  it('differ', async () => {
    const help = await Promise.all(LANGUAGES.map(async (id) => (await loadCommandWords(id)).help.program));
    const volumes = await Promise.all(LANGUAGES.map(async (id) => (await loadWords(id)).body.volume));
    const sizes = await Promise.all(LANGUAGES.map(async (id) => (await loadWardrobeWords(id)).compareBoth));
    expect(new Set(sizes).size).toBe(LANGUAGES.length);
    expect(new Set(help).size).toBe(LANGUAGES.length);
    expect(new Set(volumes).size).toBe(LANGUAGES.length);
  });
});

describe('who loads which words', () => {
  const wordsIn = (file: string) =>
    [...loadedWith(file)].filter((name) => /^src\/language\/\w+\//.test(name));

  it('the page those of the app, not of the command line', () => {
    const words = wordsIn('src/app/main.tsx');
    expect(words).toContain('src/language/english/app.ts');
    expect(words.filter((file) => file.includes('/command'))).toEqual([]);
    // The dialogs of bodies bring their own.
    expect(words.filter((file) => file.includes('/wardrobe'))).toEqual([]);
    expect(loadedWith('src/app/main.tsx')).not.toContain('src/language/load-command-words.ts');
  });

  it('the command line its own late, and none of the app', () => {
    const loaded = loadedWith('src/cli/main.ts');
    expect(loaded).toContain('src/language/load-command-words.ts');
    expect(loaded).not.toContain('src/language/load-words.ts');
    expect(wordsIn('src/cli/main.ts').filter((file) => /\/(app|command)\b/.test(file))).toEqual([]);
  });

  it('neither loads German or French before they are asked for', () => {
    for (const file of ['src/app/main.tsx', 'src/cli/main.ts'])
      expect(wordsIn(file).filter((name) => /\/(german|french)\//.test(name))).toEqual([]);
  });
});
