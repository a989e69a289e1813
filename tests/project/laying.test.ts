import { describe, expect, it } from 'vitest';
import { parseProject, serializeProject } from '../../src/core/project/index.ts';
import { inEnglish } from '../in-english.ts';

const base = {
  format: 'loftseam-project',
  version: 1,
  name: 'Prospero',
  displayUnits: 'cm',
  body: { figure: 'chest', measures: {} },
};

const laying = {
  shell: {
    stockWidth: 1400,
    selvedge: 12,
    ways: 'one',
    grainTolerance: 0.05,
    grainTolerances: { neckBand: 0.1 },
    print: { kind: 'checks', along: 64, across: 32, meets: 'byHeight', level: 'hip', shiftUp: -20 },
    flaws: [
      [
        [0, 0],
        [50, 0],
        [0, 50],
      ],
    ],
    placed: [{ piece: 'neckBand', x: 10.5, y: 20, angle: -1.5, isHeld: true }],
  },
  card: {
    pieces: [
      {
        outline: [
          [0, 0],
          [400, 0],
          [400, 300],
        ],
        folds: [
          [
            [200, 0],
            [200, 300],
          ],
        ],
      },
    ],
  },
};

describe('what pieces are laid on', () => {
  it('is kept in the file as it was', () => {
    const read = parseProject({ ...base, laying });
    if (!read.ok) throw new Error(inEnglish(read.issues[0].message));
    expect(read.value.laying).toEqual(laying);
    const again = parseProject(serializeProject(read.value));
    expect(again.ok && again.value.laying).toEqual(laying);
  });

  it.each([
    [{ shell: { stockWidth: 20 } }, 'laying.shell.stockWidth', /100/],
    [{ shell: { widht: 1400 } }, 'laying.shell.widht', /widht/],
    [{ velvet: {} }, 'laying.velvet', /velvet/],
    [{ shell: { print: { kind: 'tartan' } } }, 'laying.shell.print.kind', /checks/],
    [{ shell: { print: { repeat: 3 } } }, 'laying.shell.print.repeat', /repeat/],
    [{ card: { pieces: [{ outline: [[0, 0]] }] } }, 'laying.card.pieces.0.outline', /3/],
    [
      {
        card: {
          pieces: [
            {
              outline: [
                [0, 0],
                [9, 0],
                [9, -1],
              ],
            },
          ],
        },
      },
      'laying.card.pieces.0.outline.2.1',
      /\b0\b/,
    ],
    [{ shell: { placed: [{ piece: 'a', x: 0, y: 0 }] } }, 'laying.shell.placed.0.angle', /angle/],
  ])('%o is told with its field', (wrong, path, words) => {
    const read = parseProject({ ...base, laying: wrong });
    expect(read.ok).toBe(false);
    expect(read.issues.map((issue) => issue.path)).toContain(path);
    expect(read.issues.map(({ message }) => inEnglish(message)).join(' ')).toMatch(words);
  });
});
