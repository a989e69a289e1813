import type { Say } from '../base/index.ts';
import type { Drawing } from '../drawing/index.ts';
import { drawForm } from './draw-form.ts';
import type { SceneParts } from './make-scene.ts';
import { phrase } from './phrases.ts';
import { CAMERAS } from './project-camera.ts';
import type { Scene } from './types.ts';

/** mm, kg, N: what tries the form on its stand. */
export interface StandTrial {
  /** Of the floor under the waist, negative. */
  readonly floor: number;
  /** A garment on one side: its mass, and how far from the pole it hangs. */
  readonly mass: number;
  readonly offset: number;
  /** The level push that tips it, and how high over the floor. */
  readonly force: number;
  readonly pushHeight: number;
  /** Tilted by hand, radians. */
  readonly tilt: number;
}

/** Length of an arrow, mm. */
const ARROW = 260;
/** Arrows end so far short of the form, mm. */
const SHORT = 20;

/**
 * The form on its stand (a scene with a stand) from the side, with the load, the push and the tilt that try it. A twentieth of true size
 * or a `share` of that, mm of paper.
 */
export function drawStand(
  scene: Scene,
  parts: SceneParts,
  trial: StandTrial,
  title: string,
  say: Say,
  share = 1,
): Drawing {
  const { floor, mass, offset, force, pushHeight, tilt } = trial;
  const y = parts.shape?.pole.y ?? 0;
  const top = parts.shape?.pole.zTop ?? 0;
  const z = floor + pushHeight;
  const back = farthestBack(parts, z) - SHORT;
  return drawForm(
    scene,
    { ...CAMERAS.side, scale: share / 20 },
    {
      title,
      say,
      hasLevels: false,
      show: ({ kind, id }) =>
        kind === 'panel' || kind === 'plate' || kind === 'pole' || id.startsWith('leg-') ? 'solid' : 'none',
      arrows: [
        {
          from: [0, y + offset, top + ARROW],
          to: [0, y + offset, top + SHORT],
          words: phrase('picture.load', { mass }),
        },
        { from: [0, back - ARROW, z], to: [0, back, z], words: phrase('picture.push', { force }) },
        {
          from: [0, y + 310, top],
          to: [0, y + 370, top - 230],
          bend: -0.25,
          words: phrase('picture.tilt', { angle: tilt }),
        },
      ],
    },
  );
}

/** How far back the shell reaches about a height, mm. */
function farthestBack({ shell: { mesh } }: SceneParts, z: number): number {
  let least = 0;
  for (let i = 0; i < mesh.positions.length; i += 3) {
    if (Math.abs(mesh.positions[i + 2] - z) < 30) least = Math.min(least, mesh.positions[i + 1]);
  }
  return least;
}
