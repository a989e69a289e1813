import { useState } from 'react';
import { useNumbers, useWords } from '../parts/use-words.ts';
import { useServices } from '../parts/workroom-context.tsx';
import { BodyList } from './body-list.tsx';
import { DemoCards } from './demo-cards.tsx';
import { useWardrobe } from './wardrobe-context.tsx';

/**
 * The maker's bodies; beneath them, out of the way, the last states this browser kept and the demos. `onClose` is called before
 * another body is opened.
 */
export function Wardrobe({ onClose }: { readonly onClose: () => void }) {
  const { top } = useWords();
  const { words } = useWardrobe();
  return (
    <>
      <BodyList onClose={onClose} />
      <Folded title={words.earlier}>
        <EarlierStates onClose={onClose} />
      </Folded>
      <Folded title={top.demoBodies}>
        <DemoCards onClose={onClose} />
      </Folded>
    </>
  );
}

/** What is made only once it is unfolded. */
function Folded({ title, children }: { readonly title: string; readonly children: React.ReactNode }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <details className="wardrobe-more" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{title}</summary>
      {isOpen && children}
    </details>
  );
}

/** To go back to after a mistake or a crash. */
function EarlierStates({ onClose }: { readonly onClose: () => void }) {
  const services = useServices();
  const [states] = useState(services.listEarlierStates);
  const { top } = useWords();
  const { words } = useWardrobe();
  const { time: sayTime } = useNumbers();
  return (
    <>
      <p className="quiet">{words.aboutEarlier}</p>
      <ol className="earlier-list">
        {states.map(({ at, name, text }, index) => (
          <li key={`${at} ${name}`}>
            <button
              type="button"
              onClick={() => {
                onClose();
                void services.openText(text, words.stateOf(sayTime(at)));
              }}
            >
              <span className="card-name">{name || top.untitled}</span>
              <time className="quiet" dateTime={new Date(at).toISOString()}>
                {sayTime(at)}
                {index === 0 ? `, ${words.newest}` : ''}
              </time>
            </button>
          </li>
        ))}
      </ol>
    </>
  );
}
