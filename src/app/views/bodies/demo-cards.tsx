import { useEffect, useMemo, useState } from 'react';
import type { Demo } from '../../services/index.ts';
import { oneLength, SIZE_MEASURES } from '../../store/index.ts';
import { useDemoCards } from '../parts/use-demo-cards.ts';
import { useNumbers } from '../parts/use-words.ts';
import { useApp, useServices } from '../parts/workroom-context.tsx';
import { BodyShape } from './body-shape.tsx';
import { pictureOfPoints } from './picture-of-points.ts';
import { useWardrobe } from './wardrobe-context.tsx';

/** Bodies of the Lantern Yard Players, to try things on. `onClose` is called before one is opened. */
export function DemoCards({ onClose }: { readonly onClose: () => void }) {
  const services = useServices();
  const words = useWardrobe().words.gallery;
  const numbers = useNumbers();
  const units = useApp((state) => state.project?.displayUnits ?? 'cm');
  const cards = useDemoCards(services.demos);
  const points = useDemoPoints(services.demos);
  return (
    <>
      <p className="quiet">{words.about}</p>
      <ul className="cards">
        {cards.map(({ demo, name, measures }) => (
          <li key={demo.id}>
            <button
              type="button"
              onClick={() => {
                onClose();
                void services.openDemo(demo);
              }}
            >
              <DemoShape points={points[demo.id]} />
              <span className="card-name">{name}</span>
              <span className="card-numbers">
                {SIZE_MEASURES.map((id) =>
                  numbers.length(oneLength(measures[id]) ?? Number.NaN, units, { bare: true }),
                ).join(' · ')}{' '}
                {units}
              </span>
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}

function DemoShape({ points }: { readonly points: Float64Array | undefined }) {
  return <BodyShape picture={useMemo(() => (points ? pictureOfPoints(points) : null), [points])} />;
}

/** Pictures come one after the other, so that closing the gallery stops the rest. */
function useDemoPoints(demos: readonly Demo[]): Readonly<Record<string, Float64Array>> {
  const services = useServices();
  const [points, setPoints] = useState<Readonly<Record<string, Float64Array>>>({});
  useEffect(() => {
    let isWanted = true;
    const run = async () => {
      for (const demo of demos) {
        if (!isWanted) return;
        const found = await services.pictureDemo(demo);
        if (isWanted && found) setPoints((known) => ({ ...known, [demo.id]: found }));
      }
    };
    void run();
    return () => {
      isWanted = false;
    };
  }, [demos, services]);
  return points;
}
