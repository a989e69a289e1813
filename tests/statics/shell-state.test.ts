import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../src/core/base/index.ts';
import { findSlot } from '../../src/core/math/index.ts';
import { workOfPressure } from '../../src/core/statics/add-pressure.ts';
import type { RigidBody, ShellProblem } from '../../src/core/statics/index.ts';
import { moveShape } from '../../src/core/statics/pose-bodies.ts';
import { prepareShell } from '../../src/core/statics/prepare-shell.ts';
import { readyShell, startShape, sumShell } from '../../src/core/statics/shell-state.ts';
import { makeTube } from './sample-shells.ts';

/** A crumpled tube with strands, strips, and an upper board that moves as told. */
function crumpled(motion: RigidBody['motion']): ShellProblem {
  const tube = makeTube(100, 200, 7, 4, { warp: 40, weft: 25, shear: 8, poisson: 0.2 }, motion);
  const random = seededRandom(5);
  return {
    ...tube,
    start: tube.start.map((x) => x + 12 * (random() - 0.5)),
    // In the cloth, beside the upper board, on an edge, and on the first one's corner.
    places: {
      corners: Uint32Array.of(8, 9, 15, 22, 23, 29, 12, 13, 19, 9, 10, 16),
      weights: Float64Array.of(0.5, 0.3, 0.2, 0.1, 0.3, 0.6, 0.6, 0.4, 0, 0.2, 0.3, 0.5),
    },
    // Across, to the free board, between both boards, one that hangs; from places across, to a point, to a board, to one another.
    strands: {
      ends: Uint32Array.of(8, 17, 9, 33, 30, 2, 10, 11, 37, 39, 37, 25, 38, 1, 38, 31, 37, 40),
      lengths: Float64Array.of(100, 150, 80, 900, 90, 70, 60, 40, 20),
      stiffness: Float64Array.of(1, 2, 3, 4, 5, 6, 7, 8, 9),
    },
    strips: {
      ends: Uint32Array.of(7, 14, 14, 21, 21, 28, 39, 40),
      lengths: Float64Array.of(40, 60, 50, 70),
      stiffness: Float64Array.of(5, 5, 5, 5),
    },
  };
}

const MOTIONS: RigidBody['motion'][] = [{ kind: 'free' }, { kind: 'slide', axis: [0.3, -0.2, 1] }];

describe.each(MOTIONS)('sums of a shell with a board that moves: $kind', (motion) => {
  const problem = crumpled(motion);
  const shell = prepareShell(problem);
  const state = readyShell(problem, shell, 0.01);
  const here = startShape(state);
  const there = startShape(state);
  const count = 3 * shell.nodeCount;
  sumShell(state, here, true);
  const gradient = state.sums.gradient.slice();
  const tangent = state.sums.tangent.slice();
  const axis = motion.kind === 'slide' ? motion.axis : [0, 0, 0];

  /** Energy of cloth and links less the work of pressure from here, `share` along a step. */
  const energyAt = (step: Float64Array, share: number): number => {
    moveShape(shell, state.frames, here, step, share, there);
    const energy = sumShell(state, there, false);
    return energy - workOfPressure(shell.faces, state.pressure, here.positions, there.positions);
  };
  const steps = Array.from({ length: 40 }, (_, k) => {
    const random = seededRandom(100 + k);
    const step = Float64Array.from({ length: count }, () => random() - 0.5);
    // A sliding board's node is asked along its axis only.
    const last = count - 3;
    if (motion.kind === 'slide') {
      const along = random() - 0.5;
      for (let i = 0; i < 3; i++) step[last + i] = along * axis[i];
    }
    return step;
  });

  it('has the gradient of its energy, by central differences', () => {
    for (const step of steps) {
      const h = 1e-4;
      const slope = (energyAt(step, h) - energyAt(step, -h)) / (2 * h);
      const found = step.reduce((sum, x, k) => sum + x * gradient[k], 0);
      expect(Math.abs(found - slope)).toBeLessThan(1e-5 * Math.max(1, Math.abs(slope)));
    }
  });

  it('has the tangent of its energy, by second differences', () => {
    const product = (step: Float64Array): number => {
      let sum = 0;
      for (let a = 0; a < shell.nodeCount; a++) {
        for (let b = 0; b <= a; b++) {
          const slot = findSlot(shell.pattern, a, b);
          if (slot < 0) continue;
          for (let i = 0; i < 3; i++)
            for (let j = 0; j < 3; j++)
              sum += (a === b ? 1 : 2) * step[3 * a + i] * tangent[9 * slot + 3 * i + j] * step[3 * b + j];
        }
      }
      return sum;
    };
    const h = 2e-3;
    for (const step of steps) {
      const bend = (energyAt(step, h) - 2 * energyAt(step, 0) + energyAt(step, -h)) / (h * h);
      expect(Math.abs(product(step) - bend)).toBeLessThan(1e-4 * Math.abs(bend));
    }
  });
});
