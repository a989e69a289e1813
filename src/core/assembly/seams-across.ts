import type { Form } from '../form/index.ts';
import { orderSeams } from './order-seams.ts';

/** Letters of the upright seams that cross each level, and of those among them at the sides; each line counts once a side. */
export function seamsAcross({
  shell,
  body,
}: Pick<Form, 'shell' | 'body'>): Record<string, { sides: string[]; all: string[] }> {
  const order = orderSeams(shell, body.landmarks.neckFront.v);
  return Object.fromEntries(
    shell.levels.map(({ id, vertices }) => {
      const loop = new Set(vertices);
      const seen = new Set<string>();
      const across = order.filter(({ seam, side }) => {
        const key = `${seam.lineId}/${side}`;
        if (seam.isLevel || seen.has(key) || !seam.points.some((point) => loop.has(point))) return false;
        seen.add(key);
        return true;
      });
      const letters = (of: typeof across) => of.map(({ seam }) => seam.letter);
      return [id, { sides: letters(across.filter(({ role }) => role === 'side')), all: letters(across) }];
    }),
  );
}
