import { useEffect, useRef, useState } from 'react';
import { formatLength } from '../../core/base/index.ts';
import type { Project } from '../../core/project/index.ts';
import { Icon } from './icon.tsx';
import { type Demo, useApp, useServices } from './workroom-context.tsx';

interface DemoCard {
  readonly demo: Demo;
  readonly name: string;
  readonly measures: Project['body']['measures'];
}

/** Bodies of the Lantern Yard Players, to try things on. */
export function DemoGallery({ onClose }: { readonly onClose: () => void }) {
  const services = useServices();
  const units = useApp((state) => state.project?.displayUnits ?? 'cm');
  const cards = useDemoCards(services.demos);
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    dialog.current?.showModal();
  }, []);
  const choose = (demo: Demo) => {
    onClose();
    void services.openDemo(demo);
  };
  return (
    <dialog ref={dialog} className="gallery" aria-labelledby="gallery-title" onClose={onClose}>
      <header>
        <h2 id="gallery-title">Demo bodies</h2>
        <button type="button" className="icon-only" aria-label="Close" onClick={onClose}>
          <Icon name="close" />
        </button>
      </header>
      <p className="quiet">
        Invented people of the Lantern Yard Players, a community theatre. Opening one puts your present
        project aside; undo brings it back.
      </p>
      <ul className="cards">
        {cards.map(({ demo, name, measures }) => (
          <li key={demo.id}>
            <button type="button" onClick={() => choose(demo)}>
              <DemoShape measures={measures} />
              <span className="card-name">{name}</span>
              <span className="card-numbers">
                {(['bustGirth', 'waistGirth', 'hipGirth'] as const)
                  .map((id) => formatLength(oneNumber(measures[id]), units, { bare: true }))
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

function useDemoCards(demos: readonly Demo[]): readonly DemoCard[] {
  const [cards, setCards] = useState<readonly DemoCard[]>([]);
  useEffect(() => {
    let isWanted = true;
    void Promise.all(
      demos.map(async (demo) => {
        const project = JSON.parse(await demo.load()) as Project;
        return { demo, name: project.name, measures: project.body.measures };
      }),
    ).then((made) => isWanted && setCards(made));
    return () => {
      isWanted = false;
    };
  }, [demos]);
  return cards;
}

function oneNumber(value: Project['body']['measures'][string] | undefined): number {
  if (value === undefined) return Number.NaN;
  return typeof value === 'number' ? value : (value.left + value.right) / 2;
}

/** Three girths as stacked ovals, seen a little from above: enough to tell the bodies apart. */
function DemoShape({ measures }: { readonly measures: Project['body']['measures'] }) {
  const heights = [16, 38, 60];
  const halfWidths = (['bustGirth', 'waistGirth', 'hipGirth'] as const).map(
    (id) => oneNumber(measures[id]) / 36,
  );
  const side = (sign: 1 | -1) => halfWidths.map((w, i) => `${40 + sign * w} ${heights[i]}`);
  const [r0, r1, r2] = side(1);
  const [l0, l1, l2] = side(-1);
  return (
    <svg className="demo-shape" viewBox="0 0 80 76" aria-hidden="true">
      <path d={`M${r0} Q${r1} ${r2} L${l2} Q${l1} ${l0} Z`} className="shape-fill" />
      {halfWidths.map((w, i) => (
        <ellipse key={heights[i]} cx="40" cy={heights[i]} rx={w} ry={w * 0.26} className="shape-line" />
      ))}
    </svg>
  );
}
