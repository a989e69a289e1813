import { describe, expect, it } from 'vitest';
import average from '../../../shared/demos/average.loftseam.json' with { type: 'json' };
import { german } from '../../../src/app/language/german.ts';
import { makeForm } from '../../../src/core/pipeline/index.ts';
import { parseProject } from '../../../src/core/project/index.ts';

const { core } = german;
const figuresIn = (text: string): string[] => (text.match(/\d+(\.\d+)?/g) ?? []).sort();

/** What is told of the average project with some of it changed. */
function issuesOf(change: { body?: object; inside?: object }): string[] {
  const text = JSON.stringify({
    ...average,
    body: { ...average.body, ...change.body },
    inside: { ...average.inside, ...change.inside },
  });
  const read = parseProject(text);
  const { issues } = read.ok ? makeForm(read.value, { targetTriangles: 2000 }) : read;
  return issues.map(({ message }) => message);
}

const measures = (changed: object) => ({ body: { measures: { ...average.body.measures, ...changed } } });

describe('faults in German', () => {
  it.each([
    ['a measure left out', measures({ waistGirth: undefined }), /fehlt/],
    ['a measure out of all range', measures({ waistGirth: 3000 }), /Taillenumfang ist/],
    ['a measure that is likely mistyped', measures({ waistGirth: 567 }), /Taillenumfang/],
    ['sides that differ too much', measures({ shoulderLength: { left: 100, right: 180 } }), /Schulterlänge/],
    ['sides that differ', measures({ shoulderLength: { left: 120, right: 140 } }), /Ergibt eine zweite/],
    ['a rare measure', measures({ underbustGirth: 1195 }), /liegt weit außerhalb des Üblichen/],
    [
      'a bust point below the waist',
      measures({ neckToBustPoint: 389, frontWaistLength: 380 }),
      /muss kürzer sein als/,
    ],
    ['a file in centimetres', measures({ bustGirth: 94 }), /Zentimetern geschrieben, muss dort 940 stehen/],
    ['a short upper arm', measures({ shoulderToElbow: 180 }), /Schulter bis Ellenbogen/],
    ['a heavy garment', { inside: { garmentMass: 60, garmentOffset: 400 } }, /Kleidungsstück.*60 kg/],
    ['a thin pole', { inside: { tubeDiameter: 8, garmentMass: 8, garmentOffset: 100 } }, /Rohr neigt sich/],
    ['a thick pole', { inside: { tubeDiameter: 150 } }, /Rohr von/],
    ['large magnets', { inside: { magnetDiameter: 55 } }, /Magnete/],
    ['a wish no webs fulfil', { inside: { wantedDeviation: 0.5 } }, /Die gefüllte Form wird/],
    [
      'a test tube that shrank',
      { inside: { testTube: { measure1: 560 } } },
      /Probeschlauch, Umfang an Linie 1/,
    ],
  ] as const)('tell of %s, with the same figures', (_, change, pattern) => {
    const told = issuesOf(change);
    expect(told.length).toBeGreaterThan(0);
    const said = told.map((message) => core.text(message));
    expect(said.join('\n')).toMatch(pattern);
    for (const [i, message] of told.entries()) {
      expect(said[i]).not.toBe(message);
      expect(figuresIn(said[i] ?? ''), message).toEqual(figuresIn(message));
    }
  });

  it.each([
    ['broken text', '{"format": ', /kein lesbares JSON: Zeile 1, Spalte \d+: der Text endet zu früh/],
    ['no project', '[]', /enthält kein Projekt/],
    ['another format', '{"format":"x","version":1}', /format ist "x"; in einer Projektdatei steht/],
    [
      'a version to come',
      '{"format":"loftseam-project","version":99}',
      /version ist 99; dieses Programm versteht/,
    ],
    [
      'a word for a number',
      JSON.stringify({ ...average, cloth: { allowance: 'ten' } }),
      /^cloth\.allowance ist der Text „ten“; es muss eine Zahl sein\.$/m,
    ],
    [
      'too much',
      JSON.stringify({ ...average, cloth: { allowance: 99 } }),
      /^cloth\.allowance ist 99; es darf höchstens 50 sein\.$/m,
    ],
    ['a misspelt key', JSON.stringify({ ...average, clooth: {} }), /„clooth“ ist nicht bekannt/],
  ])('tell of a file with %s', (_, text, pattern) => {
    const read = parseProject(text);
    expect(read.ok).toBe(false);
    expect(read.issues.map(core.issue).join('\n')).toMatch(pattern);
  });

  it('leave English what they do not know', () => {
    expect(core.text('The moon is in the wrong house.')).toBe('The moon is in the wrong house.');
  });
});
