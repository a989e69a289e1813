/** Turning a grain by hand: what pointer, keys and numbers mean, and what the cloth is asked for meanwhile. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { createActions, createAppStore, historyOf } from '../../src/app/store/index.ts';
import { readDegrees } from '../../src/app/views/panels/grain-field.tsx';
import { strainAtTurn } from '../../src/app/views/panels/strain-at-turn.ts';
import { sayTurn, turnByKey, turnTowards } from '../../src/app/views/panels/turn-of-grain.ts';
import { createPipeline } from '../../src/core/pipeline/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { words as english } from '../../src/language/english/app.ts';
import { createNumbers } from '../../src/language/index.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';
import { projectForTests } from './fixtures/project-for-tests.ts';

describe('the pointer on the dial', () => {
  it('means the angle it stands at, to the left positive', () => {
    // x right, y down. 20° left of straight up: (−sin 20°, −cos 20°).
    const at = (deg: number) =>
      turnTowards(-Math.sin((deg * Math.PI) / 180), -Math.cos((deg * Math.PI) / 180), false);
    expect(at(20)).toBe(20);
    expect(at(-33)).toBe(-33);
    // The lower end of the same grain line.
    expect(at(200)).toBe(20);
  });

  it('catches upright, bias and crosswise, and goes in steps of 15° when asked', () => {
    const at = (deg: number, isStepped = false) =>
      turnTowards(-Math.sin((deg * Math.PI) / 180), -Math.cos((deg * Math.PI) / 180), isStepped);
    expect(at(3)).toBe(0);
    expect(at(-47.5)).toBe(-45);
    expect(at(41.5)).toBe(45);
    expect(at(88)).toBe(90);
    expect(at(5)).toBe(5);
    expect(at(38, true)).toBe(45);
    expect(at(-20, true)).toBe(-15);
  });
});

it('arrow keys turn by one degree or fifteen, never beyond a quarter turn', () => {
  expect(turnByKey(0, 'ArrowLeft', false)).toBe(1);
  expect(turnByKey(0, 'ArrowRight', true)).toBe(-15);
  expect(turnByKey(85, 'ArrowUp', true)).toBe(90);
  expect(turnByKey(30, 'Home', false)).toBe(0);
  expect(turnByKey(0, 'a', false)).toBeNull();
});

it('reads degrees as people type them, and nothing else', () => {
  expect(readDegrees(' 12,5° ')).toBe(12.5);
  expect(readDegrees('−7.5')).toBe(-7.5);
  expect(readDegrees('90')).toBe(90);
  for (const bad of ['', '91', 'left', '1e1', '--4', 'NaN']) expect(readDegrees(bad), bad).toBeNull();
  const say = (degrees: number) => sayTurn(degrees, english.grain, createNumbers('en'));
  expect(say(-12)).toBe('12° to the right');
  expect(say(0.02)).toBe('upright');
});

describe('the grain in the project', () => {
  it('is one named step for a piece and its partner, and leaves no trace when upright again', () => {
    const store = createAppStore();
    const actions = createActions(store);
    actions.openProject(projectForTests(), 'Open');
    store.temporal.getState().clear();
    actions.setGrain({ frontRight: 0.2, frontLeft: -0.2 }, 'front right');
    expect(store.getState().project?.cloth.grain).toEqual({ frontRight: 0.2, frontLeft: -0.2 });
    expect(historyOf(store).undo).toBe('Turn the grain of front right');
    actions.setGrain({ frontRight: 0 }, 'front right');
    expect(store.getState().project?.cloth.grain).toEqual({ frontLeft: -0.2 });
    actions.setGrain({ frontLeft: 0 }, 'front left');
    expect('grain' in (store.getState().project?.cloth ?? {})).toBe(false);
    for (let i = 0; i < 3; i++) actions.undo();
    expect(store.getState().project?.cloth).toEqual(projectForTests().cloth);
  });
});

describe('strain while turning', () => {
  const file = path.join(import.meta.dirname, '../../shared/demos/average.loftseam.json');
  const read = parseProject(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(inEnglish(read.issues[0].message));
  const pipeline = createPipeline();
  const make = (grain: Record<string, number>) => {
    const project = { ...read.value, cloth: { ...read.value.cloth, grain } };
    const made = pipeline.makeForm(project, { speaker: ENGLISH, targetTriangles: 2000, isDraft: true });
    if (!made.ok) throw new Error(inEnglish(made.issues[0].message));
    return made.value;
  };

  it('foretells what the report says of the form made with that turn', () => {
    const upright = make({});
    const index = 1;
    const { id } = upright.shell.panels[index];
    const foretold = strainAtTurn(upright, index, 0.3);
    const turned = make({ [id]: 0.3 });
    const told = turned.report.panels[index].cloth;
    expect(foretold.usage).toBeCloseTo(told.usage, 6);
    for (const axis of ['warp', 'weft', 'bias'] as const) {
      expect(foretold[axis][0]).toBeCloseTo(told[axis].min, 9);
      expect(foretold[axis][1]).toBeCloseTo(told[axis].max, 9);
    }
    // Turned back on the form made with a turn, it is the upright one again.
    expect(strainAtTurn(turned, index, 0).usage).toBeCloseTo(upright.report.panels[index].cloth.usage, 6);
  });

  it('changes warp for weft at a quarter turn', () => {
    const form = make({});
    const [upright, across] = [strainAtTurn(form, 0, 0), strainAtTurn(form, 0, Math.PI / 2)];
    expect(across.warp[0]).toBeCloseTo(upright.weft[0], 9);
    expect(across.weft[1]).toBeCloseTo(upright.warp[1], 9);
  });
});
