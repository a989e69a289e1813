import { useEffect, useMemo, useRef, useState } from 'react';
import type { Project } from '../../../core/project/index.ts';
import type { Demo } from '../../services/index.ts';
import { Icon } from '../parts/icon.tsx';
import { outlineOf } from '../parts/side-drawing.ts';
import { useDemoCards } from '../parts/use-demo-cards.ts';
import { useNumbers, useWords } from '../parts/use-words.ts';
import { useApp, useServices } from '../parts/workroom-context.tsx';

/** Bodies of the Lantern Yard Players, to try things on. */
export function DemoGallery({ onClose }: { readonly onClose: () => void }) {
  const services = useServices();
  const words = useWords();
  const numbers = useNumbers();
  const units = useApp((state) => state.project?.displayUnits ?? 'cm');
  const cards = useDemoCards(services.demos);
  const points = useDemoPoints(services.demos);
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    dialog.current?.showModal();
  }, []);
  // Closed by the browser, so that the focus goes back to the button it came from.
  const close = () => dialog.current?.close();
  const choose = (demo: Demo) => {
    close();
    void services.openDemo(demo);
  };
  const begin = () => {
    close();
    services.newBody();
  };
  return (
    <dialog ref={dialog} className="gallery" aria-labelledby="gallery-title" onClose={onClose}>
      <div className="gallery-head">
        <h2 id="gallery-title">{words.top.demoBodies}</h2>
        <button type="button" className="icon-only" aria-label={words.top.close} onClick={close}>
          <Icon name="close" />
        </button>
      </div>
      <p>
        <button type="button" className="plain" onClick={begin}>
          {words.gallery.newBody}
        </button>
      </p>
      <p className="quiet">{words.gallery.about}</p>
      <ul className="cards">
        {cards.map(({ demo, name, measures }) => (
          <li key={demo.id}>
            <button type="button" onClick={() => choose(demo)}>
              <DemoShape points={points[demo.id]} />
              <span className="card-name">{name}</span>
              <span className="card-numbers">
                {(['bustGirth', 'waistGirth', 'hipGirth'] as const)
                  .map((id) => numbers.length(oneNumber(measures[id]), units, { bare: true }))
                  .join(' · ')}{' '}
                {units}
              </span>
            </button>
          </li>
        ))}
      </ul>
    </dialog>
  );
}

function oneNumber(value: Project['body']['measures'][string] | undefined): number {
  if (value === undefined) return Number.NaN;
  return typeof value === 'number' ? value : (value.left + value.right) / 2;
}

/** Outlines from the front and the side: enough to tell the bodies apart. */
function DemoShape({ points }: { readonly points: Float64Array | undefined }) {
  const outlines = useMemo(
    () => (points ? [outlineOf(points, 'front'), outlineOf(points, 'side')] : []),
    [points],
  );
  return (
    <svg className="demo-shape" viewBox="-240 -500 900 800" aria-hidden="true">
      {outlines.map((d, i) => (
        <path key={d} d={d} className="outline-cloth" transform={`translate(${i * 440} 0)`} />
      ))}
    </svg>
  );
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
