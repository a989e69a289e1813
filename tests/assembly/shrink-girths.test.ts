import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Form } from '../../src/core/form/index.ts';
import { type Project, parseProject } from '../../src/core/project/index.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';
import { sharedPipeline } from '../shared-pipeline.ts';

// mm
const levelLimit = 0.2;
const seamLimit = 0.01;

const read = parseProject(
  readFileSync(path.join(import.meta.dirname, '../../shared/demos/average.loftseam.json'), 'utf8'),
);
if (!read.ok) throw new Error(inEnglish(read.issues[0].message));
const project: Project = read.value;

function make(inside: Project['inside']): Form {
  const form = sharedPipeline.makeForm({ ...project, inside }, { speaker: ENGLISH, targetTriangles: 4000 });
  if (!form.ok)
    throw new Error(
      form.issues
        .map(({ message }) => message)
        .map(inEnglish)
        .join('\n'),
    );
  return form.value;
}

describe('panels of cloth that grows and is covered', () => {
  const plain = make({});
  const shrunk = make({ measuredGrowth: 0.015, coverThickness: 5, clothThickness: 0.6 });

  it('come smaller in girth, level by level, by layers and growth', () => {
    // k = 0.015/1.015/100 per mm of radius; G' = G − 2π·5.3; H = G'/(1 + kG'/2π).
    const k = 0.015 / 1.015 / 100 / (2 * Math.PI);
    for (const { id, length3d, lengthFlat } of shrunk.report.levels) {
      const bare = length3d - 2 * Math.PI * 5.3;
      expect(Math.abs(lengthFlat - bare / (1 + k * bare)), id).toBeLessThan(levelLimit);
      const taken = shrunk.inside!.levels.find((level) => level.id === id)!.takenOff;
      // Tape and level line differ a little where a hollow is bridged.
      expect(Math.abs(length3d - lengthFlat - taken), id).toBeLessThan(0.5);
    }
  });

  it('still sew together, and keep their uprights', () => {
    for (const seam of shrunk.report.seams) {
      expect(seam.maxMarkGap, seam.id).toBeLessThan(seamLimit);
    }
    // A line of several seams keeps the sum of them.
    const sums = (form: Form): Map<string, number> => {
      const found = new Map<string, number>();
      for (const { id, lengthsFlat } of form.report.seams) {
        const line = /^(centre|side|shoulder)/.test(id) ? id.replace(/\d+$/, '') : '';
        if (line) found.set(line, (found.get(line) ?? 0) + lengthsFlat[0]);
      }
      return found;
    };
    const before = sums(plain);
    expect(before.size).toBeGreaterThanOrEqual(6);
    for (const [line, length] of sums(shrunk)) {
      expect(Math.abs(length - before.get(line)!), line).toBeLessThan(0.1);
    }
    expect(shrunk.report.issues.filter(({ severity }) => severity === 'error')).toEqual([]);
  });

  it('fill out to the girths of the body: nearer than the form that took nothing off', () => {
    for (const { id, finished, held } of shrunk.inside!.levels) {
      expect(Math.abs(finished.girth - held.girth), id).toBeLessThan(1);
      const before = plain.inside!.levels.find((level) => level.id === id)!;
      expect(before.finished.girth - held.girth, id).toBeGreaterThan(3);
    }
  });

  it('get another revision; without growth nothing changes', () => {
    const words = (form: Form): string => JSON.stringify(form.pieces[0].texts);
    expect(words(shrunk)).not.toBe(words(plain));
    expect(plain.report.levels.every((l) => Math.abs(l.lengthFlat - l.length3d) < levelLimit)).toBe(true);
  });
});

describe('a change inside', () => {
  it('drafts the shell anew only when lines on the panels or girths change', () => {
    const first = make({});
    const heavier = make({ garmentMass: 9 });
    expect(heavier.pieces).toBe(first.pieces);
    expect(heavier.inside!.stand.totalMass).toBeGreaterThan(first.inside!.stand.totalMass);
    const places = make({ webPlaces: 'seams' });
    expect(places.pieces).not.toBe(first.pieces);
    expect(places.flat).toBe(first.flat);
  });
});
