import type { Drawing } from '../drawing/index.ts';
import { type Camera, drawForm, type FormChoices, type Scene } from '../picture/index.ts';
import type { PictureRoom, Wish } from './wish.ts';

/** Letters keep their size, so one that is too large needs a second or third try; and a little to spare. */
const TRIES = 4;
const SPARE = 0.985;

/** A picture no larger than its room: drawn again, smaller, while it is. `draw`: at a share of its usual scale. */
export function drawFitted(room: PictureRoom, draw: (share: number) => Drawing): Drawing {
  let share = 1;
  let drawing = draw(share);
  for (let k = 1; k < TRIES && !hasRoom(drawing, room); k++) {
    share *= SPARE * Math.min(1, room.width / drawing.width, room.height / drawing.height);
    drawing = draw(share);
  }
  return drawing;
}

function hasRoom({ width, height }: Drawing, room: PictureRoom): boolean {
  return width <= room.width && height <= room.height;
}

/** A scene in the wish's room, with its title. */
export function drawFittedForm(
  { title, say, room }: Wish,
  scene: Scene,
  camera: Camera,
  choices: Omit<FormChoices, 'title' | 'say'>,
): Drawing {
  return drawFitted(room, (share) =>
    drawForm(scene, { ...camera, scale: share * camera.scale }, { title, say, ...choices }),
  );
}
