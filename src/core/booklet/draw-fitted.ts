import type { Drawing } from '../drawing/index.ts';
import { type Camera, drawForm, type FormChoices, type Scene } from '../picture/index.ts';

/** A picture has so much room on a page, mm of paper. */
const ROOM = { width: 145, height: 85 } as const;
/** Letters keep their size, so one that is too large needs a second or third try; and a little to spare. */
const TRIES = 4;
const SPARE = 0.985;

/** A picture no larger than its room: drawn again, smaller, while it is. `draw`: at a share of its usual scale. */
export function drawFitted(draw: (share: number) => Drawing): Drawing {
  let share = 1;
  let drawing = draw(share);
  for (let k = 1; k < TRIES && !hasRoom(drawing); k++) {
    share *= SPARE * Math.min(1, ROOM.width / drawing.width, ROOM.height / drawing.height);
    drawing = draw(share);
  }
  return drawing;
}

function hasRoom({ width, height }: Drawing): boolean {
  return width <= ROOM.width && height <= ROOM.height;
}

/** A scene in its room. */
export function drawFittedForm(scene: Scene, camera: Camera, choices: FormChoices): Drawing {
  return drawFitted((share) => drawForm(scene, { ...camera, scale: share * camera.scale }, choices));
}
