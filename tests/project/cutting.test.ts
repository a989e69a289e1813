import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { readCutting } from '../../src/core/assembly/index.ts';
import { parseProject, serializeProject } from '../../src/core/project/index.ts';
import { inEnglish } from '../in-english.ts';

const demo = JSON.parse(
  readFileSync(path.join(import.meta.dirname, '../../shared/demos/average.loftseam.json'), 'utf8'),
);
const parse = (sections: object) => parseProject(JSON.stringify({ ...demo, ...sections }));

describe('paper, printer and cutting machine in the saved project', () => {
  const cutting = {
    paper: 'letter',
    margin: 12.7,
    joint: 'butt',
    measuredBars: { across: 178.9, up: 200.2 },
    mat: { width: 600, height: 400 },
    kerf: 0.15,
    bladeOffset: 0.5,
    overcut: 1,
    strokeText: true,
    colours: { cut: '#ff00ff', sew: 'none' },
  };

  it('come back as they were saved', () => {
    const project = parse({ cutting });
    if (!project.ok)
      throw new Error(
        project.issues
          .map(({ message }) => message)
          .map(inEnglish)
          .join(),
      );
    expect(project.value.cutting).toEqual(cutting);
    const again = parseProject(serializeProject(project.value));
    expect(again.ok && again.value.cutting).toEqual(cutting);
  });

  it('become options of the files, the bars a correction: 180 ÷ 178.9 and 200 ÷ 200.2', () => {
    const project = parse({ cutting });
    if (!project.ok) throw new Error('cutting');
    const read = readCutting(project.value.cutting);
    if (!read.ok) throw new Error('options');
    expect(read.value.papers).toEqual(['letter']);
    expect(read.value.print?.correction?.x).toBeCloseTo(180 / 178.9, 12);
    expect(read.value.print?.correction?.y).toBeCloseTo(200 / 200.2, 12);
    expect(read.value.print).toMatchObject({ margin: 12.7, joint: 'butt' });
    expect(read.value.cutter).toEqual({
      mat: { width: 600, height: 400 },
      kerf: 0.15,
      bladeOffset: 0.5,
      overcut: 1,
      strokeText: true,
      colours: { cut: '#ff00ff', sew: 'none' },
    });
    expect(readCutting({})).toEqual({
      ok: true,
      value: { papers: ['a4'], print: {}, projector: {}, cutter: {} },
      issues: [],
    });
  });

  it('name the field of a bar that is far off', () => {
    const read = readCutting({ measuredBars: { across: 170, up: 200 } });
    expect(read.issues.map((issue) => issue.path)).toEqual(['cutting.measuredBars.across']);
  });

  it('are refused with the field named', () => {
    const cases: [object, string][] = [
      [{ cutting: { paper: 'a5' } }, 'cutting.paper'],
      [{ cutting: { kerf: 4 } }, 'cutting.kerf'],
      [{ cutting: { bladeOffset: -1 } }, 'cutting.bladeOffset'],
      [{ cutting: { colours: { cut: 'red' } } }, 'cutting.colours.cut'],
      [{ cutting: { matt: 1 } }, 'cutting.matt'],
      [{ cutting: { mat: { width: 10, height: 400 } } }, 'cutting.mat.width'],
      [{ cloth: { notchShape: 'star' } }, 'cloth.notchShape'],
      [{ cloth: { allowanceByKind: { seam: 90 } } }, 'cloth.allowanceByKind.seam'],
      [{ cloth: { allowanceByKind: { hem: 9 } } }, 'cloth.allowanceByKind.hem'],
      [{ cloth: { allowanceByMaterial: { webs: -2 } } }, 'cloth.allowanceByMaterial.webs'],
    ];
    for (const [sections, field] of cases) {
      const project = parse(sections);
      expect(project.ok, field).toBe(false);
      expect(
        project.issues.map((issue) => issue.path),
        field,
      ).toContain(field);
    }
  });
});
