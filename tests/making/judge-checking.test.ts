import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Form } from '../../src/core/form/index.ts';
import { type CheckingEntry, parseProject } from '../../src/core/project/index.ts';
import { judgeFilling, type LevelTarget } from '../../src/core/simulate/index.ts';
import { inEnglish } from '../in-english.ts';
import { COARSE, sharedPipeline } from '../shared-pipeline.ts';

let form: Form;

const levelTargets = (made: Form): readonly LevelTarget[] => made.making?.stuffing.targets ?? [];

function judgeChecking(made: Form, { levels, state }: Pick<CheckingEntry, 'levels' | 'state'>) {
  if (!made.making) throw new Error('no order of work');
  return judgeFilling(levels, state, made.making.stuffing);
}

beforeAll(() => {
  const project = parseProject(readFileSync('shared/demos/average.loftseam.json', 'utf8'));
  if (!project.ok) throw new Error('demo does not open');
  const made = sharedPipeline.makeForm(project.value, COARSE);
  if (!made.ok)
    throw new Error(
      made.issues
        .map(({ message }) => message)
        .map(inEnglish)
        .join('\n'),
    );
  form = made.value;
});

describe('judging a form by its log', () => {
  test('targets are what was typed', () => {
    const typed = form.project.body.measures;
    const girthOf = (id: string) => levelTargets(form).find((target) => target.id === id)?.girth ?? 0;
    expect(girthOf('bust')).toBeCloseTo(typed.bustGirth as number, 0);
    expect(girthOf('waist')).toBeCloseTo(typed.waistGirth as number, 0);
    expect(girthOf('hip')).toBeCloseTo(typed.hipGirth as number, 0);
  });

  test('a waist that went round: front-to-back ties shorter, and it gets shallower and wider by them', () => {
    const waist = levelTargets(form).find(({ id }) => id === 'waist');
    if (!waist) throw new Error('no waist');
    const { girth, width, depth } = waist;
    const [found, ...rest] = judgeChecking(form, {
      state: 'filled',
      levels: { waist: { girth: girth + 2, width: width - 10, depth: depth + 12 } },
    });
    expect(rest).toEqual([]);
    expect(found.kind).toBe('shape');
    if (found.kind !== 'shape' || !found.change) throw new Error('no change of ties');
    expect(found.change.depth).toBeCloseTo(-12, 0);
    expect(found.change.width).toBeGreaterThan(3);
    expect(found.change.change).toBeLessThan(-5);
    expect(found.change.change).toBeGreaterThan(-25);
    expect(found.ties.map(({ name }) => inEnglish(name))).toEqual(
      expect.arrayContaining(['centre front tie', 'centre back tie', 'right web', 'left web']),
    );
    // Ties in line share what a web takes alone.
    const of = (name: string) => found.ties.find((tie) => inEnglish(tie.name) === name)?.change ?? 0;
    expect(of('centre front tie') + of('centre back tie')).toBeCloseTo(of('right web'), 9);
  });

  test('an empty shell too wide at the hip is taken in over every upright seam there', () => {
    const hip = levelTargets(form).find(({ id }) => id === 'hip');
    if (!hip) throw new Error('no hip');
    const [found] = judgeChecking(form, { state: 'empty', levels: { hip: { girth: hip.emptyGirth + 16 } } });
    if (found.kind !== 'seam') throw new Error('not the seams');
    // Eight upright panels have eight seams: 16 mm is 1 mm on both plies of each.
    expect(found.letters.length).toBe(8);
    expect(found.each).toBeCloseTo(1, 6);
  });
});
