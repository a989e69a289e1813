import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Issue, Result } from '../../src/core/base/index.ts';
import { type Project, parseProject, serializeProject } from '../../src/core/project/index.ts';
import { inEnglish } from '../in-english.ts';

const good = {
  format: 'loftseam-project',
  version: 1,
  name: 'Rosalind',
  displayUnits: 'cm',
  body: { figure: 'bust', measures: { bustGirth: 940, shoulderDrop: { left: 48, right: 40 } } },
};

function changed(change: (file: Record<string, never>) => void): unknown {
  const copy = structuredClone(good) as unknown as Record<string, never>;
  change(copy);
  return copy;
}

function issuesOf(result: Result<Project>): readonly Issue[] {
  expect(result.ok).toBe(false);
  return result.issues;
}

function onlyIssueOf(source: unknown): Issue {
  const issues = issuesOf(parseProject(source));
  expect(issues).toHaveLength(1);
  return issues[0];
}

describe('parseProject', () => {
  it('reads where the waist was tied, and takes a file that does not say for the narrowest place', () => {
    const body = { figure: 'bust', measures: { waistGirth: 765 } };
    const read = (more: object) =>
      parseProject(
        JSON.stringify({
          format: 'loftseam-project',
          version: 1,
          name: 'Robin',
          displayUnits: 'cm',
          body: { ...body, ...more },
        }),
      );
    const [told, silent, wrong] = [read({ waist: 'navel' }), read({}), read({ waist: 'knee' })];
    expect(told.ok && told.value.body.waist).toBe('navel');
    expect(silent.ok && silent.value.body.waist).toBe(undefined);
    expect(wrong.ok).toBe(false);
    expect(wrong.issues[0].path).toBe('body.waist');
    const [held, misheld] = [read({ arms: 'flexed' }), read({ arms: 'up' })];
    expect(held.ok && held.value.body.arms).toBe('flexed');
    expect(misheld.issues[0].path).toBe('body.arms');
  });

  it('fills absent sections and keeps what is there', () => {
    const result = parseProject(JSON.stringify(good));
    expect(result.ok && result.value).toEqual({ ...good, seams: {}, cloth: {}, inside: {}, cutting: {} });
  });

  it('reads a text that starts with a byte order mark', () => {
    expect(parseProject(`\ufeff${JSON.stringify(good)}`).ok).toBe(true);
  });

  it('names every unknown key and what may stand there, all at once', () => {
    const issues = issuesOf(
      parseProject({
        ...good,
        colour: 'red',
        body: { ...good.body, measurs: {} },
        cloth: { alowance: 10 },
        inside: { webs: 2 },
      }),
    );
    expect(issues.map((i) => [i.code, i.path])).toEqual([
      ['file-unknown-key', 'body.measurs'],
      ['file-unknown-key', 'cloth.alowance'],
      ['file-unknown-key', 'inside.webs'],
      ['file-unknown-key', 'colour'],
    ]);
    expect(inEnglish(issues[0].message)).toContain('“measurs”');
    expect(inEnglish(issues[0].message)).toContain('figure, measures, readings, shape');
    expect(inEnglish(issues[2].message)).toContain('tubeDiameter, boardThickness');
  });

  it('names the field, the value and the limit of a number out of range', () => {
    const issue = onlyIssueOf({ ...good, cloth: { allowance: 90 } });
    expect(issue).toMatchObject({
      code: 'file-out-of-range',
      path: 'cloth.allowance',
      measured: 90,
      limit: 50,
    });
    expect(inEnglish(issue.message)).toMatch(/cloth\.allowance is 90.*at most 50/);
  });

  it('looks inside sided measures', () => {
    const sided = (value: unknown) => ({
      ...good,
      body: { figure: 'bust', measures: { shoulderDrop: value } },
    });
    expect(onlyIssueOf(sided({ left: -4, right: 40 })).path).toBe('body.measures.shoulderDrop.left');
    expect(onlyIssueOf(sided({ left: 40 }))).toMatchObject({
      code: 'file-missing-key',
      path: 'body.measures.shoulderDrop.right',
    });
    const middle = onlyIssueOf(sided({ left: 40, right: 41, middle: 3 }));
    expect(middle).toMatchObject({ code: 'file-unknown-key', path: 'body.measures.shoulderDrop.middle' });
    expect(inEnglish(middle.message)).toContain('left, right');
    expect(onlyIssueOf(sided('40'))).toMatchObject({ code: 'file-wrong-type' });
  });

  it('says which formats and versions are understood', () => {
    expect(onlyIssueOf({ ...good, format: 'other' })).toMatchObject({
      code: 'file-wrong-format',
      path: 'format',
    });
    const newer = onlyIssueOf({ ...good, version: 2 });
    expect(newer).toMatchObject({ code: 'file-unknown-version', path: 'version' });
    expect(inEnglish(newer.message)).toContain('version is 2; this program understands 1');
    for (const version of [0, 1.5, '1', null, undefined]) {
      expect(onlyIssueOf({ ...good, version }).code).toBe('file-unknown-version');
    }
    for (const notAnObject of ['"text"', '[]', 'null', '3', 7, undefined]) {
      expect(onlyIssueOf(notAnObject).code).toBe('file-wrong-format');
    }
  });

  it('says what is missing and what may be chosen', () => {
    const missing = issuesOf(
      parseProject(changed((f) => delete (f as Record<string, unknown>).displayUnits)),
    );
    expect(missing[0]).toMatchObject({ code: 'file-missing-key', path: 'displayUnits' });
    expect(inEnglish(missing[0].message)).toContain('“cm” or “in”');
    const figure = onlyIssueOf({ ...good, body: { ...good.body, figure: 'torso' } });
    expect(figure).toMatchObject({ code: 'file-wrong-choice', path: 'body.figure' });
    expect(inEnglish(figure.message)).toContain('torso');
  });

  it('refuses numbers JSON cannot hold', () => {
    const text = JSON.stringify(good).replace('940', '1e999');
    expect(onlyIssueOf(text).path).toBe('body.measures.bustGirth');
  });

  it('points at the line and column of broken JSON', () => {
    const text = JSON.stringify(good, null, 2).replace('"version": 1,', '"version": 1');
    const issue = onlyIssueOf(text);
    expect(issue.code).toBe('file-not-json');
    // The comma is missed where the next key begins: line 4, after two spaces.
    expect(inEnglish(issue.message)).toContain('line 4, column 3: a comma or a closing brace');
  });

  it('refuses a key given twice, which JSON readers drop silently', () => {
    const text = JSON.stringify(good).replace('"bustGirth":940', '"bustGirth":940,"bustGirth":900');
    expect(inEnglish(onlyIssueOf(text).message)).toContain('“bustGirth” is given twice');
  });

  it('agrees with the runtime reader on which texts are JSON', () => {
    const valid = JSON.stringify(good, null, 1);
    let broken = 0;
    fc.assert(
      fc.property(
        fc.nat(valid.length - 1),
        fc.constantFrom('', '"', '{', '}', ',', '\\', '0', '\n', 'x'),
        (at, c) => {
          const text = valid.slice(0, at) + c + valid.slice(at + 1);
          let isJson = true;
          try {
            JSON.parse(text);
          } catch {
            isJson = false;
            broken++;
          }
          const result = parseProject(text);
          const saysBroken = !result.ok && inEnglish(result.issues[0].message).includes('not readable JSON');
          expect(saysBroken).toBe(!isJson);
        },
      ),
      { numRuns: 500 },
    );
    expect(broken).toBeGreaterThan(50);
  });
});

describe('serializeProject', () => {
  const measureId = fc.stringMatching(/^[a-z][A-Za-z]{1,12}$/);
  const mm = fc.double({ min: 0, max: 4000, noNaN: true }).map((x) => (Object.is(x, -0) ? 0 : x));
  const project = fc.record({
    format: fc.constant('loftseam-project' as const),
    version: fc.constant(1 as const),
    name: fc.string({ maxLength: 30 }),
    displayUnits: fc.constantFrom('cm' as const, 'in' as const),
    body: fc.record(
      {
        figure: fc.constantFrom('bust' as const, 'chest' as const),
        measures: fc.dictionary(measureId, fc.oneof(mm, fc.record({ left: mm, right: mm })), {
          noNullPrototype: true,
        }),
        readings: fc.dictionary(measureId, fc.array(mm, { minLength: 1, maxLength: 3 }), {
          noNullPrototype: true,
        }),
        shape: fc.dictionary(measureId, fc.oneof(fc.string({ maxLength: 9 }), mm), { noNullPrototype: true }),
      },
      { requiredKeys: ['figure', 'measures'], noNullPrototype: true },
    ),
    seams: fc.record({ layout: fc.string({ maxLength: 9 }) }, { requiredKeys: [], noNullPrototype: true }),
    cloth: fc.record(
      { allowance: fc.double({ min: 0, max: 50, noNaN: true }).map(Math.abs) },
      { requiredKeys: [], noNullPrototype: true },
    ),
    inside: fc.constant({}),
    cutting: fc.constant({}),
  });

  it('is read back as the same project', () => {
    fc.assert(
      fc.property(project, (p) => {
        const result = parseProject(serializeProject(p));
        expect(result).toEqual({ ok: true, value: p, issues: [] });
      }),
    );
  });

  it('gives the same bytes whatever the order of the keys', () => {
    const a = parseProject(good);
    const reversed = Object.fromEntries(Object.entries(good).reverse());
    reversed.body = {
      measures: { shoulderDrop: { right: 40, left: 48 }, bustGirth: 940 },
      figure: 'bust',
    };
    const b = parseProject(reversed);
    if (!a.ok || !b.ok) throw new Error('both orders must be readable');
    expect(serializeProject(b.value)).toBe(serializeProject(a.value));
    expect(serializeProject(a.value).split('\n').slice(0, 3)).toEqual([
      '{',
      '  "format": "loftseam-project",',
      '  "version": 1,',
    ]);
    expect(serializeProject(a.value).endsWith('}\n')).toBe(true);
  });
});
