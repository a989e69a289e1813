import type { Form } from '../../core/form/index.ts';
import { layThread, type Thread } from '../store/index.ts';
import { CrispLine } from './crisp-line.tsx';
import { Pins } from './pins.tsx';

/** Darker than every seam thread, so that it is not taken for one. */
const BLACK = '#1d2126';

/** The thread laid over the body, seen through it where it passes behind, with a pin at each end. */
export function LaidThreadLine({ form, thread }: { readonly form: Form; readonly thread: Thread }) {
  const { from, to } = thread;
  const laid = from && to ? layThread(form, from, to) : null;
  const ends = [from, to].flatMap((place) => (place ? [place.at] : []));
  return (
    <group>
      {laid && (
        <>
          <CrispLine points={laid.points} colour={BLACK} width={2} opacity={0.3} isOnTop />
          <CrispLine points={laid.points} colour={BLACK} width={4} />
        </>
      )}
      <Pins places={ends} colour={BLACK} radius={4} />
    </group>
  );
}
