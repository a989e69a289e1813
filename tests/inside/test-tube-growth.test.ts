import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Form } from '../../src/core/form/index.ts';
import { growthOfTestTube, limitsOfTestTube, measuredGrowthOf } from '../../src/core/inside/index.ts';
import type { MakeForm } from '../../src/core/pipeline/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { inEnglish } from '../in-english.ts';
import { COARSE, sharedPipeline } from '../shared-pipeline.ts';

const demo = JSON.parse(readFileSync('shared/demos/average.loftseam.json', 'utf8'));

// A tube of 200 mm diameter is 200π = 628.3185 mm round; a tape over cloth of 0.6 mm lies 0.3 mm further out: 0.6π more.
describe('growth read on the test tube', () => {
  it('is none for a tube that reads as it was sewn, 630.2035 mm', () => {
    expect(growthOfTestTube({ measure2: 630.20351 }, 0.6)).toBeCloseTo(0, 7);
  });

  it('is by the mean of what was read: 640, 641 and 642 mm are (641 − 1.884956)/628.318531 − 1', () => {
    const readings = { measure1: 640, measure2: 641, measure3: 642 };
    expect(growthOfTestTube(readings, 0.6)).toBeCloseTo(0.0171831, 6);
    expect(growthOfTestTube({ measure1: 641 }, 0.6)).toBeCloseTo(0.0171831, 6);
    // Cloth of 2 mm: (641 − 6.283185)/628.318531 − 1.
    expect(growthOfTestTube(readings, 2)).toBeCloseTo(0.0101832, 6);
  });

  it('is not worked out from what no filled tube can measure', () => {
    expect(growthOfTestTube({})).toBeUndefined();
    expect(growthOfTestTube({ measure1: 641, measure2: 625 })).toBeUndefined();
    expect(growthOfTestTube({ measure1: 780 })).toBeUndefined();
    // 628.3185 + 1.8850 and 1.2 · 628.3185 + 1.8850, whole millimetres.
    expect(limitsOfTestTube(0.6)).toEqual({ min: 630, max: 755 });
  });

  it('gives way to growth typed as such', () => {
    expect(measuredGrowthOf({ measuredGrowth: 0.01, testTube: { measure1: 641 } })).toBe(0.01);
  });
});

describe('a project with the girths of its test tube', () => {
  const make = (inside: object): ReturnType<MakeForm> => {
    const project = parseProject(JSON.stringify({ ...demo, inside }));
    if (!project.ok) throw new Error(inEnglish(project.issues[0].message));
    return sharedPipeline.makeForm(project.value, COARSE);
  };
  const formOf = (made: ReturnType<MakeForm>): Form => {
    if (!made.ok) throw new Error(inEnglish(made.issues[0].message));
    return made.value;
  };
  const plain = formOf(make({}));

  it('has its panels cut smaller, each level by its own share', () => {
    // Laplace and Hooke: 0.0171831 on the tube is k = 0.0171831/1.0171831/628.318531 = 2.688577e-5 per mm of girth; a
    // girth G over cloth of 0.6 mm is cut to H = G'/(1 + kG'), G' = G − 0.6π.
    const form = formOf(make({ testTube: { measure1: 640, measure2: 641, measure3: 642 } }));
    for (const { id, lengthFlat, length3d } of form.report.levels) {
      const bare = length3d - 1.884956;
      expect(lengthFlat, id).toBeCloseTo(bare / (1 + 2.688577e-5 * bare), 1);
    }
    const tube = form.making!.steps.find(({ id }) => id === 'test-tube')!;
    expect(tube.text.map(inEnglish).join(' ')).toContain('1.72 %');
  });

  it('begins with the tube, on whose sheet stands what to do, by the letters of its own seams', () => {
    const { making, inside } = plain;
    const first = making!.steps.find(({ id }) => id === 'test-tube')!;
    // Before anything of the form is printed.
    expect(making!.steps.indexOf(first)).toBeLessThan(making!.steps.findIndex(({ id }) => id === 'print'));
    expect(first.pieces.map(({ id }) => id)).toEqual(['test-tube', 'test-tube-bottom', 'test-tube-top']);
    expect(making!.steps.find(({ id }) => id === 'print')!.needs).toContain('test-tube');
    // Sides of a seam are equally long; the tube is 300 mm high and 628.3 mm round (the rims come as chords).
    expect(first.seams.map(({ lengths }) => lengths.map(Math.round))).toEqual([
      [300, 300],
      [628, 628],
      [628, 628],
    ]);
    const piece = inside!.pieces.find(({ id }) => id === 'test-tube')!;
    const words = piece.texts
      .filter(({ isNote }) => isNote)
      .map(({ text }) => text)
      .join(' ');
    const [closing, end] = first.seams.map(({ letter }) => letter);
    expect(piece.sewLines.filter(({ name }) => name === closing)).toHaveLength(2);
    expect(words).toContain(`Sew ${closing} to ${closing}, then an end to each ${end}`);
    for (const part of ['Stuff it as hard', 'Measure round it at lines 1, 2 and 3', 'under Inside'])
      expect(words).toContain(part);
    // Read at arm's length on a cutting table: 3 mm letters (our own least).
    for (const { size, isNote } of piece.texts) if (isNote) expect(size).toBeGreaterThanOrEqual(3);
  });

  it.each([
    [
      { measure2: 622 },
      'inside.testTube.measure2',
      /62\.2 cm is less than the tube as it was sewn, 63\.0 cm/,
    ],
    [{ measure3: 790 }, 'inside.testTube.measure3', /79\.0 cm is more than cloth can grow, 75\.5 cm/],
  ])('names a reading that cannot be, %o, and takes nothing off', (testTube, path, message) => {
    const made = make({ testTube });
    const issue = made.issues.find(({ code }) => code === 'test-tube-off')!;
    expect(issue).toMatchObject({ path, severity: 'error' });
    expect(inEnglish(issue.message)).toMatch(message);
    expect(formOf(made).report.levels).toEqual(plain.report.levels);
  });

  it('warns of a tube filled unevenly, and of growth given twice', () => {
    const uneven = make({ testTube: { measure1: 636, measure2: 645 } }).issues;
    expect(uneven.find(({ code }) => code === 'test-tube-uneven')).toMatchObject({ measured: 9, limit: 6 });
    const twice = make({ measuredGrowth: 0.01, testTube: { measure1: 640 } }).issues;
    expect(inEnglish(twice.find(({ code }) => code === 'growth-twice')!.message)).toContain('1.00 %');
  });

  it('is refused by the file’s own limits where a girth is in another unit, or a line is misspelt', () => {
    const read = (testTube: object) => parseProject(JSON.stringify({ ...demo, inside: { testTube } }));
    for (const testTube of [{ measure1: 64 }, { measure4: 640 }]) {
      const result = read(testTube);
      expect(result.ok).toBe(false);
      expect(result.issues[0].path).toMatch(/^inside\.testTube\.measure[14]$/);
    }
  });
});
