import type { Form } from '../core/form/index.ts';
import type { AppState, BodyDatabase, CardPicture, KeptCard } from './store/index.ts';
import { outlineOf, pathSeen, pointsOfPath, viewFromSide } from './views/parts/side-drawing.ts';

/** Every so many points of a seam are enough for a picture of thumb size. */
const SEAM_STEP = 4;

/** Puts picture and steps of the open body beside it. A card that is refused is made again another time. */
export async function keepCard({ form, bodyId }: AppState, database: BodyDatabase): Promise<void> {
  if (form) await database.putCard(cardOf(form, bodyId)).catch(() => {});
}

function cardOf(form: Form, id: string): KeptCard {
  const steps = form.making?.steps.filter(({ isOptional }) => !isOptional).map((step) => step.id) ?? null;
  return { id, picture: pictureOf(form), steps };
}

/** A few milliseconds. */
function pictureOf({ shell: { mesh, seams } }: Form): CardPicture {
  const front = viewFromSide(mesh.positions, 'front');
  const lines = seams.map(({ points }) =>
    pathSeen(
      pointsOfPath(
        points.filter((_, i) => i % SEAM_STEP === 0 || i === points.length - 1),
        mesh.positions,
      ),
      front,
    ),
  );
  return { front: front.outline, side: outlineOf(mesh.positions, 'side'), seams: lines.join('') };
}
