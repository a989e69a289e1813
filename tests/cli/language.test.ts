import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createReader, type Reader } from '../../src/cli/create-reader.ts';
import { LANGUAGE_NAMES, LANGUAGES, type Language } from '../../src/language/index.ts';
import { loftseam } from './run-loftseam.ts';

const straight = path.join(import.meta.dirname, '../../shared/demos/straight.loftseam.json');

/** The most frequent little words of English that are no German words as well, from memory. */
const ENGLISH = [
  ...['the', 'a', 'of', 'to', 'and', 'or', 'is', 'are', 'be', 'it', 'its', 'by', 'with', 'without'],
  ...['for', 'from', 'at', 'on', 'not', 'no', 'than', 'that', 'this', 'these', 'there', 'which', 'what'],
  ...['must', 'out', 'into', 'as', 'one', 'them', 'you', 'your', 'has', 'have', 'when', 'where', 'only'],
];

/** Lines that hold an English word, ids and what was typed left out. */
function englishLines(text: string): string[] {
  return text.split('\n').filter((line) => {
    const said = line
      // Fields, codes, names of files and options, values of options between quotation marks.
      .replace(/--[\w-]+|\([a-z]+(-[a-z]+)+\)|\S*[./=]\S*|"[^"]*"|„[^“]*“/g, ' ')
      // A language calls itself what it is called.
      .replace('en (English)', ' ')
      // Seams are called by letters, which may read as a word: „Naht A“, „AT an AT nähen“. No word is written in two capitals.
      .replace(/\bNaht [A-Z]\b|\b[A-Z]{2}\b/g, ' ');
    return said.split(/[^\p{L}\d'’-]+/u).some((word) => ENGLISH.includes(word.toLowerCase()));
  });
}

const german = (...args: string[]) => loftseam(...args, '--language', 'de');

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'loftseam-'));
});
afterAll(() => rm(folder, { recursive: true }));

describe('the judge of languages', () => {
  it.each([
    ['error: unknown option', 'of the whole'],
    ['', 'Stop when a girth is over'],
    ['FEHLER body.measures.hipGirth (measure-missing)', 'What is missing?'],
  ])('finds English: %s %s', (fine, words) => {
    expect(englishLines(`${fine}\n${words}`)).toEqual([words]);
  });

  it.each([
    ['Warnung  body.measures.the  (of-the)'],
    ['Fehler: Option „--out <of>“ und "the"'],
    ['in der Datei the.of.json, 10 mm'],
    ['      Naht A   vordere Mitte: 58,5 cm'],
    ['      AT an AT nähen, dann an jedes AS ein Ende'],
  ])('takes no offence at %s', (text) => {
    expect(englishLines(text)).toEqual([]);
  });
});

describe('--language de', () => {
  const commands = [
    ...[
      'make',
      'print-correct',
      'check',
      'plan',
      'stuffing',
      'compare',
      'advise',
      'propose',
      'region',
      'demo',
    ],
  ];

  it.each([[], ...commands.map((command) => [command])])('explains %s in German', async (...command) => {
    const { code, out, err } = await german(...command, '--help');
    expect(code).toBe(0);
    expect(err).toBe('');
    expect(out).toMatch(/^Aufruf: loftseam/);
    expect(out).toContain('Optionen:');
    expect(out).toContain('Rückgabewerte: 0');
    expect(out).toContain(`--language <${LANGUAGES.join('|')}>`);
    expect(englishLines(out)).toEqual([]);
    expect(out).not.toMatch(/Usage|Options|Commands|Arguments|default|choices|display/);
  });

  it('may stand anywhere, and with an equals sign', async () => {
    for (const args of [
      ['--language', 'de', 'demo', '--help'],
      ['demo', '--language=de', '--help'],
      ['help', 'demo', '--language', 'DE'],
    ])
      expect((await loftseam(...args)).out, args.join(' ')).toMatch(/^Aufruf: loftseam demo/);
  });

  // Expected exit codes: 2 for usage, 3 for files, as the README lists them.
  it.each([
    [['check'], 2, 'Die Angabe „Datei“ fehlt'],
    [['check', straight, straight], 2, 'zu viele Angaben'],
    [['sew', straight], 2, 'unbekannter Befehl „sew“'],
    [['chek', straight], 2, 'Gemeint vielleicht check?'],
    [['make', straight, '--glitter'], 2, 'unbekannte Option „--glitter“'],
    [['make', straight, '--format', 'svg'], 2, 'Gemeint vielleicht --formats?'],
    [['make', straight, '--out'], 2, 'fehlt der Wert'],
    [['print-correct'], 2, '„--measured-x <Länge>“ muss angegeben werden'],
    [['make', straight, '--triangles', 'many'], 2, 'eine ganze Zahl sein, 500 bis 200000'],
    [['make', straight, '--allowance', '2'], 2, '3 bis 50 mm'],
    [['make', straight, '--allowance-for', 'x'], 2, 'Name=Länge'],
    [['make', straight, '--grain', 'x=99'], 2, 'Schnittteil=Grad'],
    [['make', straight, '--notches', 'star'], 2, 'Möglich sind: slit, t, outward'],
    [['make', straight, '--paper', 'foolscap'], 2, 'kein Papier „foolscap“'],
    [['make', straight, '--formats', 'docx,svg,odt'], 2, 'kein Format „docx“, „odt“'],
    [['make', straight, '--margin', 'wide'], 2, 'Es muss eine Länge sein'],
    [['make', straight, '--mat', 'huge'], 2, 'Breite und Höhe in mm'],
    [['make', straight, '--colours', 'red'], 2, 'Ebene=#rrggbb'],
    [['make', straight, '--inside', 'tube'], 2, 'Schlüssel=Wert'],
    [['make', straight, '--model-scale', '-1'], 2, 'eine Zahl über 0'],
    [['print-correct', '--measured-x', '0'], 2, 'eine Länge über 0'],
    [['propose', straight, '--strain', '99'], 2, 'in Prozent sein, 0,2 bis 20'],
    [['advise', straight, '--zones', '1.5'], 2, 'eine ganze Zahl sein, 1 bis 20'],
    [['demo', 'nobody'], 2, 'Es gibt kein Beispiel „nobody“'],
    [['check', '/dev/null/absent.json'], 3, 'absent.json ist nicht lesbar'],
    [['demo', 'average', '--out', '/dev/null/x'], 3, 'Mit --out einen anderen Ordner wählen'],
  ])('refuses %j in German', async (args, expected, words) => {
    const { code, out, err } = await german(...args);
    expect(code).toBe(expected);
    expect(out).toBe('');
    expect(err).toContain(words);
    expect(englishLines(err)).toEqual([]);
  });

  it('lists the demos, whose names stay as they are', async () => {
    const { code, out } = await german('demo');
    expect(code).toBe(0);
    expect(out).toMatch(/^Beispiel +wer\n/);
    expect(out).toContain('Maren Ostley, average figure');
  });

  it('does not write over a file unless told to', async () => {
    expect((await german('demo', 'average', '--out', folder)).code).toBe(0);
    const { code, err } = await german('demo', 'average', '--out', folder);
    expect(code).toBe(3);
    expect(err).toContain('mit --replace wird überschrieben');
    expect(englishLines(err)).toEqual([]);
  });

  it('shows every tape with a decimal comma', async () => {
    const { code, out } = await german('check', straight);
    expect(code).toBe(0);
    expect(out).toMatch(/^Maß +Art +Soll +Ist +daneben mm +Ergebnis$/m);
    expect(out).toMatch(/^bustGirth +Umfang +87,0 cm +87,0 cm +[+-]?0,0\d +stimmt$/m);
    expect(out).toMatch(/geschätzt ±\d+,\d$/m);
    expect(out).not.toMatch(/\d\.\d/);
    expect(englishLines(out)).toEqual([]);
  });

  it('names what is wrong with a project as errors and warnings', async () => {
    const project = JSON.parse(await readFile(straight, 'utf8'));
    delete project.body.measures.hipGirth;
    const file = path.join(folder, 'spoilt.loftseam.json');
    await writeFile(file, JSON.stringify(project));
    const { code, out } = await german('check', file);
    expect(code).toBe(1);
    expect(out).toMatch(/^FEHLER {3}body\.measures\.hipGirth {2}\(/m);
    expect(englishLines(out)).toEqual([]);
  });

  it('tells what was made, with commas', async () => {
    const args = ['--triangles', '2000', '--formats', 'json', '--out', path.join(folder, 'out')];
    const { code, out, err } = await german('make', straight, ...args);
    expect(code, err).toBe(0);
    expect(err).toMatch(/^Schnittteile: \S+/m);
    expect(out).toMatch(/^\d+ Nähte; .* höchstens 0,\d{4} mm, ihre Passzeichen um höchstens 0,\d{4} mm\.$/m);
    expect(out).toMatch(
      /^\d+,\d Liter Inhalt\. Maße 0,\d\d s, .*Zuschnitt \d+,\d\d s, Auslegen \d+,\d\d s\.$/m,
    );
    expect(out).toMatch(/^Ständer: kippt bei \d+,\d°/m);
    expect(out.split('\n').length).toBeGreaterThan(20);
    expect(englishLines(out)).toEqual([]);
    expect(englishLines(err)).toEqual([]);
    expect(out.replaceAll(/\S*\/\S*/g, '')).not.toMatch(/\d\.\d/);
  });

  it.each(['straight', 'uneven-shoulders'])('prints the whole order of work for %s', async (demo) => {
    const { code, out, err } = await german(
      'plan',
      path.join(path.dirname(straight), `${demo}.loftseam.json`),
    );
    expect(code, err).toBe(0);
    // As many steps as in English, with the same numbers and ticks.
    const stepsOf = (text: string) => text.match(/^\[.\] \d+\. /gm);
    const english = await loftseam('plan', path.join(path.dirname(straight), `${demo}.loftseam.json`));
    expect(stepsOf(out)).toEqual(stepsOf(english.out));
    expect(stepsOf(out)?.length).toBeGreaterThan(20);
    expect(out).toContain('VORSICHT: ');
    const [heading, ...lines] = out.split('\n');
    // The project's own name is the maker's.
    expect(heading).toMatch(/^Arbeitsfolge – /);
    expect(englishLines(lines.join('\n'))).toEqual([]);
    const englishLinesKept = new Set(english.out.split('\n').filter((line) => /\p{L}{3}/u.test(line)));
    expect(lines.filter((line) => englishLinesKept.has(line))).toEqual([]);
    expect(lines.join('\n').replaceAll(/\S*\/\S*/g, '')).not.toMatch(/\d\.\d/);
    expect(englishLines(err)).toEqual([]);
  });

  it('tells targets and judges the log', async () => {
    const project = JSON.parse(await readFile(straight, 'utf8'));
    const waist = project.body.measures.waistGirth;
    const entry = {
      date: '2026-03-14',
      state: 'filled',
      levels: { waist: { girth: waist + 12 } },
      fillMass: 2,
    };
    const file = path.join(folder, 'log.loftseam.json');
    await writeFile(file, JSON.stringify({ ...project, checking: { entries: [entry] } }));
    const { code, out, err } = await german('stuffing', file);
    expect(code, err).toBe(0);
    expect(out).toMatch(/^Höhenlinie +Umfang -0\/\+5 +Breite ±5 +Tiefe ±5 +leer, flach$/m);
    expect(out).toMatch(/ cm \(\d+,\d, \+12 mm, zu viel\)/);
    expect(out).toContain('2026-03-14, gefüllt, 2,00 kg Füllung');
    expect(englishLines(out)).toEqual([]);
    expect((await german('stuffing', straight)).out).toContain('Noch nichts gemessen');
  });

  it('corrects a printer', async () => {
    const { code, out } = await german('print-correct', '--measured-x', '198.5', '--measured-y', '200.2');
    expect(code).toBe(0);
    // 200 / 198.5 = 1.00756, 200 / 200.2 = 0.99900.
    expect(out).toBe('Korrektur: +0,76 % quer zur Seite, -0,10 % hoch.\n');
  });

  it('tells a fault of the program for what it is', async () => {
    let err = '';
    const { run } = await import('../../src/cli/run.ts');
    const stdout = {
      write: () => {
        throw new Error('broken');
      },
    };
    const code = await run(['demo', '--language', 'de'], { stdout, stderr: { write: (t) => (err += t) } });
    expect(code).toBe(4);
    expect(err).toMatch(
      /^Im Programm ist etwas schiefgegangen; an der Eingabe liegt es nicht:\nError: broken/,
    );
  });
});

describe('--language fr', () => {
  const french = (...args: string[]) => loftseam(...args, '--language', 'fr');

  it('explains itself in French', async () => {
    const { code, out, err } = await french('make', '--help');
    expect(code).toBe(0);
    expect(err).toBe('');
    expect(out).toMatch(/^Utilisation\u00a0: loftseam make \[options\]/);
    expect(out).toContain('Codes de retour\u00a0: 0');
    expect(out).not.toMatch(/Usage|Commands|default|choices|display/);
  });

  it('refuses in French', async () => {
    const { code, err } = await french('chek', straight);
    expect(code).toBe(2);
    expect(err).toContain('commande inconnue «\u00a0chek\u00a0»');
    expect(err).toContain('Vouliez-vous dire check\u202f?');
  });

  it('shows every tape with a decimal comma', async () => {
    const { code, out } = await french('check', straight);
    expect(code).toBe(0);
    expect(out).toMatch(/^mesure +genre +saisi +corps +écart mm +résultat$/m);
    expect(out).toMatch(/^bustGirth +tour +87,0 cm +87,0 cm +[+-]?0,0\d +respecté$/m);
    expect(out).not.toMatch(/\d\.\d/);
  });
});

describe('--language', () => {
  it('is English unless asked for, wherever the computer stands', async () => {
    const before = process.env.LANG;
    process.env.LANG = 'de_DE.UTF-8';
    const { out } = await loftseam('demo');
    if (before === undefined) delete process.env.LANG;
    else process.env.LANG = before;
    expect(out).toMatch(/^demo +who\n/);
    expect((await loftseam('demo', '--language', 'en')).out).toBe(out);
  });

  it('names the languages there are, when asked for another', async () => {
    for (const args of [
      ['demo', '--language', 'tlh'],
      ['--language', 'tlh', '--help'],
    ]) {
      const { code, err } = await loftseam(...args);
      expect(code).toBe(2);
      const known = LANGUAGES.map((language) => `${language} (${LANGUAGE_NAMES[language]})`).join(', ');
      expect(err).toContain(`There is no language called “tlh”. There are: ${known}.`);
    }
    expect((await loftseam('demo', '--language')).code).toBe(2);
  });

  it('is never written into a project', async () => {
    await german('demo', 'petite', '--out', folder);
    const written = await readFile(path.join(folder, 'petite.loftseam.json'), 'utf8');
    expect(written).toBe(await readFile(path.join(path.dirname(straight), 'petite.loftseam.json'), 'utf8'));
  });
});

describe('the words of the command line', () => {
  const leaves = (words: object, at = ''): [string, unknown][] =>
    Object.entries(words).flatMap(([key, value]) =>
      typeof value === 'object'
        ? leaves(value, `${at}.${key}`)
        : [[`${at}.${key}`, value] as [string, unknown]],
    );
  const readers = Promise.all(LANGUAGES.map(createReader));
  /** Numbers and short names that all languages share, and words that one shares with English. */
  const ALIKE = [
    '.help.values.number',
    '.help.values.name',
    '.inside.units.m²',
    '.inside.units.m',
    '.inside.units.kg',
  ];
  const ALIKE_IN: Partial<Record<Language, readonly string[]>> = {
    fr: ['.help.options', '.refit.zone', '.stuffing.litres', '.tapes.kinds.distance'],
  };

  it('are the same many in every language, and not the same words', async () => {
    const [english, ...others] = (await readers).map(({ language, words }) => ({
      words: new Map(leaves(words)),
      shared: [...ALIKE, ...(ALIKE_IN[language] ?? [])],
    }));
    expect(english.words.size).toBeGreaterThan(150);
    for (const { words, shared } of others) {
      expect([...words.keys()].sort()).toEqual([...english.words.keys()].sort());
      const same = [...words].filter(
        ([id, value]) => typeof value === 'string' && value === english.words.get(id),
      );
      expect(same.map(([id]) => id).filter((id) => !shared.includes(id))).toEqual([]);
    }
  });

  it('hold in every language what is put in', async () => {
    const said = (value: unknown) => {
      const marks = ['‹a›', '‹b›', '‹c›', '‹d›', '‹e›', '‹f›'].slice(0, (value as () => string).length);
      const text = String((value as (...values: unknown[]) => string)(...marks.map(withJoin)));
      return marks.filter((mark) => text.includes(mark));
    };
    // Lists are put in too.
    const withJoin = (mark: string) => Object.assign(new String(mark), { join: () => mark });
    const [english, ...others] = (await readers).map(({ words }: Reader) => new Map(leaves(words)));
    for (const [id, value] of english) {
      if (typeof value !== 'function') continue;
      expect(said(value).length, id).toBe(value.length);
      for (const words of others) expect(said(words.get(id)), id).toEqual(said(value));
    }
  });
});
