import { describe, expect, it } from 'vitest';
import { parseProject } from '../../src/core/project/index.ts';
import { LAYOUTS } from '../../src/core/seams/index.ts';
import { inEnglish } from '../in-english.ts';

function withLines(lines: unknown): unknown {
  return {
    format: 'loftseam-project',
    version: 1,
    name: 'Viola',
    displayUnits: 'cm',
    body: { figure: 'bust', measures: { bustGirth: 940 } },
    seams: { lines },
  };
}

describe('a layout of one’s own in the project file', () => {
  it.each(LAYOUTS.map((layout) => layout.id))('%s can be kept as lines', (id) => {
    const lines = LAYOUTS.find((layout) => layout.id === id)?.lines;
    const result = parseProject(JSON.parse(JSON.stringify(withLines(lines))));
    expect(result.issues).toEqual([]);
    expect(result.ok && result.value.seams.lines).toEqual(lines);
  });

  it('names what is wrong, and where', () => {
    const line = {
      id: 'a',
      name: 'a',
      side: 'right',
      through: [
        { u: 0.5, v: 0 },
        { u: 0.5, v: 400 },
      ],
    };
    const issuesOf = (change: object) => parseProject(withLines([{ ...line, ...change }])).issues;
    expect(issuesOf({ side: 'left' })).toMatchObject([
      { code: 'file-wrong-choice', path: 'seams.lines.0.side' },
    ]);
    expect(issuesOf({ through: [{ u: 0.5 }] })).toMatchObject([
      { code: 'file-out-of-range', path: 'seams.lines.0.through', limit: 2 },
    ]);
    expect(issuesOf({ through: [{ u: 'x' }, {}] })).toMatchObject([
      { code: 'file-wrong-type', path: 'seams.lines.0.through.0.u' },
    ]);
    const [unknown] = issuesOf({ through: [{ angle: 1 }, {}] });
    expect(unknown).toMatchObject({ code: 'file-unknown-key', path: 'seams.lines.0.through.0.angle' });
    expect(inEnglish(unknown.message)).toContain('landmark');
    expect(issuesOf({ ease: { fraction: 0.2, longer: 'front' } })).toMatchObject([
      { code: 'file-out-of-range', path: 'seams.lines.0.ease.fraction', limit: 0.05 },
    ]);
  });
});
