import { beforeAll, describe, expect, it } from 'vitest';
import average from '../../shared/demos/average.loftseam.json' with { type: 'json' };
import broadChest from '../../shared/demos/broad-chest.loftseam.json' with { type: 'json' };
import unevenShoulders from '../../shared/demos/uneven-shoulders.loftseam.json' with { type: 'json' };
import type { Phrase, Say } from '../../src/core/base/index.ts';
import { MEASURES, SHAPE_CATEGORIES } from '../../src/core/body/index.ts';
import { CLOTHS } from '../../src/core/flatten/index.ts';
import { createPipeline } from '../../src/core/pipeline/index.ts';
import { type Project, parseProject } from '../../src/core/project/index.ts';
import { nameOfPlace } from '../../src/core/seams/index.ts';
import { catalogue as frenchCore } from '../../src/language/french/core.ts';
import { catalogue as germanCore } from '../../src/language/german/core.ts';
import { createSpeaker, englishCore } from '../../src/language/index.ts';
import { ENGLISH } from '../in-english.ts';
import { collectPhrases } from './collect-phrases.ts';
import { findEnglish } from './find-english.ts';
import { tellOfHostileInputs } from './hostile-inputs.ts';
import { RARE } from './rare-phrases.ts';
import { tellOfCorrections } from './tell-of-corrections.ts';
import { tellOfFiles } from './tell-of-files.ts';
import { tellOfHostileSeams } from './tell-of-hostile-seams.ts';
import { tellOfLaying } from './tell-of-laying.ts';
import { tellOfNesting } from './tell-of-nesting.ts';
import { tellOfOrders } from './tell-of-orders.ts';
import { tellOfRefit } from './tell-of-refit.ts';
import { tellOfStatics } from './tell-of-statics.ts';

const [inEnglish, inGerman, inFrench] = [englishCore, germanCore, frenchCore].map((core) =>
  createSpeaker(core),
);

/** Said alike in every language, and why. */
const ALIKE: Readonly<Record<string, string>> = {
  verbatim: 'the maker’s own words, letters and marks',
  'paper.a4': 'named by its standard, ISO 216',
  'paper.a3': 'named by its standard, ISO 216',
  'paper.a0': 'named by its standard, ISO 216',
  'paper.letter': 'a size of paper of the United States, without another name',
};

/** Told with other figures, and why. */
const OTHER_FIGURES: Readonly<Record<string, string>> = {
  'file.print-title':
    'English shows the id of the paper, “both”, the others what it is called, “A4 oder Letter”',
};

interface Judged {
  readonly say: Say;
  /** Said as in English, because the word is the same. */
  readonly alike: readonly string[];
  /** Of the words taken for English, those that are of this language as well. */
  readonly own: readonly string[];
}

const JUDGED: Readonly<Record<'German' | 'French', Judged>> = {
  German: { say: inGerman, alike: [], own: [] },
  French: {
    say: inFrench,
    alike: ['booklet.column', 'edge.base', 'opening.base', 'page.name'],
    own: ['centre', 'large', 'on', 'plate', 'point'],
  },
};

const entriesOf = ({ entries }: typeof englishCore): Readonly<Record<string, unknown>> => entries;
const IDS = Object.keys(entriesOf(englishCore));

const figuresIn = (text: string): string[] =>
  (text.replaceAll(/(\d),(?=\d)/g, '$1.').match(/\d+(\.\d+)?/g) ?? []).sort();

/** What is wrong with a phrase in the languages other than English; empty for nothing. */
function findFaults(phrase: Phrase): string[] {
  if (!(phrase.id in englishCore.entries)) return [`${phrase.id} is in no catalogue`];
  return Object.values(JUDGED).flatMap((judged) => faultsIn(phrase, judged));
}

function faultsIn(phrase: Phrase, { say, alike, own }: Judged): string[] {
  const [english, other] = [inEnglish(phrase), say(phrase)];
  const found = (isFault: boolean, what: string): string[] =>
    isFault ? [`${phrase.id} ${what}: ${other}`] : [];
  if (phrase.id in ALIKE) return found(english !== other, 'differs');
  const left = findEnglish(phrase, other).filter((word) => !own.includes(word));
  return [
    ...found(other.trim() === '' || english.trim() === '', 'says nothing'),
    // A number alone is no language.
    ...found(other === english && /\p{L}/u.test(other) && !alike.includes(phrase.id), 'is English'),
    ...found(left.length > 0, `keeps “${left.join(' ')}”`),
    ...found(/undefined|NaN|\[object/.test(other), 'has no value'),
    ...found(
      !(phrase.id in OTHER_FIGURES) && figuresIn(other).join() !== figuresIn(english).join(),
      `has other figures than “${english}”`,
    ),
  ];
}

interface Changes {
  readonly layout?: string;
  readonly inside?: Partial<Project['inside']>;
  /** As a rule all, which have more to say. */
  readonly parts?: 'fewest';
}

// Most differ in the inside alone.
const pipeline = createPipeline();

/** A whole form, coarse, and what was told while it was made, or why it cannot be. */
function makeCoarse(demo: object, { layout, inside, parts }: Changes = {}): unknown {
  const read = parseProject(JSON.stringify(demo));
  if (!read.ok) throw new Error(read.issues.map(({ message }) => inEnglish(message)).join('\n'));
  const project: Project = {
    ...read.value,
    seams: { ...read.value.seams, ...(layout === undefined ? {} : { layout }) },
    inside: { ...read.value.inside, parts: parts ?? 'all', ...inside },
  };
  const told: Phrase[] = [];
  const onProgress = (_fraction: number, _stage: string, what: Phrase) => void told.push(what);
  const made = pipeline.makeForm(project, { speaker: ENGLISH, targetTriangles: 3000, onProgress });
  if (!inside) expect(made.ok).toBe(true);
  return [told, made];
}

/** Each against what holds the form up, or keeps its shape. */
const INSIDES: readonly Partial<Project['inside']>[] = [
  { garmentMass: 60, garmentOffset: 400, magnetDiameter: 55, wantedDeviation: 0.5 },
  { tubeDiameter: 8, garmentMass: 8, garmentOffset: 100, testTube: { measure1: 560 } },
  { tubeDiameter: 150 },
  { pressure: 50, clothStiffness: 10 },
  { measuredGrowth: 0.01, testTube: { measure1: 640, measure2: 860 }, pegDiameter: 60, clothThickness: 10 },
  { tubeWall: 20, waistHeight: 300, legs: 3, legRadius: 60, standMass: 0.5 },
];

const MADE: Readonly<Record<string, () => unknown>> = {
  'measures, questions of shape and cloths': () => [MEASURES, SHAPE_CATEGORIES, CLOTHS],
  'hostile bodies, files and panels': tellOfHostileInputs,
  'lines, panels and regions that cannot be': tellOfHostileSeams,
  'pieces, paper and files': tellOfFiles,
  'an average figure with arms, measured bent': () =>
    makeCoarse({ ...average, body: { ...average.body, arms: 'flexed' } }),
  'a flat chest': () => makeCoarse(broadChest, { layout: 'upright12BustWaist' }),
  'unlike shoulders': () => makeCoarse(unevenShoulders, { layout: 'upright16', parts: 'fewest' }),
  'a yoke': () => makeCoarse(average, { layout: 'upright8Yoke' }),
  'insides that cannot hold': () => INSIDES.map((inside) => makeCoarse(average, { inside })),
  'corrections and checks': tellOfCorrections,
  'filled shells without balance': tellOfStatics,
  'outlines without room': tellOfNesting,
  'pieces on cloth': tellOfLaying,
  'orders of work': tellOfOrders,
  'a form for another body': tellOfRefit,
  'what is rare': () => Object.entries(RARE).map(([id, values]) => ({ id, values })),
};

describe('the catalogues', () => {
  const said = new Map<string, Phrase[]>();
  beforeAll(async () => {
    for (const [what, make] of Object.entries(MADE)) {
      const phrases = collectPhrases(await make());
      said.set(what, [...new Map(phrases.map((phrase) => [JSON.stringify(phrase), phrase])).values()]);
    }
  });

  it('say the same things', () => {
    for (const { entries } of [germanCore, frenchCore])
      expect(Object.keys(entries).sort()).toEqual(Object.keys(englishCore.entries).sort());
    expect(IDS.length).toBeGreaterThan(250);
  });

  it('say each thing that takes no values, each in its own words', () => {
    const fixed = IDS.filter((id) => typeof entriesOf(englishCore)[id] === 'string');
    expect(fixed.length).toBeGreaterThan(200);
    expect(fixed.flatMap((id) => findFaults({ id, values: {} }))).toEqual([]);
  });

  it.each(Object.keys(MADE))('say all of %s, with the same figures', (what) => {
    const phrases = said.get(what) ?? [];
    expect(phrases.length).toBeGreaterThan(0);
    expect(phrases.flatMap(findFaults)).toEqual([]);
  });

  it('have nothing that takes values and was not judged', () => {
    const judged = new Set([...said.values()].flat().map(({ id }) => id));
    const taking = IDS.filter((id) => typeof entriesOf(englishCore)[id] === 'function');
    expect(taking.filter((id) => !judged.has(id))).toEqual([]);
    const made = new Set(
      [...said].filter(([what]) => what !== 'what is rare').flatMap(([, all]) => all.map(({ id }) => id)),
    );
    expect(Object.keys(RARE).filter((id) => made.has(id))).toEqual([]);
  });

  it('say German as the trade does', () => {
    // Terms of dressmaking, common practice in German.
    expect(MEASURES.map(({ name }) => inGerman(name))).toContain('Brustumfang');
    expect(inGerman(nameOfPlace('bustPointRight'))).toBe('Brustpunkt rechts');
    expect(inGerman({ id: 'cloth.fusedCotton', values: {} })).toBe('Baumwolle mit Bügeleinlage');
  });

  it('say French as the trade does', () => {
    // Terms of dressmaking, common practice in French.
    const measures = MEASURES.map(({ name }) => inFrench(name));
    for (const name of ['Tour de poitrine', 'Tour de taille', 'Carrure dos', 'Tour d’emmanchure'])
      expect(measures).toContain(name);
    expect(inFrench({ id: 'piece.grain', values: {} })).toBe('droit-fil');
  });
});

describe('looking for English', () => {
  it('finds it in a sentence, and not in what the maker typed or a file names', () => {
    expect(findEnglish({ id: 'x', values: {} }, 'Der Stoff must be gewaschen werden.')).toEqual([
      'must',
      'be',
    ]);
    expect(findEnglish({ id: 'x', values: { side: 'left' } }, 'Ärmel left')).toEqual(['left']);
    expect(findEnglish({ id: 'x', values: { field: 'body' } }, 'body fehlt')).toEqual([]);
    expect(findEnglish({ id: 'x', values: {} }, 'Teile der Hülle mit „right“ (rechts)')).toEqual([]);
    expect(findEnglish({ id: 'x', values: {} }, 'pièces de l’enveloppe avec «\u00a0right\u00a0»')).toEqual(
      [],
    );
    expect(findEnglish({ id: 'x', values: {} }, '92,5 cm (36 3/8 in)')).toEqual([]);
    expect(findEnglish({ id: 'x', values: {} }, 'in der Projektdatei inside.straps')).toEqual([]);
  });
});
