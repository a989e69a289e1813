import { expect, test } from 'vitest';
import {
  distanceColour,
  type FilledView,
  looseness,
  loosenessColour,
  positionsInView,
  sharesOfStates,
  tensionColour,
} from '../../src/app/store/index.ts';
import type { FormFilled } from '../../src/core/form/index.ts';
import { SLACK, TAUT, WRINKLED } from '../../src/core/statics/index.ts';

/** A unit square in four triangles round its middle, which the filling pushes out by 2 mm. */
const corners = [0, 0, 0, 1, 0, 0, 1, 1, 0, 0, 1, 0];
const filled = {
  shell: {
    mesh: {
      positions: new Float64Array([...corners, 0.5, 0.5, 0]),
      triangles: new Uint32Array([0, 1, 4, 1, 2, 4, 2, 3, 4, 3, 0, 4]),
    },
  },
  positions: new Float64Array([...corners, 0.5, 0.5, 2]),
  states: new Uint8Array([TAUT, WRINKLED, WRINKLED, SLACK]),
} as unknown as FormFilled;
const view: FilledView = { look: 'distance', share: 1, isEnlarged: false, hasBody: false };

test('the filled form goes from the shape of the body to its own', () => {
  const middle = (change: Partial<FilledView>) => positionsInView(filled, { ...view, ...change })[14];
  expect(middle({ share: 0 })).toBe(0);
  expect(middle({ share: 0.25 })).toBe(0.5);
  expect(middle({})).toBe(2);
  expect(middle({ isEnlarged: true })).toBe(10);
  expect(positionsInView(filled, view).slice(0, 12)).toEqual(Float64Array.from(corners));
});

test('shares of taut, wrinkled and slack cloth are those of its area', () => {
  expect(sharesOfStates(filled)).toEqual({ taut: 0.25, wrinkled: 0.5, slack: 0.25 });
});

test('cloth outside of the body is warm and inside cold, taut cloth warmer and loose cloth colder', () => {
  const warmth = ([red, , blue]: readonly number[]) => red - blue;
  expect(warmth(distanceColour(8))).toBeGreaterThan(warmth(distanceColour(2)));
  expect(warmth(distanceColour(2))).toBeGreaterThan(warmth(distanceColour(0)));
  expect(warmth(distanceColour(-8))).toBeLessThan(0);
  expect(warmth(tensionColour(1))).toBeGreaterThan(warmth(tensionColour(0.2)));
  const ofState = (state: number) => warmth(loosenessColour(looseness(state)));
  expect(ofState(SLACK)).toBeLessThan(ofState(WRINKLED));
  expect(ofState(WRINKLED)).toBeLessThan(ofState(TAUT));
});
